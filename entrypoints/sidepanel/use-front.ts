import { useEffect, useState } from 'preact/hooks'
import { browser } from 'wxt/browser'
import type { InFront } from '../view/in-front.ts'

/** The tab in front of this panel's window, followed by tab events: they need no permission and say no address. */
export function useFront(): InFront | null {
  const [front, setFront] = useState<InFront | null>(null)
  useEffect(() => {
    let stopped = false
    const ask = async () => {
      const [tab] = await browser.tabs.query({ active: true, currentWindow: true })
      if (!stopped) setFront({ windowId: tab?.windowId ?? null, tabId: tab?.id ?? null })
    }
    const follow = () => {
      ask().catch(() => {
        if (!stopped) setFront({ windowId: null, tabId: null })
      })
    }
    follow()
    browser.tabs.onActivated.addListener(follow)
    browser.tabs.onAttached.addListener(follow)
    browser.tabs.onRemoved.addListener(follow)
    return () => {
      stopped = true
      browser.tabs.onActivated.removeListener(follow)
      browser.tabs.onAttached.removeListener(follow)
      browser.tabs.onRemoved.removeListener(follow)
    }
  }, [])
  return front
}

/** Draws a page with how its saving stands, and holds it back from closing while something typed is not saved. */
import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { SavingBar } from '../../components/saving/saving-bar.tsx'
import { SavingNow } from '../../components/saving/saving-now.tsx'
import { WordsOf } from '../../components/words.tsx'
import type { Saving } from './saving.ts'

export function SavingHere({ saving, children }: { saving: Saving; children: ComponentChildren }) {
  const [now, setNow] = useState(() => saving.now())
  useEffect(() => {
    setNow(saving.now())
    return saving.watch(setNow)
  }, [saving])
  const unsaved = now.waiting > 0 || now.clashes.length > 0 || now.is === 'saving'
  useEffect(() => {
    if (!unsaved) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    addEventListener('beforeunload', ask)
    return () => removeEventListener('beforeunload', ask)
  }, [unsaved])
  return (
    <SavingNow.Provider value={now}>
      {children}
      {/* it stands around every page, so the words that a page hands down are not here: it speaks as the document does now */}
      <WordsOf.Provider value={{ units: 'cm', language: document.documentElement.lang }}>
        <SavingBar
          now={now}
          onAgain={() => void saving.again()}
          onReload={() => location.reload()}
          onClose={() => saving.read()}
          onSettle={(how) => saving.settle(how)}
        />
      </WordsOf.Provider>
    </SavingNow.Provider>
  )
}

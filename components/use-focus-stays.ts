/**
 * The keyboard stays where it was. What is pressed may take its own button away (Choose, Undo, Not the waist); a browser then sets the keyboard back to
 * the beginning of the page. Here it goes to what can be pressed nearest to where it stood, unless whoever took the button away sends it elsewhere.
 */
import { useEffect } from 'preact/hooks'

const PRESSABLE = 'a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex]'

export function useFocusStays(root: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const its = root.current
    if (its === null) return
    /** Where the keyboard stood last, and everything around it, the nearest first. */
    let around: Element[] = []
    const stood = (event: Event) => {
      around = []
      for (let one = event.target; one instanceof Element && one !== its.parentElement; one = one.parentElement) around.push(one)
    }
    const changed = () => {
      const [last, ...outer] = around
      if (last === undefined || last.isConnected || document.activeElement !== document.body) return
      around = []
      const place = outer.find((one) => one.isConnected && one.querySelector(PRESSABLE) !== null)
      place?.querySelector<HTMLElement>(PRESSABLE)?.focus({ preventScroll: true })
    }
    its.addEventListener('focusin', stood)
    const watch = new MutationObserver(changed)
    watch.observe(its, { childList: true, subtree: true })
    return () => {
      its.removeEventListener('focusin', stood)
      watch.disconnect()
    }
  }, [root])
}

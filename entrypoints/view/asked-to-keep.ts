/**
 * The browser is asked not to clear what is saved: once something that was typed is saved, when there is something to keep and not before.
 * Chromium and Safari answer by themselves; Firefox asks the person, so there it waits for a press (MDN, StorageManager.persist).
 */
import type { Saving } from './saving.ts'

/** Would the browser ask the person? */
export const asksThePerson = (): boolean => navigator.userAgent.includes('Firefox/')

/** Is the browser to clear nothing of this unasked? null: it does not say. */
export const promised = async (): Promise<boolean | null> => (await navigator.storage?.persisted?.()) ?? null

/** Asks it; false where it does not promise. */
export async function askToKeep(): Promise<boolean> {
  try {
    return await navigator.storage.persist()
  } catch (error) {
    console.error(error)
    return false
  }
}

const TYPED_INTO = 'textarea, input:not([type=checkbox], [type=radio], [type=file], [type=button])'

/** Asks once, behind the first save of this page that follows something typed into a field. */
export function askOnceTyped(saving: Saving, page: Document = document): void {
  let typed = false
  let beganSaving = false
  const onInput = ({ target }: Event) => {
    typed ||= target instanceof Element && target.matches(TYPED_INTO)
  }
  page.addEventListener('input', onInput, { capture: true })
  const stop = saving.watch(({ is }) => {
    if (is === 'saving') beganSaving ||= typed
    if (is !== 'saved' || !beganSaving) return
    stop()
    page.removeEventListener('input', onInput, { capture: true })
    if (!asksThePerson()) void promised().then((kept) => (kept === false ? askToKeep() : kept), console.error)
  })
}

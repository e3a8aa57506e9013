/** How saving stands on this page: said where things are typed, and with its reason and a way on when it failed. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { useWords } from '../words.tsx'

export interface SavingShown {
  is: 'saved' | 'saving' | 'not-saved'
  /** Why it failed, by the words' own names; null: it did not. */
  trouble: string | null
  /** Acts that can be tried again. */
  waiting: number
  /** What was changed here and elsewhere, each time to something else. */
  clashes: readonly ClashShown[]
}
export interface ClashShown {
  path: readonly string[]
  mine: unknown
  theirs: unknown
}

export const SavingNow = createContext<SavingShown>({ is: 'saved', trouble: null, waiting: 0, clashes: [] })

/** `Saved.` · `Saving…` · `Not saved.`: as it is, never a promise. */
export function SavedNote() {
  const { t } = useWords()
  const { is } = useContext(SavingNow)
  return <p>{t(`saving.${is}`)}</p>
}

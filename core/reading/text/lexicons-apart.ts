/**
 * The languages one by one, for pages that open at a press of a button: English and what all have together (OF_EVERY, worked out when it is built)
 * are here; the phrases of another are a file of their own. To read a text of it throws what `languageComing` knows, until they have come.
 */
import { en } from '../languages/en.ts'
import type { Lexicon } from '../languages/lexicon.ts'

export { OF_EVERY } from './of-every-built.ts'

const FILES: ReadonlyMap<string, () => Promise<Lexicon>> = new Map([
  ['de', async () => (await import('../languages/de.ts')).de],
  ['fr', async () => (await import('../languages/fr.ts')).fr],
  ['es', async () => (await import('../languages/es.ts')).es],
  ['it', async () => (await import('../languages/it.ts')).it],
  ['nl', async () => (await import('../languages/nl.ts')).nl],
  ['pl', async () => (await import('../languages/pl.ts')).pl],
  ['sv', async () => (await import('../languages/sv.ts')).sv],
  ['pt', async () => (await import('../languages/pt.ts')).pt],
  ['ja', async () => (await import('../languages/ja.ts')).ja],
  ['ko', async () => (await import('../languages/ko.ts')).ko],
  ['da', async () => (await import('../languages/da.ts')).da],
  ['no', async () => (await import('../languages/no.ts')).no],
  ['fi', async () => (await import('../languages/fi.ts')).fi],
  ['cs', async () => (await import('../languages/cs.ts')).cs]
])
const here = new Map<string, Lexicon>([[en.language, en]])

class NotHereYet extends Error {
  readonly language: string
  constructor(language: string) {
    super(`The phrases of “${language}” are not loaded: read through withLanguages.`)
    this.language = language
  }
}

export function lexiconOf(language: string): Lexicon | undefined {
  const lexicon = here.get(language)
  if (lexicon === undefined && FILES.has(language)) throw new NotHereYet(language)
  return lexicon
}

async function bring(language: string): Promise<void> {
  const lexicon = await FILES.get(language)?.()
  if (lexicon !== undefined) here.set(language, lexicon)
}

export async function withLanguages<T>(read: () => T): Promise<T> {
  for (;;) {
    try {
      return read()
    } catch (thrown) {
      if (!(thrown instanceof NotHereYet)) throw thrown
      await bring(thrown.language)
    }
  }
}

export const languageComing = (thrown: unknown): Promise<void> | null => (thrown instanceof NotHereYet ? bring(thrown.language) : null)

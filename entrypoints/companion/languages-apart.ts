/**
 * Builds pages that bring of their words what they need: each language of sellers is a file of its own, with what is asked of all of them together
 * worked out here; what only the workroom says stands apart.
 */
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { LEXICONS, OF_EVERY } from '../../core/reading/text/lexicons.ts'

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url))
const UNSPACED = new Set(LEXICONS.filter(({ unspaced }) => unspaced).map(({ language }) => language))
/** What has all at hand, and what takes its place. */
const INSTEAD: readonly (readonly [string, string])[] = [
  ['/lexicons.ts', at('../../core/reading/text/lexicons-apart.ts')],
  ['/english.ts', at('../../core/words/english-apart.ts')]
]

export const languagesApart = (): Plugin => ({
  name: 'languages-apart',
  enforce: 'pre',
  resolveId: (source) => INSTEAD.find(([ending]) => source.endsWith(ending))?.[1] ?? null,
  load: (id) => {
    if (id.endsWith('/text/of-every-built.ts')) return `export const OF_EVERY = ${JSON.stringify(OF_EVERY)}`
    return isOfEveryAlone(id) ? 'export const cues = {}\nexport const amounts = {}\nexport const postedIn = {}' : null
  },
  // a phrase a line is for those who write them
  transform: (code, id) => (/\/reading\/languages\/[a-z]{2}[./]/.test(id) ? code.replace(/\n[ \t]+/g, '\n') : null)
})

/** What stands in OF_EVERY is not built in a second time; a language without spaces cuts its runs by these words too. */
const isOfEveryAlone = (id: string): boolean => {
  const [, language] = /\/reading\/languages\/([a-z]{2})\/(?:cues|posted-in)\.ts$/.exec(id) ?? []
  return language !== undefined && !UNSPACED.has(language)
}

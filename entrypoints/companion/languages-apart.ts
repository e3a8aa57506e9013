/**
 * Builds pages that bring of their words what they need: each language of sellers is a file of its own, with what is asked of all of them together
 * worked out here; what only the workroom says stands apart.
 */
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { OF_EVERY } from '../../core/reading/text/lexicons.ts'

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url))
/** What has all at hand, and what takes its place. */
const INSTEAD: readonly (readonly [string, string])[] = [
  ['/lexicons.ts', at('../../core/reading/text/lexicons-apart.ts')],
  ['/english.ts', at('../../core/words/english-apart.ts')]
]

export const languagesApart = (): Plugin => ({
  name: 'languages-apart',
  enforce: 'pre',
  resolveId: (source) => INSTEAD.find(([ending]) => source.endsWith(ending))?.[1] ?? null,
  load: (id) => (id.endsWith('/text/of-every-built.ts') ? `export const OF_EVERY = ${JSON.stringify(OF_EVERY)}` : null)
})

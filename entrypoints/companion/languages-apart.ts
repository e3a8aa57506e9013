/** Builds the reader with its languages one by one: each a file of its own, and what is asked of all of them together worked out here. */
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { OF_EVERY } from '../../core/reading/text/lexicons.ts'

const APART = fileURLToPath(new URL('../../core/reading/text/lexicons-apart.ts', import.meta.url))

export const languagesApart = (): Plugin => ({
  name: 'languages-apart',
  enforce: 'pre',
  resolveId: (source) => (source.endsWith('/lexicons.ts') ? APART : null),
  load: (id) => (id.endsWith('/text/of-every-built.ts') ? `export const OF_EVERY = ${JSON.stringify(OF_EVERY)}` : null)
})

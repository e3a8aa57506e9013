/** The mark of the engine that is built: another one wherever anything that an answer comes from is another. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { inRoot } from './places.mjs'

/** One digest over the core and the solver's version; kept answers stand on it. */
export function engineMark() {
  const core = inRoot('core')
  const files = readdirSync(core, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => path.replaceAll('\\', '/'))
    .sort()
  const digest = createHash('sha256').update(solver())
  for (const path of files)
    digest
      .update(`${path}\0`)
      .update(readFileSync(`${core}/${path}`))
      .update('\0')
  return digest.digest('hex').slice(0, 16)
}

const solver = () => String(JSON.parse(readFileSync(inRoot('package.json'), 'utf8')).dependencies.yalps)

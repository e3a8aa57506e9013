/** Which part may know which: entrypoints → components → core, and inside the core one direction. */
import { existsSync } from 'node:fs'
import { expect, test } from 'vitest'
import { inRoot } from '../../entrypoints/companion/places.mjs'
import { roomsOf, roundsOf } from './drawing.ts'
import { hasEnding, importsOf, sourcesIn, target } from './project.ts'

const files = sourcesIn('core', 'components', 'entrypoints')
const edges = files.flatMap((file) => importsOf(file).map((written) => ({ from: file.path, written, to: target(file, written) })))
const paths = new Set(files.map((file) => file.path))

test('there is something to look at', () => {
  expect(files.length).toBeGreaterThan(20)
  expect(edges.length).toBeGreaterThan(20)
})

test('imports are written out: relative, with their ending, and lead to a file', () => {
  const wrong = edges
    .filter(({ to }) => to !== undefined)
    .filter(({ written, to }) => !hasEnding(written) || !existsSync(inRoot(to ?? '')))
    .map(({ from, written }) => `${from}: "${written}". Write the whole relative path with .ts or .tsx, as Node reads it.`)
  expect(wrong).toEqual([])
})

test('no file imports itself by a round way', () => {
  const next = new Map(files.map((file) => [file.path, edges.filter(({ from }) => from === file.path).map(({ to }) => to ?? '')]))
  const done = new Set<string>()
  const rounds: string[] = []
  const follow = (path: string, trail: string[]) => {
    const at = trail.indexOf(path)
    if (at >= 0) rounds.push(`${[...trail.slice(at), path].join(' → ')}. Move what both need into a file that neither imports.`)
    else if (!done.has(path)) {
      for (const to of next.get(path) ?? []) follow(to, [...trail, path])
      done.add(path)
    }
  }
  for (const path of paths) follow(path, [])
  expect(rounds).toEqual([])
})

/** The folder a rule speaks of: entrypoints, components, or the part of the core. */
const partOf = (path: string) => (path.startsWith('core/') ? (path.split('/')[1] ?? '') : (path.split('/')[0] ?? ''))

test('core knows neither components nor entrypoints, and components know no entrypoint and no records', () => {
  const wrong = edges.flatMap(({ from, to }) => {
    if (to === undefined) return []
    if (from.startsWith('core/') && !to.startsWith('core/'))
      return [`${from} imports ${to}: the core takes data; let the caller pass it in.`]
    if (from.startsWith('components/') && to.startsWith('entrypoints/'))
      return [`${from} imports ${to}: a component gets what it needs as props; move the shared piece or pass it down.`]
    if (from.startsWith('components/') && to.startsWith('core/records/'))
      return [`${from} imports ${to}: records reach a component as props and callbacks; read them in the entrypoint.`]
    return []
  })
  expect(wrong).toEqual([])
})

/** Later may import earlier. `words` may be imported by all, `reckon.ts` and `records` stand after everything. */
const ORDER = ['length.ts', 'once.ts', 'ids', 'garment', 'wearer', 'reading', 'alterations', 'plan', 'worksheet', 'reckon.ts', 'records']
const WORDS_MAY_IMPORT = ['core/words/', 'core/length.ts', 'core/ids/']

test('inside the core, only later parts import earlier ones', () => {
  const wrong = edges.flatMap(({ from, to }) => {
    if (!from.startsWith('core/') || !to?.startsWith('core/')) return []
    const [here, there] = [partOf(from), partOf(to)]
    if (here === 'words')
      return WORDS_MAY_IMPORT.some((may) => to.startsWith(may))
        ? []
        : [`${from} imports ${to}: words know only ${WORDS_MAY_IMPORT.join(', ')}; pass values into the sentence.`]
    if (here === there || there === 'words') return []
    if (ORDER.indexOf(here) < 0 || ORDER.indexOf(there) < 0)
      return [`${from} imports ${to}: no order is written for this folder; add it to ORDER in tests/house/arrows.test.ts.`]
    return ORDER.indexOf(here) > ORDER.indexOf(there)
      ? []
      : [`${from} imports ${to}: ${here} comes before ${there} (${ORDER.join(' → ')}); move the shared piece to the earlier part.`]
  })
  expect(wrong).toEqual([])
})

test('no room reaches itself round about', () => {
  const rounds = roundsOf(roomsOf('core')).map((round) => `${round}. Move what both need into a room that neither imports.`)
  expect(rounds).toEqual([])
  expect(
    roundsOf(
      new Map([
        ['a', new Map([['b', 1]])],
        ['b', new Map([['a', 1]])]
      ])
    )
  ).toEqual(['a → b → a'])
})

/** Packages, and who may know them. Whatever is not named here is for tests and configuration only. */
const PACKAGES: Record<string, (path: string) => boolean> = {
  '@tanstack': (path) => path === 'components/workroom/wishlist/use-lines.ts',
  yalps: (path) => path.startsWith('core/plan/'),
  zod: (path) => path.startsWith('core/') || path.startsWith('entrypoints/'),
  dexie: (path) => path.startsWith('core/records/'),
  preact: (path) => !path.startsWith('core/'),
  wxt: (path) => path.startsWith('entrypoints/')
}
const isForTheBuild = (path: string) => path.startsWith('entrypoints/companion/')

test('only core/records knows Dexie, the core knows no browser and no Preact', () => {
  const wrong = edges
    .filter(({ from, to }) => to === undefined && !isForTheBuild(from))
    .filter(({ from, written }) => !PACKAGES[written.split('/')[0] ?? '']?.(from))
    .map(({ from, written }) => `${from} imports the package "${written}": not allowed there; see PACKAGES in tests/house/arrows.test.ts.`)
  expect(wrong).toEqual([])
})

/** The core needs no bundler: plain Node with a TypeScript loader runs it. */
import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { ROOT } from '../../entrypoints/companion/places.mjs'

const inPlainNode = (program: string): unknown =>
  JSON.parse(execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', program], { cwd: ROOT, encoding: 'utf8' }))

test('core/reckon.ts gives a verdict', () => {
  const verdict = inPlainNode(`
    import { reckon } from './core/reckon.ts'
    const reckoning = reckon({
      garment: { kind: 'trousers', measures: [{ point: 'waist', mm: 813, source: 'own' }, { point: 'hip', mm: 1060, source: 'own' }] },
      wearer: { body: { waistbandGirth: { mm: 750 }, hipGirth: { mm: 960 } }, fit: 'regular' },
      means: { level: 4, tailor: false }
    })
    console.log(JSON.stringify(reckoning.verdict))`)
  expect(['wears-as-is', 'alters-to-fit', 'needs-a-tailor', 'comes-close', 'leave-it', 'too-little-told']).toContain(verdict)
})

test('core/reading/read-listing.ts reads a listing', () => {
  const measures = inPlainNode(`
    import { readListing } from './core/reading/read-listing.ts'
    const { measures } = readListing({ title: 'Wool trousers', text: 'Laid flat: waist 16", inside leg 31".' })
    console.log(JSON.stringify(measures.map(({ point, mm }) => [point, Math.round(mm)])))`)
  expect(measures).toEqual([
    ['waist', 813],
    ['inseam', 787]
  ])
})

// @vitest-environment happy-dom
import { afterEach, expect, test } from 'vitest'
import { AlterationsPage } from '../../../components/workroom/alterations/alterations-page.tsx'
import { ALTERED_KINDS, jobsShown, sourceClasses } from '../../../components/workroom/alterations/jobs-shown.ts'
import { alterationsFor } from '../../../core/alterations/alterations-for.ts'
import { CATALOGUE } from '../../../core/alterations/catalogue.ts'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import { hide, inPage, show, shownText, type } from '../on-page.tsx'

afterEach(hide)
const rows = (): string[] => [...inPage().querySelectorAll('tbody tr')].map((row) => row.textContent ?? '')

test('every row of the tables is shown once, and says where its figures are from', () => {
  const jobs = jobsShown(null)
  expect(jobs.map(({ id, direction }) => `${id} ${direction}`)).toEqual(CATALOGUE.map(({ id, direction }) => `${id} ${direction}`))
  expect(jobs.filter(({ sources }) => sources.length === 0)).toEqual([])
})

test('a limit is the one that the reckoning has on such a garment', () => {
  // an inside leg of 78 cm keeps 0.53 of it below the knee
  const legs = jobsShown('trousers').find(({ id }) => id === 'leg-shorten-plain')
  const option = alterationsFor(garmentAsWorn({ kind: 'trousers', measures: [{ point: 'inseam', mm: 780, source: 'own' }] })).options.find(
    ({ id }) => id === 'leg-shorten-plain'
  )
  expect(legs?.limitMm).toBeCloseTo(0.53 * 780, 6)
  expect(option?.lines[0]?.capMm).toBeCloseTo(legs?.limitMm ?? 0, 6)
})

test('sources are told by their class: handbook, trade practice, memory', () => {
  expect(sourceClasses('TM227-34 (side seams hang centred); 25 a side MEM')).toEqual(['handbook', 'memory'])
  expect(sourceClasses('CP: 10 a dart')).toEqual(['practice'])
  expect(sourceClasses('MEM (13)')).toEqual(['memory'])
  expect(sourceClasses('SG8, CWU17 (split evenly); 2 in a side CP')).toEqual(['handbook', 'practice'])
})

test('no mark of a source, and so no maker, is on the page', () => {
  show(<AlterationsPage />)
  const marks = new Set(CATALOGUE.flatMap(({ source }) => source.match(/\b[A-Z]{2,}[A-Z0-9-]*\b/g) ?? []))
  expect(marks.size).toBeGreaterThan(10)
  expect([...marks].filter((mark) => shownText().includes(mark))).toEqual([])
})

test('found by kind and by word', () => {
  show(<AlterationsPage />)
  expect(rows()).toHaveLength(CATALOGUE.length)
  type('Kind', 'skirt')
  expect(rows()).toHaveLength(CATALOGUE.filter(({ kinds }) => kinds.includes('skirt')).length)
  type('Find', 'waist smaller darts')
  expect(rows()).toHaveLength(1)
  expect(rows()[0]).toContain('Waist in with darts')
  type('Find', 'no such job')
  expect(rows()).toEqual([])
  expect(shownText()).toContain('No job matches')
})

test('every kind that has jobs can be chosen', () => {
  expect(new Set(CATALOGUE.flatMap(({ kinds }) => kinds))).toEqual(new Set(ALTERED_KINDS))
})

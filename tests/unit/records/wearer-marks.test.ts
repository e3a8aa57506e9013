/** What an answer stands on of whoever it is for, told without a database: each thing told changes the mark, and nothing else does. */
import { describe, expect, test } from 'vitest'
import type { BodyMeasurement, GarmentOwned, Person } from '../../../core/records/schemas.ts'
import { isAnswerRow, isVerdictRow, standsOn, wearerMarks, wordedAs } from '../../../core/records/verdicts.ts'
import { owned, WREN } from './fixtures.ts'

const base = { device: 'd', revision: 1, createdAt: '2026-03-01T08:00:00.000Z', updatedAt: '2026-03-01T08:00:00.000Z', deletedAt: null }
const wren: Person = { ...WREN, ...base, id: 'p' }
const lark: Person = { ...WREN, ...base, id: 'q', name: 'Lark' }
const garment = (id: string, over: Partial<GarmentOwned> = {}): GarmentOwned => ({ ...owned(), ...base, id, ...over })
const wardrobe = {
  people: [wren, lark],
  measures: [] as BodyMeasurement[],
  garments: [garment('g'), garment('h')],
  settings: { theme: 'system' as const, personId: 'p' }
}
type Its = Omit<typeof wardrobe, 'people' | 'garments'> & { people: Person[]; garments: GarmentOwned[] }
const of = (its: Its = wardrobe, engine = 'e', kind: 'trousers' | 'shirt' | null = 'trousers', id: string | null = null): string =>
  wearerMarks(its, engine)(id, kind)
const withPerson = (over: Partial<Person>): string => of({ ...wardrobe, people: [{ ...wren, ...over }, lark] })
const withGarment = (over: Partial<GarmentOwned>): string => of({ ...wardrobe, garments: [{ ...garment('g'), ...over }, garment('h')] })

describe('the mark of a wearer', () => {
  test.each(
    Object.entries({
      id: 'another',
      units: 'cm',
      currency: 'EUR',
      fit: 'loose',
      sizes: 'women',
      means: { level: 4, tailor: false },
      limits: { 'leg-taper': 0 },
      sellerSdMm: { girth: 9, length: 8 },
      ease: { waist: { mm: 15, sdMm: 5 } },
      easeOf: [{ kind: 'trousers', fit: 'regular', point: 'waist', mm: 35 }]
    } satisfies Partial<Person>)
  )('is another with another %s', (name, value) => expect(withPerson({ [name]: value })).not.toBe(of()))

  test.each(
    Object.entries({
      measures: [{ point: 'waist', mm: 761, stated: '76.1' }],
      toleranceMm: { waist: 4 },
      cloth: { stretchPercent: 20 },
      cut: { rise: 'low' },
      id: 'z'
    } satisfies Partial<GarmentOwned>)
  )('is another where a garment has another %s', (name, value) => expect(withGarment({ [name]: value })).not.toBe(of()))

  test('is the same whatever they are called and whenever it was written', () => {
    expect(withPerson({ name: 'Robin', revision: 9, updatedAt: '2027-01-01T00:00:00.000Z' })).toBe(of())
    expect(withGarment({ name: 'Cords', notes: 'worn', made: { year: 1990 } as never, revision: 9 })).toBe(of())
  })

  test('is another where another garment is the one chosen by itself, and the same where none is, for a body is told', () => {
    const marks = (its: Its, which: 'g' | 'h') =>
      of({ ...its, garments: its.garments.map((one) => (one.id === which ? { ...one, favourite: true } : one)) })
    expect(marks(wardrobe, 'h')).not.toBe(of())
    expect(marks(wardrobe, 'g')).toBe(of())
    const measure = { ...base, id: 'm', personId: 'p', measure: 'waistGirth' as const, mm: 700, stated: '70', takenOn: '2026-01-10' }
    const told = { ...wardrobe, measures: [measure] }
    expect(marks(told, 'h')).toBe(of(told))
    expect(of(told)).not.toBe(of())
    expect(of({ ...wardrobe, measures: [{ ...measure, personId: 'q' }] })).toBe(of())
  })

  test('counts the garments of this person and this kind that are measured', () => {
    const and = (over: Partial<GarmentOwned>): string => of({ ...wardrobe, garments: [...wardrobe.garments, garment('new', over)] })
    expect(and({})).not.toBe(of())
    expect(and({ kind: 'shirt' })).toBe(of())
    expect(and({ personId: 'q' })).toBe(of())
    expect(and({ measures: [] })).toBe(of())
    // where there is none it is the person alone
    expect(of(wardrobe, 'e', 'shirt')).toBe(of({ ...wardrobe, garments: [] }, 'e', 'trousers'))
    expect(of(wardrobe, 'e', null)).toBe(of(wardrobe, 'e', 'shirt'))
  })

  test('is of the person asked for, else of the one set, else of the first; of nobody it says so', () => {
    expect(of(wardrobe, 'e', 'trousers', 'q')).not.toBe(of())
    expect(of({ ...wardrobe, settings: { theme: 'system', personId: 'q' } })).toBe(of(wardrobe, 'e', 'trousers', 'q'))
    expect(of({ ...wardrobe, settings: { theme: 'system', personId: 'gone' } })).toBe(of())
    expect(of({ ...wardrobe, people: [] })).toBe('nobody')
    expect(of(wardrobe, 'another engine')).not.toBe(of())
  })

  test('asked again of the same wardrobe it is the same, and of each kind and person its own', () => {
    const marks = wearerMarks(wardrobe, 'e')
    const asked = () => [marks('p', 'trousers'), marks('p', 'shirt'), marks('q', 'trousers'), marks('p', null), marks(null, 'trousers')]
    const first = asked()
    expect(asked()).toEqual(first)
    expect(first).toEqual([of(), of(wardrobe, 'e', 'shirt'), of(wardrobe, 'e', 'trousers', 'q'), of(wardrobe, 'e', null), of()])
    expect(new Set(first.slice(0, 3)).size).toBe(3)
  })
})

test('what it stands on and how it is worded, in one text each', () => {
  expect(standsOn('told', 'wearer')).toBe('told wearer')
  expect(wordedAs({ units: 'cm', language: 'de', currency: 'EUR' })).toBe('cm de EUR')
  expect(wordedAs({ units: 'in' })).toBe('in  ')
})

describe('a row is one of ours', () => {
  const brief = { verdict: 'comes-close', chance: null, chanceIf: 0.5, minutes: 0, level: 3, spend: null }
  const verdict = { id: 'l', written: 3, of: 'o', kind: 'jeans', brief, jobs: ['leg-taper'] }
  const answer = { id: 'l', of: 'o', worded: 'cm', answer: {} }

  test.each([
    [verdict, true],
    [{ ...verdict, kind: null, brief: null, jobs: [] }, true],
    [{ ...verdict, id: 7 }, false],
    [{ ...verdict, written: 1.5 }, false],
    [{ ...verdict, of: null }, false],
    [{ ...verdict, kind: 'thimble' }, false],
    [{ ...verdict, brief: { ...brief, verdict: 'good' } }, false],
    [{ ...verdict, brief: { ...brief, minutes: null } }, false],
    [{ ...verdict, brief: { ...brief, chance: '0.5' } }, false],
    [{ ...verdict, jobs: ['dance'] }, false],
    [7, false],
    [null, false]
  ])('a verdict %j: %s', (row, is) => expect(isVerdictRow(row)).toBe(is))

  test.each([
    [answer, true],
    [{ ...answer, id: 7 }, false],
    [{ ...answer, of: 7 }, false],
    [{ ...answer, worded: null }, false],
    [{ ...answer, answer: null }, false],
    [null, false]
  ])('an answer %j: %s', (row, is) => expect(isAnswerRow(row)).toBe(is))
})

/** Every corpus case, every field, every place. A wrong reading? Add the case first, then change the code. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../core/reading/read-listing.ts'
import { hasMessage, say } from '../../core/words/say.ts'
import type { Case, Place } from './case.ts'
import { cases } from './cases.ts'

const FIELDS = [
  'kind',
  'measures',
  'fibres',
  'traits',
  'stretchPercent',
  'structure',
  'washed',
  'made',
  'cut',
  'use',
  'whose',
  'sizeChart',
  'language',
  'colour',
  'condition',
  'mending',
  'price',
  'sizeLabels',
  'faults',
  'allowances',
  'leftAside',
  'issues',
  'added'
]

/** The place of the nth occurrence of a text, found in the source alone. */
function placed(source: string, { text, nth, value, unit }: Place) {
  let start = -1
  for (let n = 0; n < nth; n++) {
    start = source.indexOf(text, start + 1)
    if (start < 0) throw new Error(`the case names "${text}" (${nth}), which its text has not`)
  }
  return { text, start, end: start + text.length, value, unit }
}
const round = (mm: number) => Math.round(mm * 100) / 100
const rounded = (made: object) =>
  Object.fromEntries(Object.entries(made).map(([fact, value]) => [fact, typeof value === 'number' ? round(value) : value]))
const byPlace = (a: { stated: { start: number } }, b: { stated: { start: number } }) => a.stated.start - b.stated.start

function expected({ listing, expect: e }: Case) {
  const source = listing.text + (e.added ?? '')
  const at = (place: Place) => placed(source, place)
  return {
    kind: e.kind,
    measures: (e.measures ?? [])
      .map(({ place, ...rest }) => ({
        ...rest,
        mm: round(rest.mm),
        lowMm: round(rest.lowMm),
        highMm: round(rest.highMm),
        stated: at(place)
      }))
      .sort(byPlace),
    fibres: (e.fibres ?? []).map(([fibre, percent]) => ({ fibre, percent })),
    traits: [...(e.traits ?? [])].sort(),
    stretchPercent: e.stretchPercent ?? null,
    structure: e.structure ?? null,
    washed: e.washed ?? null,
    made: rounded(e.made ?? {}),
    cut: e.cut ?? {},
    use: e.use ?? null,
    whose: e.whose ?? null,
    sizeChart: (e.sizeChart ?? [])
      .map(({ place, ...rest }) => ({ ...rest, lowMm: round(rest.lowMm), highMm: round(rest.highMm), stated: at(place) }))
      .sort(byPlace),
    language: e.language ?? 'en',
    colour: e.colour ?? null,
    condition: e.condition ?? null,
    mending: [...(e.mending ?? [])].sort(),
    price: e.price ?? null,
    sizeLabels: e.sizeLabels ?? [],
    faults: e.faults ?? [],
    allowances: (e.allowances ?? []).map(({ place, ...rest }) => ({ ...rest, mm: round(rest.mm), stated: at(place) })),
    leftAside: (e.leftAside ?? []).map(({ place, because }) => ({ stated: at(place), because })).sort(byPlace),
    issues: (e.issues ?? []).map(({ code, about, readings }) => ({
      code,
      about: about ?? null,
      readings: (readings ?? []).map(([point, mm]) => ({ point, mm: round(mm) }))
    })),
    added: e.added ?? ''
  }
}

function actual({ listing }: Case) {
  // what is told twice stands aside too, and is asked about below
  const { garment, cloth, seconds: _, ...reading } = readListing(listing)
  return {
    kind: garment.kind,
    ...cloth,
    ...reading,
    made: rounded(reading.made),
    cut: Object.fromEntries(Object.entries(reading.cut).map(([facet, { value }]) => [facet, value])),
    traits: [...cloth.traits].sort(),
    mending: [...reading.mending].sort(),
    measures: reading.measures
      .map((one) => ({ ...one, mm: round(one.mm), lowMm: round(one.lowMm), highMm: round(one.highMm) }))
      .sort(byPlace),
    allowances: reading.allowances.map((one) => ({ ...one, mm: round(one.mm) })),
    sizeChart: reading.sizeChart.map((one) => ({ ...one, lowMm: round(one.lowMm), highMm: round(one.highMm) })).sort(byPlace),
    leftAside: [...reading.leftAside].sort(byPlace),
    issues: reading.issues.map(({ code, stated, readings }) => ({
      code,
      about: stated?.text ?? null,
      readings: readings.map(({ point, mm }) => ({ point, mm: round(mm) }))
    })),
    added: reading.added ?? ''
  }
}

describe.each(Object.entries(cases))('%s', (_, group) => {
  test.each(group.map((one) => [one.name, one] as const))('%s', (_, one) => {
    for (const field of Object.keys(one.expect)) expect(FIELDS, `unknown field "${field}"`).toContain(field)
    const now = actual(one)
    expect(Object.keys(now).sort(), 'fields of a reading').toEqual([...FIELDS].sort())
    expect(now).toEqual(expected(one))
    const reading = readListing(one.listing)
    const source = one.listing.text + (reading.added ?? '')
    for (const { stated } of [...reading.measures, ...reading.allowances, ...reading.leftAside])
      expect(source.slice(stated.start, stated.end)).toBe(stated.text)
    for (const { point, stated } of reading.seconds ?? []) {
      expect(reading.measures.map((measure) => measure.point)).toContain(point)
      expect(reading.leftAside.map((left) => left.stated.start)).toContain(stated.start)
    }
    for (const issue of reading.issues) {
      expect(hasMessage(issue.code), issue.code).toBe(true)
      expect(issue.text).toBe(say(issue, { units: 'cm' }))
      if (issue.stated) expect(source.slice(issue.stated.start, issue.stated.end)).toBe(issue.stated.text)
    }
    for (const { from, sureness } of Object.values(reading.cut)) {
      expect(from).toBe('told')
      // a word in the title is surer than one in the text
      expect([0.95, 0.8]).toContain(sureness)
    }
    const { sureness } = reading.garment
    expect(sureness).toBeGreaterThanOrEqual(0)
    expect(sureness).toBeLessThanOrEqual(1)
  })
})

describe('the corpus', () => {
  const all = Object.values(cases).flat()
  test('names each case once and says what it teaches', () => {
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length)
    for (const one of all) expect(one.teaches.length, one.name).toBeGreaterThan(10)
  })
  test('holds enough cases, enough in English, and enough traps', () => {
    expect(all.length).toBeGreaterThanOrEqual(320)
    const english = all.filter(({ expect: e }) => (e.language ?? 'en') === 'en')
    expect(english.length).toBeGreaterThanOrEqual(170)
    expect(english.filter(({ trap }) => trap).length).toBeGreaterThanOrEqual(40)
  })
  test.each(['de', 'fr', 'es', 'it', 'nl', 'pl', 'sv'])('holds at least fifteen cases in %s', (language) => {
    expect(all.filter(({ expect: e }) => e.language === language).length).toBeGreaterThanOrEqual(15)
  })
})

/** An invented person with a small wardrobe and three kept listings, to try things with: all marked "Sample", all removed in one press. */
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'
import { reckon } from '../../core/reckon.ts'
import { type Change, put, remove } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { all } from '../../core/records/find.ts'
import { verdictThen } from '../../core/records/kept.ts'
import { NEW_PERSON, setSettings } from '../../core/records/owned.ts'
import { readSaved } from '../../core/records/read-saved.ts'
import { listingRequest } from '../../core/records/request-for.ts'
import type { BodyMeasurement, GarmentOwned, Stamp, TableName } from '../../core/records/schemas.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'

/** What a sample's ids begin with: how it is known again. */
const MARK = 'sample-'
const CURRENCY = 'GBP'
/** What such a garment is worth to the sample person. */
const WORTH = 45
const NAME = 'Sample: Juniper'

const BODY: [BodyMeasureId, number, string][] = [
  ['waistbandGirth', 760, '76'],
  ['hipGirth', 990, '99'],
  ['bustGirth', 930, '93'],
  ['waistGirth', 730, '73'],
  ['shoulderWidth', 405, '40.5'],
  ['armLength', 580, '58'],
  ['insideLegLength', 770, '77']
]
const GARMENTS: { name: string; kind: GarmentKind; measures: [PointId, number, string][]; favourite: boolean }[] = [
  {
    name: 'Sample: grey Sunday trousers',
    kind: 'trousers',
    measures: [
      ['waist', 780, '39'],
      ['hip', 1050, '52.5'],
      ['thigh', 630, '31.5'],
      ['inseam', 745, '74.5']
    ],
    favourite: true
  },
  {
    name: 'Sample: blue work shirt',
    kind: 'shirt',
    measures: [
      ['chest', 1040, '52'],
      ['shoulderWidth', 430, '43'],
      ['sleeveLength', 590, '59']
    ],
    favourite: true
  }
]
const LISTINGS: { title: string; text: string; price: number }[] = [
  {
    title: 'Sample: bottle green wool trousers',
    text: 'Bottle green wool trousers. Laid flat: waist 42 cm, hip 53 cm, thigh 32 cm. Inside leg 80 cm. Hem 5 cm deep. £18.',
    price: 18
  },
  {
    title: 'Sample: cream cotton shirt',
    text: 'Cream cotton shirt. Pit to pit 21", shoulders 17", sleeve 24", waist across 20". £9.',
    price: 9
  },
  {
    title: 'Sample: brown checked jacket',
    text: 'Brown checked wool jacket, lined. Chest 50 cm flat, shoulder to shoulder 47 cm, sleeve 61 cm. £30.',
    price: 30
  }
]

export async function addSample(records: Records, stamp: () => Stamp, today: string): Promise<void> {
  const id = (): string => `${MARK}${stamp().newId()}`
  const person = await put(
    records,
    'people',
    { ...NEW_PERSON, name: NAME, currency: CURRENCY, means: { level: 3, tailor: false, hourWorth: 8 } },
    stamp(),
    id()
  )
  const personId = person.after.id
  const measures: BodyMeasurement[] = []
  for (const [measure, mm, stated] of BODY)
    measures.push((await put(records, 'bodyMeasurements', { personId, measure, mm, stated, takenOn: today }, stamp(), id())).after)
  const garments: GarmentOwned[] = []
  for (const { name, kind, measures, favourite } of GARMENTS) {
    const fields = { personId, name, kind, measures: measures.map(([point, mm, stated]) => ({ point, mm, stated })), notes: '', favourite }
    garments.push((await put(records, 'garmentsOwned', fields, stamp(), id())).after)
  }
  // what was just written, and not read again: the sample is one act of saving
  const wardrobe = { people: [person.after], measures, garments, settings: { theme: 'system' as const, personId } }
  for (const { title, text, price } of LISTINGS) {
    const told = toldBy(personId, title, text, price)
    const request = listingRequest(told, readSaved(told, 'cm'), wardrobe)
    const keptAt = stamp().now
    const then = request === null ? null : verdictThen(reckon(request), keptAt)
    const kept = { site: '', status: 'watching' as const, tags: ['sample'], keptAt, request, verdictThen: then }
    await put(records, 'listingsKept', { ...told, ...kept }, stamp(), id())
  }
  await setSettings(records, { personId }, stamp())
}

export const isSample = ({ id }: { id: string }): boolean => id.startsWith(MARK)

/** All that is marked as sample, gone, and what was entered for the sample person with it; the changes are for taking it back. */
export async function removeSample(records: Records, stamp: () => Stamp): Promise<(Change<TableName> | null)[]> {
  const gone: (Change<TableName> | null)[] = []
  for (const row of await all(records, 'looks'))
    if (row.keptId?.startsWith(MARK)) gone.push(await remove(records, 'looks', row.id, stamp()))
  for (const table of ['bodyMeasurements', 'garmentsOwned'] as const) {
    for (const row of await all(records, table))
      if (isSample(row) || row.personId.startsWith(MARK)) gone.push(await remove(records, table, row.id, stamp()))
  }
  for (const table of ['listingsKept', 'people'] as const) {
    for (const row of await all(records, table)) if (isSample(row)) gone.push(await remove(records, table, row.id, stamp()))
  }
  return gone
}

/** What a sample listing says, as if it had been pasted. */
const toldBy = (personId: string, title: string, text: string, price: number) => ({
  address: '',
  title,
  text,
  textCutFrom: null,
  structured: [],
  price: null,
  money: { price, postage: null, worth: WORTH },
  images: [],
  corrections: [],
  answers: [],
  notes: '',
  personId,
  fit: null,
  favouriteId: null,
  aim: null
})

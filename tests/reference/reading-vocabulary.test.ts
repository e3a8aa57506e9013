/** Measurement names accepted in structured data against schema-dts 2.1.0, the vocabulary of schema.org as types (tests only). */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { WEARABLE } from '../../core/reading/page-data/schema-measures.ts'
import { structuredOf } from '../../core/reading/page-data/structured.ts'

const types = readFileSync(join(dirname(createRequire(import.meta.url).resolve('schema-dts')), 'schema.d.ts'), 'utf8')
const declared = (type: string): string[] => {
  const line = new RegExp(`export type ${type} = (.*);`).exec(types)?.[1] ?? ''
  return [...new Set([...line.matchAll(/"(?:https:\/\/schema\.org\/)?([A-Za-z]+)"/g)].map(([, name]) => name as string))]
}
const wearable = declared('WearableMeasurementTypeEnumeration')
const body = declared('BodyMeasurementTypeEnumeration')

test('the vocabulary was found', () => {
  expect(wearable).toHaveLength(12)
  expect(body.length).toBeGreaterThan(10)
})
/** Shorter or other words for a name of the vocabulary, each beside the one it stands for. */
const SHORTER: Record<string, string> = {
  chest: 'chestorbust',
  bust: 'chestorbust',
  neck: 'collar',
  hip: 'hips',
  insideleg: 'inseam',
  outseam: 'outsideleg'
}

test('every name accepted is one of the vocabulary or stands for one, and every one of the vocabulary is known', () => {
  const names = wearable.map((name) => name.replace('WearableMeasurement', '').toLowerCase())
  expect(
    Object.keys(WEARABLE)
      .map((name) => SHORTER[name] ?? name)
      .filter((name) => !names.includes(name))
  ).toEqual([])
  expect(names.filter((name) => WEARABLE[name] === undefined)).toEqual([])
})

const lines = (valueReference: string, unit: object = { unitCode: 'CMT' }) =>
  structuredOf([{ '@type': 'Product', hasMeasurement: [{ '@type': 'QuantitativeValue', valueReference, value: 50, ...unit }] }], undefined)
    .lines

test.each(wearable)('%s', (name) => {
  const word = WEARABLE[name.replace('WearableMeasurement', '').toLowerCase()]
  const expected = word === null ? [] : [`${word}: 50 cm`]
  expect(lines(name)).toEqual(expected)
  expect(lines(`https://schema.org/${name}`)).toEqual(expected)
})
test.each(body)('%s is of the body', (name) => {
  for (const line of lines(name)) expect(line).toMatch(/^To fit /)
})

/** UN/CEFACT Recommendation 20, common codes: CMT centimetre, INH inch, MMT millimetre, MTR metre. */
test.each([
  ['CMT', '50 cm'],
  ['INH', '50 inches'],
  ['MMT', '50 mm'],
  ['MTR', '50 m']
])('unit code %s', (unitCode, figure) => {
  expect(lines('WearableMeasurementWaist', { unitCode })).toEqual([`waist: ${figure}`])
})
test('properties of the vocabulary under which measurements are looked for', () => {
  for (const property of [
    'hasMeasurement',
    'suggestedMeasurement',
    'valueReference',
    'unitCode',
    'unitText',
    'minValue',
    'maxValue',
    'additionalProperty'
  ])
    expect(types, property).toContain(`"${property}"?:`)
})

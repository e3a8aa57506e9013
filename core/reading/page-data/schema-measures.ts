/**
 * Measurements in structured data as lines that read like a seller's: schema.org's hasMeasurement is the garment, suggestedMeasurement
 * the body it is for. Names of WearableMeasurementTypeEnumeration and shorter ones; units of UN/CEFACT Recommendation 20 or in words.
 */
import { table } from '../../ids/table.ts'
import { amountOf } from './amount.ts'
import { isJsonNode, type JsonNode, lastName, listed, propertyOf, wordsIn } from './json-node.ts'

/** The vocabulary's names as words of the trade; null: nothing that is altered for fit (a cup, a heel, whatever a back is). */
export const WEARABLE = table<string | null>({
  back: null,
  chestorbust: 'chest',
  chest: 'chest',
  bust: 'bust',
  collar: 'collar size',
  neck: 'neck',
  cup: null,
  height: null,
  hips: 'hips',
  hip: 'hips',
  inseam: 'inseam',
  insideleg: 'inseam',
  length: 'length',
  outsideleg: 'outside leg',
  outseam: 'outside leg',
  sleeve: 'sleeve length',
  waist: 'waist',
  width: 'width'
})
/** UN/CEFACT codes and the words that stand in their place. */
const UNITS = table<string>({
  cmt: 'cm',
  cm: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  inh: 'inches',
  in: 'inches',
  inch: 'inches',
  inches: 'inches',
  '"': 'inches',
  '″': 'inches',
  mmt: 'mm',
  mm: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  mtr: 'm',
  m: 'm'
})
const MOST = 60
const LONGEST_NAME = 60

interface MeasureName {
  /** In words; null: named, and no measure of fit. */
  name: string | null
  body: boolean
}

/** What is measured: the type it refers to, else its own name. */
function nameOf(measure: JsonNode): MeasureName | null {
  for (const key of ['valueReference', 'measurementType', 'additionalType', 'propertyID', 'name', 'description', '@type']) {
    for (const value of listed(propertyOf(measure, key))) {
      const words =
        typeof value === 'string'
          ? value
          : wordsIn(isJsonNode(value) ? (propertyOf(value, 'name') ?? propertyOf(value, 'value') ?? value['@id']) : value)
      if (words === null || words.length > 200) continue
      const name = /^https?:|^schema:/i.test(words) ? lastName(words) : words.trim()
      const typed = /^(wearable|body)?measurement(?:type)?(.+)$/i.exec(name.replace(/[\s_-]+/g, ''))
      const short = (typed?.[2] ?? name).toLowerCase().replace(/[^a-z]/g, '')
      const known = WEARABLE[short]
      if (typed) return { name: known ?? (typed[1]?.toLowerCase() === 'body' ? short : null), body: typed[1]?.toLowerCase() === 'body' }
      if (key === '@type') continue
      if (known !== undefined) return { name: known, body: false }
      if (key === 'name' && name.length <= LONGEST_NAME && /^\p{L}/u.test(name)) return { name, body: false }
    }
  }
  return null
}

/** “76 cm”, “76-80 cm”, as written where it is text. */
function figureOf(measure: JsonNode): string | null {
  const units = listed(propertyOf(measure, 'unitCode')).concat(listed(propertyOf(measure, 'unitText')))
  const unit = units
    .map((one) => (typeof one === 'string' ? UNITS[lastName(one.trim()).toLowerCase()] : undefined))
    .find((one) => one !== undefined)
  // a unit that is no length: 900 grams
  if (unit === undefined && units.some((one) => typeof one === 'string' && one.trim() !== '')) return null
  const text = (value: unknown): string | null =>
    typeof value === 'number'
      ? amountOf(value) === null
        ? null
        : String(value)
      : typeof value === 'string' && /\d/.test(value)
        ? value.trim()
        : null
  const value = propertyOf(measure, 'value')
  const range = isJsonNode(value) ? value : measure
  const [low, high] = [text(propertyOf(range, 'minValue')), text(propertyOf(range, 'maxValue'))]
  const figure = isJsonNode(value) ? text(propertyOf(value, 'value')) : text(value)
  const shown = figure ?? (low !== null && high !== null && low !== high ? `${low}-${high}` : (low ?? high))
  if (shown === null || shown.length > 40) return null
  return unit === undefined || /[a-z"″”]/i.test(shown) ? shown : `${shown} ${unit}`
}

/** One line a measurement of the garment. */
export function measureLines(values: unknown, body = false): string[] {
  const lines: string[] = []
  for (const one of listed(values).slice(0, MOST)) {
    if (typeof one === 'string' && !body && one.length <= 200 && /\d/.test(one) && !/[\n<>]/.test(one)) lines.push(one.trim())
    if (!isJsonNode(one)) continue
    const name = nameOf(one)
    const figure = figureOf(one)
    if (name === null || name.name === null || figure === null) continue
    lines.push(body || name.body ? `To fit ${name.name} ${figure}` : `${name.name}: ${figure}`)
  }
  return lines
}

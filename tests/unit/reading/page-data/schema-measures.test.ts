/** Measurements, amounts and words in structured data. */
import { describe, expect, test } from 'vitest'
import { amountOf } from '../../../../core/reading/page-data/amount.ts'
import { jsonBlock } from '../../../../core/reading/page-data/json-block.ts'
import { lastName, listed, propertyOf, typesOf, wordsIn } from '../../../../core/reading/page-data/json-node.ts'
import { measureLines } from '../../../../core/reading/page-data/schema-measures.ts'

const line = (measure: unknown, body = false) => measureLines([measure], body)[0] ?? null

describe('what is measured', () => {
  test.each([
    [{ name: 'Waist', value: '76 cm' }, 'waist: 76 cm'],
    [{ measurementType: 'https://schema.org/WearableMeasurementWaist', value: '76 cm' }, 'waist: 76 cm'],
    [{ measurementType: 'schema:WearableMeasurementInseam', value: '76 cm' }, 'inseam: 76 cm'],
    [{ '@type': 'WearableMeasurementTypeWaist', value: '76 cm' }, 'waist: 76 cm'],
    [{ measurementType: 'BodyMeasurementWaist', value: '76 cm' }, 'To fit waist 76 cm'],
    [{ measurementType: { name: 'Waist' }, value: '76 cm' }, 'waist: 76 cm'],
    // in its own words
    [{ name: 'Back width', value: '40 cm' }, 'Back width: 40 cm'],
    [{ description: 'Back width', value: '40 cm' }, null],
    [{ name: '2 of them', value: '40 cm' }, null],
    [{ name: `W${'x'.repeat(60)}`, value: '40 cm' }, null],
    // no measure of fit
    [{ measurementType: 'WearableMeasurementCup', value: '76 cm' }, null],
    [{ name: 'Height', value: '76 cm' }, null],
    [{ '@type': 'QuantitativeValue', value: '76 cm' }, null],
    ['waist 76 cm', 'waist 76 cm'],
    ['waist', null],
    ['waist 76 <b>', null]
  ])('%j: %s', (measure, expected) => expect(line(measure)).toBe(expected))
  test('all that a body has is whom it fits', () => {
    expect(line({ name: 'Waist', value: '76 cm' }, true)).toBe('To fit waist 76 cm')
    expect(line('waist 76 cm', true)).toBeNull()
  })
})

describe('where its name stands', () => {
  const KEYS = ['valueReference', 'measurementType', 'additionalType', 'propertyID', 'name', 'description'] as const
  test.each(KEYS)('%s', (key) => expect(line({ [key]: 'Waist', value: '76 cm' })).toBe('waist: 76 cm'))
  test('the first of them leads, and one that tells nothing gives way', () => {
    KEYS.slice(1).forEach((key, at) => {
      expect(line({ [key]: 'Hips', [KEYS[at] as string]: 'Waist', value: '76 cm' })).toBe('waist: 76 cm')
      expect(line({ [key]: 'Hips', [KEYS[at] as string]: '12345', value: '76 cm' })).toBe('hips: 76 cm')
    })
  })
  test('a type tells only a name of the vocabulary', () => {
    expect(line({ '@type': 'WearableMeasurementWaist', value: '76 cm' })).toBe('waist: 76 cm')
    expect(line({ '@type': 'Waist', value: '76 cm' })).toBeNull()
    expect(line({ '@type': 'BodyMeasurementWaist', description: 'Hips', value: '76 cm' })).toBe('hips: 76 cm')
  })
  test.each([
    [{ value: 'Waist' }, 'waist: 76 cm'],
    [{ '@id': 'https://schema.org/WearableMeasurementWaist' }, 'waist: 76 cm'],
    [{ name: 'Hips', value: 'Waist' }, 'hips: 76 cm'],
    [['12345', 'Waist'], 'waist: 76 cm'],
    [`${'x'.repeat(195)}waist`, null],
    ['Wearable Measurement Waist', 'waist: 76 cm'],
    ['wearable-measurement-type_waist', 'waist: 76 cm'],
    ['measurementWaist', 'waist: 76 cm'],
    ['Body Measurement Waist', 'To fit waist 76 cm'],
    // of a body every place is one, of a garment those that fit
    ['BodyMeasurementUnderbust', 'To fit underbust 76 cm'],
    ['WearableMeasurementBack', null],
    ['WearableMeasurementUnderbust', null]
  ])('of %j: %s', (valueReference, expected) => expect(line({ valueReference, value: '76 cm' })).toBe(expected))
  test.each([
    ['Bust', 'bust'],
    ['ChestOrBust', 'chest'],
    ['Collar', 'collar size'],
    ['Neck', 'neck'],
    ['Hip', 'hips'],
    ['InsideLeg', 'inseam'],
    ['Length', 'length'],
    ['OutsideLeg', 'outside leg'],
    ['Outseam', 'outside leg'],
    ['Sleeve', 'sleeve length'],
    ['Width', 'width']
  ])('%s is the %s', (name, expected) => expect(line({ measurementType: name, value: '76 cm' })).toBe(`${expected}: 76 cm`))
  test('a name of sixty letters', () => {
    expect(line({ name: `W${'x'.repeat(59)}`, value: '40 cm' })).toBe(`W${'x'.repeat(59)}: 40 cm`)
  })
})

describe('in a line of its own', () => {
  test.each([
    [' waist 76 cm ', 'waist 76 cm'],
    ['waist\n76 cm', null],
    ['76 > waist', null],
    [`${'x'.repeat(198)}76`, `${'x'.repeat(198)}76`],
    [`${'x'.repeat(199)}76`, null],
    [76, null],
    [null, null]
  ])('%j: %j', (measure, expected) => expect(line(measure)).toBe(expected))
})

describe('how much it measures', () => {
  test.each([
    [{ value: 76, unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ value: 30, unitCode: 'INH' }, 'waist: 30 inches'],
    [{ value: 760, unitText: 'mm' }, 'waist: 760 mm'],
    [{ value: 76, unitCode: 'https://schema.org/CMT' }, 'waist: 76 cm'],
    [{ value: 76 }, 'waist: 76'],
    [{ value: '76 in', unitCode: 'CMT' }, 'waist: 76 in'],
    [{ value: { value: 76 }, unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ minValue: 76, maxValue: 80, unitCode: 'CMT' }, 'waist: 76-80 cm'],
    [{ value: { minValue: 76, maxValue: 80 }, unitCode: 'CMT' }, 'waist: 76-80 cm'],
    [{ minValue: 76, maxValue: 76, unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ minValue: 76, unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ maxValue: 80, unitCode: 'CMT' }, 'waist: 80 cm'],
    ...(
      [
        ['cm', 'cm'],
        ['centimeter', 'cm'],
        ['centimeters', 'cm'],
        ['centimetre', 'cm'],
        ['Centimetres', 'cm'],
        ['in', 'inches'],
        ['inch', 'inches'],
        ['inches', 'inches'],
        ['"', 'inches'],
        ['″', 'inches'],
        ['MMT', 'mm'],
        ['millimeter', 'mm'],
        ['millimeters', 'mm'],
        ['millimetre', 'mm'],
        ['millimetres', 'mm'],
        ['MTR', 'm'],
        [' m ', 'm']
      ] as const
    ).map(([unitText, unit]): [object, string] => [{ value: 76, unitText }, `waist: 76 ${unit}`]),
    [{ value: 76, unitCode: 'XYZ', unitText: 'cm' }, 'waist: 76 cm'],
    [{ value: 76, unitCode: 'CMT', unitText: 'in' }, 'waist: 76 cm'],
    [{ value: 76, unitCode: 5 }, 'waist: 76'],
    [{ value: '30″', unitCode: 'INH' }, 'waist: 30″'],
    [{ value: ' 76 ', unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ value: 76, minValue: 70, maxValue: 80, unitCode: 'CMT' }, 'waist: 76 cm'],
    [{ value: { value: 'wide', maxValue: 80 }, unitCode: 'CMT' }, 'waist: 80 cm'],
    [{ value: -76, unitCode: 'CMT' }, null],
    [{ value: `7${'6'.repeat(39)}` }, `waist: 7${'6'.repeat(39)}`],
    // a unit that is no length, no figure
    [{ value: 900, unitCode: 'GRM' }, null],
    [{ value: 76, unitText: ' ' }, 'waist: 76'],
    [{ value: 0, unitCode: 'CMT' }, null],
    [{ value: 'wide' }, null],
    [{ value: `7${'6'.repeat(40)}` }, null],
    [{}, null]
  ])('%j: %s', (measure, expected) => expect(line({ name: 'Waist', ...measure })).toBe(expected))
  test('sixty of them at most', () => {
    const many = Array.from({ length: 61 }, (_, at) => ({ name: 'Waist', value: at + 1 }))
    expect(measureLines(many)).toHaveLength(60)
  })
})

test.each([
  ['1.250,00', 1250],
  ['1,250', 1250],
  ['12,5', 12.5],
  ['£ 12.50', 12.5],
  [12, 12],
  [0, null],
  [Number.NaN, null],
  ['', null],
  ['free', null],
  ['0', null],
  [`1${' '.repeat(39)}`, 1],
  [`1${' '.repeat(40)}`, null],
  [null, null]
])('an amount of %j: %s', (value, expected) => expect(amountOf(value)).toBe(expected))

test.each<[string, unknown]>([
  ['{"a":1}', { a: 1 }],
  [' <!-- {"a":1} --> ', { a: 1 }],
  ['<![CDATA[{"a":1}]]>', { a: 1 }],
  ['//<![CDATA[\n{"a":1}\n//]]>', { a: 1 }],
  ['/*<![CDATA[*/{"a":1}/*]]>*/', { a: 1 }],
  // line breaks and tabs inside a text, and only there
  ['{"a":"b\nc\td"}', { a: 'b\nc\td' }],
  ['{"a":\n"b\nc"}', { a: 'b\nc' }],
  ['{"a":"b\\"\nc"}', { a: 'b"\nc' }],
  ['{"a":"b\u0001c"}', { a: 'b c' }],
  ['<!-- {"a":1}', undefined],
  ['{"a":', undefined]
])('the block %j', (block, expected) => expect(jsonBlock(block)).toEqual(expected))

describe('nodes', () => {
  test.each<[unknown, string | null]>([
    [' wool ', 'wool'],
    [' ', null],
    [4, '4'],
    [Number.POSITIVE_INFINITY, null],
    [['wool', '', 'silk'], 'wool, silk'],
    [[], null],
    [{ name: 'wool' }, 'wool'],
    [{ 'schema:name': 'wool' }, 'wool'],
    [{ '@value': 'wool' }, 'wool'],
    [{ '@id': '#wool' }, '#wool'],
    [{ name: 'silk', '@id': '#wool' }, 'silk'],
    [{ name: { name: { name: { name: 'wool' } } } }, 'wool'],
    [{ name: { name: { name: { name: { name: 'wool' } } } } }, null],
    [true, null]
  ])('the words of %j: %j', (value, expected) => expect(wordsIn(value)).toBe(expected))
  test('lists, in whatever form', () => {
    expect([undefined, 'a', ['a', ['b']], { '@list': ['a'] }].map(listed)).toEqual([[], ['a'], ['a', 'b'], ['a']])
  })
  test('a name of the vocabulary with its address, and without', () => {
    for (const prefix of ['', 'schema:', 'https://schema.org/', 'http://schema.org/'])
      expect(propertyOf({ [`${prefix}color`]: 'red' }, 'color')).toBe('red')
    expect(propertyOf({ color: null, 'schema:color': 'red' }, 'color')).toBe('red')
    expect(propertyOf({ 'other:color': 'red' }, 'color')).toBeUndefined()
    expect(lastName('https://schema.org/Product//')).toBe('Product')
  })
  test('types in small letters, without their address', () => {
    expect(typesOf({ '@type': ['https://schema.org/Product', 'schema:Coat'] })).toEqual(['product', 'coat'])
    expect(typesOf({ type: 'Product', 'rdf:type': 4 })).toEqual(['product'])
    expect(['https://schema.org/Product', 'a#Product/', 'Product'].map(lastName)).toEqual(['Product', 'Product', 'Product'])
  })
})

import { describe, expect, test } from 'vitest'
import { MAIN_PLACES, MORE_PLACES } from '../../../components/workroom/body/body-places.ts'
import { doubtsOf } from '../../../components/workroom/body/doubts.ts'
import { moneyTyped, typedDate, typedLength, typedMoney } from '../../../components/workroom/typed.ts'
import { measuresFrom, pointsAsked, typedOf } from '../../../components/workroom/wardrobe/garment-typed.ts'
import { BODY_MEASURES, type BodyMeasureId } from '../../../core/wearer/body.ts'
import { hasMessage } from '../../../core/words/say.ts'

describe('a length as typed', () => {
  test.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['1/0', 'divided-by-zero'],
    ['3..5', 'not-a-number'],
    ['-4', 'negative'],
    ['0', 'zero'],
    ['9 m', 'not-a-number'],
    ['900 cm', 'too-large'],
    ['<b>12</b>', 'not-a-number'],
    ['9'.repeat(5000), 'not-a-number']
  ])('"%s" is told as %s, and has its sentence', (typed, problem) => {
    expect(typedLength(typed, 'cm')).toEqual({ ok: false, problem: `workroom.length.${problem}` })
    expect(hasMessage(`workroom.length.${problem}`)).toBe(true)
  })
  test('a bare 12 takes the unit of the page; a named unit goes before it', () => {
    expect(typedLength('12', 'in')).toEqual({ ok: true, value: 12 * 25.4 })
    expect(typedLength('12', 'cm')).toEqual({ ok: true, value: 120 })
    expect(typedLength('28 3/4 in', 'cm')).toEqual({ ok: true, value: 28.75 * 25.4 })
  })
})

describe('money as typed', () => {
  test.each([
    ['', null],
    ['24', 24],
    ['24.50', 24.5],
    ['24,5', 24.5],
    ['1 200', 1200]
  ])('"%s" is %s', (typed, value) => {
    expect(typedMoney(typed)).toEqual({ ok: true, value })
  })
  test.each([
    ['-3', 'negative'],
    ['£3', 'not-a-number'],
    ['3..5', 'not-a-number'],
    ['1e9', 'not-a-number'],
    ['99999999', 'too-large']
  ])('"%s" is told as %s, and has its sentence', (typed, problem) => {
    expect(typedMoney(typed)).toEqual({ ok: false, problem: `workroom.money.${problem}` })
    expect(hasMessage(`workroom.money.${problem}`)).toBe(true)
  })
  test('an amount stands in its field as it is read back', () => {
    expect([null, 24, 24.5].map(moneyTyped)).toEqual(['', '24', '24.50'])
  })
})

test('a day exists, and is not to come', () => {
  const today = '2026-03-01'
  expect(typedDate('2026-03-01', today)).toEqual({ ok: true, value: '2026-03-01' })
  expect(typedDate('2026-02-29', today)).toEqual({ ok: false, problem: 'workroom.date.not-a-date' })
  expect(typedDate('1 March', today)).toEqual({ ok: false, problem: 'workroom.date.not-a-date' })
  expect(typedDate('2026-03-02', today)).toEqual({ ok: false, problem: 'workroom.date.to-come' })
})

describe('doubts about a body', () => {
  const body = (figures: Partial<Record<BodyMeasureId, number>>) => new Map(Object.entries(figures) as [BodyMeasureId, number][])
  test('28 typed as centimetres for a waist may have been inches', () => {
    expect(doubtsOf('waistGirth', body({ waistGirth: 280 }), 'cm').map(({ code }) => code)).toEqual(['body.doubt.unit-in'])
  })
  test('73 typed as inches may have been centimetres', () => {
    expect(doubtsOf('waistGirth', body({ waistGirth: 73 * 25.4 }), 'in').map(({ code }) => code)).toEqual(['body.doubt.unit-cm'])
  })
  test('a figure that no unit explains is asked about, and a usual one is not', () => {
    expect(doubtsOf('neckGirth', body({ neckGirth: 1000 }), 'cm').map(({ code }) => code)).toEqual(['body.doubt.unusual'])
    expect(doubtsOf('neckGirth', body({ neckGirth: 380 }), 'cm')).toEqual([])
  })
  test('two figures that contradict each other are both asked about', () => {
    const both = body({ thighGirth: 900, hipGirth: 850, waistGirth: 700 })
    expect(doubtsOf('thighGirth', both, 'cm')).toEqual([
      { code: 'body.doubt.larger', values: { smaller: 'thighGirth', larger: 'hipGirth' } }
    ])
    expect(doubtsOf('hipGirth', both, 'cm').map(({ code }) => code)).toEqual(['body.doubt.larger'])
    expect(doubtsOf('waistGirth', both, 'cm')).toEqual([])
  })
})

test('every body measure has one numbered place, its words and its way', () => {
  const places = [...MAIN_PLACES, ...MORE_PLACES]
  expect(places.map(({ measure }) => measure).toSorted()).toEqual([...BODY_MEASURES].toSorted())
  expect(places.map(({ number }) => number)).toEqual(places.map((_, i) => i + 1))
  for (const { measure } of places) for (const kind of ['how', 'for']) expect(hasMessage(`body.${kind}.${measure}`), measure).toBe(true)
})

describe('a garment as typed', () => {
  test('a flat girth is doubled, a length and a girth around are not, an empty field is left out', () => {
    const { measures, problems } = measuresFrom(
      {
        waist: { text: '39', laid: 'flat' },
        hip: { text: '104', laid: 'around' },
        inseam: { text: '78', laid: 'flat' },
        thigh: { text: ' ', laid: 'flat' }
      },
      'cm'
    )
    expect(problems).toEqual({})
    expect(measures).toEqual([
      { point: 'waist', mm: 780, stated: '39 cm flat' },
      { point: 'hip', mm: 1040, stated: '104 cm' },
      { point: 'inseam', mm: 780, stated: '78 cm' }
    ])
  })
  test('what was typed comes back as typed, and means the same in the other units', () => {
    const first = measuresFrom({ waist: { text: '15 1/2', laid: 'flat' }, inseam: { text: '78 cm', laid: 'around' } }, 'in')
    const again = typedOf(first.measures)
    expect(again).toEqual({ waist: { text: '15 1/2 in', laid: 'flat' }, inseam: { text: '78 cm', laid: 'around' } })
    expect(measuresFrom(again, 'cm').measures).toEqual(first.measures)
  })
  test('a bad figure is a problem of its own point, and the others are taken', () => {
    const { measures, problems } = measuresFrom(
      { waist: { text: '3..5', laid: 'flat' }, hip: { text: '300', laid: 'flat' }, thigh: { text: '30', laid: 'flat' } },
      'cm'
    )
    expect(problems).toEqual({ waist: 'workroom.length.not-a-number', hip: 'workroom.length.too-large' })
    expect(measures.map(({ point }) => point)).toEqual(['thigh'])
  })
  test('a point that the kind does not have is asked for as long as something stands in it', () => {
    expect(pointsAsked('skirt', {})).not.toContain('inseam')
    expect(pointsAsked('skirt', { inseam: { text: '78', laid: 'flat' } })).toContain('inseam')
  })
})

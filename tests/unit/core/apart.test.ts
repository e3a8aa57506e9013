/** What never goes together in one plan, worked out from rows made by hand; and the small questions that rows ask of a cut. */
import { describe, expect, it } from 'vitest'
import { apart, keyOf } from '../../../core/alterations/apart.ts'
import {
  closedBy,
  hasSetInSleeves,
  hasShoulderSeam,
  isBoned,
  isKnitted,
  isLayered,
  isPleated,
  isRibbed,
  isWrapped,
  isZipped,
  linedAlong,
  liningMinutes
} from '../../../core/alterations/as-cut.ts'
import { letOutHolds, slopeBetween } from '../../../core/alterations/geometry.ts'
import { letOut } from '../../../core/alterations/let-out.ts'
import { type Effects, type Line, perOffsetOf, type Row } from '../../../core/alterations/row.ts'
import { type Garment, garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import { line } from './plan/options.ts'

describe('what never goes together', () => {
  const less = (id: Row['id'], more: Partial<Row> = {}): Row =>
    ({ id, direction: 'less', kinds: ['trousers'], lines: () => [], level: 2, minutes: [10, 0], source: '', ...more }) as Row
  const more = (id: Row['id'], its: Partial<Row> = {}): Row => less(id, { direction: 'more', ...its })
  const together = (...rows: [Row, ...Effects[]][]) =>
    apart(
      rows.map(([row]) => row),
      rows.map(([, ...effects]) => effects.map((one): Line => line(one, 40)))
    )
  const [IN, OUT] = ['waist-in-centre-back', 'waist-out-centre-back'] as const

  it('two that move one point opposite ways', () => {
    expect(together([less(IN), { waist: -1 }], [more(OUT), { waist: 1 }])).toEqual([[OUT], [IN]])
  })
  it('not two that move it the same way, or move other points', () => {
    expect(together([less(IN), { waist: -1 }], [less('waist-in-side-seams'), { waist: -1 }])).toEqual([[], []])
    expect(together([less(IN), { waist: -1 }], [more(OUT), { hip: 1 }])).toEqual([[], []])
    expect(together([less(IN), {}], [more(OUT), {}])).toEqual([[], []])
  })
  it('a point that comes along counts where it comes by nine tenths of the amount', () => {
    expect(together([less(IN), { waist: -1, hip: -0.9 }], [more(OUT), { hip: 1 }])).toEqual([[OUT], [IN]])
    expect(together([less(IN), { waist: -1, hip: -0.89 }], [more(OUT), { hip: 1 }])).toEqual([[], []])
    // what goes against the amount is a by-effect
    expect(together([less(IN), { waist: -1, hip: 1 }], [more(OUT), { hip: 1 }])).toEqual([[], []])
  })
  it('one with several amounts may leave a point alone: only where they have more than one in common', () => {
    const sides: [Row, Effects, Effects] = [more('waist-out-side-seams'), { waist: 1 }, { hip: 1 }]
    expect(together([less(IN), { waist: -1 }], sides)).toEqual([[], []])
    expect(together(sides, [less(IN), { waist: -1 }])).toEqual([[], []])
    expect(together([less(IN), { waist: -1, hip: -1 }], sides)).toEqual([['waist-out-side-seams'], [IN]])
    expect(together([less(IN), { waist: -1 }, { hip: -1 }], sides)).toEqual([['waist-out-side-seams'], [IN]])
  })
  it('ways to the same end, whichever way they go, and never two of one id', () => {
    const [plain, hem] = [less('leg-shorten-plain', { oneOf: 'leg-length' }), less('leg-shorten-blind', { oneOf: 'leg-length' })]
    expect(together([plain, { inseam: -1 }], [hem, { inseam: -1 }])).toEqual([['leg-shorten-blind'], ['leg-shorten-plain']])
    expect(together([plain, { inseam: -1 }], [{ ...hem, oneOf: 'skirt-length' }, { inseam: -1 }])).toEqual([[], []])
    expect(together([plain, { inseam: -1 }], [less(IN), { waist: -1 }])).toEqual([[], []])
    expect(together([less(IN), { waist: -1 }], [more(IN), { waist: 1 }])).toEqual([[], []])
  })
  it('what goes both ways is named by the other alone, unless that does too', () => {
    const both: [Row, ...Effects[]][] = [
      [less('leg-taper'), { knee: -1 }],
      [more('leg-taper'), { knee: 1 }]
    ]
    const out: [Row, Effects] = [more(OUT), { knee: 1 }]
    expect(together(...both, out)).toEqual([[OUT], [], []])
    expect(together(out, ...both)).toEqual([[], [OUT], []])
    const others: [Row, ...Effects[]][] = [
      [less('cuff-in'), { knee: -1 }],
      [more('cuff-in'), { knee: 1 }]
    ]
    expect(together(...both, ...others)).toEqual([['cuff-in'], ['cuff-in'], ['leg-taper'], ['leg-taper']])
    expect(
      together([less('leg-taper', { oneOf: 'cuff' }), { knee: -1 }], [more('leg-taper'), {}], [less(IN, { oneOf: 'cuff' }), { knee: -1 }])
    ).toEqual([[IN], [], ['leg-taper']])
  })
  it('what a row names itself stands first, once', () => {
    expect(together([less(IN, { excludes: ['leg-taper', OUT] }), { waist: -1 }], [more(OUT), { waist: 1 }])).toEqual([
      ['leg-taper', OUT],
      [IN]
    ])
  })
  it('is known by id and direction', () => expect(keyOf({ id: 'leg-taper', direction: 'more' })).toBe('leg-taper/more'))
})

describe('of a cut', () => {
  const worn = (kind: GarmentInput['kind'], cut: GarmentInput['cut'] = {}, more: Partial<GarmentInput> = {}) =>
    garmentAsWorn({ kind, measures: [], cut: cut ?? {}, ...more })
  const rows: [string, (garment: Garment) => boolean, Garment, boolean][] = [
    ['boned', isBoned, worn('dress', { boning: 'boned' }), true],
    ['boned', isBoned, worn('dress'), false],
    ['of several layers', isLayered, worn('dress', { layers: 'several' }), true],
    ['of several layers', isLayered, worn('dress'), false],
    ['a kilt, pleated', isPleated, worn('skirt', { silhouette: 'kilt' }), true],
    ['a pleated skirt, pleated', isPleated, worn('skirt', { silhouette: 'pleated' }), true],
    ['told as pleated, pleated', isPleated, worn('skirt', {}, { made: { skirtShape: 'pleated' } }), true],
    ['told as straight, pleated', isPleated, worn('skirt', {}, { made: { skirtShape: 'straight' } }), false],
    ['of heat-set cloth, pleated', isPleated, worn('skirt', {}, { cloth: { traits: ['pleated'] } }), true],
    ['wrapped by its silhouette', isWrapped, worn('dress', { silhouette: 'wrap' }), true],
    ['wrapped by how it closes', isWrapped, worn('skirt', { closing: 'wrap' }), true],
    ['wrapped', isWrapped, worn('skirt', { closing: 'buttons' }), false],
    ['a jumper, knitted', isKnitted, worn('jumper'), true],
    ['a felted jumper, knitted', isKnitted, worn('jumper', { knit: 'felted' }), false],
    ['a sweatshirt, knitted', isKnitted, worn('jumper', { knit: 'sweatshirt' }), false],
    ['a tee, knitted', isKnitted, worn('jumper', { knit: 'tee' }), false],
    ['a knit top, knitted', isKnitted, worn('knit-top'), false],
    ...(['ribbed', 'fine', 'standard', 'chunky', 'slipover'] as const).map(
      (knit): [string, (garment: Garment) => boolean, Garment, boolean] => [
        `a ${knit} knit top, knitted`,
        isKnitted,
        worn('knit-top', { knit }),
        true
      ]
    ),
    ['a tee, knitted', isKnitted, worn('knit-top', { knit: 'tee' }), false],
    ['a sweatshirt, edged with ribs', isRibbed, worn('jumper', { knit: 'sweatshirt' }), true],
    ['a jumper, edged with ribs', isRibbed, worn('jumper'), true],
    ['a tee, edged with ribs', isRibbed, worn('knit-top', { knit: 'tee' }), false],
    ['a shirt, with sleeves set in', hasSetInSleeves, worn('shirt'), true],
    ['a waistcoat, with sleeves set in', hasSetInSleeves, worn('waistcoat'), false],
    ['sleeveless, with sleeves set in', hasSetInSleeves, worn('dress', { sleeve: 'sleeveless' }), false],
    ['a raglan, with sleeves set in', hasSetInSleeves, worn('coat', { shoulder: 'raglan' }), false],
    ...(['strapless', 'camisole', 'sun', 'dungarees'] as const).map(
      (silhouette): [string, (garment: Garment) => boolean, Garment, boolean] => [
        `${silhouette}, with sleeves set in`,
        hasSetInSleeves,
        worn(silhouette === 'dungarees' ? 'jumpsuit' : 'dress', { silhouette }),
        false
      ]
    ),
    ['a coat, with a shoulder seam', hasShoulderSeam, worn('coat'), true],
    ...(['raglan', 'dolman', 'kimono', 'halter'] as const).map((shoulder): [string, (garment: Garment) => boolean, Garment, boolean] => [
      `${shoulder}, with a shoulder seam`,
      hasShoulderSeam,
      worn(shoulder === 'halter' ? 'dress' : 'coat', { shoulder }),
      false
    ]),
    ['closed by a zip in front, zipped', isZipped, worn('jacket', { closing: 'front-zip' }), true],
    ...(['biker', 'bomber', 'fleece', 'puffer', 'waxed'] as const).map(
      (layer): [string, (garment: Garment) => boolean, Garment, boolean] => [
        `a ${layer}, zipped`,
        isZipped,
        worn('jacket', { layer }),
        true
      ]
    ),
    ['a bomber with buttons, zipped', isZipped, worn('jacket', { layer: 'bomber', closing: 'buttons' }), false],
    ['a blazer, zipped', isZipped, worn('jacket', { layer: 'blazer' }), false],
    ['closed by buttons, so', (garment) => closedBy(garment, 'front-zip', 'buttons'), worn('jacket', { closing: 'buttons' }), true],
    ['closed by buttons, otherwise', (garment) => closedBy(garment, 'front-zip'), worn('jacket', { closing: 'buttons' }), false]
  ]
  it.each(rows)('%s (row %#)', (_, is, garment, answer) => expect(is(garment)).toBe(answer))

  it('a lining taken along takes longer and is a level harder, to level 4', () => {
    const minutes = (kind: GarmentInput['kind'], lined: boolean) => liningMinutes(worn(kind, {}, { made: { lined } }))
    expect([
      minutes('dress', true),
      minutes('jumpsuit', true),
      minutes('jacket', true),
      minutes('coat', true),
      minutes('skirt', true)
    ]).toEqual([30, 30, 40, 40, 20])
    expect(minutes('dress', false)).toBe(0)
    const level = (its: number, lined: boolean) => linedAlong(its, worn('skirt', {}, { made: { lined } }))
    expect([level(2, true), level(3, true), level(4, true), level(5, true), level(2, false)]).toEqual([3, 4, 4, 5, 2])
  })
})

describe('what seams hold', () => {
  it('twice what lies beyond what stays, a seam', () => {
    expect(letOutHolds(25, 10, 1)).toBe(30)
    expect(letOutHolds(12, 10, 2)).toBe(8)
    expect(letOutHolds(8, 10, 2)).toBe(0)
  })
  it('by the allowance of that seam: ten stay of it, three at the least', () => {
    const garment = garmentAsWorn({ kind: 'trousers', measures: [], made: { seamAllowanceMm: { side: 15 } } })
    expect(letOut(garment, 'side', 2)).toEqual({
      capMm: 20,
      physicalMm: 48,
      because: { code: 'limit.allowance', values: { allowance: 15, keep: 10, seam: 'side' } }
    })
  })
  it('a slope over no length is none', () => {
    expect(slopeBetween(600, 400, 100)).toBe(-2)
    expect(slopeBetween(600, 400, 0)).toBe(0)
  })
  it('twice as many lines past a bound move half as far', () => {
    const move = { seam: 'side' as const, mmPerOffset: 2 }
    expect(perOffsetOf(move, 90)).toBe(2)
    expect(perOffsetOf({ ...move, twicePastMm: 60 }, 60)).toBe(2)
    expect(perOffsetOf({ ...move, twicePastMm: 60 }, 61)).toBe(4)
  })
})

/**
 * Untold points of a garment against published tables of finished garments: told the size's own girth (waist of legs, chest above), how often does the
 * 50 % and the 90 % interval of each other point hold it? The tables are among the sources that the rows of the model were fitted on, each one of
 * several (what sets the rows' spreads is each source left out in turn: core/garment/model/rows.ts). Sources: T1 "a maker's published spec"
 * (casualindustrees.com/pages/6-pant-size-chart-1), T2 a shirt table in the style of GB/T 1335 (microflora/te2014), T3 a pattern envelope's finished
 * jackets, T4 US Commercial Standard CS135-46 (men's shirts, 1946), T5 a state police shirt (docslib.org/doc/2434231), T7 "a maker's published spec"
 * (charlestyrwhitt.com, ultimate chino size guide; its rises stand without the band: 40 added).
 */
import { describe, expect, it } from 'vitest'
import { beliefOf } from '../../core/garment/model/garment-belief.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'

const TABLES: [table: string, kind: GarmentKind, whose: 'women' | 'men', figures: Partial<Record<PointId, number>>][] = [
  [
    'T1',
    'trousers',
    'men',
    { waist: 800.1, hip: 952.5, thigh: 609.6, knee: 495.3, legOpening: 431.8, inseam: 762, frontRise: 311.1, backRise: 387.3 }
  ],
  [
    'T1',
    'trousers',
    'men',
    { waist: 850.9, hip: 1003.3, thigh: 635, knee: 508, legOpening: 444.5, inseam: 787.4, frontRise: 317.5, backRise: 393.7 }
  ],
  [
    'T1',
    'trousers',
    'men',
    { waist: 901.7, hip: 1054.1, thigh: 660.4, knee: 520.7, legOpening: 457.2, inseam: 787.4, frontRise: 323.8, backRise: 400 }
  ],
  [
    'T1',
    'trousers',
    'men',
    { waist: 952.5, hip: 1104.9, thigh: 685.8, knee: 533.4, legOpening: 469.9, inseam: 812.8, frontRise: 330.2, backRise: 406.4 }
  ],
  [
    'T1',
    'trousers',
    'men',
    { waist: 1003.3, hip: 1155.7, thigh: 711.2, knee: 546.1, legOpening: 482.6, inseam: 838.2, frontRise: 336.5, backRise: 412.8 }
  ],
  ['T2', 'shirt', 'men', { neck: 370, shoulderWidth: 448, bodyLength: 720, chest: 1020, sleeveLength: 570, cuff: 230 }],
  ['T2', 'shirt', 'men', { neck: 380, shoulderWidth: 460, bodyLength: 720, chest: 1060, sleeveLength: 570, cuff: 230 }],
  ['T2', 'shirt', 'men', { neck: 390, shoulderWidth: 472, bodyLength: 740, chest: 1100, sleeveLength: 585, cuff: 240 }],
  ['T2', 'shirt', 'men', { neck: 400, shoulderWidth: 484, bodyLength: 740, chest: 1140, sleeveLength: 585, cuff: 240 }],
  ['T2', 'shirt', 'men', { neck: 410, shoulderWidth: 496, bodyLength: 760, chest: 1180, sleeveLength: 600, cuff: 240 }],
  ['T2', 'shirt', 'men', { neck: 420, shoulderWidth: 508, bodyLength: 760, chest: 1220, sleeveLength: 600, cuff: 250 }],
  ['T2', 'shirt', 'men', { neck: 430, shoulderWidth: 520, bodyLength: 780, chest: 1260, sleeveLength: 615, cuff: 250 }],
  ['T2', 'shirt', 'men', { neck: 440, shoulderWidth: 532, bodyLength: 780, chest: 1300, sleeveLength: 615, cuff: 260 }],
  ['T2', 'shirt', 'men', { neck: 450, shoulderWidth: 544, bodyLength: 800, chest: 1340, sleeveLength: 630, cuff: 260 }],
  ['T2', 'shirt', 'women', { neck: 340, shoulderWidth: 386, bodyLength: 640, chest: 900, sleeveLength: 530, cuff: 190 }],
  ['T2', 'shirt', 'women', { neck: 350, shoulderWidth: 396, bodyLength: 640, chest: 940, sleeveLength: 530, cuff: 190 }],
  ['T2', 'shirt', 'women', { neck: 360, shoulderWidth: 406, bodyLength: 660, chest: 980, sleeveLength: 545, cuff: 200 }],
  ['T2', 'shirt', 'women', { neck: 370, shoulderWidth: 416, bodyLength: 660, chest: 1020, sleeveLength: 545, cuff: 200 }],
  ['T2', 'shirt', 'women', { neck: 380, shoulderWidth: 426, bodyLength: 680, chest: 1060, sleeveLength: 560, cuff: 210 }],
  ['T2', 'shirt', 'women', { neck: 390, shoulderWidth: 436, bodyLength: 680, chest: 1100, sleeveLength: 560, cuff: 210 }],
  ['T2', 'shirt', 'women', { neck: 400, shoulderWidth: 446, bodyLength: 700, chest: 1140, sleeveLength: 575, cuff: 220 }],
  ['T2', 'shirt', 'women', { neck: 410, shoulderWidth: 456, bodyLength: 700, chest: 1180, sleeveLength: 575, cuff: 220 }],
  ['T2', 'shirt', 'women', { neck: 420, shoulderWidth: 466, bodyLength: 720, chest: 1220, sleeveLength: 590, cuff: 230 }],
  ['T3', 'jacket', 'women', { chest: 958.8, hem: 1041.4, bodyLength: 628.6 }],
  ['T3', 'jacket', 'women', { chest: 984.2, hem: 1066.8, bodyLength: 635 }],
  ['T3', 'jacket', 'women', { chest: 1022.3, hem: 1104.9, bodyLength: 641.3 }],
  ['T3', 'jacket', 'women', { chest: 1073.1, hem: 1155.7, bodyLength: 647.7 }],
  ['T3', 'jacket', 'women', { chest: 1124, hem: 1206.5, bodyLength: 654 }],
  ['T3', 'jacket', 'women', { chest: 1168.4, hem: 1270, bodyLength: 685.8 }],
  ['T3', 'jacket', 'women', { chest: 1219.2, hem: 1320.8, bodyLength: 692.1 }],
  ['T3', 'jacket', 'women', { chest: 1270, hem: 1371.6, bodyLength: 698.5 }],
  ['T3', 'jacket', 'women', { chest: 1320.8, hem: 1422.4, bodyLength: 704.8 }],
  ['T4', 'shirt', 'men', { chest: 1066.8, bicep: 374.6 }],
  ['T4', 'shirt', 'men', { chest: 1117.6, bicep: 387.3 }],
  ['T4', 'shirt', 'men', { chest: 1168.4, bicep: 400 }],
  ['T4', 'shirt', 'men', { chest: 1219.2, bicep: 412.8 }],
  ['T4', 'shirt', 'men', { chest: 1270, bicep: 425.4 }],
  ['T4', 'shirt', 'men', { chest: 1320.8, bicep: 438.1 }],
  ['T4', 'shirt', 'men', { chest: 1371.6, bicep: 450.8 }],
  ['T4', 'shirt', 'men', { chest: 1422.4, bicep: 463.5 }],
  ['T5', 'shirt', 'men', { chest: 1270, waist: 1206.5, bodyLength: 838.2 }],
  ['T7', 'trousers', 'men', { waist: 850.9, legOpening: 393.7, frontRise: 270.9, backRise: 421 }],
  ['T7', 'trousers', 'men', { waist: 901.7, legOpening: 400, frontRise: 280, backRise: 429.9 }],
  ['T7', 'trousers', 'men', { waist: 952.5, legOpening: 406.4, frontRise: 288.9, backRise: 439 }],
  ['T7', 'trousers', 'men', { waist: 1003.3, legOpening: 412.8, frontRise: 298.1, backRise: 447.9 }],
  ['T7', 'trousers', 'men', { waist: 1054.1, legOpening: 419.1, frontRise: 307, backRise: 457.1 }],
  ['T7', 'trousers', 'men', { waist: 1104.9, legOpening: 425.4, frontRise: 316.1, backRise: 466 }],
  ['T7', 'trousers', 'men', { waist: 1155.7, legOpening: 431.8, frontRise: 325, backRise: 475.1 }]
]
/** Normal intervals: so many sd either way. */
const HALF = 0.674
const NINE_TENTHS = 1.645

const SIZE: Partial<Record<GarmentKind, PointId>> = { trousers: 'waist', shirt: 'chest', jacket: 'chest' }
interface Held {
  n: number
  half: number
  most: number
}
function heldBy(pick: (table: string, point: PointId) => string | undefined): Map<string, Held> {
  const held = new Map<string, Held>()
  for (const [table, kind, whose, figures] of TABLES) {
    const size = SIZE[kind]
    const mm = size === undefined ? undefined : figures[size]
    if (size === undefined || mm === undefined) continue
    const told = [{ point: size, mm, sdMm: 1, commonShare: 0 }]
    const belief = beliefOf({ kind, elasticWaist: false, cut: {}, womens: whose === 'women' ? 1 : 0 }, told)
    for (const [point, truth] of Object.entries(figures) as [PointId, number][]) {
      const thought = belief?.of(point)
      const key = pick(table, point)
      if (point === size || thought === undefined || key === undefined) continue
      const off = Math.abs(truth - thought.mm) / thought.sdMm
      const one = held.get(key) ?? { n: 0, half: 0, most: 0 }
      one.n++
      if (off <= HALF) one.half++
      if (off <= NINE_TENTHS) one.most++
      held.set(key, one)
    }
  }
  return held
}

describe('untold points, against finished-garment tables', () => {
  it('the 50 % and 90 % intervals hold about so many, over all and in no table next to none', () => {
    const all = heldBy(() => 'all').get('all') ?? { n: 0, half: 0, most: 0 }
    for (const [what, { n, half, most }] of [...heldBy((table) => table), ...heldBy((_table, point) => point), ['all', all] as const])
      console.info(`${what}: 50 % holds ${half} of ${n}, 90 % holds ${most} of ${n}`)
    expect(all.n).toBeGreaterThan(150)
    expect(all.half / all.n).toBeGreaterThan(0.4)
    expect(all.most / all.n).toBeGreaterThan(0.85)
    for (const [table, { n, most }] of heldBy((one) => one)) expect(most / n, table).toBeGreaterThan(0.6)
  })
  it('a hip that is told narrows the thigh, and the table’s thigh stays inside', () => {
    for (const [table, kind, whose, { waist, hip, thigh }] of TABLES) {
      if (table !== 'T1' || waist === undefined || hip === undefined || thigh === undefined) continue
      const described = { kind, elasticWaist: false, cut: {}, womens: whose === 'women' ? 1 : 0 }
      const alone = beliefOf(described, [{ point: 'waist', mm: waist, sdMm: 1, commonShare: 0 }])?.of('thigh')
      const both = beliefOf(described, [
        { point: 'waist', mm: waist, sdMm: 1, commonShare: 0 },
        { point: 'hip', mm: hip, sdMm: 1, commonShare: 0 }
      ])?.of('thigh')
      expect(both?.sdMm).toBeLessThan(alone?.sdMm ?? 0)
      expect(Math.abs((both?.mm ?? 0) - thigh)).toBeLessThan((both?.sdMm ?? 0) * 1.1)
    }
  })
})

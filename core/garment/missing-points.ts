/**
 * Points of a garment that were not told, worked out from those that were. Slopes come from published finished-garment tables;
 * the sd is the spread between sources, never under a floor (girths of body and legs 40 mm, rises 25, lengths 30: from memory), because a
 * graded table has no spread of its own. Small girths have their own floors: cuff 25 and neck 27, as T2's men's and women's cuffs lie 30 apart
 * at one chest, and T2's collars 26 from the neck sizes of T4; the upper arm 30 (from memory). Kinds without a table get nothing.
 *
 * Tables: T1 a woven-trouser spec, sizes 30–38; T2 a shirt table by height and chest (GB/T 1335 style), 27 sizes;
 * T3 a pattern envelope's finished jackets, women's, 9 sizes (hem 91 over the chest; a man's about as wide as its chest or 25 over, from memory:
 * the line lies between); T4 US Commercial Standard CS135-46, men's shirts, 8 sizes;
 * T5 a state police shirt; T7 a chino table, 7 sizes (its rises stand without the band: 40 mm added).
 */
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'

interface Line {
  kinds: GarmentKind[]
  point: PointId
  from: PointId
  /** point = at + slope × (from − where) */
  where: number
  at: number
  slope: number
  sdMm: number
  table: string
}
const LEGS: GarmentKind[] = ['trousers', 'jeans']
const LINES: Line[] = [
  { kinds: LEGS, point: 'hip', from: 'waist', where: 901.7, at: 1054.1, slope: 1, sdMm: 40, table: 'T1' },
  { kinds: LEGS, point: 'waist', from: 'hip', where: 1054.1, at: 901.7, slope: 1, sdMm: 40, table: 'T1' },
  { kinds: LEGS, point: 'thigh', from: 'hip', where: 1054.1, at: 660.4, slope: 0.5, sdMm: 40, table: 'T1' },
  { kinds: LEGS, point: 'thigh', from: 'waist', where: 901.7, at: 660.4, slope: 0.5, sdMm: 45, table: 'T1' },
  { kinds: LEGS, point: 'hip', from: 'thigh', where: 660.4, at: 1054.1, slope: 2, sdMm: 80, table: 'T1' },
  { kinds: LEGS, point: 'knee', from: 'thigh', where: 660.4, at: 520.7, slope: 0.5, sdMm: 40, table: 'T1' },
  { kinds: LEGS, point: 'knee', from: 'waist', where: 901.7, at: 520.7, slope: 0.25, sdMm: 45, table: 'T1' },
  { kinds: LEGS, point: 'legOpening', from: 'waist', where: 952.5, at: 438, slope: 0.19, sdMm: 45, table: 'T1, T7' },
  { kinds: LEGS, point: 'frontRise', from: 'waist', where: 952.5, at: 309, slope: 0.15, sdMm: 25, table: 'T1, T7' },
  { kinds: LEGS, point: 'backRise', from: 'frontRise', where: 311, at: 425, slope: 1, sdMm: 25, table: 'T1, T7' },
  { kinds: ['shirt'], point: 'neck', from: 'chest', where: 1120, at: 395, slope: 0.25, sdMm: 27, table: 'T2, T4' },
  { kinds: ['shirt'], point: 'cuff', from: 'chest', where: 1120, at: 229, slope: 0.125, sdMm: 25, table: 'T2' },
  { kinds: ['shirt'], point: 'shoulderWidth', from: 'chest', where: 1120, at: 460, slope: 0.28, sdMm: 30, table: 'T2' },
  { kinds: ['shirt'], point: 'sleeveLength', from: 'chest', where: 1120, at: 579, slope: 0.19, sdMm: 30, table: 'T2' },
  { kinds: ['shirt'], point: 'bicep', from: 'chest', where: 1244.6, at: 419, slope: 0.25, sdMm: 30, table: 'T4' },
  { kinds: ['shirt'], point: 'waist', from: 'chest', where: 1270, at: 1206.5, slope: 1, sdMm: 60, table: 'T5' },
  { kinds: ['jacket'], point: 'hem', from: 'chest', where: 1126.8, at: 1185, slope: 1.07, sdMm: 60, table: 'T3, and men’s from memory' }
]

export interface WorkedOut {
  point: PointId
  mm: number
  sdMm: number
  from: PointId
}

/**
 * What can be worked out of the told points, each from the told point that leaves the least doubt (its own sd carried through the slope).
 * Geometry adds: outside leg = inside leg + front rise, give or take 30 mm (common practice, no source); front and back rise make the crotch length;
 * a sleeve from the centre back is half the shoulders and the sleeve.
 */
export function missingPoints(kind: GarmentKind, told: ReadonlyMap<PointId, { mm: number; sdMm: number }>): WorkedOut[] {
  const found = new Map<PointId, WorkedOut>()
  const offer = (one: WorkedOut) => {
    const best = found.get(one.point)
    if (!told.has(one.point) && (best === undefined || one.sdMm < best.sdMm)) found.set(one.point, one)
  }
  for (const line of LINES) {
    const source = told.get(line.from)
    if (source === undefined || !line.kinds.includes(kind)) continue
    const mm = line.at + line.slope * (source.mm - line.where)
    offer({ point: line.point, mm, sdMm: Math.hypot(line.sdMm, line.slope * source.sdMm), from: line.from })
  }
  const out = told.get('outseam')
  const rise = told.get('frontRise')
  if (out !== undefined && LEGS.includes(kind)) {
    const height = rise ?? found.get('frontRise')
    if (height !== undefined)
      offer({ point: 'inseam', mm: out.mm - height.mm, sdMm: Math.hypot(30, out.sdMm, height.sdMm), from: 'outseam' })
  }
  const whole = told.get('sleeveFromCentreBack')
  const shoulders = found.get('shoulderWidth')
  if (whole !== undefined && shoulders !== undefined && !told.has('shoulderWidth'))
    offer({
      point: 'sleeveLength',
      mm: whole.mm - shoulders.mm / 2,
      sdMm: Math.hypot(whole.sdMm, shoulders.sdMm / 2),
      from: 'sleeveFromCentreBack'
    })
  if (rise !== undefined && !told.has('crotchLength')) {
    const back = told.get('backRise') ?? found.get('backRise')
    if (back !== undefined)
      offer({ point: 'crotchLength', mm: rise.mm + back.mm, sdMm: Math.hypot(rise.sdMm, back.sdMm), from: 'frontRise' })
  }
  return [...found.values()]
}

/**
 * A world to judge the outlook by: wearers, garments, sellers and seams as they truly are, and what of it is told. Imports nothing of the
 * product. Sellers' tapes have heavier tails than a normal (Student's t, 4 degrees of freedom) and a habit of their own; allowances are
 * hidden. Figures are invented after the survey (ANSUR II) and the finished-garment tables that the product cites, with wider spreads.
 */
export type Random = () => number

export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x9e3779b9) >>> 0
    let t = state ^ (state >>> 16)
    t = Math.imul(t, 0x21f0aaad)
    t ^= t >>> 15
    t = Math.imul(t, 0x735a2d97)
    return ((t ^ (t >>> 15)) >>> 0) / 4294967296
  }
}

export const normal = (random: Random, mean = 0, sd = 1): number =>
  mean + sd * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
/** Student's t with 4 degrees of freedom, scaled to an sd of one. */
const heavy = (random: Random): number => {
  let chi = 0
  for (let i = 0; i < 4; i++) chi += normal(random) ** 2
  return normal(random) / Math.sqrt(chi / 4) / Math.SQRT2
}
const chance = (random: Random, share: number): boolean => random() < share
const about = (random: Random, middle: number, share: number): number => Math.max(0, middle * Math.exp(normal(random, 0, share)))

export type Figures = Record<string, number>
export const KINDS = ['trousers', 'jeans', 'skirt', 'shirt', 'jacket'] as const
export type Kind = (typeof KINDS)[number]

export interface Truth {
  kind: Kind
  /** This seller's habit with a tape, in sd: every figure shares it. */
  habit: number
  body: Figures
  garment: Figures
  made: Record<string, number | boolean>
}
export interface Told {
  kind: Kind
  body: Figures
  garment: Figures
  /** What the seller's tape said when it was laid a second time. */
  again: Figures
  made: Record<string, number | boolean>
  /** A size label, as makers put it: waist or chest of the wearer it is cut for, mm. */
  label: number
}

const GIRTHS = new Set(['waist', 'hip', 'thigh', 'knee', 'legOpening', 'chest', 'hem', 'sweep', 'neck', 'bicep', 'cuff', 'calf'])

function wearer(random: Random): Figures {
  const waist = Math.min(1250, Math.max(620, normal(random, 870, 105)))
  const hip = 495 + 0.6 * waist + normal(random, 0, 42)
  const stature = normal(random, 1690, 88)
  const bust = 375 + 0.7 * waist + normal(random, 0, 43)
  return {
    waistGirth: waist,
    waistbandGirth: waist + normal(random, 15, 18),
    hipGirth: hip,
    thighGirth: 0.705 * hip - 99 + normal(random, 0, 19),
    kneeGirth: 0.368 * hip + 30 + normal(random, 0, 18),
    calfGirth: 0.29 * hip + 85 + normal(random, 0, 19),
    insideLegLength: 0.586 * stature - 178 + normal(random, 0, 24),
    bustGirth: bust,
    shoulderWidth: 0.155 * stature + 163 + normal(random, 0, 15),
    armLength: 0.363 * stature - 45 + normal(random, 0, 18),
    neckGirth: 0.2 * bust + 160 + normal(random, 0, 15),
    upperArmGirth: 0.295 * bust + 16 + normal(random, 0, 21),
    wristGirth: normal(random, 163, 10),
    heelGirth: normal(random, 327, 23)
  }
}

/** What a shopper looks at: near their size, off by about a size either way. */
function garmentFor(random: Random, kind: Kind, body: Figures): Figures {
  const b = (measure: string): number => body[measure] ?? 0
  const off = normal(random, 8, 38)
  if (kind === 'trousers' || kind === 'jeans') {
    const waist = b('waistbandGirth') + 20 + off
    const hip = waist + normal(random, 150, 40)
    const thigh = 660 + 0.5 * (hip - 1054) + normal(random, 0, 36)
    const knee = 520 + 0.5 * (thigh - 660) + normal(random, 0, 36)
    const legOpening = normal(random, 420, 40)
    return {
      waist,
      hip,
      thigh,
      knee,
      calf: (knee + legOpening) / 2 + normal(random, 5, 15),
      legOpening,
      inseam: b('insideLegLength') - 25 + normal(random, 10, 40)
    }
  }
  if (kind === 'skirt') {
    const waist = b('waistbandGirth') + 20 + off
    return { waist, hip: waist + normal(random, 225, 38) }
  }
  // cut for a standard wearer of that size, not for this one
  const chest = b('bustGirth') + 105 + off * 1.4
  const size = chest - 1120
  if (kind === 'shirt') {
    return {
      chest,
      waist: chest - 62 + normal(random, 0, 58),
      hem: chest + 5 + normal(random, 0, 45),
      shoulderWidth: 453 + 0.3 * size + normal(random, 0, 28),
      sleeveLength: 580 + 0.2 * size + normal(random, 0, 29),
      neck: 395 + 0.25 * size + normal(random, 0, 22),
      bicep: 388 + 0.25 * size + normal(random, 0, 30),
      cuff: 229 + 0.125 * size + normal(random, 0, 22)
    }
  }
  return {
    chest,
    waist: chest - 115 + normal(random, 0, 38),
    hem: chest + 60 + normal(random, 0, 58),
    shoulderWidth: 448 + 0.3 * size + normal(random, 0, 16),
    sleeveLength: 612 + 0.15 * size + normal(random, 0, 24),
    bicep: 385 + 0.25 * size + normal(random, 0, 24)
  }
}

function makeOf(random: Random, kind: Kind): Truth['made'] {
  const typical = { trousers: [10, 25, 40], jeans: [10, 0, 15], skirt: [12, 12, 40], shirt: [10, 0, 13], jacket: [12, 20, 40] }[kind]
  const [allowance = 10, outlet = 0, hem = 30] = typical
  const make: Truth['made'] = {
    seamAllowanceMm: about(random, allowance, 0.25),
    outletMm: about(random, outlet, 0.4),
    hemDepthMm: about(random, hem, 0.3)
  }
  make.overlapMm = about(random, { trousers: 40, jeans: 40, skirt: 30, shirt: 25, jacket: 60 }[kind], 0.25)
  if (kind === 'trousers' || kind === 'jeans')
    Object.assign(make, { backPocketGapMm: about(random, 140, 0.2), backSeam: !chance(random, 0.03) })
  if (kind === 'skirt') Object.assign(make, { backSeam: chance(random, 0.35), darts: !chance(random, 0.25) })
  if (kind === 'jacket')
    Object.assign(make, { backSeam: !chance(random, 0.12), workingCuffButtons: chance(random, 0.12), lined: !chance(random, 0.1) })
  return make
}

/** Points without which nothing is judged are always told, the rest often. */
const ALWAYS: Record<Kind, string[]> = {
  trousers: ['waist', 'hip'],
  jeans: ['waist', 'thigh'],
  skirt: ['waist'],
  shirt: ['chest'],
  jacket: ['chest', 'shoulderWidth']
}
const OFTEN = 0.65

export interface Seller {
  /** A habit that every figure shares, mm: girths pulled loose or tight. */
  biasMm: number
}

/** A seller's tape, read to half a centimetre, flat. */
function byTape(random: Random, point: string, mm: number, habit: number, { biasMm }: Seller): number {
  const girth = GIRTHS.has(point)
  const error = (girth ? 12 : 8) * (Math.sqrt(0.3) * habit + Math.sqrt(0.7) * heavy(random))
  const half = girth ? 2 : 1
  return Math.round((mm + error + (girth ? biasMm : biasMm / 2)) / half / 5) * 5 * half
}

const ownTape = (random: Random, measure: string, mm: number): number =>
  Math.round(mm + normal(random, 0, measure.endsWith('Girth') ? 7 : 5))

/** What the same seller answers about one point, the person about one measure of their own, or the seller about the make; null: nobody knows. */
export function answered(random: Random, { truth, told }: { truth: Truth; told: Told }, about: About, seller: Seller): Told | null {
  const { point, body, made, again } = about
  if (point !== undefined && again === true && truth.garment[point] !== undefined && told.again[point] === undefined)
    return { ...told, again: { ...told.again, [point]: byTape(random, point, truth.garment[point], truth.habit, seller) } }
  if (point !== undefined && truth.garment[point] !== undefined && told.garment[point] === undefined)
    return { ...told, garment: { ...told.garment, [point]: byTape(random, point, truth.garment[point], truth.habit, seller) } }
  if (body !== undefined && truth.body[body] !== undefined && told.body[body] === undefined)
    return { ...told, body: { ...told.body, [body]: ownTape(random, body, truth.body[body]) } }
  if (made !== undefined && truth.made[made] !== undefined && told.made[made] === undefined)
    return { ...told, made: { ...told.made, [made]: truth.made[made] } }
  return null
}
export interface About {
  point?: string | undefined
  body?: string | undefined
  made?: string | undefined
  /** A point that was told already: the tape is laid a second time. */
  again?: boolean | undefined
}

export function listing(random: Random, seller: Seller): { truth: Truth; told: Told } {
  const kind = KINDS[Math.floor(random() * KINDS.length)] ?? 'trousers'
  const body = wearer(random)
  const garment = garmentFor(random, kind, body)
  const made = makeOf(random, kind)
  const toldBody = Object.fromEntries(
    Object.entries(body)
      .filter(
        ([measure]) => ['waistbandGirth', 'hipGirth', 'bustGirth', 'shoulderWidth', 'waistGirth'].includes(measure) || chance(random, 0.6)
      )
      .map(([measure, mm]) => [measure, ownTape(random, measure, mm)])
  )
  const habit = heavy(random)
  const toldGarment: Figures = {}
  for (const [point, mm] of Object.entries(garment)) {
    const read = byTape(random, point, mm, habit, seller)
    if (ALWAYS[kind].includes(point) || chance(random, OFTEN)) toldGarment[point] = read
  }
  const toldMade = Object.fromEntries(Object.entries(made).filter(() => chance(random, 0.15)))
  const base = kind === 'shirt' || kind === 'jacket' ? (garment.chest ?? 0) - 105 : (garment.waist ?? 0) - 20
  return {
    truth: { kind, habit, body, garment, made },
    told: {
      kind,
      body: toldBody,
      garment: toldGarment,
      again: {},
      made: toldMade,
      label: Math.round((base + normal(random, -15, 22)) / 25.4) * 25.4
    }
  }
}

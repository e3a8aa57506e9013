/** Garment and gaps → what could be done on it, each with effects and limits, and what could not, with the reason. */
import { keepsNeedleHoles } from '../garment/cloth.ts'
import { type ClothWork, clothWork, isHide } from '../garment/cloth-work.ts'
import { isFelled } from '../garment/construction.ts'
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Made, Use } from '../garment/garment-input.ts'
import type { AlterationId } from '../ids/alterations.ts'
import { GARMENT_KINDS, type GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import { LONGEST_MM } from '../length.ts'
import type { Saying } from '../words/reason.ts'
import { apart, keyOf } from './apart.ts'
import { isBoned } from './as-cut.ts'
import { CATALOGUE } from './catalogue.ts'
import { FELLED_MINUTES, PENALTIES, PREPARATIONS, RESCUES, SET_IN, SMOOTH_MM, UNMATCHED_SEAMS } from './minutes.ts'
import { oneSize, sharedGirths } from './one-size.ts'
import { type Line, limit, type Option, type Refusal, type Row, type SharedLimit } from './row.ts'

export interface Offer {
  options: Option[]
  refusals: Refusal[]
}

/** Kinds of use that are never altered, whatever the figures. */
export const NEVER: ReadonlySet<Use> = new Set<Use>(['protective', 'child-sleepwear', 'medical-compression'])

/** The person's own limits replace the defaults, within what is physically there; 0 forbids. */
export function alterationsFor(garment: Garment, limits: Partial<Record<AlterationId, number>> = {}): Offer {
  const offer: Offer = { options: [], refusals: [] }
  const { rows, lines, among } = laidOn(garment)
  const cloth = workIn(garment)
  for (const [n, row] of rows.entries()) {
    const { option, refused } = offered(row, garment, limits, among, { lines: lines[n] ?? [], cloth })
    if (option !== undefined) offer.options.push(option)
    else offer.refusals.push({ id: row.id, direction: row.direction, because: refused })
  }
  return offer
}

const BY_KIND = new Map<GarmentKind, Row[]>(GARMENT_KINDS.map((kind) => [kind, CATALOGUE.filter((row) => row.kinds.includes(kind))]))
const rowsFor = (garment: Garment): Row[] =>
  NEVER.has(garment.use) ? [] : (BY_KIND.get(garment.kind) ?? []).filter((row) => row.there?.(garment) !== false)

/** What the rows of a garment are to each other. */
interface Among {
  /** By key: what is never done beside it. */
  never: ReadonlyMap<string, AlterationId[]>
  /** Girths that several of them change. */
  girths: readonly PointId[]
}
const amongRows = (rows: readonly Row[], lines: readonly Line[][]): Among => ({
  never: apart(rows, lines),
  girths: sharedGirths(rows, lines)
})
/** The rows of a garment with their lines; the same garment is asked for them again when its make is varied. */
const laidOn = (garment: Garment): LaidRows => {
  let laid = LAID.get(garment)
  if (laid === undefined) {
    const rows = rowsFor(garment)
    const lines = rows.map((row) => row.lines(garment))
    laid = { rows, lines, among: amongRows(rows, lines) }
    LAID.set(garment, laid)
  }
  return laid
}
interface LaidRows {
  rows: readonly Row[]
  lines: readonly Line[][]
  among: Among
}
const LAID = new WeakMap<Garment, LaidRows>()

/** What a row makes of a garment, and what the cloth does to the work. */
interface Laid {
  lines: Line[]
  cloth: ClothWork
}

interface Worked {
  /** What the row read of the make, and what it found there. */
  read: readonly (readonly [keyof Made, Made[keyof Made]])[]
  option: Option | undefined
}

/** Options of one garment in many makes: a row is worked out again only where something it read of the make differs. */
export class OptionsByMake {
  private readonly garment: Garment
  private readonly limits: Partial<Record<AlterationId, number>>
  private readonly rows: { row: Row; known: Worked[] }[]
  private readonly among: Among
  /** Of hides it hangs on the lining; of all other cloth it is the same in every make. */
  private readonly cloth: ClothWork | undefined
  private made: Made
  private read = new Map<keyof Made, Made[keyof Made]>()

  constructor(garment: Garment, limits: Partial<Record<AlterationId, number>>, only: ReadonlySet<string>) {
    this.limits = limits
    this.made = garment.made
    const { rows, among } = laidOn(garment)
    this.among = among
    this.rows = rows.filter((row) => only.has(keyOf(row))).map((row) => ({ row, known: [] }))
    this.cloth = isHide(garment.cloth) ? undefined : workIn(garment)
    this.garment = { ...garment, made: this.watched(garment.made) }
  }

  with(made: Made): Option[] {
    this.made = made
    return this.rows.flatMap(({ row, known }): Option[] => {
      const same = known.find(({ read }) => read.every(([part, value]) => made[part] === value))
      if (same !== undefined) return same.option === undefined ? [] : [same.option]
      this.read = new Map()
      const laid = { lines: row.lines(this.garment), cloth: this.cloth ?? workIn(this.garment) }
      const { option } = offered(row, this.garment, this.limits, this.among, laid)
      known.push({ read: [...this.read], option })
      return option === undefined ? [] : [option]
    })
  }

  /** The make, with what is read of it written down. */
  private watched(made: Made): Made {
    const part = (key: keyof Made): PropertyDescriptor => ({
      enumerable: true,
      get: () => {
        this.read.set(key, this.made[key])
        return this.made[key]
      }
    })
    return Object.defineProperties({ ...made }, Object.fromEntries((Object.keys(made) as (keyof Made)[]).map((key) => [key, part(key)])))
  }
}

/** A limit that is no figure is none. */
const ownLimit = (mm: number | undefined): number | undefined =>
  mm === undefined || !Number.isFinite(mm) ? undefined : Math.min(mm, LONGEST_MM)

type Offered = { option: Option; refused?: undefined } | { option?: undefined; refused: Saying }

/** What a row makes of a garment: an option, or the reason why there is none. */
function offered(row: Row, garment: Garment, limits: Partial<Record<AlterationId, number>>, among: Among, { lines, cloth }: Laid): Offered {
  const own = ownLimit(limits[row.id])
  if (own !== undefined && own <= 0) return { refused: limit('own-none') }
  if (row.outward && keepsNeedleHoles(garment.cloth)) return { refused: limit('needle-holes') }
  if (row.wovenOnly && garment.cloth.structure === 'knit') return { refused: limit('woven-only') }
  const without = cloth.without.get(row.id)
  if (without !== undefined) return { refused: limit(`in-${without}`) }
  const unless = row.unless?.(garment)
  if (unless !== undefined) return { refused: unless }
  if (penaltiesOf(row, garment).some((penalty) => SET_IN.has(penalty)) && showsWorst(garment)) return { refused: limit('set-in') }
  const [first] = lines
  if (first !== undefined && !lines.some((line) => within(line, own) > 0)) return { refused: first.because }
  return { option: optionOf(row, garment, { lines, cloth }, own, among) }
}

/** What its cloth does to the work, with what the cut says of it: thick hides are lined, or bikers’. */
const workIn = ({ cloth, cut, made }: Garment) =>
  clothWork({
    structure: cloth.structure,
    traits: cloth.traits,
    // asked of hides alone, so that no other row hangs on the lining
    thick: isHide(cloth) && (made.lined || isCut(cut, 'layer', 'biker')),
    quilted: isCut(cut, 'layer', 'puffer'),
    boned: isCut(cut, 'boning', 'boned')
  })
/** Lining cloth is sewn as cotton is. */
const PLAIN_CLOTH = clothWork({ structure: 'woven', traits: new Set() })
const penaltiesOf = (row: Row, garment: Garment) => (typeof row.penalties === 'function' ? row.penalties(garment) : (row.penalties ?? []))

/** What is set in shows worst, or cannot be set in: linings, bones, hides, sheer cloth (common practice). */
const showsWorst = (garment: Garment): boolean =>
  garment.made.lined || isBoned(garment) || garment.cloth.structure === 'leather' || garment.cloth.traits.has('sheer')

const within = (line: Line, own: number | undefined): number => {
  const cap = own ?? line.capMm
  return Math.max(0, line.physicalMm === undefined ? cap : Math.min(cap, own === undefined ? cap : line.physicalMm))
}

function optionOf(row: Row, garment: Garment, { lines: worked, cloth: itsCloth }: Laid, own: number | undefined, among: Among): Option {
  const cloth = row.inLining ? PLAIN_CLOTH : itsCloth
  const long = worked.some(({ seams }) => seams.some(({ seam }) => !UNMATCHED_SEAMS.has(seam)))
  const factor = long ? cloth.minutesAtSeams : cloth.minutes
  const opens = typeof row.opens === 'function' ? row.opens(garment) : (row.opens ?? [])
  const [whole, per25] = typeof row.minutes === 'function' ? row.minutes(garment) : row.minutes
  const opening = opens.reduce((sum, what) => sum + PREPARATIONS[what], 0)
  const felled = row.reseams?.some((seam) => isFelled(garment.made, seam)) ? FELLED_MINUTES : 0
  const level = (typeof row.level === 'function' ? row.level(garment) : row.level) + cloth.level
  const penalties = penaltiesOf(row, garment)
  const tier = row.tier?.(garment)
  const lines = worked.map((line) => ({
    ...line,
    capMm: within(line, own),
    because: own === undefined ? line.because : { code: 'limit.own', values: { own } }
  }))
  return {
    key: keyOf(row),
    id: row.id,
    direction: row.direction,
    lines,
    smoothMm: SMOOTH_MM,
    ...(row.fixedMm === undefined ? {} : { fixedMm: row.fixedMm }),
    shared: [...(row.shared?.(garment) ?? []), ...oneSize(garment, lines, among.girths)] satisfies SharedLimit[],
    ...(tier === undefined ? {} : { tier: { ...tier, level: Math.min(5, tier.level + cloth.level), minutes: tier.minutes * factor } }),
    opens,
    setupMinutes: (Math.max(0, whole - opening) + felled) * factor,
    per25Minutes: per25 * factor,
    level: Math.min(5, level) as Option['level'],
    penaltyMinutes: penalties.reduce((sum, penalty) => sum + PENALTIES[penalty], 0),
    excludes: among.never.get(keyOf(row)) ?? [],
    rescue: penalties.some((penalty) => RESCUES.has(penalty))
  }
}

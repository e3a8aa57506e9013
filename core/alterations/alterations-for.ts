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
import { type Line, limit, type Option, type Refusal, type Row } from './row.ts'

export interface Offer {
  options: Option[]
  refusals: Refusal[]
}

/** Kinds of use that are never altered, whatever the figures. */
export const NEVER: ReadonlySet<Use> = new Set<Use>(['protective', 'child-sleepwear', 'medical-compression'])

/** The person's own limits replace the defaults, within what is physically there; 0 forbids. */
export function alterationsFor(garment: Garment, limits: Partial<Record<AlterationId, number>> = {}): Offer {
  const offer: Offer = { options: [], refusals: [] }
  const { rows, girths } = laidOn(garment)
  const cloth = workIn(garment)
  for (const laid of rows) {
    const { option, refused } = offered(laid, garment, limits, girths, cloth)
    if (option !== undefined) offer.options.push(option)
    else offer.refusals.push({ id: laid.row.id, direction: laid.row.direction, because: refused })
  }
  return offer
}

const BY_KIND = new Map<GarmentKind, Row[]>(GARMENT_KINDS.map((kind) => [kind, CATALOGUE.filter((row) => row.kinds.includes(kind))]))
const rowsFor = (garment: Garment): Row[] =>
  NEVER.has(garment.use) ? [] : (BY_KIND.get(garment.kind) ?? []).filter((row) => row.there?.(garment) !== false)

/** A row on one garment. */
interface LaidRow {
  row: Row
  key: string
  lines: Line[]
  /** What is never done beside it. */
  never: readonly AlterationId[]
}
interface LaidRows {
  rows: readonly LaidRow[]
  /** Girths that several of them change. */
  girths: readonly PointId[]
}
const LAID = new WeakMap<Garment, LaidRows>()
/** The rows of a garment with their lines; the same garment is asked for them again when its make is varied. */
function laidOn(garment: Garment): LaidRows {
  const known = LAID.get(garment)
  if (known !== undefined) return known
  const rows = rowsFor(garment)
  const lines = rows.map((row) => row.lines(garment))
  const never = apart(rows, lines)
  const laid = {
    rows: rows.map((row, n): LaidRow => ({ row, key: keyOf(row), lines: lines[n] ?? [], never: never[n] ?? [] })),
    girths: sharedGirths(rows, lines)
  }
  LAID.set(garment, laid)
  return laid
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
  private readonly rows: { laid: LaidRow; known: Worked[] }[]
  private readonly girths: readonly PointId[]
  /** Of hides it hangs on the lining; of all other cloth it is the same in every make. */
  private readonly cloth: ClothWork | undefined
  private made: Made
  private read = new Map<keyof Made, Made[keyof Made]>()

  constructor(garment: Garment, limits: Partial<Record<AlterationId, number>>, only: ReadonlySet<string>) {
    this.limits = limits
    this.made = garment.made
    const { rows, girths } = laidOn(garment)
    this.girths = girths
    this.rows = rows.filter(({ key }) => only.has(key)).map((laid) => ({ laid, known: [] }))
    this.cloth = isHide(garment.cloth) ? undefined : workIn(garment)
    this.garment = { ...garment, made: this.watched(garment.made) }
  }

  with(made: Made): Option[] {
    this.made = made
    return this.rows.flatMap(({ laid, known }): Option[] => {
      const same = known.find(({ read }) => read.every(([part, value]) => made[part] === value))
      if (same !== undefined) return same.option === undefined ? [] : [same.option]
      this.read = new Map()
      const asMade = { ...laid, lines: laid.row.lines(this.garment) }
      const { option } = offered(asMade, this.garment, this.limits, this.girths, this.cloth ?? workIn(this.garment))
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
function offered(
  laid: LaidRow,
  garment: Garment,
  limits: Partial<Record<AlterationId, number>>,
  girths: readonly PointId[],
  cloth: ClothWork
): Offered {
  const { row, lines } = laid
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
  return { option: optionOf(laid, garment, own, girths, cloth) }
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

function optionOf(laid: LaidRow, garment: Garment, own: number | undefined, girths: readonly PointId[], itsCloth: ClothWork): Option {
  const { row, key, never } = laid
  const cloth = row.inLining ? PLAIN_CLOTH : itsCloth
  const long = laid.lines.some(({ seams }) => seams.some(({ seam }) => !UNMATCHED_SEAMS.has(seam)))
  const factor = long ? cloth.minutesAtSeams : cloth.minutes
  const opens = typeof row.opens === 'function' ? row.opens(garment) : (row.opens ?? [])
  const [whole, per25] = typeof row.minutes === 'function' ? row.minutes(garment) : row.minutes
  const opening = opens.reduce((sum, what) => sum + PREPARATIONS[what], 0)
  const felled = row.reseams?.some((seam) => isFelled(garment.made, seam)) ? FELLED_MINUTES : 0
  const level = (typeof row.level === 'function' ? row.level(garment) : row.level) + cloth.level
  const penalties = penaltiesOf(row, garment)
  const tier = row.tier?.(garment)
  const lines = laid.lines.map((line) => limited(line, own))
  const option: Option = {
    key,
    id: row.id,
    direction: row.direction,
    lines,
    smoothMm: SMOOTH_MM,
    shared: [...(row.shared?.(garment) ?? []), ...oneSize(garment, lines, girths)],
    opens,
    setupMinutes: (Math.max(0, whole - opening) + felled) * factor,
    per25Minutes: per25 * factor,
    level: Math.min(5, level) as Option['level'],
    penaltyMinutes: penalties.reduce((sum, penalty) => sum + PENALTIES[penalty], 0),
    excludes: never,
    rescue: penalties.some((penalty) => RESCUES.has(penalty))
  }
  if (row.fixedMm !== undefined) option.fixedMm = row.fixedMm
  if (tier !== undefined) option.tier = { ...tier, level: Math.min(5, tier.level + cloth.level), minutes: tier.minutes * factor }
  return option
}

/** A line as far as it may go. */
function limited(line: Line, own: number | undefined): Line {
  const capMm = within(line, own)
  if (own !== undefined) return { ...line, capMm, because: { code: 'limit.own', values: { own } } }
  return capMm === line.capMm ? line : { ...line, capMm }
}

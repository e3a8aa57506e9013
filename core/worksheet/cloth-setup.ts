/**
 * Needle, thread, stitch and iron for a cloth. One table; the first row that fits is taken.
 * Sources: NEEDLE a needle chart (60–70 sheers and silk, 80 cotton and blends, 90 bottom weights, wool and corduroy, 100 denim; ball point for knits,
 * wedge for leather) · SPI a stitch-length table (2 mm shirting, 2.5 regulation, 3 coating; 4–5 basting) · LEATHER a fabric shop's notes (a longer
 * stitch) · ISO 3758 iron dots 110, 150, 200 °C · CP common practice, no source.
 */
import { isKnitted } from '../alterations/as-cut.ts'
import { isHide } from '../garment/cloth-work.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { table } from '../ids/table.ts'

export type NeedleKind = 'fine' | 'universal' | 'ball-point' | 'jeans' | 'wedge'
export type StitchKind = 'straight' | 'narrow-zigzag' | 'long-straight'
export type ThreadKind = 'polyester' | 'fine' | 'strong' | 'jeans'
export type PressKind = 'cool' | 'warm' | 'hot' | 'unknown' | 'none' | 'pile' | 'knit'

export interface ClothSetup {
  needle: NeedleKind
  /** Metric and Singer size, as on the packet. */
  needleSize: string
  thread: ThreadKind
  stitch: StitchKind
  stitchMm: number
  press: PressKind
  /** Pins leave holes: clips hold instead. */
  clips: boolean
  knit: boolean
  hide: boolean
}

interface SetupRow {
  when(garment: Garment): boolean
  needle: NeedleKind
  needleSize: string
  thread: ThreadKind
  stitch: StitchKind
  stitchMm: number
  source: string
}
const hasTrait =
  (...traits: string[]) =>
  ({ cloth }: Garment): boolean =>
    traits.some((trait) => ([...cloth.traits] as string[]).includes(trait))
const isKnit = ({ cloth }: Garment): boolean => cloth.structure === 'knit'
/** A hide, or cloth coated like one: needle holes stay, pins too. */
const keepsHoles = (garment: Garment): boolean => isHide(garment.cloth) || hasTrait('vinyl', 'coated')(garment)

export const SETUPS: readonly SetupRow[] = [
  {
    when: keepsHoles,
    needle: 'wedge',
    needleSize: '100/16',
    thread: 'strong',
    stitch: 'long-straight',
    stitchMm: 3.5,
    source: 'NEEDLE (wedge), LEATHER (longer); 3.5 CP'
  },
  {
    when: isKnit,
    needle: 'ball-point',
    needleSize: '80/12',
    thread: 'polyester',
    stitch: 'narrow-zigzag',
    stitchMm: 2.5,
    source: 'NEEDLE (ball point); zigzag 0.5–1 wide CP'
  },
  {
    when: (garment) => garment.kind === 'jeans' || hasTrait('denim')(garment),
    needle: 'jeans',
    needleSize: '100/16',
    thread: 'jeans',
    stitch: 'straight',
    stitchMm: 3,
    source: 'NEEDLE (denim 100/16); 3 CP'
  },
  {
    when: hasTrait('silk', 'sheer', 'slippery', 'taffeta'),
    needle: 'fine',
    needleSize: '70/10',
    thread: 'fine',
    stitch: 'straight',
    stitchMm: 2,
    source: 'NEEDLE (60/8–70/10), SPI (2 mm)'
  },
  {
    when: ({ kind }) => kind === 'coat',
    needle: 'universal',
    needleSize: '100/16',
    thread: 'polyester',
    stitch: 'straight',
    stitchMm: 3,
    source: 'SPI (coating: 9 to the inch, 3 mm, needle 100/16)'
  },
  {
    when: ({ kind }) => kind === 'shirt',
    needle: 'universal',
    needleSize: '70/10',
    thread: 'polyester',
    stitch: 'straight',
    stitchMm: 2,
    source: 'SPI (shirting: 14 to the inch, 2 mm, needle 70/10)'
  },
  {
    when: (garment) =>
      ['trousers', 'shorts', 'jacket', 'waistcoat'].includes(garment.kind) ||
      hasTrait('pile')(garment) ||
      garment.cloth.fibres.some(({ fibre }) => fibre === 'wool'),
    needle: 'universal',
    needleSize: '90/14',
    thread: 'polyester',
    stitch: 'straight',
    stitchMm: 2.5,
    source: 'NEEDLE (bottom weights, wool, corduroy 90/14), SPI (2.5)'
  }
]
const ORDINARY: Omit<SetupRow, 'when'> = {
  needle: 'universal',
  needleSize: '80/12',
  thread: 'polyester',
  stitch: 'straight',
  stitchMm: 2.5,
  source: 'NEEDLE (cotton, rayon, blends: most used), SPI (regulation: 10 to the inch)'
}

/** How hot by fibre, 1 to 3 dots (ISO 3758: 110, 150, 200 °C at most); which fibre stands which is CP. */
const DOTS = table<1 | 2 | 3>({
  cotton: 3,
  linen: 3,
  hemp: 3,
  ramie: 3,
  wool: 2,
  cashmere: 2,
  mohair: 2,
  alpaca: 2,
  angora: 2,
  camel: 2,
  silk: 2,
  viscose: 2,
  modal: 2,
  lyocell: 2,
  cupro: 2,
  polyester: 1,
  polyamide: 1,
  acrylic: 1,
  acetate: 1,
  triacetate: 1,
  elastane: 2
})
const BY_DOTS: Record<1 | 2 | 3, PressKind> = { 1: 'cool', 2: 'warm', 3: 'hot' }

/**
 * As hot as the most delicate of its fibres stands; a few hundredths of elastane count. What is knitted of yarn is steamed, not pressed (CP). Nothing told
 * of the fibre: from the coolest up.
 */
export function pressFor(garment: Garment): PressKind {
  if (keepsHoles(garment)) return 'none'
  if (hasTrait('pile')(garment)) return 'pile'
  if (isKnitted(garment)) return 'knit'
  const { fibres } = garment.cloth
  if (fibres.length === 0) return 'unknown'
  return BY_DOTS[fibres.reduce<1 | 2 | 3>((least, { fibre }) => Math.min(least, DOTS[fibre] ?? 1) as 1 | 2 | 3, 3)]
}

/** Needle, thread, stitch length (mm), iron, and whether pins may touch it. */
export function clothSetup(garment: Garment): ClothSetup {
  const { needle, needleSize, thread, stitch, stitchMm } = SETUPS.find(({ when }) => when(garment)) ?? ORDINARY
  const clips = keepsHoles(garment)
  return {
    needle,
    needleSize,
    thread,
    stitch,
    stitchMm,
    press: pressFor(garment),
    clips,
    knit: isKnit(garment),
    hide: isHide(garment.cloth)
  }
}

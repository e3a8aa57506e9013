/** A garment's stretch as one answer, by the share of elastane in its fibres. Pure. */
import type { Cloth } from '../../../core/garment/garment-input.ts'

export const STRETCHES = ['unsaid', 'none', 'little', 'lot'] as const
export type StretchAnswer = (typeof STRETCHES)[number]

/** % elastane that each answer stands for (commonest shares on labels; from memory). */
const ELASTANE: Record<Exclude<StretchAnswer, 'unsaid'>, number> = { none: 0, little: 2, lot: 4 }
/** From this share on, %, it is a lot: cloth sold as very stretchy. */
const A_LOT = 3

/** What the fibres say; with none named nothing was said. */
export function stretchAnswer({ fibres = [] }: Cloth = {}): StretchAnswer {
  if (fibres.length === 0) return 'unsaid'
  const elastane = fibres.filter(({ fibre }) => fibre === 'elastane').reduce((sum, { percent }) => sum + (percent ?? ELASTANE.little), 0)
  return elastane >= A_LOT ? 'lot' : elastane > 0 ? 'little' : 'none'
}

/** The cloth with its stretch as answered; all else that was told of it stays. The same answer changes nothing. */
export function withStretch(cloth: Cloth, answer: StretchAnswer): Cloth {
  if (stretchAnswer(cloth) === answer) return cloth
  const { fibres = [], stretchPercent: _, ...rest } = cloth
  const others = fibres.filter(({ fibre }) => fibre !== 'elastane')
  if (answer === 'unsaid') return rest
  return { ...rest, fibres: [...others, { fibre: 'elastane', percent: ELASTANE[answer] }] }
}

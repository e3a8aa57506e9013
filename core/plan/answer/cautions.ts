/** The usual cautions that a garment and its plan call for. They defer to the maker, local rules and licensed practice. */
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { GarmentInput } from '../../garment/garment-input.ts'
import type { Saying } from '../../words/reason.ts'
import type { Plan } from '../plan.ts'

export function cautionsFor(garment: Garment, input: GarmentInput, plan: Plan | undefined): Saying[] {
  const codes: string[] = []
  if (garment.use !== 'ordinary') codes.push(garment.use)
  codes.push(isDelicate(garment) ? 'second-hand-delicate' : 'second-hand')
  if (input.condition?.some(({ job }) => job === 'treat-pests')) codes.push('pests')
  if (input.condition?.some(({ job }) => job === 'clean' || job === 'dye')) codes.push('solvents')
  if (garment.cloth.structure === 'leather' || garment.cloth.traits.has('coated')) codes.push('leather-and-wax')
  if (plan !== undefined && plan.alterations.length > 0) {
    codes.push('needles', 'iron')
    if (plan.alterations.some((job) => job.softLimit)) codes.push('past-soft-limit')
    if (plan.level >= 4) codes.push('try-on-first')
    if (!garment.cloth.washed) codes.push('wash-first')
  }
  return codes.map((code) => ({ code: `caution.${code}`, values: {} }))
}

/** Hair, silk and leather felt, shrink or crack in heat: what is said of other cloth would spoil them (UCIPM; common practice). */
const DELICATE = new Set(['wool', 'cashmere', 'mohair', 'alpaca', 'angora', 'silk', 'leather', 'suede', 'down'])
const isDelicate = ({ cloth }: Garment): boolean =>
  cloth.structure === 'leather' || cloth.traits.has('coated') || cloth.fibres.some(({ fibre }) => DELICATE.has(fibre))

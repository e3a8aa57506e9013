/** The options that this person's means allow. */
import type { Option } from '../../alterations/row.ts'
import type { Means } from '../means.ts'

/** A tier beyond the level is cut off at its beginning, with its reason. */
export function withinLevel(options: readonly Option[], level: number): Option[] {
  return options.flatMap((option) => {
    if (option.level > level) return []
    if (option.tier === undefined || option.tier.level <= level) return [option]
    const { tier, ...plain } = option
    const lines = option.lines.map((line, k) =>
      k === tier.line && line.capMm > tier.beyondMm ? { ...line, capMm: tier.beyondMm, because: tier.because } : line
    )
    return [{ ...plain, lines }]
  })
}

/** Rescues that this person would not wear are left out: they show. */
export const acceptedBy = ({ acceptRescues = [] }: Means, options: readonly Option[]): Option[] =>
  options.filter((option) => !option.rescue || acceptRescues.includes(option.id))

/** The options that a level allows: a tier beyond it is cut off at its beginning, with its reason. */
import type { Option } from '../../alterations/row.ts'

export function withinLevel(options: readonly Option[], level: number): Option[] {
  return options.flatMap((option) => {
    if (option.level > level) return []
    const { tier, ...plain } = option
    if (tier === undefined || tier.level <= level) return [option]
    const lines = option.lines.map((line, k) =>
      k === tier.line && line.capMm > tier.beyondMm ? { ...line, capMm: tier.beyondMm, because: tier.because } : line
    )
    return [{ ...plain, lines }]
  })
}

import type { Correction } from '../reading/reading.ts'

/** One's own figures among the corrections: those of a tape laid after it arrived. */
export const isOwnFigure = (one: Correction): one is Extract<Correction, { add: unknown }> => 'add' in one && one.source === 'own'

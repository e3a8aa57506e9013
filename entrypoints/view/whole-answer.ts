/** The answer with its chances, and what would better it: other means or wishes, then changes of kind, which are offered apart. Pure. */
import { type Reckoning, type ReckonOptions, type ReckonRequest, reckon, whatWouldChange } from '../../core/reckon.ts'
import type { Reason } from '../../core/words/reason.ts'

export interface WholeAnswer {
  reckoning: Reckoning
  wouldChange: Reason[]
}

export function wholeAnswer(request: ReckonRequest, options: ReckonOptions): WholeAnswer {
  const reckoning = reckon(request, options)
  return { reckoning, wouldChange: [...whatWouldChange(request, options), ...reckoning.conversions] }
}

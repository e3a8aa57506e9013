/** Works answers out beside the page, so that nothing a person does waits for one. */
import type { ReckonOptions, ReckonRequest } from '../../core/reckon.ts'
import { wholeAnswer } from './whole-answer.ts'

export interface AskedApart {
  id: number
  request: ReckonRequest
  options: ReckonOptions
}

addEventListener('message', ({ data: { id, request, options } }: MessageEvent<AskedApart>) => {
  postMessage({ id, answer: wholeAnswer(request, options) })
})

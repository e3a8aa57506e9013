/** Works answers out beside the page, so that nothing a person does waits for one. */
import type { ReckonOptions, ReckonRequest } from '../../core/reckon.ts'
import { loadWords } from '../../core/words/languages.ts'
import { type WholeAnswer, wholeAnswer } from './whole-answer.ts'

export interface AskedApart {
  id: number
  request: ReckonRequest
  options: ReckonOptions
}

/** null: it could not be worked out here. */
export interface AnsweredApart {
  id: number
  answer: WholeAnswer | null
}

addEventListener('message', async ({ data: { id, request, options } }: MessageEvent<AskedApart>) => {
  let answer: WholeAnswer | null = null
  try {
    // its words are loaded by itself: the page's are not here
    await loadWords(options.language ?? '')
    answer = wholeAnswer(request, options)
  } catch (error) {
    console.error(error)
  }
  postMessage({ id, answer } satisfies AnsweredApart)
})

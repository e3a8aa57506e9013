/** Works answers out beside the page, so that nothing a person does waits for one. */
import { loadWords } from '../../core/words/languages.ts'
import type { AnswerAsked } from './answers-apart.ts'
import type { AnsweredBy, AskedOf } from './kept-worker.ts'
import { type WholeAnswer, wholeAnswer } from './whole-answer.ts'

addEventListener('message', async ({ data: { id, request, options } }: MessageEvent<AskedOf<AnswerAsked>>) => {
  let answer: WholeAnswer | null = null
  try {
    // its words are loaded by itself: the page's are not here
    await loadWords(options.language ?? '')
    answer = wholeAnswer(request, options)
  } catch (error) {
    console.error(error)
  }
  postMessage({ id, answer } satisfies AnsweredBy<WholeAnswer | null>)
})

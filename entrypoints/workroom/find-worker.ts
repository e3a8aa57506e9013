/** Works out the answers of finds beside the page, a few at a time: reading their texts and reckoning. */

import type { FindAnswer } from '../../core/records/find-answer.ts'
import { loadWords } from '../../core/words/languages.ts'
import type { AnsweredBy, AskedOf } from '../view/kept-worker.ts'
import { answerOrNone } from './answer-or-none.ts'
import type { FindsAsked } from './finds-apart.ts'

addEventListener('message', async ({ data: { id, finds, wardrobe, options } }: MessageEvent<AskedOf<FindsAsked>>) => {
  // its words are loaded by itself: the page's are not here
  await loadWords(options.language ?? '').catch(console.error)
  const answers: FindAnswer[] = []
  for (const find of finds) answers.push(await answerOrNone(find, wardrobe, options))
  postMessage({ id, answer: answers } satisfies AnsweredBy<FindAnswer[]>)
})

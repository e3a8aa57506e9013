/** Works out the answers of finds beside the page, a few at a time: reading their texts and reckoning. */

import type { ReckonOptions } from '../../core/reckon.ts'
import type { FindAnswer, FindTold } from '../../core/records/find-answer.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { loadWords } from '../../core/words/languages.ts'
import { answerOrNone } from './answer-or-none.ts'

export interface FindsAsked {
  id: number
  finds: readonly FindTold[]
  wardrobe: Wardrobe
  options: ReckonOptions
}
export interface FindsAnswered {
  id: number
  answers: FindAnswer[]
}

addEventListener('message', async ({ data: { id, finds, wardrobe, options } }: MessageEvent<FindsAsked>) => {
  // its words are loaded by itself: the page's are not here
  await loadWords(options.language ?? '').catch(console.error)
  const answers: FindAnswer[] = []
  for (const find of finds) answers.push(await answerOrNone(find, wardrobe, options))
  postMessage({ id, answers } satisfies FindsAnswered)
})

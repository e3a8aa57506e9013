/** Answers of finds, worked out in one worker that the page keeps; where there is none, or it fails, on the page, one at a time with rests between. */

import type { ReckonOptions } from '../../core/reckon.ts'
import type { FindAnswer, FindTold } from '../../core/records/find-answer.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { type Beside, KeptWorker } from '../view/kept-worker.ts'
import { answerOrNone } from './answer-or-none.ts'

export interface FindsAsked {
  finds: readonly FindTold[]
  wardrobe: Wardrobe
  options: ReckonOptions
}
export type AskFinds = (finds: readonly FindTold[], wardrobe: Wardrobe, options: ReckonOptions) => Promise<FindAnswer[]>

export class FindsApart {
  private readonly worker: KeptWorker<FindsAsked, FindAnswer[]>

  constructor(makeWorker: () => Beside | null = browsersWorker) {
    this.worker = new KeptWorker(makeWorker, workedOutHere)
  }

  readonly ask: AskFinds = (finds, wardrobe, options) => this.worker.ask({ finds, wardrobe, options })
}

async function workedOutHere({ finds, wardrobe, options }: FindsAsked): Promise<FindAnswer[]> {
  const answers: FindAnswer[] = []
  for (const find of finds) {
    await new Promise((rested) => setTimeout(rested))
    answers.push(await answerOrNone(find, wardrobe, options))
  }
  return answers
}

/** null: this browser, or a test, has none. */
function browsersWorker(): Beside | null {
  if (typeof Worker === 'undefined') return null
  return new Worker(new URL('./find-worker.ts', import.meta.url), { type: 'module' })
}

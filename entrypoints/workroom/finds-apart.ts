/** Answers of finds, worked out in one worker that the page keeps; where there is none, or it fails, on the page, one at a time with rests between. */

import type { ReckonOptions } from '../../core/reckon.ts'
import type { FindAnswer, FindTold } from '../../core/records/find-answer.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Beside } from '../view/answers-apart.ts'
import { answerOrNone } from './answer-or-none.ts'
import type { FindsAnswered, FindsAsked } from './find-worker.ts'

export type AskFinds = (finds: readonly FindTold[], wardrobe: Wardrobe, options: ReckonOptions) => Promise<FindAnswer[]>

interface Waiting {
  asked: FindsAsked
  done: (answers: Promise<FindAnswer[]>) => void
}

export class FindsApart {
  private readonly makeWorker: () => Beside | null
  /** undefined: not asked for yet; null: there is none. */
  private worker: Beside | null | undefined
  private lastId = 0
  private readonly waiting = new Map<number, Waiting>()

  constructor(makeWorker: () => Beside | null = browsersWorker) {
    this.makeWorker = makeWorker
  }

  readonly ask: AskFinds = (finds, wardrobe, options) => {
    const worker = this.kept()
    const asked = { id: ++this.lastId, finds, wardrobe, options }
    if (worker === null) return workedOutHere(asked)
    return new Promise((done) => {
      this.waiting.set(asked.id, { asked, done })
      worker.postMessage(asked)
    })
  }

  private kept(): Beside | null {
    if (this.worker === undefined) {
      this.worker = this.makeWorker()
      this.worker?.addEventListener('message', ({ data: { id, answers } }: MessageEvent<FindsAnswered>) => {
        this.waiting.get(id)?.done(Promise.resolve(answers))
        this.waiting.delete(id)
      })
      this.worker?.addEventListener('error', () => this.withoutWorker())
    }
    return this.worker
  }

  /** The worker could not be loaded, or broke: the page does what waits, and what comes. */
  private withoutWorker(): void {
    this.worker?.terminate()
    this.worker = null
    for (const { asked, done } of this.waiting.values()) done(workedOutHere(asked))
    this.waiting.clear()
  }
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

/**
 * Whole answers, worked out in one worker that the page keeps. Of what is asked while it works only the newest is worked out next; what was
 * overtaken is told as null. Where there are no workers, or theirs fails, the page works it out itself, after it has been painted.
 */
import type { ReckonOptions, ReckonRequest } from '../../core/reckon.ts'
import { type Beside, KeptWorker } from './kept-worker.ts'
import { type WholeAnswer, wholeAnswer } from './whole-answer.ts'

export interface AnswerAsked {
  request: ReckonRequest
  options: ReckonOptions
}
interface Waiting {
  asked: AnswerAsked
  done: (answer: WholeAnswer | null) => void
  failed: (error: unknown) => void
}

export class AnswersApart {
  /** Its answer is null where it could not be worked out there. */
  private readonly worker: KeptWorker<AnswerAsked, WholeAnswer | null>
  private isWorking = false
  private next: Waiting | null = null

  constructor(makeWorker: () => Beside | null = browsersWorker) {
    this.worker = new KeptWorker<AnswerAsked, WholeAnswer | null>(makeWorker, workedOutHere)
  }

  /** The answer; null where a newer request overtook this one before it was begun. */
  ask(request: ReckonRequest, options: ReckonOptions): Promise<WholeAnswer | null> {
    return new Promise((done, failed) => {
      this.next?.done(null)
      this.next = { asked: { request, options }, done, failed }
      if (!this.isWorking) this.begin()
    })
  }

  private begin(): void {
    const { next } = this
    this.next = null
    this.isWorking = next !== null
    if (next === null) return
    const { asked, done, failed } = next
    const answered = async () => (await this.worker.ask(asked)) ?? workedOutHere(asked)
    answered().then(
      (answer) => {
        done(answer)
        this.begin()
      },
      (error) => {
        failed(error)
        this.begin()
      }
    )
  }
}

async function workedOutHere({ request, options }: AnswerAsked): Promise<WholeAnswer> {
  await new Promise((painted) => setTimeout(painted))
  return wholeAnswer(request, options)
}

/** null: this browser, or a test, has none. */
function browsersWorker(): Beside | null {
  if (typeof Worker === 'undefined') return null
  return new Worker(new URL('./answer-worker.ts', import.meta.url), { type: 'module' })
}

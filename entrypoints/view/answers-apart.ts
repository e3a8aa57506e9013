/**
 * Whole answers, worked out in one worker that the page keeps. Of what is asked while it works only the newest is worked out next; what was
 * overtaken is told as null. Where there are no workers, or theirs fails, the page works it out itself, after it has been painted.
 */
import type { ReckonOptions, ReckonRequest } from '../../core/reckon.ts'
import type { AnsweredApart, AskedApart } from './answer-worker.ts'
import { type WholeAnswer, wholeAnswer } from './whole-answer.ts'

interface Asked {
  request: ReckonRequest
  options: ReckonOptions
  done: (answer: WholeAnswer | null) => void
  failed: (error: unknown) => void
}
/** What the page needs of a worker. */
export type Beside = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>

export class AnswersApart {
  private readonly makeWorker: () => Beside | null
  /** undefined: not asked for yet; null: there is none. */
  private worker: Beside | null | undefined
  private lastId = 0
  private working: { id: number; asked: Asked } | null = null
  private next: Asked | null = null

  constructor(makeWorker: () => Beside | null = browsersWorker) {
    this.makeWorker = makeWorker
  }

  /** The answer; null where a newer request overtook this one before it was begun. */
  ask(request: ReckonRequest, options: ReckonOptions): Promise<WholeAnswer | null> {
    return new Promise((done, failed) => {
      const asked = { request, options, done, failed }
      this.next?.done(null)
      this.next = asked
      if (this.working === null) this.begin()
    })
  }

  private begin(): void {
    const asked = this.next
    if (asked === null) return
    this.next = null
    const worker = this.kept()
    this.lastId++
    this.working = { id: this.lastId, asked }
    if (worker === null) {
      const { id } = this.working
      setTimeout(() => this.take(id, workedOutHere(asked)))
    } else worker.postMessage({ id: this.lastId, request: asked.request, options: asked.options } satisfies AskedApart)
  }

  private kept(): Beside | null {
    if (this.worker === undefined) {
      this.worker = this.makeWorker()
      this.worker?.addEventListener('message', ({ data: { id, answer } }: MessageEvent<AnsweredApart>) => {
        const asked = this.working?.asked
        if (asked !== undefined) this.take(id, answer === null ? workedOutHere(asked) : () => answer)
      })
      this.worker?.addEventListener('error', () => this.withoutWorker())
    }
    return this.worker
  }

  /** The worker could not be loaded, or failed at this request: the page does it, and says what is wrong if it fails too. */
  private withoutWorker(): void {
    this.worker?.terminate()
    this.worker = null
    const { working } = this
    if (working !== null) this.take(working.id, workedOutHere(working.asked))
  }

  private take(id: number, answer: () => WholeAnswer): void {
    if (this.working?.id !== id) return
    const { asked } = this.working
    this.working = null
    try {
      asked.done(answer())
    } catch (error) {
      asked.failed(error)
    }
    this.begin()
  }
}

const workedOutHere =
  ({ request, options }: Asked) =>
  (): WholeAnswer =>
    wholeAnswer(request, options)

/** null: this browser, or a test, has none. */
function browsersWorker(): Beside | null {
  if (typeof Worker === 'undefined') return null
  return new Worker(new URL('./answer-worker.ts', import.meta.url), { type: 'module' })
}

/**
 * A worker that a page keeps, and each answer by the number it was asked under. Where there are no workers, or theirs can't be loaded or breaks,
 * the page works out what waits, and what comes, itself.
 */

/** What a page needs of a worker. */
export type Beside = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>

/** What goes to a worker and what comes back. */
export type AskedOf<Asked> = Asked & { id: number }
export interface AnsweredBy<Answer> {
  id: number
  answer: Answer
}

export class KeptWorker<Asked extends object, Answer> {
  private readonly make: () => Beside | null
  private readonly here: (asked: Asked) => Promise<Answer>
  /** undefined: not asked for yet; null: there is none. */
  private worker: Beside | null | undefined
  private lastId = 0
  private readonly waiting = new Map<number, { asked: Asked; done: (answer: Answer | Promise<Answer>) => void }>()

  /** `make`: null where this browser, or a test, has none. `here`: the page's own way to the same answer. */
  constructor(make: () => Beside | null, here: (asked: Asked) => Promise<Answer>) {
    this.make = make
    this.here = here
  }

  ask(asked: Asked): Promise<Answer> {
    const worker = this.kept()
    if (worker === null) return this.here(asked)
    const id = ++this.lastId
    return new Promise((done) => {
      this.waiting.set(id, { asked, done })
      worker.postMessage({ ...asked, id } satisfies AskedOf<Asked>)
    })
  }

  private kept(): Beside | null {
    if (this.worker === undefined) {
      this.worker = this.make()
      this.worker?.addEventListener('message', ({ data: { id, answer } }: MessageEvent<AnsweredBy<Answer>>) => {
        this.waiting.get(id)?.done(answer)
        this.waiting.delete(id)
      })
      this.worker?.addEventListener('error', () => this.withoutWorker())
    }
    return this.worker
  }

  private withoutWorker(): void {
    this.worker?.terminate()
    this.worker = null
    for (const { asked, done } of this.waiting.values()) done(this.here(asked))
    this.waiting.clear()
  }
}

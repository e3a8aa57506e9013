/**
 * The one way in which pages save: acts run one after another, each whole or not at all, and “saved” is said once an act is committed.
 * What could not be saved is told with its reason and waits to be tried again; nothing that was typed for it is forgotten meanwhile.
 */
import type { Records } from '../../core/records/database.ts'
import { Clashing } from '../../core/records/edit.ts'
import { inOneGo } from '../../core/records/in-one-go.ts'
import type { Clash, Settle } from '../../core/records/three-way.ts'
import { type Trouble, troubleOf } from '../../core/records/trouble.ts'

export interface SavingNow {
  /** `not-saved` while there is trouble. */
  is: 'saved' | 'saving' | 'not-saved'
  trouble: Trouble | null
  /** Acts that wait to be tried again. */
  waiting: number
  /** What was changed here and elsewhere, each time to something else; it waits until the person says which counts. */
  clashes: readonly Clash[]
}

/** Said of an act that clashes: whose value counts, or neither, and it is left as it stands in its form. */
interface Clashed {
  clashes: readonly Clash[]
  settle: (how: Settle) => void
}

export interface ActOptions<T> {
  /** Runs once the act is committed. */
  saved?: (value: T) => void
  /** The act is told and not held to be tried again: what it was made of still stands in a form, which can be sent again. */
  inForm?: boolean
}

export class Saving {
  private readonly records: Records
  private readonly told = new Set<(now: SavingNow) => void>()
  private held: (() => Promise<boolean>)[] = []
  private clashed: Clashed[] = []
  private trouble: Trouble | null = null
  private running = 0
  private last: Promise<unknown> = Promise.resolve()

  constructor(records: Records) {
    this.records = records
    records.onEnded((why) => this.tell(why))
  }

  now(): SavingNow {
    const clashes = this.clashed[0]?.clashes ?? []
    const is = this.trouble !== null || clashes.length > 0 ? 'not-saved' : this.running > 0 ? 'saving' : 'saved'
    return { is, trouble: this.trouble, waiting: this.held.length, clashes }
  }

  /** Calls back with each change; returns the way to stop. */
  watch(onChange: (now: SavingNow) => void): () => void {
    this.told.add(onChange)
    return () => this.told.delete(onChange)
  }

  /** Saves; the act writes with the records it is handed. True once everything that it wrote is committed, false where nothing of it was. Never rejects. */
  run<T>(act: (records: Records, settle: Settle) => Promise<T>, options: ActOptions<T> = {}, settle: Settle = null): Promise<boolean> {
    const { saved, inForm = false } = options
    let clashes: readonly Clash[] = []
    const once = async (): Promise<boolean> => {
      let value: T
      try {
        value = await inOneGo(this.records, (records) => act(records, settle))
      } catch (error) {
        if (error instanceof Clashing) {
          clashes = error.clashes
          return false
        }
        if (!inForm && troubleOf(error) !== 'gone') this.held.push(once)
        this.tell(this.records.ended() ?? troubleOf(error))
        console.error(error)
        return false
      }
      // a later success does not unsay what is still waiting
      if (this.held.length === 0 && this.records.ended() === null) this.tell(null)
      saved?.(value)
      return true
    }
    return this.inTurn(once).then((done) => {
      if (clashes.length === 0) return done
      return new Promise((answer) => this.clash(clashes, (how) => answer(how === null ? false : this.run(act, options, how))))
    })
  }

  /** Whose value counts in the clash that is told; null: neither, what was typed stays where it is. */
  settle(how: Settle): void {
    const [first] = this.clashed
    first?.settle(how)
  }

  private clash(clashes: readonly Clash[], answer: (how: Settle) => void): void {
    const clashed: Clashed = {
      clashes,
      settle: (how) => {
        this.clashed = this.clashed.filter((one) => one !== clashed)
        this.changed()
        answer(how)
      }
    }
    this.clashed.push(clashed)
    this.changed()
  }

  /** Forgets a draft: only once everything that it was typed for is saved. */
  forget(act: (records: Records) => Promise<unknown>): Promise<boolean> {
    return this.inTurn(async () => {
      if (this.trouble === null) return this.once(act)
      if (this.held.length > 0) this.held.push(() => this.once(act))
      return false
    })
  }

  /** Tries what waits once more, in its order; what fails again goes on waiting. */
  async again(): Promise<void> {
    const held = this.held
    this.held = []
    for (const [place, act] of held.entries()) {
      if (await this.inTurn(act)) continue
      // those behind it were made after it: they wait with it
      this.held.push(...held.slice(place + 1))
      break
    }
    if (this.held.length === 0 && this.records.ended() === null) this.tell(null)
  }

  /** The sentence was read. What waits goes on waiting, and is told with the next. */
  read(): void {
    if (this.held.length === 0 && this.records.ended() === null) this.tell(null)
  }

  /** Something that is saved could not be saved or reached outside an act. */
  tell(trouble: Trouble | null): void {
    this.trouble = trouble
    this.changed()
  }

  private async once(act: (records: Records) => Promise<unknown>): Promise<boolean> {
    try {
      await inOneGo(this.records, act)
      return true
    } catch (error) {
      this.tell(this.records.ended() ?? troubleOf(error))
      return false
    }
  }

  private inTurn(act: () => Promise<boolean>): Promise<boolean> {
    this.running++
    this.changed()
    const done = this.last.then(act).finally(() => {
      this.running--
      this.changed()
    })
    this.last = done
    return done
  }

  private changed(): void {
    const now = this.now()
    for (const onChange of this.told) onChange(now)
  }
}

/**
 * The finds as the workroom holds them: the last kept at once, then all by their summaries, a slice at a time, and from then on what is written,
 * on this page or another. No listing is read.
 */
import { type Records, watch } from '../../core/records/database.ts'
import {
  everyFind,
  type FindRows,
  fillSummaries,
  findsSince,
  firstFinds,
  isFilled,
  MANY_AT_ONCE,
  type Written,
  writtenSoFar
} from '../../core/records/finds.ts'
import { areBatched, spreadBatches } from '../../core/records/spread-summaries.ts'
import { isThere, type Summary } from '../../core/records/summaries.ts'
import type { AnswerRow, VerdictRow } from '../../core/records/verdicts.ts'

/** One find; another object whenever anything of it is another. */
export interface Find {
  summary: Summary
  /** The answer that was kept last; whether it still stands is for who shows it to ask. */
  verdict: VerdictRow | null
}

export interface FindsNow {
  /** Oldest first, as they were made; the last kept alone until all are here. */
  finds: readonly Find[]
  /** The same by id, always as they are now. */
  byId: ReadonlyMap<string, Find>
  /** How many there are in all. */
  count: number
  isWhole: boolean
  /** How many summaries were made or brought to their place so far, while some wait for it; null: they are all there. */
  filled: number | null
  /** What the first rows are drawn from. */
  firstAnswers: readonly AnswerRow[]
}

/** So many as stand on the first screen: all of them are drawn. */
const FIRST = 12
/** So many are told at once while all are read: a page draws nothing of most of them, but has to know each. */
const TOLD_AT_ONCE = 1600
/** By then the first screen is painted. */
const FIRST_SCREEN_MS = 200
/** Answers that come in are shown together, ms. */
const TOGETHER_MS = 250

export class FindsHeld {
  private readonly records: Records
  private readonly tell: (now: FindsNow) => void
  private readonly onError: (error: unknown) => void
  private readonly held = new Map<string, Find>()
  /** Answers whose find is not here yet, or no more. */
  private readonly verdicts = new Map<string, VerdictRow>()
  private order: Find[] | null = null
  private count = 0
  private isWhole = false
  private filled: number | null = null
  private firstAnswers: readonly AnswerRow[] = []
  private written: Written = { summaries: 0, verdicts: 0 }
  private stopWatching: () => void = () => undefined
  private isWanted = true
  private telling: ReturnType<typeof setTimeout> | undefined

  constructor(records: Records, tell: (now: FindsNow) => void, onError: (error: unknown) => void) {
    this.records = records
    this.tell = tell
    this.onError = onError
    this.begin().catch(onError)
  }

  stop(): void {
    this.isWanted = false
    clearTimeout(this.telling)
    this.stopWatching()
  }

  private async begin(): Promise<void> {
    const [isReady, first] = await Promise.all([isFilled(this.records), firstFinds(this.records, FIRST)])
    if (!isReady) {
      this.filled = 0
      first.count = await this.records.rows('listingsKept').count()
    }
    if (!this.isWanted) return
    this.written = first.written
    this.count = first.count
    this.firstAnswers = first.answers
    this.take(first)
    this.isWhole = isReady && this.held.size >= first.count
    this.follow()
    this.say()
    if (!isReady) await this.fill()
    if (!this.isWhole) {
      // the first screen is drawn and painted before the rest is read
      await new Promise((rested) => setTimeout(rested, FIRST_SCREEN_MS))
      if (this.isWanted) await this.readAll()
    }
    await this.spread()
  }

  /** Summaries that came together, each to its own place; the finds are shown meanwhile. */
  private async spread(): Promise<void> {
    if (!this.isWanted || this.filled !== null || !(await areBatched(this.records))) return
    const made = (so: number) => {
      this.filled = so
      this.sayTogether()
    }
    made(0)
    await spreadBatches(this.records, made, rest)
    this.filled = null
    this.say()
  }

  /** Everything anew, a slice at a time. */
  private async readAll(): Promise<void> {
    await rest()
    const before = new Set(this.held.keys())
    let untold = 0
    const take = (rows: FindRows) => {
      this.take(rows)
      for (const { id } of rows.summaries) before.delete(id)
      untold += rows.summaries.length
      if (untold < TOLD_AT_ONCE || this.isWhole) return
      untold = 0
      this.say()
    }
    await everyFind(this.records, take, () => this.isWanted)
    if (!this.isWanted) return
    // what is in the table no more, not even as removed
    for (const id of before) if (this.held.delete(id)) this.order = null
    this.isWhole = true
    this.count = this.held.size
    this.say()
  }

  /** Summaries of finds from before there were any; they come in by what is watched. */
  private async fill(): Promise<void> {
    const made = (so: number) => {
      this.filled = so
    }
    await fillSummaries(this.records, made, rest)
    this.filled = null
    this.isWhole = false
  }

  private follow(): void {
    this.stopWatching()
    const since = { ...this.written }
    this.stopWatching = watch(
      () => findsSince(this.records, since),
      (rows) => {
        if (!this.isWanted || rows.summaries.length + rows.verdicts.length === 0) return
        if (Math.max(rows.summaries.length, rows.verdicts.length) > MANY_AT_ONCE) {
          this.stopWatching()
          this.readAnew().catch(this.onError)
          return
        }
        this.take(rows)
        if (this.isWhole) this.count = this.held.size
        if (rows.summaries.length > 0) this.say()
        else this.sayTogether()
        this.follow()
        if (rows.summaries.length > 0) this.spread().catch(this.onError)
      },
      this.onError
    )
  }

  /** So much was written at once that all is read again. */
  private async readAnew(): Promise<void> {
    this.written = await writtenSoFar(this.records)
    await this.readAll()
    if (!this.isWanted) return
    this.follow()
    await this.spread()
  }

  private take({ summaries, verdicts }: FindRows): void {
    for (const row of verdicts) {
      this.verdicts.set(row.id, row)
      this.written.verdicts = Math.max(this.written.verdicts, row.written)
      const find = this.held.get(row.id)
      if (find !== undefined && find.verdict?.written !== row.written) this.put({ summary: find.summary, verdict: row })
    }
    for (const row of summaries) {
      this.written.summaries = Math.max(this.written.summaries, row.written)
      if (isThere(row)) this.put({ summary: row, verdict: this.verdicts.get(row.id) ?? null })
      else if (this.held.delete(row.id)) this.order = null
    }
  }

  private put(find: Find): void {
    const { id } = find.summary
    const before = this.held.get(id)
    if (before !== undefined && before.summary.written > find.summary.written) return
    // read again as it was: what is known of it stays known
    if (before?.summary.written === find.summary.written && before.verdict?.written === find.verdict?.written) return
    this.held.set(id, find)
    // in the same place: the order stays, and what was handed out is not changed
    if (before === undefined || before.summary.createdAt !== find.summary.createdAt) this.order = null
  }

  private now(): FindsNow {
    const finds =
      this.order === null ? [...this.held.values()].sort(olderFirst) : this.order.flatMap(({ summary }) => this.held.get(summary.id) ?? [])
    this.order = finds
    const { count, isWhole, filled, firstAnswers } = this
    return { finds, byId: this.held, count: Math.max(count, finds.length), isWhole, filled, firstAnswers }
  }

  private say(): void {
    clearTimeout(this.telling)
    this.telling = undefined
    if (this.isWanted) this.tell(this.now())
  }

  private sayTogether(): void {
    this.telling ??= setTimeout(() => this.say(), TOGETHER_MS)
  }
}

const rest = (): Promise<void> => new Promise((rested) => setTimeout(rested))

const olderFirst = ({ summary: a }: Find, { summary: b }: Find): number =>
  a.createdAt < b.createdAt ? -1 : a.createdAt > b.createdAt ? 1 : a.id < b.id ? -1 : 1

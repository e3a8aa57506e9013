/**
 * Works the answers of finds out anew where what they stand on has changed, and nothing else: rows in view first, a few at a time, in a worker,
 * and keeps each with its find. It can be stopped and goes on where it was.
 */
import type { Records } from '../../core/records/database.ts'
import type { FindTold } from '../../core/records/find-answer.ts'
import { type Answered, keepAnswers, listingsOf } from '../../core/records/finds.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { toldMark, toldOf } from '../../core/records/summaries.ts'
import { standsOn, type WearerMark, wordedAs } from '../../core/records/verdicts.ts'
import type { Wording } from '../../core/words/say.ts'
import type { AskFinds } from './finds-apart.ts'
import type { Find } from './finds-held.ts'

/** What is asked for: every find, in the order in which they are shown, and for whom. */
export interface Wanted {
  finds: readonly Find[]
  wardrobe: Wardrobe
  wearer: WearerMark
  wording: Wording
}
export interface Progress {
  /** How many are still to be worked out; 0: none. */
  left: number
  /** Of how many, since it last had nothing to do. */
  of: number
  isStopped: boolean
}
export const NOTHING_TO_DO: Progress = { left: 0, of: 0, isStopped: false }

/** Few enough that what comes into view does not wait long. */
const AT_ONCE = 6

/** Does the answer that was kept with a find still stand? Asked once for each find as it is and each wardrobe. */
export function isFresh(find: Find, wearer: WearerMark): boolean {
  let known = freshness.get(wearer)
  if (known === undefined) {
    known = new WeakMap()
    freshness.set(wearer, known)
  }
  let fresh = known.get(find)
  if (fresh === undefined) {
    const { summary, verdict } = find
    fresh = verdict !== null && verdict.of === standsOn(summary.told, wearer(summary.personId, verdict.kind))
    known.set(find, fresh)
  }
  return fresh
}
const freshness = new WeakMap<WearerMark, WeakMap<Find, boolean>>()

export class AnswerFinds {
  private readonly records: Records
  private readonly askFinds: AskFinds
  private readonly tell: (progress: Progress) => void
  private wanted: Wanted | null = null
  /** Stale ones by id; `inView` of them go first, also for their sentences alone. */
  private readonly stale = new Map<string, Find>()
  private inView: readonly string[] = []
  private worded = new Set<string>()
  /** Kept, and not yet come back with its find: it is not worked out twice. */
  private readonly kept = new Map<string, Pick<Answered, 'of' | 'kind'>>()
  private isWorking = false
  private isStopped = false
  private isEnded = false
  private of = 0

  constructor(records: Records, askFinds: AskFinds, tell: (progress: Progress) => void) {
    this.records = records
    this.askFinds = askFinds
    this.tell = tell
  }

  /** What is wanted from now on; what is fresh is not worked out. */
  want(wanted: Wanted): void {
    this.wanted = wanted
    this.stale.clear()
    for (const find of wanted.finds) {
      const { id } = find.summary
      if (isFresh(find, wanted.wearer)) this.kept.delete(id)
      else if (!this.isKept(find, wanted.wearer)) this.stale.set(id, find)
    }
    this.of = Math.max(this.of, this.stale.size)
    this.goOnIfAsked()
  }

  /** The rows in view, and those of them whose sentences are in other words than the page's. */
  see(inView: readonly string[], otherwiseWorded: readonly string[]): void {
    this.inView = inView
    this.worded = new Set(otherwiseWorded)
    this.goOnIfAsked()
  }

  stop(): void {
    this.isStopped = true
    this.say()
  }
  goOn(): void {
    this.isStopped = false
    this.goOnIfAsked()
  }
  end(): void {
    this.isEnded = true
  }

  private goOnIfAsked(): void {
    this.say()
    if (this.isWorking || this.isStopped || this.isEnded) return
    this.isWorking = true
    void this.work().finally(() => {
      this.isWorking = false
    })
  }

  private async work(): Promise<void> {
    for (;;) {
      const ids = this.next()
      const { wanted } = this
      if (wanted === null || ids.length === 0 || this.isStopped || this.isEnded) break
      try {
        await this.answer(ids, wanted)
      } catch (error) {
        // what can't be kept is not tried over and over: it is asked for again when something changes
        console.error(error)
        this.isStopped = true
      }
      this.say()
    }
    if (this.stale.size === 0) this.of = 0
    this.say()
  }

  private next(): string[] {
    const first = this.inView.filter((id) => this.stale.has(id) || this.worded.has(id)).slice(0, AT_ONCE)
    if (first.length > 0) return first
    const ids: string[] = []
    for (const id of this.stale.keys()) {
      ids.push(id)
      if (ids.length === AT_ONCE) break
    }
    return ids
  }

  private async answer(ids: readonly string[], { wardrobe, wearer, wording }: Wanted): Promise<void> {
    const listings = await listingsOf(this.records, ids)
    const { units, language, currency } = wording
    const told = listings.map((listing): FindTold => ({ id: listing.id, ...toldOf(listing) }))
    const answers = await this.askFinds(told, wardrobe, { units, language, currency })
    const answered = answers.flatMap((answer): Answered[] => {
      const listing = listings.find(({ id }) => id === answer.id)
      if (listing === undefined) return []
      const told = toldMark(listing)
      return [{ ...answer, told, of: standsOn(told, wearer(listing.personId, answer.kind)), worded: wordedAs(wording) }]
    })
    if (this.isEnded) return
    await keepAnswers(this.records, answered)
    for (const { id, of, kind } of answered) this.kept.set(id, { of, kind })
    for (const id of ids) {
      this.stale.delete(id)
      this.worded.delete(id)
    }
  }

  private isKept({ summary: { id, told, personId } }: Find, wearer: WearerMark): boolean {
    const kept = this.kept.get(id)
    return kept !== undefined && kept.of === standsOn(told, wearer(personId, kept.kind))
  }

  private say(): void {
    if (!this.isEnded) this.tell({ left: this.stale.size, of: this.of, isStopped: this.isStopped })
  }
}

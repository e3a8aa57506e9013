import { describe, expect, it } from 'vitest'
import type { ReckonRequest } from '../../../core/reckon.ts'
import { AnswersApart } from '../../../entrypoints/view/answers-apart.ts'
import type { Beside } from '../../../entrypoints/view/kept-worker.ts'
import { wholeAnswer } from '../../../entrypoints/view/whole-answer.ts'
import { garment } from '../../corpus/plans/plan-case.ts'
import { rowan } from '../../corpus/plans/wearers.ts'

const OPTIONS = { units: 'cm' as const }
const trousers = (waist: number): ReckonRequest => ({
  garment: garment('trousers', { waist, hip: 1050, thigh: 640 }),
  wearer: rowan,
  means: { level: 3, tailor: false }
})

/** A worker that answers when it is told to. */
class Hand implements Beside {
  asked: { id: number; request: ReckonRequest }[] = []
  ended = false
  private readonly listeners = new Map<string, (event: never) => void>()
  postMessage(message: unknown): void {
    this.asked.push(message as (typeof this.asked)[number])
  }
  addEventListener(kind: string, listener: unknown): void {
    this.listeners.set(kind, listener as (event: never) => void)
  }
  terminate(): void {
    this.ended = true
  }
  answer(): void {
    const last = this.asked.at(-1)
    if (last === undefined) throw new Error('nothing was asked')
    this.listeners.get('message')?.({ data: { id: last.id, answer: wholeAnswer(last.request, OPTIONS) } } as never)
  }
  fail(): void {
    this.listeners.get('error')?.({} as never)
  }
}

describe('answers worked out beside the page', () => {
  it('are what the page itself would work out', async () => {
    const hand = new Hand()
    const asked = new AnswersApart(() => hand).ask(trousers(860), OPTIONS)
    hand.answer()
    expect(await asked).toEqual(wholeAnswer(trousers(860), OPTIONS))
  })
  it('are of the newest that waits; what was overtaken is told so, and never worked out', async () => {
    const hand = new Hand()
    const answers = new AnswersApart(() => hand)
    const [first, second, third] = [860, 870, 880].map((waist) => answers.ask(trousers(waist), OPTIONS))
    expect(hand.asked).toHaveLength(1)
    expect(await second).toBeNull()
    hand.answer()
    expect((await first)?.reckoning.gaps[0]?.garmentMm).toBe(860)
    expect(hand.asked.map(({ request }) => request.garment.measures[0]?.mm)).toEqual([860, 880])
    hand.answer()
    expect((await third)?.reckoning.gaps[0]?.garmentMm).toBe(880)
  })
  it('are worked out by the page where there is no worker, or its own fails', async () => {
    expect(await new AnswersApart(() => null).ask(trousers(860), OPTIONS)).toEqual(wholeAnswer(trousers(860), OPTIONS))
    const hand = new Hand()
    const answers = new AnswersApart(() => hand)
    const asked = answers.ask(trousers(870), OPTIONS)
    hand.fail()
    expect(await asked).toEqual(wholeAnswer(trousers(870), OPTIONS))
    expect(hand.ended).toBe(true)
    expect(await answers.ask(trousers(880), OPTIONS)).toEqual(wholeAnswer(trousers(880), OPTIONS))
  })
  it('that can’t be worked out at all are told as failed, and the next is asked all the same', async () => {
    const answers = new AnswersApart(() => null)
    const broken = { ...trousers(860), garment: null } as unknown as ReckonRequest
    await expect(answers.ask(broken, OPTIONS)).rejects.toThrow()
    expect(await answers.ask(trousers(860), OPTIONS)).not.toBeNull()
  })
})

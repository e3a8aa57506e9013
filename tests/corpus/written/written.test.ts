/** Each text in the manner of real listings, read whole, beside what a careful buyer reads in it. */
import { describe, expect, it } from 'vitest'
import { NOT_YET } from './not-yet.ts'
import { written } from './written.ts'
import { unlike } from './written-case.ts'

describe('texts in the manner of real listings', () => {
  const cases = Object.entries(written).flatMap(([file, list]) => list.map((one) => ({ name: `${file} ${one.id} (${one.class})`, one })))
  const reasons = new Map(NOT_YET.map(({ id, because }) => [id, because]))

  it.each(cases.filter(({ one }) => !reasons.has(one.id)))('$name', ({ one }) => {
    expect(unlike(one)).toEqual([])
  })

  it('what is not read yet stands with its reason, and is still not read', () => {
    const known = new Map(cases.map(({ one }) => [one.id, one]))
    for (const [id, because] of reasons) {
      const one = known.get(id)
      if (one === undefined) throw new Error(`not-yet.ts names ${id}, which is no case`)
      expect(because.length).toBeGreaterThan(20)
      expect(unlike(one), `${id} is read now: take it out of not-yet.ts`).not.toEqual([])
    }
  })
})

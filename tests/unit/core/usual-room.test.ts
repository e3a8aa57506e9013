/** The room that a garment of a kind usually has, where its fit is not told. */
import { describe, expect, it } from 'vitest'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import { easeFor } from '../../../core/wearer/ease.ts'
import { usualRoom } from '../../../core/wearer/usual-room.ts'

describe('usual room', () => {
  it('lies between what a close and a loose one is wanted with, at every point that has an ease', () => {
    let rows = 0
    for (const kind of GARMENT_KINDS) {
      for (const { point, fits } of easeFor(kind)) {
        const room = usualRoom(point, kind)
        expect(room?.mm).toBeGreaterThanOrEqual(fits.close[0])
        expect(room?.mm).toBeLessThanOrEqual(fits.loose[1])
        rows++
      }
    }
    expect(rows).toBeGreaterThan(40)
  })
  it('of a shirt: a quarter of 75, half of 100, a quarter of 180', () => expect(usualRoom('chest', 'shirt')?.mm).toBe(113.75))
  it('is no surer than the eases it took the place of', () => {
    const before = { shirt: 60, 'knit-top': 60, jumper: 70, jacket: 45, coat: 70, waistcoat: 50, dress: 55, jumpsuit: 60 } as const
    for (const [kind, sd] of Object.entries(before) as [keyof typeof before, number][])
      expect(usualRoom('chest', kind)?.sd).toBeGreaterThanOrEqual(sd)
  })
  it('says nothing of a point or kind that the table does not know', () => {
    expect(usualRoom('chest', 'trousers')).toBeUndefined()
    expect(usualRoom('chest', 'other')).toBeUndefined()
  })
})

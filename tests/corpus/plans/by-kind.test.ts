import { describe, expect, it } from 'vitest'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import { reckon } from '../../../core/reckon.ts'
import { byKind } from './by-kind.ts'
import { garment } from './plan-case.ts'
import { rowan } from './wearers.ts'

describe('every kind: as it is, altered, left', () => {
  it.each(byKind.map((one) => [one.kind, one.verdict, one.why, one] as const))('%s: %s, %s', (_kind, _verdict, _why, one) => {
    const reckoning = reckon(one.request)
    expect(reckoning.verdict, reckoning.because.map(({ text }) => text).join(' ')).toBe(one.verdict)
    const advised = reckoning.plans[0]
    if (one.jobs !== undefined) {
      expect(advised?.alterations.map(({ id }) => id).sort()).toEqual([...one.jobs].sort())
      expect(advised?.misfit.reduce((sum, { mm }) => sum + Math.abs(mm), 0)).toBeLessThanOrEqual(2)
    }
    const stays = (advised?.misfit ?? reckoning.asItIs.misfit).map(({ point }) => point)
    for (const point of one.wrong ?? []) expect(stays).toContain(point)
    if (one.verdict === 'wears-as-is') expect(reckoning.asItIs.misfit).toEqual([])
    expect(reckoning.because[0]?.text.length).toBeGreaterThan(10)
  })
  it('each kind has its three', () => {
    for (const kind of GARMENT_KINDS.filter((one) => one !== 'other')) {
      const verdicts = byKind.filter((one) => one.kind === kind).map(({ verdict }) => verdict)
      expect(verdicts, kind).toHaveLength(3)
      expect(verdicts[0], kind).toBe('wears-as-is')
      expect(['alters-to-fit', 'needs-a-tailor'], kind).toContain(verdicts[1])
      expect(verdicts[2], kind).toBe('leave-it')
    }
  })
  it('something else is not judged, and says why', () => {
    const reckoning = reckon({ garment: garment('other', { waist: 800 }), wearer: rowan, means: { level: 3, tailor: false } })
    expect(reckoning.verdict).toBe('too-little-told')
    expect(reckoning.because.map(({ code }) => code)).toEqual(['verdict.kind-missing'])
    expect(reckoning.plans).toEqual([])
  })
})

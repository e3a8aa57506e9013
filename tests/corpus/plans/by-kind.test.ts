import { describe, expect, it } from 'vitest'
import { GARMENT_KINDS } from '../../../core/garment/kinds.ts'
import { reckon } from '../../../core/reckon.ts'
import { byKind } from './by-kind.ts'
import { garment } from './plan-case.ts'
import { rowan } from './wearers.ts'

describe('every kind: as it is, altered, left', () => {
  it.each(byKind.map((one) => [one.kind, one.verdict, one.why, one] as const))(
    '%s: %s, %s',
    (_kind, _verdict, _why, { verdict, request }) => {
      const reckoning = reckon(request)
      expect(reckoning.verdict, reckoning.because.map(({ text }) => text).join(' ')).toBe(verdict)
      if (verdict === 'alters-to-fit' || verdict === 'needs-a-tailor') expect(reckoning.plans[0]?.alterations.length).toBeGreaterThan(0)
      expect(reckoning.because[0]?.text.length).toBeGreaterThan(10)
    }
  )
  it('each kind has its three', () => {
    for (const kind of GARMENT_KINDS.filter((one) => one !== 'other'))
      expect(
        byKind.filter((one) => one.kind === kind).map(({ verdict }) => verdict),
        kind
      ).toHaveLength(3)
  })
  it('something else is not judged, and says why', () => {
    const reckoning = reckon({ garment: garment('other', { waist: 800 }), wearer: rowan, means: { level: 3, tailor: false } })
    expect(reckoning.verdict).toBe('too-little-told')
    expect(reckoning.because.map(({ code }) => code)).toEqual(['verdict.kind-missing'])
  })
})

import { describe, expect, it, test } from 'vitest'
import { facetsAsked, valuesAsked } from '../../../components/cut/cut-choices.ts'
import { cutSet, isSet, withFacet, withoutCut } from '../../../components/cut/cut-set.ts'
import { cutWords } from '../../../components/cut/cut-words.ts'
import { wordsFor } from '../../../components/words.tsx'
import { FACETS } from '../../../core/ids/cut.ts'
import { GARMENT_KINDS } from '../../../core/ids/kinds.ts'
import type { Correction } from '../../../core/reading/reading.ts'
import { CUT_ROWS } from '../../../core/wearer/cut/cut-table.ts'
import { hasMessage } from '../../../core/words/say.ts'

const words = wordsFor({ units: 'cm' })

describe.each(GARMENT_KINDS.filter((kind) => kind !== 'other'))('%s', (kind) => {
  it('asks for every facet and value that its rows judge, each in words', () => {
    let seen = 0
    for (const row of CUT_ROWS.filter(({ kinds }) => kinds.includes(kind))) {
      expect(facetsAsked(kind), row.facet).toContain(row.facet)
      for (const value of row.values) expect(valuesAsked(kind, row.facet), `${row.facet} ${value}`).toContain(value)
      seen++
    }
    expect(seen).toBeGreaterThan(0)
  })
  it('offers something to choose of each facet, all of it in words', () => {
    for (const facet of facetsAsked(kind)) {
      const values = valuesAsked(kind, facet)
      expect(values.length, facet).toBeGreaterThan(0)
      expect(hasMessage(`facet.${facet}`)).toBe(true)
      for (const value of values) {
        expect(FACETS[facet] as readonly string[]).toContain(value)
        expect(hasMessage(`cut.${facet}.${value}`), `${facet} ${value}`).toBe(true)
      }
    }
  })
})

test('boning is asked of dresses and of no trousers; a facet that was read is asked all the same, and its value offered', () => {
  expect(facetsAsked('dress')).toContain('boning')
  expect(facetsAsked('trousers')).not.toContain('boning')
  expect(facetsAsked('trousers', { boning: {} })).toContain('boning')
  expect(valuesAsked('shorts', 'legLength')).not.toContain('puddle')
  expect(valuesAsked('shorts', 'legLength', 'puddle')).toContain('puddle')
})

test('the line has what was told and seen, in the order of the facets; letters that are shapes keep their capital', () => {
  const told = { sureness: 1, from: 'told' } as const
  expect(
    cutWords(
      'jeans',
      { legLength: { value: 'full', ...told }, rise: { value: 'low', sureness: 0.7, from: 'seen' }, leg: { value: 'bootcut', ...told } },
      words
    )
  ).toBe('Low rise, bootcut, full length')
  expect(cutWords('skirt', { silhouette: { value: 'a-line', ...told }, dressLength: { value: 'midi', ...told } }, words)).toBe(
    'A-line, midi'
  )
  expect(
    cutWords(
      'dress',
      { closing: { value: 'back-zip', ...told }, silhouette: { value: 'wrap', ...told }, dressLength: { value: 'midi', ...told } },
      words
    )
  ).toBe('Wrap, midi, zip at the back')
  expect(cutWords('jeans', { leg: { value: 'straight', sureness: 0.4, from: 'assumed' } }, words)).toBe('')
})

describe('what is set of the cut', () => {
  const corrections: Correction[] = [
    { cut: { rise: 'low' } },
    { add: 'hip', mm: 1000, source: 'own' },
    { cut: { leg: 'wide', rise: 'high' } }
  ]
  it('is the last of each facet, in one correction, and leaves the others alone', () => {
    expect(cutSet(corrections)).toEqual({ rise: 'high', leg: 'wide' })
    expect(withFacet(corrections, 'legLength', 'cropped')).toEqual([
      { add: 'hip', mm: 1000, source: 'own' },
      { cut: { rise: 'high', leg: 'wide', legLength: 'cropped' } }
    ])
    expect(withFacet([{ cut: { leg: 'wide' } }], 'leg', null)).toEqual([])
    expect(withoutCut(corrections)).toEqual([{ add: 'hip', mm: 1000, source: 'own' }])
  })
  it('takes no value that the facet has not', () => expect(withFacet([], 'leg', 'trumpet')).toEqual([]))
  it('sleeves that were set as short count as set, until a facet takes their place', () => {
    const before: Correction[] = [{ made: { shortSleeves: true } }]
    expect(isSet(before, 'sleeve')).toBe(true)
    expect(isSet(before, 'leg')).toBe(false)
    expect(withFacet(before, 'sleeve', 'elbow')).toEqual([{ cut: { sleeve: 'elbow' } }])
    expect(withFacet(before, 'leg', 'wide')).toEqual([{ made: { shortSleeves: true } }, { cut: { leg: 'wide' } }])
  })
})

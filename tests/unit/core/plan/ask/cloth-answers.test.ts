/** What the seller could say of the cloth: each answer reckoned through by itself. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import { clothAnswers } from '../../../../../core/plan/ask/cloth-answers.ts'
import type { Outlook } from '../../../../../core/plan/outlook/outlook.ts'
import type { ReckonRequest } from '../../../../../core/plan/request.ts'
import { gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const outlook = (likely: number): Outlook => ({
  asItIs: 0,
  own: likely,
  tailor: null,
  likely,
  works: [],
  uncertain: () => [],
  ifTheyHold: () => ({ own: 0, tailor: null }),
  chanceThat: () => null,
  outside: () => 0,
  chanceOfBody: () => null,
  doubts: () => []
})
/** Every answer is likely in its own way: by what is told of the cloth. */
function answers(input: GarmentInput) {
  const asked: (GarmentInput['cloth'] | undefined)[] = []
  const setBeside = (changed: ReckonRequest) => {
    const garment = garmentAsWorn(changed.garment)
    return { garment, gaps: gapsBetween(garment, targetFor(garment, rowan)) }
  }
  const request: ReckonRequest = { garment: input, wearer: rowan, means: { level: 3, tailor: false } }
  const found = clothAnswers(request, setBeside(request), outlook(0.5), {
    setBeside,
    prepare: (changed) => ({
      outlook: () => {
        asked.push(changed.garment.cloth)
        return outlook((changed.garment.cloth?.stretchPercent ?? 80) / 100)
      }
    })
  })
  return { found, asked }
}
const knit = (chest: number, cloth?: GarmentInput['cloth']): GarmentInput => ({
  kind: 'knit-top',
  measures: [{ point: 'chest', mm: chest, source: 'own' }],
  ...(cloth === undefined ? {} : { cloth })
})

describe('answers about the cloth', () => {
  it('a close knit of untold stretch: a quarter stretch a tenth, half as assumed, a quarter half', () => {
    expect(answers(knit(880)).found).toEqual([
      {
        about: 'stretch',
        answers: [
          { share: 0.25, likely: 0.1 },
          { share: 0.5, likely: 0.5 },
          { share: 0.25, likely: 0.5 }
        ]
      }
    ])
  })
  it('as it is assumed is not reckoned again', () => expect(answers(knit(880)).asked).toHaveLength(2))
  it('not where it is told, nor where the knit is wide enough without any', () => {
    expect(answers(knit(880, { stretchPercent: 30 })).found).toEqual([])
    expect(answers(knit(1040)).found).toEqual([])
  })
  it('a woven of untold cloth that only stretch would save: seven in ten as assumed, three in ten a fifth', () => {
    // Rowan's chest is 960, a regular shirt at least 50 over; a fifth of stretch may be asked for 0.4 of itself, 77
    const shirt = (chest: number): GarmentInput => ({ kind: 'shirt', measures: [{ point: 'chest', mm: chest, source: 'own' }] })
    expect(answers(shirt(970)).found.map(({ about, answers: some }) => [about, some.map(({ share }) => share)])).toEqual([
      ['stretch', [0.7, 0.3]]
    ])
    // wide enough without any, and too small with all
    expect(answers(shirt(1040)).found).toEqual([])
    expect(answers(shirt(880)).found).toEqual([])
  })
  it('the fibre of cloth that was never washed, and of no other', () => {
    const shirt = (cloth: GarmentInput['cloth']): GarmentInput => ({
      kind: 'shirt',
      measures: [{ point: 'chest', mm: 1060, source: 'own' }],
      cloth: { ...cloth }
    })
    const { found, asked } = answers(shirt({ washed: false }))
    expect(found.map((one) => [one.about, one.answers.map(({ share }) => share)])).toEqual([['fibre', [0.4, 0.4, 0.2]]])
    expect(asked.map((cloth) => cloth?.fibres?.[0]?.fibre)).toEqual(['cotton', 'viscose'])
    expect(answers(shirt({})).found).toEqual([])
    expect(answers(shirt({ washed: false, fibres: [{ fibre: 'linen', percent: 100 }] })).found).toEqual([])
  })
})

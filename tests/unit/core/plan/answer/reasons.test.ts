/** The sentences under the verdict: which are said, and in what order. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import { type Judgement, missing, reasonsFor } from '../../../../../core/plan/answer/reasons.ts'
import type { Plan } from '../../../../../core/plan/plan.ts'
import { wayOf } from '../../../../../core/plan/way.ts'
import { gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import type { Wearer } from '../../../../../core/wearer/wearer.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const plan = (misfit: [Plan['misfit'][number]['point'], number][] = [], more: Partial<Plan> = {}): Plan => ({
  aim: 'least-work',
  alterations: [],
  after: [],
  misfit: misfit.map(([point, mm]) => ({ point, mm, because: `${point} has its reason` })),
  chance: null,
  level: 3,
  minutes: 40,
  cost: 8,
  ...more
})
function said(more: Partial<Judgement>, chance: number | null = 0.8, use: 'ordinary' | 'protective' = 'ordinary') {
  const worn = garmentAsWorn(garment('trousers', { waist: 895, hip: 1040 }, {}, { use }))
  const judged = {
    garment: worn,
    gaps: gapsBetween(worn, targetFor(worn, rowan)),
    plans: { own: [], rescue: undefined, tailor: undefined },
    wearsAs: () => null,
    chanceIf: () => ({ own: chance, tailor: null }),
    means: { level: 3 as const, tailor: false },
    markMm: 2,
    chance: { own: chance, tailor: null }
  }
  const judgement: Judgement = {
    priced: false,
    chanceAsItIs: null,
    mendingMinutes: 0,
    judged,
    verdict: 'comes-close',
    advised: plan(),
    slip: null,
    tailorCould: false,
    wearsAs: null,
    untoldKey: [],
    conditions: [],
    doubts: [],
    ...more
  }
  return reasonsFor(judgement, { units: 'cm' })
}
const codes = (...asked: Parameters<typeof said>) =>
  said(...asked).map(({ code, point }) => (point === undefined ? code : `${code} ${point}`))

describe('why', () => {
  it('what stays wrong, the worst first, and the worst one’s own reason; a mark is not said', () => {
    const wrong = plan([
      ['hip', 4],
      ['waist', -12],
      ['thigh', 1.5]
    ])
    expect(codes({ advised: wrong })).toEqual(['verdict.why waist', 'verdict.stays hip'])
    expect(said({ advised: wrong })[0]?.text).toBe('waist has its reason')
  })
  it('that it fits and is not likely', () => expect(codes({}, 0.3)).toEqual(['verdict.unlikely']))
  it('that it wears as it is, and that so much is untold that it may well not', () => {
    expect(codes({ verdict: 'wears-as-is', advised: undefined, chanceAsItIs: 0.4 })).toEqual(['verdict.inside', 'verdict.untold'])
    expect(codes({ verdict: 'wears-as-is', advised: undefined, chanceAsItIs: 0.5 })).toEqual(['verdict.inside'])
  })
  it('that mending takes time too, but not of what is left', () => {
    expect(codes({ mendingMinutes: 30 })).toContain('verdict.mending')
    expect(codes({ mendingMinutes: 30, verdict: 'leave-it' })).not.toContain('verdict.mending')
  })
  it('that an hour has no worth yet, where money is of the question', () => {
    expect(codes({ priced: true, advised: plan([], { cost: null }) })).toContain('worth.hour-missing')
    expect(codes({ priced: false, advised: plan([], { cost: null }) })).not.toContain('worth.hour-missing')
  })
  it('which points decide and are not known: the garment’s where it tells none, the wearer’s where it tells one', () => {
    const of = (input: ReturnType<typeof garment>, wearer = rowan) => {
      const worn = garmentAsWorn(input)
      const { code, values, point } = missing(worn, gapsBetween(worn, targetFor(worn, wearer)))
      return `${code} ${point} ${values.other}`
    }
    expect(of(garment('trousers', { inseam: 780 }))).toBe('verdict.missing-either waist hip')
    const onlyTall: Wearer = { fit: 'regular', body: { stature: { mm: 1740 } } }
    expect(of(garment('trousers', { waist: 850, inseam: 780 }), onlyTall)).toBe('verdict.wearer-missing-either waist hip')
  })
  it('one point that is missing, and none of a kind that is not known', () => {
    const gaps = [] as const
    const of = (input: ReturnType<typeof garment>) => missing(garmentAsWorn(input), gaps)
    expect(of(garment('other', { chest: 1080 }))).toEqual({ code: 'verdict.kind-missing', values: {} })
    // neither the hip nor the thigh is told, the waist is: it is the wearer's own that is not
    expect(of(garment('trousers', { waist: 820 })).code).toBe('verdict.wearer-missing-either')
    expect(of(garment('trousers', { thigh: 620 })).code).toBe('verdict.wearer-missing-either')
    expect(of(garment('trousers', {})).code).toBe('verdict.missing-either')
  })
  it('that only a tailor could, or how hard it is for oneself', () => {
    expect(codes({ tailorCould: true })).toContain('verdict.tailor-could')
    expect(codes({})).not.toContain('verdict.tailor-could')
    const tailors = said({ verdict: 'needs-a-tailor', advised: plan([], { aim: 'tailor', level: 4 }) })
    expect(tailors.find(({ code }) => code === 'verdict.tailor')?.values).toEqual({ level: 4, own: 3 })
    expect(codes({ verdict: 'alters-to-fit' })).toEqual([])
  })
  it('the fit that it wears as', () => {
    expect(said({ wearsAs: 'loose' })[0]).toMatchObject({ code: 'verdict.wears-as', values: { fit: 'loose' } })
  })
  it('a chance of doing nothing is not said of another verdict, nor beside what lowers it', () => {
    const doubts = [
      {
        point: 'hip' as const,
        share: 1,
        because: { code: 'doubt.untold', values: {}, point: 'hip' as const, text: 'the hip is not stated' }
      }
    ]
    expect(codes({ verdict: 'comes-close', chanceAsItIs: 0.4 }, 0.9)).not.toContain('verdict.untold')
    expect(codes({ verdict: 'wears-as-is', advised: undefined, chanceAsItIs: 0.4, doubts })).toEqual(['verdict.inside', 'verdict.doubts'])
    expect(codes({ verdict: 'wears-as-is', advised: undefined, chanceAsItIs: null })).toEqual(['verdict.inside'])
  })
  it('that it is unlikely, by the hands that would do it, and only where nothing stays wrong', () => {
    const sure = (aim: Plan['aim']) => said({ advised: plan([], { aim }) }).find(({ code }) => code === 'verdict.unlikely')?.values.chance
    expect(sure('least-work')).toBe(0.8)
    expect(sure('closest-fit')).toBe(0.8)
    // of the tailor's hands nothing was drawn here
    expect(sure('tailor')).toBeUndefined()
    expect(codes({ advised: plan([['waist', 12]]) })).toEqual(['verdict.why waist'])
    expect(codes({ advised: undefined })).toEqual([])
  })
  it('a price that is missing: an hour’s of one’s own, the first job’s of a tailor, none where the work has its cost', () => {
    const job = (id: Plan['alterations'][number]['id']) =>
      ({ id, amountMm: 20, direction: 'less', amounts: { waist: -20 }, lines: [], withoutIt: [] }) as unknown as Plan['alterations'][number]
    const priced = (more: Partial<Plan>) =>
      said({ priced: true, verdict: 'needs-a-tailor', advised: plan([], { alterations: [job('leg-taper')], ...more }) })
        .filter(({ code }) => code.startsWith('worth.'))
        .map(({ code, alteration }) => [code, alteration])
    expect(priced({ cost: 8 })).toEqual([])
    expect(priced({ cost: null })).toEqual([['worth.hour-missing', undefined]])
    expect(priced({ cost: null, aim: 'tailor' })).toEqual([['worth.tailor-price-missing', 'leg-taper']])
    expect(codes({ priced: true, advised: undefined })).toEqual([])
  })
  it('that nothing was drawn: provisional', () => expect(codes({}, null)).toContain('verdict.provisional'))
  it('what is never altered says so and nothing else', () => {
    expect(codes({ verdict: 'leave-it', advised: undefined }, null, 'protective')).toEqual(['verdict.never.protective'])
  })
})

describe('the word for being past an edge', () => {
  it.each([
    [5, 'inseam', 'long'],
    [-5, 'inseam', 'short'],
    [5, 'shoulderWidth', 'wide'],
    [-5, 'backWidth', 'narrow'],
    [5, 'waist', 'big'],
    [-5, 'waist', 'small']
  ])('%d at the %s: too %s', (mm, point, way) => expect(wayOf(mm, point)).toBe(way))
  it('names what is not told in one sentence, and says instead what it must be where that is known', () => {
    expect(said({ untoldKey: ['hip', 'thigh'] })[0]?.text).toBe(
      'The listing leaves out the hip and the thigh; the rest is judged without them.'
    )
    const conditions = [{ point: 'hip' as const, least: 980, most: 1080, chance: 0.5, text: 'the hip, laid flat, is 49 to 54 cm' }]
    expect(said({ untoldKey: ['hip'], conditions })[0]?.text).toBe('It works out if the hip, laid flat, is 49 to 54 cm.')
  })
})

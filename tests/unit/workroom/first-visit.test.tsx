// @vitest-environment happy-dom
import { useState } from 'preact/hooks'
import { afterEach, expect, test, vi } from 'vitest'
import { bodyTaken, type FirstDraft, type FirstVisitProps, firstDraft } from '../../../components/workroom/first/first-draft.ts'
import { FirstVisit } from '../../../components/workroom/first/first-visit.tsx'
import { fewestFor, ifLikedFor, LIKED_KINDS, LIKED_POINTS } from '../../../components/workroom/first/shops-for.ts'
import { POINTS_OF } from '../../../core/ids/points.ts'
import { say } from '../../../core/words/say.ts'
import { currencyUsual, unitsUsual } from '../../../entrypoints/workroom/where-usual.ts'
import { beside, field, hide, key, press, show, shownText, submit, type } from '../on-page.tsx'

afterEach(() => {
  hide()
  vi.unstubAllGlobals()
})

/** As the first visit begins, before anything is said. */
const SOMEBODY = { name: '', units: 'cm', currency: '', means: { level: 3, tailor: false, markMm: 2 } }

function visit(begin: Partial<FirstDraft> = {}) {
  const props = { onBody: vi.fn(), onGarment: vi.fn(), onSkip: vi.fn(), onSample: vi.fn() }
  let last: FirstDraft = { ...firstDraft('cm'), ...begin }
  function Held() {
    const [draft, setDraft] = useState(last)
    const onDraft: FirstVisitProps['onDraft'] = (next) => {
      last = next
      setDraft(next)
    }
    return <FirstVisit draft={draft} onDraft={onDraft} {...props} />
  }
  show(<Held />)
  return { ...props, draft: () => last }
}

test('the fewest measures for what is shopped for, each once', () => {
  expect(fewestFor(['legs'])).toEqual(['waistbandGirth', 'hipGirth', 'insideLegLength'])
  expect(fewestFor(['skirts'])).toEqual(['waistbandGirth', 'hipGirth'])
  expect(fewestFor(['shirts'])).toEqual(['bustGirth', 'shoulderWidth', 'armLength'])
  expect(fewestFor(['jackets'])).toEqual(['bustGirth', 'waistGirth', 'shoulderWidth', 'armLength'])
  expect(fewestFor(['skirts', 'legs'])).toEqual(fewestFor(['legs']))
  expect(ifLikedFor(['legs', 'shirts'])).toEqual(['thighGirth'])
  expect(ifLikedFor(['skirts'])).toEqual([])
})

test('the points of a garment that is liked are points it has, and each says how to measure it', () => {
  for (const kind of LIKED_KINDS) {
    for (const point of LIKED_POINTS[kind] ?? []) {
      expect(POINTS_OF[kind], kind).toContain(point)
      expect(say({ code: `measure.${point}`, values: {} }, { units: 'cm' })).toMatch(/\.$/)
    }
  }
})

test('something is to be chosen before going on; several may be', () => {
  const { draft } = visit()
  press('Next')
  expect(shownText()).toContain('Choose at least one')
  press('Trousers and jeans')
  press('Shirts and tops')
  press('Next')
  expect(draft()).toMatchObject({ step: 'sewing', chosen: ['legs', 'shirts'] })
  press('Next')
  expect(draft()).toMatchObject({ step: 'body', chosen: ['legs', 'shirts'] })
  expect(field('Chest').value).toBe('')
  expect(beside('Waistband')).toContain('where you wear a waistband')
  expect(beside('Thigh')).toContain('Only if you like')
})

test('one step asks what they can sew, each level in plain words, with answers to go on with at one press', () => {
  const { draft, onBody } = visit({ step: 'sewing', chosen: ['skirts'], currency: 'SEK' })
  expect(field('Currency').value).toBe('SEK')
  expect(beside('Level 2: straight seam')).toContain('Shorten plain legs')
  press('Level 2: straight seam')
  press('I can take work to a tailor')
  type('Currency', 'NOK')
  press('Next')
  expect(draft().step).toBe('body')
  type('Hip', '98')
  submit()
  expect(onBody.mock.calls[0]?.[0]).toEqual({ name: '', units: 'cm', currency: 'NOK', means: { level: 2, tailor: true, markMm: 2 } })
})

test('it goes on from there to the garment where that was chosen, and back to what is shopped for', () => {
  const { draft } = visit()
  press('Measure a garment you like instead')
  expect(draft().step).toBe('sewing')
  press('Back')
  expect(draft().step).toBe('what')
  press('Measure a garment you like instead')
  press('Next')
  expect(draft().step).toBe('garment')
})

test('the number of the ring on the drawing stands at the field, too', () => {
  visit({ step: 'body', chosen: ['legs'] })
  const numbers = [...document.querySelectorAll('.wr-first form .wr-number')].map((one) => one.textContent)
  expect(numbers).toEqual(['4', '5', '9', '6'])
})

test('it asks no more than the fewest measures, the units and a name: what a person may set besides is for the full form', () => {
  const asked = () => [...document.querySelectorAll('input[type="text"], select, input[type="checkbox"], [role="radiogroup"]')].length
  visit()
  // five things to shop for
  expect(asked()).toBe(5)
  visit({ step: 'body', chosen: ['legs'] })
  // units, waistband, hip, inside leg, thigh if liked, name
  expect(asked()).toBe(6)
  visit({ step: 'garment' })
  // units, kind, flat or around, four points, name
  expect(asked()).toBe(8)
  expect(shownText()).not.toContain('sizes do you wear')
})

test('a bad figure is told beside its field and stays as typed; set right, all that was typed is saved', () => {
  const { onBody, draft } = visit({ step: 'body', chosen: ['legs'] })
  type('Waistband', '1/0')
  type('Hip', '39 1/2 in')
  submit()
  expect(onBody).not.toHaveBeenCalled()
  expect(beside('Waistband')).toContain('can’t have 0 below the line')
  expect(field('Waistband').value).toBe('1/0')
  type('Waistband', '75,5')
  submit()
  expect(onBody).toHaveBeenCalledExactlyOnceWith(SOMEBODY, [
    { measure: 'waistbandGirth', mm: 755, stated: '75,5' },
    { measure: 'hipGirth', mm: 39.5 * 25.4, stated: '39 1/2 in' }
  ])
  expect(draft().body).toEqual({ waistbandGirth: '75,5', hipGirth: '39 1/2 in' })
})

test('with nothing typed it says what to do; going back and on again keeps what was typed', () => {
  const { onBody } = visit({ step: 'body', chosen: ['skirts'] })
  submit()
  expect(shownText()).toContain('Enter at least one measure')
  expect(onBody).not.toHaveBeenCalled()
  type('Hip', '98')
  press('Back')
  press('Next')
  expect(field('Hip').value).toBe('98')
})

test('a field of another choice that was typed before is not asked any more, and not saved', () => {
  expect(bodyTaken(['hipGirth'], { units: 'cm', body: { hipGirth: '98', armLength: '60' } })).toEqual({
    measures: [{ measure: 'hipGirth', mm: 980, stated: '98' }],
    problems: {}
  })
})

test('Enter goes on to the next field, from the last to the button that saves', () => {
  visit({ step: 'body', chosen: ['skirts'] })
  type('Waistband', '75')
  key('Waistband', 'Enter')
  expect(document.activeElement).toBe(field('Hip'))
  key('Hip', 'Enter')
  expect(document.activeElement?.textContent).toBe('Save and go on')
})

test('in inches the eighths can be pressed where a finger points', () => {
  vi.stubGlobal('matchMedia', (query: string) => ({
    matches: query.includes('coarse'),
    addEventListener: () => undefined,
    removeEventListener: () => undefined
  }))
  visit({ step: 'body', chosen: ['skirts'], units: 'in' })
  type('Hip', '39')
  press('39 and ½ inches')
  expect(field('Hip').value).toBe('39½')
})

test('every step can be left, and the sample tried', () => {
  const first = visit()
  press('Skip, and fill in the whole form')
  press('Try it with a sample')
  expect(first.onSkip).toHaveBeenCalledOnce()
  expect(first.onSample).toHaveBeenCalledOnce()
  for (const step of ['body', 'garment'] as const) {
    const { onSkip } = visit({ step, chosen: ['legs'] })
    press('Skip, and fill in the whole form')
    expect(onSkip).toHaveBeenCalledOnce()
  }
})

test('a garment that is liked: flat girths are doubled and remember that they were flat; lengths are not', () => {
  const { onGarment } = visit({ step: 'garment' })
  type('Waist', '39')
  type('Inside leg', '77')
  submit()
  expect(onGarment).toHaveBeenCalledExactlyOnceWith(SOMEBODY, {
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: 780, stated: '39 cm flat' },
      { point: 'inseam', mm: 770, stated: '77 cm' }
    ]
  })
  press('All around')
  type('Waist', '78')
  submit()
  expect(onGarment.mock.calls[1]?.[1].measures[0]).toEqual({ point: 'waist', mm: 780, stated: '78 cm' })
})

test.each([
  ['en-US', 'in', 'USD'],
  ['en-GB', 'cm', 'GBP'],
  ['de-AT', 'cm', 'EUR'],
  ['sv-SE', 'cm', 'SEK'],
  ['en', 'cm', ''],
  ['es-419', 'cm', ''],
  ['not a language', 'cm', '']
])('in %s units are %s and the currency is "%s"', (language, units, currency) => {
  expect([unitsUsual(language), currencyUsual(language)]).toEqual([units, currency])
})

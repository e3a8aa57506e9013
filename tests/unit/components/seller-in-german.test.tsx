// @vitest-environment happy-dom
/** Whoever reads English asks the seller of a German listing in German, as soon as its words have come. */
import { waitFor } from '@testing-library/preact'
import { afterEach, expect, test, vi } from 'vitest'
import { SellerMessage } from '../../../components/answer/seller-message.tsx'
import { conditionShown } from '../../../core/plan/answer/conditions-said.ts'
import { questionOf } from '../../../core/plan/ask/ask.ts'
import { hide, inPage, press, show } from '../on-page.tsx'

afterEach(hide)

const english = { units: 'cm', language: 'en' } as const
const hip = {
  point: 'hip',
  worth: 2,
  unit: 'score',
  question: questionOf({ point: 'hip' }, english),
  suits: '49 to 54 cm would suit.'
} as const
const conditions = [conditionShown({ point: 'hip', least: 980, most: 1080, chance: null }, english)]
const written = () => inPage().querySelector('q')
const draw = (language: string, onCopy = vi.fn(async () => true)) => {
  show(
    <SellerMessage title="Wollhose" ask={[hip]} conditions={conditions} language={language} short={false} isMain onCopy={onCopy} />,
    english
  )
  return onCopy
}

test('the message comes in German; the page stays English; one tick turns it back', async () => {
  const onCopy = draw('de')
  await waitFor(() => expect(written()?.lang).toBe('de'))
  expect(written()?.textContent).toBe(
    'Hallo, ich interessiere mich für „Wollhose“. Könntest du es flach hinlegen und 20\u00a0cm unter dem oberen Rand gerade über das Gesäß messen? ' +
      'Gut wären 49 bis 54\u00a0cm. Vielen Dank.'
  )
  expect(inPage().querySelector('h3')?.textContent).toBe('Ask the seller about the hip')
  press('Copy the message')
  expect(onCopy).toHaveBeenCalledWith(written()?.textContent)
  press('In the language of the listing')
  expect(written()?.lang).toBe('en')
  expect(written()?.textContent).toMatch(/^Hello, I am interested in “Wollhose”\./)
})

test('in a language without words the message is in one’s own, and nothing is offered', () => {
  draw('fr')
  expect(written()?.lang).toBe('en')
  expect(inPage().textContent).not.toContain('In the language of the listing')
})

// @vitest-environment happy-dom
/** What takes its own button away leaves the keyboard near: Choose, Undo, and what is set right. */
import { act } from '@testing-library/preact'
import { useRef } from 'preact/hooks'
import { afterEach, expect, test } from 'vitest'
import { Plans } from '../../../components/panel/plans.tsx'
import { useFocusStays } from '../../../components/use-focus-stays.ts'
import { button, hide, press, show, textOf } from '../on-page.tsx'
import { trousersJudged } from './fixtures.ts'

afterEach(hide)
const focused = (): string => (document.activeElement === document.body ? '' : textOf(document.activeElement))

function Sheet({ undo, again }: { undo: boolean; again: boolean }) {
  const sheet = useRef<HTMLDivElement>(null)
  useFocusStays(sheet)
  return (
    <div ref={sheet}>
      <button type="button">Far</button>
      <fieldset>
        <p>{undo && <button type="button">Undo</button>}</p>
        {again && <button type="button">Not the waist</button>}
      </fieldset>
    </div>
  )
}
const sheet = async (undo: boolean, again: boolean, anew = false) => act(async () => show(<Sheet undo={undo} again={again} />, {}, anew))

test('the nearest that can be pressed has the keyboard when its button goes', async () => {
  await sheet(true, true)
  button('Undo').focus()
  await sheet(false, true, true)
  expect(focused()).toBe('Not the waist')
  await sheet(false, false, true)
  expect(focused()).toBe('Far')
})

test('what went while the keyboard stood elsewhere moves nothing', async () => {
  await sheet(true, true)
  button('Undo').focus()
  button('Far').focus()
  await sheet(false, false, true)
  expect(focused()).toBe('Far')
})

test('after Choose the keyboard stands at what was chosen', async () => {
  const plans = (aim: typeof trousersJudged.aim, anew = false) =>
    act(async () => show(<Plans judged={{ ...trousersJudged, aim }} onAim={() => undefined} />, { units: 'in' }, anew))
  await plans(null)
  const name = [...document.querySelectorAll('.plans button')].map(textOf).find((one) => one.endsWith('a tailor')) ?? ''
  button(name).focus()
  await act(async () => press(name))
  await plans('tailor', true)
  expect(focused()).toBe('Chosen')
})

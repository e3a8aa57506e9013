/** A page in a document, handled by the words a person reads on it. */
import { render } from 'preact'
import { act } from 'preact/test-utils'
import { WordsOf } from '../../../components/words.tsx'
import type { Units } from '../../../core/length.ts'

let root: HTMLElement = document.createElement('div')

export const shownText = (): string => root.textContent ?? ''
export const inPage = (): HTMLElement => root

/** Draws a page in a new document, or again in the same one. */
export function show(page: preact.ComponentChild, units: Units = 'cm', again = false): void {
  if (!again) {
    root = document.createElement('div')
    document.body.replaceChildren(root)
  }
  act(() => render(<WordsOf.Provider value={{ units, currency: 'GBP' }}>{page}</WordsOf.Provider>, root))
}
export const hide = (): void => void act(() => render(null, root))

/** A field by its label; where several have the same, by what names the row it stands in. */
export function field(label: string, row?: string): HTMLInputElement | HTMLSelectElement {
  const its = [...root.querySelectorAll('label')].find(
    (one) => one.textContent?.trim() === label && (row === undefined || one.closest('li')?.querySelector('h3')?.textContent === row)
  )
  const found = its === undefined ? null : (document.getElementById(its.htmlFor) ?? its.querySelector('input'))
  if (found instanceof HTMLInputElement || found instanceof HTMLSelectElement) return found
  throw new Error(`no field "${label}"`)
}
export function type(label: string, typed: string, row?: string): void {
  const input = field(label, row)
  act(() => input.focus())
  act(() => {
    input.value = typed
    input.dispatchEvent(new InputEvent('input', { bubbles: true }))
    input.dispatchEvent(new Event('change', { bubbles: true }))
  })
}
/** Leaves the field that is being typed in. */
export const leave = (label: string, row?: string): void => void act(() => field(label, row).blur())
export function key(label: string, name: string): void {
  act(() => void field(label).dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true })))
}
export function press(name: string): void {
  const found = [...root.querySelectorAll<HTMLElement>('button, input')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === name
  )
  const ticked = found ?? [...root.querySelectorAll('label')].find((one) => one.textContent?.trim() === name)?.querySelector('input')
  if (ticked === undefined || ticked === null) throw new Error(`nothing to press is called "${name}"`)
  act(() => ticked.click())
}
export function submit(): void {
  act(() => void root.querySelector('form')?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true })))
}
/** What is said beside a field. */
export const beside = (label: string, row?: string): string =>
  (field(label, row).getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ')
    .trim()

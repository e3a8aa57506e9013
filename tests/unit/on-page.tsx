/** A page in a document, handled by the words a person reads on it. */
import { act, cleanup, fireEvent, type RenderResult, render, within } from '@testing-library/preact'
import { WordsOf } from '../../components/words.tsx'
import type { Wording } from '../../core/words/say.ts'

let page: RenderResult | null = null

const drawn = (): HTMLElement => {
  const container = page?.container
  if (container instanceof HTMLElement) return container
  throw new Error('nothing is shown: call show first')
}
export const inPage = (): HTMLElement => drawn()
export const shownText = (): string => drawn().textContent ?? ''
/** The text of an element in one line; '' where there is none. */
export const textOf = (element: Element | null | undefined): string => (element?.textContent ?? '').replace(/\s+/g, ' ').trim()

/** Draws a page in a new document, or again in the same one. */
export function show(content: preact.ComponentChild, wording: Partial<Wording> = {}, again = false): void {
  const worded = <WordsOf.Provider value={{ units: 'cm', currency: 'GBP', ...wording }}>{content}</WordsOf.Provider>
  if (again && page !== null) page.rerender(worded)
  else {
    cleanup()
    page = render(worded)
  }
}
export function hide(): void {
  cleanup()
  page = null
}

type FormField = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement
/** A field by its label; where several have the same, by what names the row it stands in. */
export function field(label: string, row?: string): FormField {
  const its = row === undefined ? drawn() : within(drawn()).getByText(row, { selector: 'li h3' }).closest('li')
  const found = within(its ?? drawn()).getByLabelText(label, { selector: 'input, select, textarea' })
  if (found instanceof HTMLInputElement || found instanceof HTMLSelectElement || found instanceof HTMLTextAreaElement) return found
  throw new Error(`"${label}" is no field`)
}

/** Types into a field, or chooses in it, and stays there. */
export function type(label: string, typed: string, row?: string): void {
  const its = field(label, row)
  act(() => its.focus())
  if (its instanceof HTMLSelectElement) fireEvent.change(its, { target: { value: typed } })
  else fireEvent.input(its, { target: { value: typed } })
}
/** Leaves a field, having been in it. */
export function leave(label: string, row?: string): void {
  const its = field(label, row)
  act(() => its.focus())
  act(() => its.blur())
}
/** Types into a field and leaves it. */
export function fill(label: string, typed: string, row?: string): void {
  type(label, typed, row)
  leave(label, row)
}
export const key = (label: string, name: string): void => void fireEvent.keyDown(field(label), { key: name })

/** Something to press, by its name: a button, a tick box, one of several. */
export function press(name: string | RegExp): void {
  const [button] = within(drawn()).queryAllByRole('button', { name, hidden: true })
  fireEvent.click(button ?? within(drawn()).getByLabelText(name, { selector: 'input[type=checkbox], input[type=radio]' }))
}
export const button = (name: string): HTMLButtonElement => within(drawn()).getByRole('button', { name, hidden: true })
/** Picks one of a few that stand side by side under a name. */
export function pick(group: string, name: string): void {
  fireEvent.click(within(within(drawn()).getByRole('radiogroup', { name: group, hidden: true })).getByLabelText(name))
}
export function submit(): void {
  const form = drawn().querySelector('form')
  if (form === null) throw new Error('no form to submit')
  fireEvent.submit(form)
}

/** Waits until what was handed on is answered, and drawn. */
export const settled = (): Promise<void> => act(() => new Promise<void>((done) => setTimeout(done)))

/** What is said beside a field. */
export const beside = (label: string, row?: string): string =>
  (field(label, row).getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ')
    .trim()

// @vitest-environment happy-dom
/** A part that can't be drawn spoils no other, and is tried again when it is about something else. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { Apart } from '../../../components/apart.tsx'
import { BrokenListing } from '../../../components/broken.tsx'
import { SavingBar } from '../../../components/saving/saving-bar.tsx'
import { SavedNote, SavingNow } from '../../../components/saving/saving-now.tsx'
import { WishlistPage } from '../../../components/workroom/wishlist/wishlist-page.tsx'
import { TROUBLES } from '../../../core/records/trouble.ts'
import { button, hide, inPage, press, show, shownText, type } from '../on-page.tsx'
import { keptListing } from './fixtures.ts'

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  hide()
  vi.restoreAllMocks()
})

const Throws = ({ when }: { when: boolean }) => {
  if (when) throw new Error('a figure that is none')
  return <p>drawn</p>
}
const page = (of: string, when: boolean) => (
  <div>
    <Apart of={of} broken={(detail) => <p>broken: {detail}</p>}>
      <Throws when={when} />
    </Apart>
    <p>the rest</p>
  </div>
)

test('the part alone is replaced; the same part stays replaced; another is drawn', () => {
  show(page('one', true))
  expect(shownText()).toBe('broken: a figure that is nonethe rest')
  show(page('one', false), {}, true)
  expect(shownText()).toBe('broken: a figure that is nonethe rest')
  show(page('two', false), {}, true)
  expect(shownText()).toBe('drawnthe rest')
  show(page('three', true), {}, true)
  expect(shownText()).toBe('broken: a figure that is nonethe rest')
})

test('a listing that can’t be shown offers pasting, the way back, a backup and a reload', () => {
  const did: string[] = []
  const note = (what: string) => () => void did.push(what)
  show(
    <BrokenListing
      detail="x"
      onPaste={(text) => did.push(text)}
      onUndo={note('undo')}
      onBackup={note('backup')}
      onReload={note('reload')}
    />
  )
  expect(button('Read it').disabled).toBe(true)
  type('Or paste the part with the measurements here', 'Waist 40 cm')
  press('Read it')
  press('Take back what was changed last')
  press('Save a backup')
  press('Reload this page')
  expect(did).toEqual(['Waist 40 cm', 'undo', 'backup', 'reload'])
})

const listing = (id: string, over: object = {}) => keptListing({ id, title: `Listing ${id}`, site: '', price: null, ...over })

test('one kept listing that can’t be shown leaves the others, and can be removed', () => {
  const onRemove = vi.fn()
  const odd = listing(
    'b',
    JSON.parse('{ "verdictThen": { "verdict": "constructor", "chance": null, "level": null, "minutes": null, "spend": null } }')
  )
  show(
    <WishlistPage
      listings={[listing('a'), odd, listing('c')]}
      currency="GBP"
      shop={false}
      ready
      onOpen={vi.fn()}
      today="2026-03-09"
      cardOf={(id) => `#card/${id}`}
      workOf={(id) => `#work/${id}`}
      onEdit={async () => true}
      onStatus={vi.fn()}
      onPicture={vi.fn()}
      onNoPicture={vi.fn()}
      pictureProblem={null}
      onRemove={onRemove}
    />
  )
  expect(shownText()).toContain('Listing a')
  expect(shownText()).toContain('Listing c')
  expect(shownText()).toContain('Listing b can’t be shown')
  const row = [...inPage().querySelectorAll('tr')].find((one) => one.textContent?.includes('can’t be shown'))
  row?.querySelector('button')?.click()
  expect(onRemove).toHaveBeenCalledExactlyOnceWith('b')
})

test.each(TROUBLES)('trouble %s has a sentence and a way on', (trouble) => {
  const onAgain = vi.fn()
  const bar = (waiting: number) => (
    <SavingBar
      now={{ is: 'not-saved', trouble, waiting, clashes: [] }}
      onAgain={onAgain}
      onReload={vi.fn()}
      onClose={vi.fn()}
      onSettle={vi.fn()}
    />
  )
  show(bar(0))
  expect(inPage().querySelector('[role=alert]')?.textContent).toMatch(/\. \w/)
  expect(button('Reload this page')).toBeTruthy()
  show(bar(1))
  if (trouble === 'outdated' || trouble === 'deleted') expect(shownText()).toContain('Copy what you typed')
  else {
    press('Try again')
    expect(onAgain).toHaveBeenCalledOnce()
  }
})

test('all well, nothing stands there; how saving stands is said as it is', () => {
  show(
    <SavingBar
      now={{ is: 'saved', trouble: null, waiting: 0, clashes: [] }}
      onAgain={vi.fn()}
      onReload={vi.fn()}
      onClose={vi.fn()}
      onSettle={vi.fn()}
    />
  )
  expect(shownText()).toBe('')
  for (const [is, said] of [
    ['saved', 'Saved.'],
    ['saving', 'Saving…'],
    ['not-saved', 'Not saved.']
  ] as const) {
    show(
      <SavingNow.Provider value={{ is, trouble: null, waiting: 0, clashes: [] }}>
        <SavedNote />
      </SavingNow.Provider>
    )
    expect(shownText()).toBe(said)
  }
})

// @vitest-environment happy-dom
/** Keep and Not for me: what a press does, says, and where it leaves the keyboard. */
import { act } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { KeepActs } from '../../../components/answer/keep-acts.tsx'
import type { Judged } from '../../../components/judged.ts'
import { button, hide, inPage, show, textOf } from '../on-page.tsx'
import { leaveIt, trousersReckoning } from './fixtures.ts'

type Status = Judged['kept']

/** What is saved, and how it stands. */
let kept: Status
let reckoning: Judged['reckoning']
let isMain: boolean
const actions = {
  onKeep: vi.fn(async () => true),
  onPass: vi.fn(async () => true),
  onTakeBack: vi.fn(async (_before: Status) => true),
  onWishlist: vi.fn()
}
const draw = (again = true): void => show(<KeepActs judged={{ kept, reckoning }} isMain={isMain} {...actions} />, {}, again)
/** What is saved reaches the page. */
const comes = (status: Status): void => {
  kept = status
  draw()
}
const start = (status: Status): void => {
  kept = status
  draw(false)
}
beforeEach(() => {
  reckoning = trousersReckoning
  isMain = true
  vi.resetAllMocks()
  for (const done of [actions.onKeep, actions.onPass, actions.onTakeBack]) done.mockResolvedValue(true)
})
afterEach(hide)

const press = (name: string) =>
  act(async () => {
    button(name).focus()
    button(name).click()
  })
const offered = (): string[] => [...inPage().querySelectorAll('button')].map(textOf)
const said = (): string => textOf(inPage().querySelector('[role=status]'))
const focused = (): string => textOf(document.activeElement)

describe('as it stands', () => {
  it.each<[Status, string, string[]]>([
    [null, '', ['Keep for later', 'Not for me']],
    ['watching', 'On your wishlist: you are thinking about it.', ['Not for me', 'Wishlist']],
    ['asked', 'On your wishlist: you have asked the seller.', ['Not for me', 'Wishlist']],
    ['bought', 'On your wishlist: you bought it.', ['Not for me', 'Wishlist']],
    ['passed', 'On your wishlist as not for you.', ['Keep for later', 'Wishlist']]
  ])('%s says so and offers what is left to do', (status, says, names) => {
    start(status)
    expect(said()).toBe(says)
    expect(offered()).toEqual(names)
  })
  const main = () => [...inPage().querySelectorAll('.btn.main')].map(textOf)
  it('one press is the main one: to keep it, or to pass by what is to be left; both stand in the same order', () => {
    start(null)
    expect(main()).toEqual(['Keep for later'])
    reckoning = leaveIt
    start(null)
    expect(offered()).toEqual(['Keep anyway', 'Not for me'])
    expect(main()).toEqual(['Not for me'])
  })
  it('none is where something else is to be done first, or it is kept', () => {
    isMain = false
    start(null)
    expect(main()).toEqual([])
    isMain = true
    start('watching')
    expect(main()).toEqual([])
  })
  it('leads to the wishlist', async () => {
    start('watching')
    await press('Wishlist')
    expect(actions.onWishlist).toHaveBeenCalledTimes(1)
  })
})

describe('a press', () => {
  it('keeps, says so, offers the way back and stands there; undone it stands at Keep again', async () => {
    start(null)
    await press('Keep for later')
    expect(actions.onKeep).toHaveBeenCalledTimes(1)
    expect(said()).toBe('Kept on your wishlist.')
    expect(focused()).toBe('Undo')
    comes('watching')
    expect(offered()).toEqual(['Undo', 'Wishlist'])
    expect(focused()).toBe('Undo')
    await press('Undo')
    expect(actions.onTakeBack).toHaveBeenLastCalledWith(null)
    expect(said()).toBe('Undone.')
    comes(null)
    expect(offered()).toEqual(['Keep for later', 'Not for me'])
    expect(focused()).toBe('Keep for later')
  })
  it('passes by, says so, and back again stands at Not for me', async () => {
    start(null)
    await press('Not for me')
    expect(actions.onPass).toHaveBeenCalledTimes(1)
    expect(said()).toBe('Noted as not for you.')
    comes('passed')
    expect(focused()).toBe('Undo')
    await press('Undo')
    expect(actions.onTakeBack).toHaveBeenLastCalledWith(null)
    comes(null)
    expect(focused()).toBe('Not for me')
  })
  it.each<[Status, string, Status]>([
    ['asked', 'Not for me', 'passed'],
    ['bought', 'Not for me', 'passed'],
    ['passed', 'Keep for later', 'watching']
  ])('on what stands as %s is taken back to that, by “%s”', async (before, name, after) => {
    start(before)
    await press(name)
    comes(after)
    await press('Undo')
    expect(actions.onTakeBack).toHaveBeenLastCalledWith(before)
    comes(before)
    expect(said()).toBe('Undone.')
    expect(focused()).toBe(name)
  })
  it('is gone once it is done, even before what is saved has come', async () => {
    start(null)
    await press('Keep for later')
    expect(offered()).toEqual(['Undo'])
  })
  it('is forgotten when it is changed elsewhere: nothing is said to be kept that no longer is', async () => {
    start(null)
    await press('Keep for later')
    comes('watching')
    comes('bought')
    expect(said()).toBe('On your wishlist: you bought it.')
    comes(null)
    expect(said()).toBe('')
    expect(offered()).toEqual(['Keep for later', 'Not for me'])
  })
})

describe('what could not be saved', () => {
  // the page says why, in one place for all that it saves
  it.each(['Keep for later', 'Not for me'])('“%s” says nothing of the kind here, and is offered again', async (name) => {
    for (const act of [actions.onKeep, actions.onPass]) act.mockResolvedValueOnce(false)
    start(null)
    await press(name)
    expect(said()).toBe('')
    expect(offered()).toEqual(['Keep for later', 'Not for me'])
    expect(focused()).toBe(name)
    await press(name)
    expect(focused()).toBe('Undo')
  })
  it('of taking back leaves the way back, and what is true', async () => {
    actions.onTakeBack.mockResolvedValueOnce(false)
    start(null)
    await press('Keep for later')
    comes('watching')
    await press('Undo')
    expect(said()).toBe('Kept on your wishlist.')
    expect(offered()).toEqual(['Undo', 'Wishlist'])
    expect(focused()).toBe('Undo')
    await press('Undo')
    expect(actions.onTakeBack.mock.calls).toEqual([[null], [null]])
    comes(null)
    expect(said()).toBe('Undone.')
  })
})

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
const actions = {
  onKeep: vi.fn(async () => {}),
  onPass: vi.fn(async () => {}),
  onTakeBack: vi.fn(async (_before: Status) => {}),
  onWishlist: vi.fn()
}
const draw = (again = true): void => show(<KeepActs judged={{ kept, reckoning }} {...actions} />, {}, again)
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
  vi.resetAllMocks()
  for (const done of [actions.onKeep, actions.onPass, actions.onTakeBack]) done.mockResolvedValue(undefined)
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
    [null, '', ['Keep', 'Not for me']],
    ['watching', 'On your wishlist: you are thinking about it.', ['Not for me', 'Wishlist']],
    ['asked', 'On your wishlist: you have asked the seller.', ['Not for me', 'Wishlist']],
    ['bought', 'On your wishlist: you bought it.', ['Not for me', 'Wishlist']],
    ['passed', 'On your wishlist as not for you.', ['Keep', 'Wishlist']]
  ])('%s says so and offers what is left to do', (status, says, names) => {
    start(status)
    expect(said()).toBe(says)
    expect(offered()).toEqual(names)
  })
  it('what is to be left is first passed by, and can be kept anyway', () => {
    reckoning = leaveIt
    start(null)
    expect(offered()).toEqual(['Not for me', 'Keep anyway'])
    expect(button('Not for me').className).toBe('btn main')
  })
  it('one press only is the main one, and none once it is kept', () => {
    start(null)
    expect([...inPage().querySelectorAll('.btn.main')].map(textOf)).toEqual(['Keep'])
    start('watching')
    expect(inPage().querySelector('.btn.main')).toBeNull()
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
    await press('Keep')
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
    expect(offered()).toEqual(['Keep', 'Not for me'])
    expect(focused()).toBe('Keep')
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
    ['passed', 'Keep', 'watching']
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
    await press('Keep')
    expect(offered()).toEqual(['Undo'])
  })
  it('is forgotten when it is changed elsewhere: nothing is said to be kept that no longer is', async () => {
    start(null)
    await press('Keep')
    comes('watching')
    comes('bought')
    expect(said()).toBe('On your wishlist: you bought it.')
    comes(null)
    expect(said()).toBe('')
    expect(offered()).toEqual(['Keep', 'Not for me'])
  })
})

describe('what could not be saved', () => {
  it('is said, and the same is offered again', async () => {
    actions.onKeep.mockRejectedValueOnce(new Error('the disk is full'))
    start(null)
    await press('Keep')
    expect(said()).toMatch(/^That could not be saved\. Try again/)
    expect(offered()).toEqual(['Keep', 'Not for me'])
    expect(focused()).toBe('Keep')
    await press('Keep')
    expect(said()).toBe('Kept on your wishlist.')
  })
  it('of passing by leaves it as it was', async () => {
    actions.onPass.mockRejectedValueOnce(new Error('the disk is full'))
    start('watching')
    await press('Not for me')
    expect(said()).toMatch(/^That could not be saved/)
    expect(focused()).toBe('Not for me')
  })
  it('of taking back leaves the way back', async () => {
    actions.onTakeBack.mockRejectedValueOnce(new Error('the disk is full'))
    start(null)
    await press('Keep')
    comes('watching')
    await press('Undo')
    expect(said()).toMatch(/^That could not be saved/)
    expect(offered()).toEqual(['Undo', 'Wishlist'])
    expect(focused()).toBe('Undo')
    await press('Undo')
    expect(actions.onTakeBack.mock.calls).toEqual([[null], [null]])
    comes(null)
    expect(said()).toBe('Undone.')
  })
})

// @vitest-environment happy-dom
import { useState } from 'preact/hooks'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { DraftsHeld } from '../../../components/workroom/drafts.tsx'
import { EasePart } from '../../../components/workroom/settings/ease-part.tsx'
import { LimitsPart } from '../../../components/workroom/settings/limits-part.tsx'
import type { OwnEase } from '../../../components/workroom/shown.ts'
import { typedDifference, typedLimit } from '../../../components/workroom/typed.ts'
import { WardrobePage } from '../../../components/workroom/wardrobe/wardrobe-page.tsx'
import type { OwnLimits } from '../../../core/plan/means.ts'
import { beside, field, hide, leave, press, settled, show, shownText, submit, type } from '../on-page.tsx'

afterEach(hide)

describe('own ease', () => {
  const ease = (begin: OwnEase[] = []) => {
    const onOwn = vi.fn()
    function Held() {
      const [own, setOwn] = useState(begin)
      return (
        <EasePart
          own={own}
          fit="regular"
          onOwn={async (next) => {
            onOwn(next)
            setOwn(next)
            return true
          }}
        />
      )
    }
    show(<Held />)
    return onOwn
  }

  test('the usual figure stands beside the field, without its source', () => {
    ease()
    // the table's row for trousers at the inside leg in a regular fit: −15, at most +5 (half a break)
    expect(shownText()).toContain('Over the inside leg: usually −1.5 cm, at most 0.5 cm.')
    expect(shownText()).not.toMatch(/MEM|CWU|TM\d/)
  })

  test('a figure is kept for its kind, fit and point when the field is left; one press takes it away', async () => {
    const other: OwnEase = { kind: 'shirt', fit: 'regular', point: 'waist', mm: 200 }
    const onOwn = ease([other])
    type('Yours', '-4', 'Inside leg')
    expect(onOwn).not.toHaveBeenCalled()
    leave('Yours', 'Inside leg')
    expect(onOwn).toHaveBeenLastCalledWith([other, { kind: 'trousers', fit: 'regular', point: 'inseam', mm: -40 }])
    await settled()
    press('As usual again: Inside leg')
    expect(onOwn).toHaveBeenLastCalledWith([other])
    await settled()
    expect(field('Yours', 'Inside leg').value).toBe('')
  })

  test('another fit has figures of its own', () => {
    ease([{ kind: 'trousers', fit: 'regular', point: 'waist', mm: 30 }])
    expect(field('Yours', 'Waist').value).toBe('3')
    type('Fit', 'loose')
    expect(field('Yours', 'Waist').value).toBe('')
  })

  test('a bad figure is told, stays, and changes nothing', () => {
    const onOwn = ease()
    type('Yours', '3..5', 'Waist')
    leave('Yours', 'Waist')
    expect(onOwn).not.toHaveBeenCalled()
    expect(beside('Yours', 'Waist')).toContain('This is not a measurement')
    expect(field('Yours', 'Waist').value).toBe('3..5')
  })
})

test('own limits: 0 is never, nothing is the usual limit', async () => {
  const onOwn = vi.fn()
  function Held() {
    const [own, setOwn] = useState<OwnLimits>({})
    return (
      <LimitsPart
        own={own}
        onOwn={async (next) => {
          onOwn(next)
          setOwn(next)
          return true
        }}
      />
    )
  }
  show(<Held />)
  expect(shownText()).toContain('Up to 5 cm.')
  type('Yours', '0', 'Legs tapered')
  leave('Yours', 'Legs tapered')
  expect(onOwn).toHaveBeenLastCalledWith({ 'leg-taper': 0 })
  await settled()
  expect(shownText()).toContain('you ruled it out')
  type('Yours', '1 in', 'Seat in')
  leave('Yours', 'Seat in')
  expect(onOwn).toHaveBeenLastCalledWith({ 'leg-taper': 0, 'seat-in': 25.4 })
  await settled()
  type('Yours', '', 'Legs tapered')
  leave('Yours', 'Legs tapered')
  expect(onOwn).toHaveBeenLastCalledWith({ 'seat-in': 25.4 })
})

test.each([
  ['', null],
  ['0', 0],
  ['-2.5', -25],
  ['− 2,5', -25],
  ['+1 in', 25.4]
])('the difference "%s" is %s', (typed, mm) => expect(typedDifference(typed, 'cm', 1000)).toEqual({ ok: true, value: mm }))
test.each([
  ['--2', 'negative'],
  ['1/0', 'divided-by-zero'],
  ['-101', 'too-large'],
  ['-', 'empty']
])('the difference "%s" is told as %s', (typed, problem) =>
  expect(typedDifference(typed, 'cm', 1000)).toEqual({ ok: false, problem: `workroom.length.${problem}` })
)
test('a limit may be 0 and not below', () => {
  expect(typedLimit('0', 'cm')).toEqual({ ok: true, value: 0 })
  expect(typedLimit('', 'cm')).toEqual({ ok: true, value: null })
  expect(typedLimit('-1', 'cm')).toEqual({ ok: false, problem: 'workroom.length.negative' })
})

test('a half-typed form keeps its text while another part is looked at, and begins anew once it is saved', async () => {
  const held = new Map<string, unknown>()
  const onAdd = vi.fn(async () => true)
  const page = (
    <DraftsHeld.Provider value={held}>
      <WardrobePage name="Wren" garments={[]} onAdd={onAdd} onEdit={vi.fn(async () => true)} onRemove={vi.fn()} onFavourite={vi.fn()} />
    </DraftsHeld.Provider>
  )
  show(page)
  press('Add a garment')
  type('Name', 'Grey flannels')
  type('Waist', '3..9')
  hide()
  show(page)
  expect(field('Name').value).toBe('Grey flannels')
  expect(field('Waist').value).toBe('3..9')
  type('Waist', '39')
  submit()
  expect(onAdd).toHaveBeenCalledOnce()
  await settled()
  press('Add a garment')
  expect(field('Name').value).toBe('')
})

test('a form whose text could not be saved keeps it, stays open, and can be sent again; two presses save once', async () => {
  const held = new Map<string, unknown>()
  let room = false
  const onAdd = vi.fn(async () => room)
  show(
    <DraftsHeld.Provider value={held}>
      <WardrobePage name="Wren" garments={[]} onAdd={onAdd} onEdit={vi.fn(async () => true)} onRemove={vi.fn()} onFavourite={vi.fn()} />
    </DraftsHeld.Provider>
  )
  press('Add a garment')
  type('Name', 'Grey flannels')
  type('Waist', '39')
  submit()
  submit()
  await settled()
  expect(onAdd).toHaveBeenCalledOnce()
  expect(field('Name').value).toBe('Grey flannels')
  expect(field('Waist').value).toBe('39')
  room = true
  submit()
  await settled()
  expect(onAdd).toHaveBeenCalledTimes(2)
  expect(shownText()).not.toContain('Waist')
})

test('a figure of one’s own that could not be saved stays in its field', async () => {
  show(<LimitsPart own={{}} onOwn={async () => false} />)
  type('Yours', '0', 'Legs tapered')
  leave('Yours', 'Legs tapered')
  await settled()
  expect(field('Yours', 'Legs tapered').value).toBe('0')
})

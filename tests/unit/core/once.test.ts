import { expect, it, vi } from 'vitest'
import { once, oncePer } from '../../../core/once.ts'

it('works out when first asked, and once', () => {
  const make = vi.fn(() => undefined)
  const it = once(make)
  expect(make).not.toHaveBeenCalled()
  expect([it(), it()]).toEqual([undefined, undefined])
  expect(make).toHaveBeenCalledTimes(1)
})
it('works out of each thing once', () => {
  const make = vi.fn(({ mm }: { mm: number }) => mm * 2)
  const twice = oncePer(make)
  const [a, b] = [{ mm: 1 }, { mm: 1 }]
  expect([twice(a), twice(b), twice(a)]).toEqual([2, 2, 2])
  expect(make).toHaveBeenCalledTimes(2)
})

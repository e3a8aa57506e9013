// @vitest-environment happy-dom
/** A backup file is shown before it changes anything; what two devices changed apart stands side by side until it is settled. */
import { afterEach, expect, test, vi } from 'vitest'
import { Planned, UnsettledPart } from '../../../components/workroom/backup-planned.tsx'
import { hide, press, show, shownText } from '../on-page.tsx'

afterEach(hide)

test('what a file would bring is told with the choice', () => {
  const [onBring, onLeave] = [vi.fn(), vi.fn()]
  show(<Planned counts={{ added: 2, replaced: 1, left: 3, setAside: 1, conflicts: 2 }} onBring={onBring} onLeave={onLeave} />)
  expect(shownText()).toContain('Nothing is changed yet. From this file: 2 would be added, 1 changed, 3 are here already.')
  expect(shownText()).toContain('1 record can’t be read; it would be kept aside, whole.')
  expect(shownText()).toContain('2 fields were changed here and there')
  press('Leave everything as it is')
  press('Bring it in')
  expect([onBring.mock.calls.length, onLeave.mock.calls.length]).toEqual([1, 1])
})

test('a conflict shows both values, a removal says so; either can count', () => {
  const onSettle = vi.fn()
  const of = { table: 'garmentsOwned', id: 'g', name: 'Flannels', device: 'box', revision: 3, at: '2026-03-02T09:00:00.000Z' }
  const notes = { ...of, field: 'notes', now: 'press first', value: 'mended' }
  show(<UnsettledPart conflicts={[notes]} onSettle={onSettle} />)
  expect(shownText()).toContain('Garment “Flannels”: Notes. Counts now: press first. On the other device, 2026-03-02: mended.')
  press('What the other device had')
  expect(onSettle).toHaveBeenLastCalledWith(notes, 'other')
  const removed = { ...of, field: 'deletedAt', now: null, value: of.at }
  show(<UnsettledPart conflicts={[removed]} onSettle={onSettle} />)
  expect(shownText()).toContain('It was removed on another device on 2026-03-02, and changed here')
  press('Keep it')
  expect(onSettle).toHaveBeenLastCalledWith(removed, 'now')
})

// @vitest-environment happy-dom
/** What keeps the records is told, and asked for by a press; an old backup is worth a word, which can be put off. */
import { afterEach, expect, test, vi } from 'vitest'
import {
  BackupReminder,
  daysSince,
  KeepingPart,
  lastChange,
  noteBackup,
  OLD_AFTER,
  PromiseNote,
  PUT_OFF_DAYS
} from '../../../entrypoints/workroom/keeping.tsx'
import { hide, press, settled, show, shownText } from '../on-page.tsx'

afterEach(() => {
  hide()
  vi.unstubAllGlobals()
  vi.useRealTimers()
  localStorage.clear()
})

const DAY_MS = 86_400_000
const daysAgo = (days: number): string => new Date(Date.now() - days * DAY_MS).toISOString()
const CHROMIUM = 'Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/142.0.0.0 Safari/537.36'
const FIREFOX = 'Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0'

function browserThat(userAgent: string, promises: boolean) {
  const persist = vi.fn(async () => promises)
  vi.stubGlobal('navigator', { userAgent, storage: { persisted: async () => false, persist } })
  return persist
}

test.each([
  [true, 'has promised'],
  [false, 'did not promise it']
])('the browser is asked by a press, and its answer is said: %s', async (given, says) => {
  const persist = browserThat(CHROMIUM, given)
  show(<KeepingPart />)
  await settled()
  expect(shownText()).toContain('may clear what is saved here')
  expect(shownText()).not.toContain('asks you')
  expect(persist).not.toHaveBeenCalled()
  press('Ask the browser to keep it')
  await settled()
  expect(shownText()).toContain(says)
})

test('where the browser asks the person that is said first, once something is saved; and it can be put off', async () => {
  const persist = browserThat(FIREFOX, true)
  show(<PromiseNote records={0} />)
  await settled()
  expect(shownText()).toBe('')
  show(<PromiseNote records={1} otherwise={<p>another word</p>} />)
  await settled()
  expect(shownText()).not.toContain('another word')
  expect(shownText()).toContain('The browser then asks you whether you allow it: say yes.')
  expect(persist).not.toHaveBeenCalled()
  press('Ask the browser to keep it')
  await settled()
  expect(persist).toHaveBeenCalledOnce()
  expect(shownText()).toBe('another word')
  show(<PromiseNote records={2} />)
  await settled()
  press('Not now')
  expect(shownText()).toBe('')
  show(<PromiseNote records={3} />)
  await settled()
  expect(shownText()).toBe('')
})

test('a browser that answers by itself is not spoken of on other pages', async () => {
  browserThat(CHROMIUM, false)
  show(<PromiseNote records={9} />)
  await settled()
  expect(shownText()).toBe('')
})

test('a reminder where there is something to lose, something changed, and no backup of late', () => {
  const reminder = (records: number, changedAt: string | null) => show(<BackupReminder records={records} changedAt={changedAt} />)
  reminder(4, daysAgo(0))
  expect(shownText()).toBe('')
  reminder(5, daysAgo(0))
  expect(shownText()).toContain('No backup was saved from here yet.')
  noteBackup(daysAgo(OLD_AFTER + 1))
  reminder(5, daysAgo(1))
  expect(shownText()).toContain('The last backup is 31 days old.')
  // the old backup has everything
  reminder(5, daysAgo(OLD_AFTER + 2))
  expect(shownText()).toBe('')
  reminder(5, null)
  expect(shownText()).toBe('')
  noteBackup(daysAgo(OLD_AFTER - 1))
  reminder(5, daysAgo(0))
  expect(shownText()).toBe('')
})

test('put off, it comes again after a while', () => {
  show(<BackupReminder records={5} changedAt={daysAgo(0)} />)
  press('Not now')
  expect(shownText()).toBe('')
  const now = Date.now()
  vi.useFakeTimers({ now: now + (PUT_OFF_DAYS - 1) * DAY_MS, toFake: ['Date'] })
  show(<BackupReminder records={5} changedAt={daysAgo(0)} />)
  expect(shownText()).toBe('')
  vi.useFakeTimers({ now: now + PUT_OFF_DAYS * DAY_MS, toFake: ['Date'] })
  show(<BackupReminder records={5} changedAt={daysAgo(0)} />)
  expect(shownText()).toContain('No backup was saved from here yet.')
})

test('a day that is none counts as none', () => {
  expect(daysSince('soon', 0)).toBeNull()
  expect(daysSince(null, 0)).toBeNull()
})

test('the last change is the latest of all tables', () => {
  expect(lastChange([], [])).toBeNull()
  expect(lastChange([{ updatedAt: '2026-03-02' }, { updatedAt: '2026-03-05' }], [{ updatedAt: '2026-03-04' }])).toBe('2026-03-05')
})

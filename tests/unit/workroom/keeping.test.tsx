// @vitest-environment happy-dom
/** What keeps the records is told, and asked for by a press; an old backup is worth a word. */
import { afterEach, expect, test, vi } from 'vitest'
import { BackupReminder, daysSince, KeepingPart, noteBackup, OLD_AFTER } from '../../../entrypoints/workroom/keeping.tsx'
import { hide, press, settled, show, shownText } from '../on-page.tsx'

afterEach(() => {
  hide()
  vi.unstubAllGlobals()
  localStorage.clear()
})

test.each([
  [true, 'has promised'],
  [false, 'did not promise it']
])('the browser is asked by a press, and its answer is said: %s', async (given, says) => {
  const persist = vi.fn(async () => given)
  vi.stubGlobal('navigator', { storage: { persisted: async () => false, persist } })
  show(<KeepingPart />)
  await settled()
  expect(shownText()).toContain('may clear what is saved here')
  expect(persist).not.toHaveBeenCalled()
  press('Ask the browser to keep it')
  await settled()
  expect(shownText()).toContain(says)
})

test('a reminder where there is something to lose and no backup of late', () => {
  show(<BackupReminder records={4} />)
  expect(shownText()).toBe('')
  show(<BackupReminder records={5} />)
  expect(shownText()).toContain('No backup was saved from here yet.')
  noteBackup(new Date(Date.now() - (OLD_AFTER + 1) * 86_400_000).toISOString())
  show(<BackupReminder records={5} />)
  expect(shownText()).toContain('The last backup is 31 days old.')
  noteBackup(new Date().toISOString())
  show(<BackupReminder records={5} />)
  expect(shownText()).toBe('')
})

test('a day that is none counts as none', () => {
  expect(daysSince('soon', 0)).toBeNull()
  expect(daysSince(null, 0)).toBeNull()
})

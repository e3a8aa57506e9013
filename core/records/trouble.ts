/** Why something was not saved: each has its own sentence, with a way on. */

/**
 * `full`: no room. `broken-off`: the browser broke the writing off. `gone`: what was to be changed was removed on another page.
 * `outdated`: a later version of this program has opened what is saved. `deleted`: what is saved was deleted under this page.
 * `misfit`: it would not be readable again, our own mistake. `unavailable`: the browser gives no database, or none any more.
 */
export const TROUBLES = ['full', 'broken-off', 'gone', 'outdated', 'deleted', 'misfit', 'unavailable'] as const
export type Trouble = (typeof TROUBLES)[number]

/** What was to be changed is not there any more: removed on another page. */
export class Gone extends Error {
  override name = 'Gone'
}
/** A record that would not fit its schema. */
export class Misfit extends Error {
  override name = 'Misfit'
}

/** A change that was made; throws Gone where there was nothing to change. */
export function there<T>(change: T | null): T {
  if (change === null) throw new Gone('what was to be changed is not there')
  return change
}

/** The reason behind an error of the database, however deep it is wrapped. */
export function troubleOf(error: unknown): Trouble {
  const names = namesIn(error)
  const has = (...wanted: string[]): boolean => wanted.some((name) => names.includes(name))
  if (has('Gone')) return 'gone'
  if (has('Misfit')) return 'misfit'
  if (has('QuotaExceededError', 'NS_ERROR_FILE_NO_DEVICE_SPACE', 'NS_ERROR_DOM_QUOTA_REACHED')) return 'full'
  if (has('AbortError', 'TransactionInactiveError', 'InvalidStateError', 'PrematureCommitError', 'TimeoutError')) return 'broken-off'
  return 'unavailable'
}

/** The names of an error and of those it was made of; a few links are enough, whatever is handed in. */
function namesIn(error: unknown): string[] {
  const names: string[] = []
  let now = error
  for (let links = 0; links < 8 && typeof now === 'object' && now !== null; links++) {
    if ('name' in now && typeof now.name === 'string') names.push(now.name)
    // some browsers say it in the message alone
    if ('message' in now && typeof now.message === 'string' && /quota/i.test(now.message)) names.push('QuotaExceededError')
    // several writes at once: each failed in its own way, mostly the same
    if ('failures' in now && Array.isArray(now.failures)) names.push(...namesIn(now.failures[0]))
    now = 'inner' in now && now.inner !== now ? now.inner : 'cause' in now ? now.cause : null
  }
  return names
}

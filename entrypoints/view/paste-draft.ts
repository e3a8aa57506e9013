/** Text typed into the paste box while there is no look to keep it with: kept in this browser until it is read. */
const KEY = 'paste-draft'

export function pasteDraft(): string {
  try {
    return localStorage.getItem(KEY) ?? ''
  } catch {
    // storage switched off: nothing can be kept
    return ''
  }
}

/** Keeps it, or forgets it for null. Throws where storage is switched off or full: the text stays in the field, and whoever calls says so. */
export function keepPasteDraft(typed: string | null): void {
  if (typed === null || typed === '') localStorage.removeItem(KEY)
  else localStorage.setItem(KEY, typed)
}

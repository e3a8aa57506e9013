/** A day as people write it: 12 Oct, and with its year where that is not this one. */
import { useWords } from './words.tsx'

export interface DayProps {
  /** A date or a moment, ISO 8601; a moment is shown by the clock of this place. */
  iso: string
  /** Today, an ISO date. */
  today: string
}

export function Day({ iso, today }: DayProps) {
  const { t } = useWords()
  const day = localDay(iso)
  return (
    <time class="n" dateTime={day}>
      {t(day.slice(0, 4) === today.slice(0, 4) ? 'day.is' : 'day.in-year', { day })}
    </time>
  )
}

/** The date of a moment where the person is; a date stays as it is. */
export function localDay(iso: string): string {
  const at = iso.includes('T') ? new Date(iso) : null
  if (at === null || Number.isNaN(at.getTime())) return iso.slice(0, 10)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}

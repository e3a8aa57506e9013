/** How to read a tape, in four lines: each mark drawn as it stands on the tape, with what it says. */
import { useWords } from '../words.tsx'

const KEYS = ['now', 'guessed', 'wanted', 'after'] as const
type Key = (typeof KEYS)[number]

/** A heading stands before it where the page has one of its own. */
export function TapeKey() {
  const { t } = useWords()
  return (
    <ul class="tape-key">
      {KEYS.map((key) => (
        <li key={key}>
          <svg viewBox="0 0 44 28" width="44" height="28" aria-hidden="true">
            <rect class="tp-body" x="0" y="9" width="44" height="10" />
            <path class="tp-tick tp-faint" d="M4 9v4M13 9v4M22 9v4M31 9v4M40 9v4" />
            <path class="tp-rim" d="M0 9H44M0 19H44" />
            <Mark mark={key} />
          </svg>
          <span>{t(`tape-key.${key}`)}</span>
        </li>
      ))}
    </ul>
  )
}

function Mark({ mark }: { mark: Key }) {
  switch (mark) {
    case 'now':
      return (
        <>
          <path class="tp-now tp-2" d="M22 9V19" />
          <path class="tp-nowf" d="M17 1h10L22 10z" />
        </>
      )
    case 'guessed':
      return (
        <>
          <path class="tp-now tp-thin" d="M20.2 9V19M23.8 9V19" />
          <path class="tp-hollow tp-thin" d="M17 1.4h10L22 9.4z" />
        </>
      )
    case 'wanted':
      return (
        <>
          <rect class="tp-band" x="9" y="9" width="26" height="10" />
          <path class="tp-hatch" d="M9 19l10-10M15 19l10-10M21 19l10-10M27 19l8-8" />
          <path class="tp-edge tp-2" d="M13 9H9V19h4M31 9h4V19h-4" />
        </>
      )
    case 'after':
      return (
        <>
          <path class="tp-aft tp-2 tp-close" d="M22 9V19" />
          <path class="tp-aftf tp-thin" d="M22 19.5l-4.5 7h9z" />
        </>
      )
  }
}

/** One inch of tape to press: the whole inches near the figure, and its eighths. */
import { INCH_MM } from '../../../core/length.ts'
import { useWords } from '../../words.tsx'

const EIGHTHS = ['0', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const

export interface EighthsProps {
  /** Whose figure it sets. */
  label: string
  /** The figure now; where there is none, `startMm` says which inches are offered. */
  mm: number | null
  startMm: number
  onPress: (mm: number) => void
}

export function Eighths({ label, mm, startMm, onPress }: EighthsProps) {
  const { t } = useWords()
  const eighths = Math.round(((mm ?? startMm) / INCH_MM) * 8)
  const whole = Math.floor(eighths / 8)
  const part = mm === null ? null : eighths % 8
  const inches = [-1, 0, 1, 2].map((step) => whole + step).filter((inch) => inch > 0)
  return (
    <fieldset class="wr-eighths">
      <legend class="sr">{t('body.eighths', { name: label })}</legend>
      <div class="wr-inches">
        {inches.map((inch) => (
          <button
            key={inch}
            type="button"
            class="btn"
            aria-pressed={mm !== null && inch === whole}
            onClick={() => onPress(((inch * 8 + (part ?? 0)) / 8) * INCH_MM)}
          >
            {inch}
          </button>
        ))}
        <span class="note">{t('body.and-eighths')}</span>
      </div>
      <div class="wr-inch">
        {EIGHTHS.map((glyph, eighth) => (
          <button
            key={glyph}
            type="button"
            class={`wr-eighth wr-tick-${tickOf(eighth)}`}
            aria-pressed={eighth === part}
            aria-label={t('body.eighth', { inches: whole, eighth: glyph })}
            onClick={() => onPress(((whole * 8 + eighth) / 8) * INCH_MM)}
          >
            {glyph}
          </button>
        ))}
      </div>
    </fieldset>
  )
}

const tickOf = (eighth: number): 'unit' | 'half' | 'quarter' | 'eighth' =>
  eighth === 0 ? 'unit' : eighth === 4 ? 'half' : eighth % 2 === 0 ? 'quarter' : 'eighth'

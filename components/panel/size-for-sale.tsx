/** Of several sizes that a text measures, the one for sale: chosen at the head, for until then nothing is counted. */
import { useId } from 'preact/hooks'
import type { Correction } from '../../core/reading/reading.ts'
import { type Judged, severalSizes, sizeChosen } from '../judged.ts'
import { useWords } from '../words.tsx'

export function SizeForSale({
  reading,
  corrections,
  onCorrections
}: Pick<Judged, 'reading' | 'corrections'> & { onCorrections: (corrections: Correction[]) => void }) {
  const { t } = useWords()
  const id = useId()
  if (severalSizes(reading) === undefined) return null
  const sizes = [...new Set(reading.measures.flatMap(({ size }) => size ?? []))]
  const chosen = sizeChosen(corrections)
  const others = corrections.filter((one) => !('size' in one))
  return (
    <div class="row">
      <label for={id}>{t('reading.size-for-sale')}</label>
      <select
        id={id}
        value={chosen}
        onChange={({ currentTarget: { value } }) => onCorrections(value === '' ? others : [...others, { size: value }])}
      >
        <option value="">{t('reading.size-open')}</option>
        {sizes.map((size) => (
          <option key={size} value={size}>
            {size}
          </option>
        ))}
      </select>
    </div>
  )
}

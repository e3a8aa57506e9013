/** The person's own ease: how much larger than the body a kind is wanted at each point, in one fit, beside the table's. */
import { useState } from 'preact/hooks'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { POINTS, type PointId } from '../../../core/ids/points.ts'
import { FITS, type Fit } from '../../../core/wearer/body.ts'
import { easeFor, edgesFor } from '../../../core/wearer/ease.ts'
import { useWords } from '../../words.tsx'
import type { Saved } from '../drafts.tsx'
import { Choice } from '../field.tsx'
import type { OwnEase } from '../shown.ts'
import { typedDifference } from '../typed.ts'
import { OwnFigure } from './own-figure.tsx'

export interface EasePartProps {
  own: readonly OwnEase[]
  /** The fit usually asked for: shown first. */
  fit: Fit
  onOwn: (own: OwnEase[]) => Saved
}

const KINDS = GARMENT_KINDS.filter((kind) => easeFor(kind).length > 0)
const MOST_EASE_MM = 1000

export function EasePart({ own, fit: usual, onOwn }: EasePartProps) {
  const { t, units } = useWords()
  const [kind, setKind] = useState<GarmentKind>('trousers')
  const [fit, setFit] = useState<Fit>(usual)
  const rows = easeFor(kind).toSorted((a, b) => POINTS.indexOf(a.point) - POINTS.indexOf(b.point))
  const isOf = (point: PointId) => (one: OwnEase) => one.kind === kind && one.fit === fit && one.point === point
  const set = (point: PointId, mm: number | null) => {
    const others = own.filter((one) => !isOf(point)(one))
    return onOwn(mm === null ? others : [...others, { kind, fit, point, mm }])
  }
  return (
    <>
      <p class="note">{t('ease.what')}</p>
      <div class="wr-two">
        <Choice
          label={t('garment.kind')}
          value={kind}
          options={KINDS.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
          onChoose={setKind}
        />
        <Choice
          label={t('ease.fit')}
          value={fit}
          options={FITS.map((value) => ({ value, label: t('person.fit.is', { fit: value }) }))}
          onChoose={setFit}
        />
      </div>
      <ul class="wr-owns">
        {rows.map((row) => (
          <OwnFigure
            key={`${kind} ${fit} ${row.point}`}
            draft={`ease/${kind}/${fit}/${row.point}`}
            name={t('points.point', { point: row.point })}
            label={t('ease.own')}
            ownMm={own.find(isOf(row.point))?.mm ?? null}
            read={(typed) => typedDifference(typed, units, MOST_EASE_MM)}
            onOwn={(mm) => set(row.point, mm)}
          >
            <p class="note">{t('ease.usual', { body: row.body, ...edgesFor(row, kind, fit) })}</p>
          </OwnFigure>
        ))}
      </ul>
    </>
  )
}

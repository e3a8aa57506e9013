/** On arrival: one's own tape against the seller's, point by point; the answer with it; and what to look at before anything is unpicked. */
import { useState } from 'preact/hooks'
import { isGirth, type PointId } from '../../../core/ids/points.ts'
import { LengthField } from '../../length-field.tsx'
import { useWords, type Words } from '../../words.tsx'
import type { ArrivalPoint, WorkActions, WorkShown } from './work-shown.ts'

type Props = { work: WorkShown } & Pick<WorkActions, 'onArrived' | 'onForget'>

/** Laid flat a girth shows half; a collar is opened and measured along. */
export const isFlat = (point: PointId): boolean => isGirth(point) && point !== 'neck'
export const onFlat = (point: PointId, mm: number): number => (isFlat(point) ? mm / 2 : mm)

export function Arrival({ work, onArrived, onForget }: Props) {
  const { t, units } = useWords()
  const { reckoning } = work
  const { verdict, chance } = reckoning
  // before anything is measured again it is the seller's figures that answer
  const whose = work.arrival.some(({ ownMm }) => ownMm !== null) ? 'now' : 'before'
  return (
    <section class="part noprint" aria-labelledby="arrival-head">
      <h2 id="arrival-head">{t('arrival.head')}</h2>
      <p class="note">{t(`arrival.how.${units}`)}</p>
      <table class="wk-arrival" aria-labelledby="arrival-head">
        <thead>
          <tr>
            <th scope="col">{t('arrival.point')}</th>
            <th scope="col">{t('arrival.seller')}</th>
            <th scope="col">{t('arrival.own')}</th>
            <th scope="col">{t('arrival.off')}</th>
          </tr>
        </thead>
        <tbody>
          {work.arrival.map((row) => (
            <PointRow key={row.point} row={row} onArrived={onArrived} onForget={onForget} />
          ))}
        </tbody>
      </table>
      <p role="status">{chance === null ? t(`arrival.${whose}`, { verdict }) : t(`arrival.${whose}-chance`, { verdict, chance })}</p>
      {work.found.length > 0 && (
        <ul class="bullets">
          {work.found.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      <h3>{t('arrival.look')}</h3>
      <ul class="bullets">
        {work.inspection.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  )
}

function PointRow({ row: { point, sellerMm, ownMm }, onArrived, onForget }: { row: ArrivalPoint } & Pick<Props, 'onArrived' | 'onForget'>) {
  const words = useWords()
  const { t, inner, units, figure } = words
  const [typed, setTyped] = useState<string | null>(null)
  const known = ownMm === null ? '' : figure(onFlat(point, ownMm))
  return (
    <tr>
      <th scope="row">{t('points.point', { point })}</th>
      <td class="n" data-head={t('arrival.seller')}>
        {sellerMm === null ? inner('arrival.not-stated') : figure(onFlat(point, sellerMm))}
      </td>
      <td class="own" data-head={t('arrival.own')}>
        <LengthField
          label=""
          of={t('arrival.own-of', { point })}
          typed={typed ?? known}
          unit={units}
          unsaved={typed !== null}
          onTyped={setTyped}
          onLength={({ mm }) => {
            setTyped(null)
            onArrived(point, isFlat(point) ? mm * 2 : mm)
          }}
        />
      </td>
      <td data-head={t('arrival.off')}>
        {ownMm !== null && sellerMm !== null && differenceWords(onFlat(point, ownMm) - onFlat(point, sellerMm), words)}
        {ownMm !== null && (
          <button type="button" class="btn bare small" onClick={() => onForget(point)} aria-label={t('arrival.forget', { point })}>
            {t('correct.undo')}
          </button>
        )}
      </td>
    </tr>
  )
}

/** Less than this is the same on any tape, mm. */
const SAME_MM = 1
function differenceWords(mm: number, { inner }: Words): string {
  if (Math.abs(mm) < SAME_MM) return inner('arrival.same')
  return inner(mm > 0 ? 'arrival.more' : 'arrival.less', { mm: Math.abs(mm) })
}

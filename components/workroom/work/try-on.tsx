/** Try it on: where, spare or short, how much — three presses, and the plan knows. With a drawing of the pinch and what folds and creases say. */
import { useState } from 'preact/hooks'
import type { PointId } from '../../../core/ids/points.ts'
import { INCH_MM } from '../../../core/length.ts'
import type { Tried } from '../../../core/wearer/wearer.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { isFlat } from './arrival.tsx'
import type { WorkActions, WorkShown } from './work-shown.ts'

type Props = { work: WorkShown } & Pick<WorkActions, 'onTried' | 'onUntried'>

/** Steps of the fold or the gap, and the first one, mm: what fingers can tell. */
const STEP_MM = { cm: 5, in: INCH_MM / 4 }
const FIRST_STEPS = 3
const MOST_MM = 150

const SIGNS = ['hip-across', 'seat-droop', 'fork-rays', 'waist-gape', 'chest-rays', 'shoulder-drop', 'shoulder-pull', 'neck-fold'] as const
/** The points that each sign speaks of: shown where the garment has one of them. */
const SPEAKS_OF: Record<(typeof SIGNS)[number], readonly PointId[]> = {
  'hip-across': ['hip'],
  'seat-droop': ['thigh', 'inseam'],
  'fork-rays': ['frontRise', 'thigh'],
  'waist-gape': ['waist'],
  'chest-rays': ['chest'],
  'shoulder-drop': ['shoulderWidth'],
  'shoulder-pull': ['shoulderWidth'],
  'neck-fold': ['bodyLength', 'shoulderWidth']
}

export function TryOn({ work, onTried, onUntried }: Props) {
  const { t } = useWords()
  const [point, setPoint] = useState<PointId | null>(null)
  const signs = SIGNS.filter((sign) => SPEAKS_OF[sign].some((one) => work.canTry.includes(one)))
  return (
    <section class="part noprint" aria-labelledby="tryon-head">
      <h2 id="tryon-head">{t('tryon.head')}</h2>
      <div class="wk-tryon">
        <PinchDrawing />
        <p>{t('tryon.how')}</p>
      </div>
      {work.tried.length > 0 && (
        <ul class="wk-tried">
          {work.tried.map((one) => (
            <li key={one.point}>
              {t(one.spareMm === undefined ? 'tryon.had.short' : 'tryon.had.spare', {
                point: one.point,
                mm: one.spareMm ?? one.shortMm ?? 0
              })}
              <button
                type="button"
                class="btn bare small"
                onClick={() => onUntried(one)}
                aria-label={t('tryon.forget', { point: one.point })}
              >
                {t('correct.undo')}
              </button>
            </li>
          ))}
        </ul>
      )}
      <Pick
        label={t('tryon.where')}
        options={work.canTry.map((one) => ({ value: one, label: t('tryon.point', { point: one }) }))}
        value={point}
        onPick={setPoint}
      />
      {point !== null && (
        <HowMuch
          key={point}
          point={point}
          onTried={(tried) => {
            setPoint(null)
            onTried(tried)
          }}
        />
      )}
      <details class="fold stitched">
        <summary>{t('signs.head')}</summary>
        <ul class="bullets">
          {signs.map((sign) => (
            <li key={sign}>{t(`signs.${sign}`)}</li>
          ))}
        </ul>
        <p class="note">{t('signs.source')}</p>
      </details>
    </section>
  )
}

function HowMuch({ point, onTried }: { point: PointId; onTried: (tried: Tried) => void }) {
  const { t, units, length } = useWords()
  const [way, setWay] = useState<'spare' | 'short' | null>(null)
  const [steps, setSteps] = useState(FIRST_STEPS)
  const measured = steps * STEP_MM[units]
  // a fold has two layers
  const isFold = way === 'spare' && isFlat(point)
  const mm = isFold ? measured * 2 : measured
  const tried = (): Tried => (way === 'spare' ? { point, spareMm: mm } : { point, shortMm: mm })
  return (
    <>
      <Pick
        label={t('tryon.what')}
        options={[
          { value: 'spare', label: t('tryon.spare') },
          { value: 'short', label: t('tryon.short') }
        ]}
        value={way}
        onPick={setWay}
      />
      {way !== null && (
        <div class="wk-amount">
          <span class="label" id="tryon-amount">
            {t(isFold ? 'tryon.how-much.fold' : isFlat(point) ? 'tryon.how-much.gap' : 'tryon.how-much.length')}
          </span>
          <fieldset class="row" aria-labelledby="tryon-amount">
            <button type="button" class="btn" aria-label={t('tryon.less')} disabled={steps <= 1} onClick={() => setSteps(steps - 1)}>
              −
            </button>
            <output class="n">{length(measured)}</output>
            <button
              type="button"
              class="btn"
              aria-label={t('tryon.more')}
              disabled={measured >= MOST_MM}
              onClick={() => setSteps(steps + 1)}
            >
              +
            </button>
            <button type="button" class="btn main" onClick={() => onTried(tried())}>
              {t('tryon.add')}
            </button>
          </fieldset>
          <p class="note" role="status">
            {t(isFold ? 'tryon.means.fold' : `tryon.means.${way}`, { fold: measured, mm })}
          </p>
        </div>
      )}
    </>
  )
}

/** The cloth from the side: flat against the body, pinched up into a fold, the pin close to the body. */
function PinchDrawing() {
  const { t } = useWords()
  return (
    <svg class="wk-pinch" role="img" aria-label={t('tryon.drawing')} viewBox="0 0 150 84" width="150" height="84">
      <path class="o-edge" fill="none" d="M4 70H66C72 70 73 66 73 60V16c0-6 6-6 6 0v44c0 6 1 10 7 10h60" />
      <path class="wk-pin" d="M54 62H100" />
      <circle class="wk-pinhead" cx="102" cy="62" r="3" />
      <path class="wk-measure" d="M112 13v47M108 13h8M108 60h8" />
      <path class="wk-body" d="M4 78H146" />
    </svg>
  )
}

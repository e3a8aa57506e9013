/** How a garment is measured, point by point, and how one measures oneself: where the tape lies, and the sentence that says it. */
import { useState } from 'preact/hooks'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { POINTS_OF } from '../../../core/ids/points.ts'
import { MeasureMark } from '../../outline/measure-mark.tsx'
import { useWords } from '../../words.tsx'
import { BodyFigure } from '../body/body-figure.tsx'
import { MAIN_PLACES, MORE_PLACES, type Side } from '../body/body-places.ts'
import { Choice } from '../field.tsx'

const KINDS = GARMENT_KINDS.filter((kind) => kind !== 'other')

export function GarmentMeasures() {
  const { t } = useWords()
  const [kind, setKind] = useState<GarmentKind>('trousers')
  return (
    <>
      <p>{t('help.garment.what')}</p>
      <div class="wr-narrow">
        <Choice
          label={t('help.kind')}
          value={kind}
          options={KINDS.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
          onChoose={setKind}
        />
      </div>
      <ul class="wr-help-points">
        {POINTS_OF[kind].map((point) => (
          <li key={point} class="wr-marked">
            <MeasureMark kind={kind} point={point} />
            <div>
              <h3>{t('points.point', { point })}</h3>
              <p>{t(`measure.${point}`)}</p>
            </div>
          </li>
        ))}
      </ul>
    </>
  )
}

const SIDES: readonly Side[] = ['front', 'back']

export function OwnMeasures() {
  const { t } = useWords()
  return (
    <>
      <p>{t('help.body.what')}</p>
      <ul class="wr-tips note">
        <li>{t('body.tip.stand')}</li>
        <li>{t('body.tip.level')}</li>
        <li>{t('body.tip.help')}</li>
      </ul>
      <div class="wr-help-body">
        <div class="wr-help-figures">
          {SIDES.map((side) => (
            <figure key={side}>
              <figcaption>{t(`body.side.${side}`)}</figcaption>
              <BodyFigure side={side} active={null} />
            </figure>
          ))}
        </div>
        <ul class="wr-help-own">
          {[...MAIN_PLACES, ...MORE_PLACES].map(({ measure, number }) => (
            <li key={measure}>
              <span class="wr-number" aria-hidden="true">
                {number}
              </span>
              <div>
                <h3>{t('body.name', { measure })}</h3>
                <p>{t(`body.how.${measure}`)}</p>
              </div>
            </li>
          ))}
        </ul>
      </div>
    </>
  )
}

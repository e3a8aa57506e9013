/** The first visit: what do you shop for, then the fewest measures for it; or a garment that is liked. Every step can be left, nothing typed is lost. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { Headline } from '../frame.tsx'
import { FirstBody } from './first-body.tsx'
import type { FirstVisitProps } from './first-draft.ts'
import { FirstGarment } from './first-garment.tsx'
import { FirstSewing } from './first-sewing.tsx'
import { SHOPPED_FOR, type ShoppedFor } from './shops-for.ts'

export function FirstVisit(props: FirstVisitProps) {
  const { step } = props.draft
  const head = useRef<HTMLDivElement | null>(null)
  const began = useRef(step)
  // a new step is read from its head on, by eye and by ear
  useEffect(() => {
    if (began.current === step) return
    began.current = step
    head.current?.focus()
  }, [step])
  return (
    <div class="wr-first-visit" ref={head} tabIndex={-1}>
      {step === 'what' ? (
        <What {...props} />
      ) : step === 'sewing' ? (
        <FirstSewing {...props} />
      ) : step === 'body' ? (
        <FirstBody {...props} />
      ) : (
        <FirstGarment {...props} />
      )}
    </div>
  )
}

function What({ draft, onDraft, onSkip, onSample }: FirstVisitProps) {
  const { t } = useWords()
  const [unsaid, setUnsaid] = useState(false)
  const toggle = (one: ShoppedFor) =>
    onDraft({ ...draft, chosen: draft.chosen.includes(one) ? draft.chosen.filter((other) => other !== one) : [...draft.chosen, one] })
  return (
    <>
      <Headline title={t('first.what')} note={t('first.what.note')} />
      <section class="part stack">
        <fieldset class="wr-levels">
          <legend class="sr">{t('first.what')}</legend>
          {SHOPPED_FOR.map((one) => (
            <label key={one} class="wr-tick">
              <input type="checkbox" checked={draft.chosen.includes(one)} onChange={() => toggle(one)} />
              <span>{t(`first.for.${one}`)}</span>
            </label>
          ))}
        </fieldset>
        {unsaid && draft.chosen.length === 0 && (
          <p class="wrong" role="alert">
            {t('first.what.none')}
          </p>
        )}
        <div class="row">
          <button
            type="button"
            class="btn main"
            onClick={() => (draft.chosen.length === 0 ? setUnsaid(true) : onDraft({ ...draft, step: 'sewing', towards: 'body' }))}
          >
            {t('first.next')}
          </button>
          <button type="button" class="btn" onClick={() => onDraft({ ...draft, step: 'sewing', towards: 'garment' })}>
            {t('first.garment-instead')}
          </button>
          <button type="button" class="btn bare" onClick={onSkip}>
            {t('first.skip')}
          </button>
        </div>
      </section>
      <section class="part stack">
        <h2>{t('first.sample.head')}</h2>
        <p>{t('first.else')}</p>
        <button type="button" class="btn" onClick={onSample}>
          {t('first.sample')}
        </button>
      </section>
    </>
  )
}

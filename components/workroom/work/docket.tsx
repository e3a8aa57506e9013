/** A docket for the tailor: what to ask for, what to bring, what to check on collection. */
import type { Docket as DocketOf } from '../../../core/worksheet/worksheet.ts'
import { useWords } from '../../words.tsx'

export function Docket({ docket, title, wearer }: { docket: DocketOf; title: string; wearer: string }) {
  const { t, length } = useWords()
  return (
    <div class="wk-docket">
      <h3>{t('docket.head')}</h3>
      <p>{t('docket.of', { title, name: wearer })}</p>
      <h4>{t('docket.asked')}</h4>
      <ol>
        {docket.asks.map(({ alteration, asked, figures }) => (
          <li key={`${alteration} ${asked.text}`}>
            {asked.text}
            {figures.length > 0 && (
              <dl class="wk-figures">
                {figures.map(({ name, mm }) => (
                  <div key={name}>
                    <dt>{name}</dt>
                    <dd class="n">{length(mm)}</dd>
                  </div>
                ))}
              </dl>
            )}
          </li>
        ))}
      </ol>
      <h4>{t('docket.bring-head')}</h4>
      <ul class="bullets">
        {docket.bring.map(({ code, text }) => (
          <li key={code}>{text}</li>
        ))}
      </ul>
      <h4>{t('docket.check')}</h4>
      <p class="note">{t('docket.by-tape')}</p>
      <dl class="wk-figures">
        {docket.onCollection.figures.map(({ name, mm }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd class="n">{length(mm)}</dd>
          </div>
        ))}
      </dl>
      <ul class="bullets">
        {docket.onCollection.look.map(({ code, text }) => (
          <li key={code}>{text}</li>
        ))}
      </ul>
    </div>
  )
}

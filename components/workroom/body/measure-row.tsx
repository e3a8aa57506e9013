/** One measure of a body: its field, and while it is being entered how to take it, the eighths, and what was measured before. */
import { useId } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import type { MeasureShown } from '../shown.ts'
import { typedLength } from '../typed.ts'
import type { BodyPlace } from './body-places.ts'
import { startMm } from './body-places.ts'
import type { Doubt } from './doubts.ts'
import { Eighths } from './eighths.tsx'

export interface MeasureRowProps {
  place: BodyPlace
  /** Every measurement of this kind, the one that counts first. */
  history: readonly MeasureShown[]
  /** As it stands in the field. */
  typed: string
  problem: string | null
  doubts: readonly Doubt[]
  open: boolean
  onOpen: () => void
  onTyped: (typed: string) => void
  /** The figure is to be taken as it stands in the field. */
  onDone: () => void
  /** A figure from the tape. */
  onPress: (mm: number) => void
  onRemove: (id: string) => void
}

export function MeasureRow(props: MeasureRowProps) {
  const { place, history, typed, problem, doubts, open } = props
  const { t, units, unitSign } = useWords()
  const id = useId()
  const name = t('body.name', { measure: place.measure })
  const latest = history[0]
  const notes = [problem !== null && `${id}-wrong`, doubts.length > 0 && `${id}-doubt`, open && `${id}-how`].filter(Boolean).join(' ')
  return (
    <div class={open ? 'wr-measure wr-on' : 'wr-measure'}>
      <span class="wr-named">
        <span class="wr-number" aria-hidden="true">
          {place.number}
        </span>
        <label for={id}>{name}</label>
      </span>
      <span class="wr-value">
        <input
          id={id}
          class="fieldin"
          type="text"
          autocomplete="off"
          value={typed}
          placeholder="–"
          aria-invalid={problem !== null}
          {...(notes === '' ? {} : { 'aria-describedby': notes })}
          onFocus={props.onOpen}
          onInput={(event) => props.onTyped(event.currentTarget.value)}
          onBlur={props.onDone}
          onKeyDown={(event) => {
            if (event.key === 'Enter') props.onDone()
          }}
        />
        <span class="wr-unit">{unitSign(units)}</span>
      </span>
      <span class="note wr-when">
        {latest === undefined ? (
          t(`body.for.${place.measure}`)
        ) : (
          <time dateTime={latest.takenOn}>{t('day.in-year', { day: latest.takenOn })}</time>
        )}
      </span>
      {problem !== null && (
        <p class="wrong" id={`${id}-wrong`}>
          {t(problem, { units })}
        </p>
      )}
      {doubts.length > 0 && (
        <div class="wr-doubt" id={`${id}-doubt`}>
          {doubts.map(({ code, values }) => (
            <p key={code}>{t(code, values)}</p>
          ))}
        </div>
      )}
      {open && <Opened {...props} howId={`${id}-how`} name={name} />}
    </div>
  )
}

function Opened({ place, history, typed, howId, name, onPress, onRemove }: MeasureRowProps & { howId: string; name: string }) {
  const { t, units, lengthAs } = useWords()
  const now = typedLength(typed, units)
  const mm = now.ok ? now.value : null
  const changed = mm === null ? null : change(mm, history)
  return (
    <div class="wr-opened">
      <p id={howId}>{t(`body.how.${place.measure}`)}</p>
      {units === 'in' && <Eighths label={name} mm={mm} startMm={history[0]?.mm ?? startMm(place.measure)} onPress={onPress} />}
      {mm !== null && (
        <p>
          {t('body.is-also', { length: lengthAs(mm, units), other: lengthAs(mm, units === 'in' ? 'cm' : 'in') })}{' '}
          {changed !== null && t(...changed)}
        </p>
      )}
      {history.length > 0 && (
        <ul class="wr-history" aria-label={t('body.history', { measure: place.measure })}>
          {history.map((one, i) => (
            <li key={one.id}>
              <span>
                <b>{lengthAs(one.mm, units)}</b> <time dateTime={one.takenOn}>{t('day.in-year', { day: one.takenOn })}</time>
                {i === 0 && <span class="note"> {t('body.counts')}</span>}
              </span>
              <button
                type="button"
                class="btn small bare"
                aria-label={t('body.remove-named', { measure: place.measure, mm: one.mm, date: one.takenOn })}
                onClick={() => onRemove(one.id)}
              >
                {t('workroom.remove')}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

/** How it differs from the measurement before; null where there is none that differs. */
function change(mm: number, history: readonly MeasureShown[]): [string, Record<string, number | string>] | null {
  const before = history.find((one) => Math.abs(one.mm - mm) >= 0.5)
  if (before === undefined) return null
  const by = mm - before.mm
  return [by > 0 ? 'body.more-than' : 'body.less-than', { mm: Math.abs(by), date: before.takenOn }]
}

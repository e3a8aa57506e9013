/** A body: the figure with its numbered tapes, and a field for each. A figure is kept when its field is left. */
import { useRef, useState } from 'preact/hooks'
import type { Units } from '../../../core/length.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import type { Saved } from '../drafts.tsx'
import { Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import type { MeasureShown } from '../shown.ts'
import { typedDate, typedLength } from '../typed.ts'
import { UnitsPick } from '../units-pick.tsx'
import { BodyFigure } from './body-figure.tsx'
import { type BodyPlace, MAIN_PLACES, MORE_PLACES, type Side } from './body-places.ts'
import { doubtsOf } from './doubts.ts'
import { MeasureRow } from './measure-row.tsx'

export interface BodyPageProps {
  name: string
  /** Every measurement there is, of each kind the one that counts first. */
  measures: readonly MeasureShown[]
  /** ISO date. */
  today: string
  /** Text typed and not yet taken; it stays while another page is looked at. */
  drafts: Drafts
  onDrafts: (drafts: Drafts) => void
  onUnits: (units: Units) => void
  /** Answers whether it is saved; until then the figure stays in its field as it was typed. */
  onMeasured: (measure: BodyMeasureId, mm: number, stated: string, takenOn: string) => Saved
  onRemove: (id: string) => void
}

export type Drafts = Readonly<Partial<Record<BodyMeasureId, string>>>
const SIDES: readonly Side[] = ['front', 'back']
/** Figures that differ by less, mm, show the same. */
const SAME_MM = 0.5

export function BodyPage(props: BodyPageProps) {
  const { name, measures, today, drafts, onDrafts, onUnits, onRemove } = props
  const { t, units, figureAs } = useWords()
  const [active, setActive] = useState<BodyMeasureId | null>(null)
  const [side, setSide] = useState<Side>('front')
  const [date, setDate] = useState(today)
  const takenOn = typedDate(date, today)
  const latest = latestOf(measures)
  const { problems, take } = useTaking(props, latest, takenOn)
  const row = (place: BodyPlace) => {
    const { measure } = place
    const mm = latest.get(measure)
    return (
      <MeasureRow
        key={measure}
        place={place}
        history={measures.filter((one) => one.measure === measure)}
        typed={drafts[measure] ?? (mm === undefined ? '' : figureAs(mm, units))}
        problem={problems[measure] ?? null}
        doubts={doubtsOf(measure, latest, units)}
        open={active === measure}
        onOpen={() => {
          setActive(measure)
          setSide(place.side)
        }}
        onTyped={(typed) => onDrafts({ ...drafts, [measure]: typed })}
        onDone={() => {
          if (drafts[measure] !== undefined) take(measure, drafts[measure])
        }}
        onPress={(pressed) => take(measure, figureAs(pressed, 'in'))}
        onRemove={onRemove}
      />
    )
  }
  return (
    <>
      <Headline
        title={t('body.title', { name })}
        note={t('body.told', { told: latest.size, all: MAIN_PLACES.length + MORE_PLACES.length })}
      />
      <div class="wr-body">
        <Figures side={side} onSide={setSide} active={active} />
        <div class="wr-fields">
          <div class="wr-how row">
            <UnitsPick units={units} onUnits={onUnits} />
            <Field label={t('body.taken-on')} type="date" typed={date} onTyped={setDate} problem={takenOn.ok ? null : t(takenOn.problem)} />
          </div>
          <p class="note">{t(`body.type.${units}`)}</p>
          {MAIN_PLACES.map(row)}
          <details class="wr-more stitched">
            <summary>{t('body.more', { count: MORE_PLACES.length })}</summary>
            {MORE_PLACES.map(row)}
          </details>
        </div>
      </div>
    </>
  )
}

type Latest = ReadonlyMap<BodyMeasureId, number>
/** The figure that counts of each kind, mm. */
function latestOf(measures: readonly MeasureShown[]): Latest {
  const latest = new Map<BodyMeasureId, number>()
  for (const one of measures) if (!latest.has(one.measure)) latest.set(one.measure, one.mm)
  return latest
}

/** Takes what was typed into a field once it is left: the figure is kept, or its problem told and the text stays. */
function useTaking({ drafts, onDrafts, onMeasured }: BodyPageProps, latest: Latest, takenOn: ReturnType<typeof typedDate>) {
  const { units } = useWords()
  const [problems, setProblems] = useState<Partial<Record<BodyMeasureId, string>>>({})
  // saving takes a moment, in which another field may be typed into
  const now = useRef(drafts)
  now.current = drafts
  const tell = (measure: BodyMeasureId, problem: string | null) =>
    setProblems(({ [measure]: _, ...rest }) => (problem === null ? rest : { ...rest, [measure]: problem }))
  const settle = (measure: BodyMeasureId, problem: string | null) => {
    tell(measure, problem)
    const { [measure]: _, ...others } = now.current
    if (problem === null) onDrafts(others)
  }
  const take = (measure: BodyMeasureId, typed: string) => {
    const known = latest.get(measure)
    if (typed.trim() === '') return settle(measure, known === undefined ? null : 'body.emptied')
    const length = typedLength(typed, units)
    if (!length.ok) return settle(measure, length.problem)
    if (!takenOn.ok) return settle(measure, takenOn.problem)
    if (known !== undefined && Math.abs(known - length.value) < SAME_MM) return settle(measure, null)
    tell(measure, null)
    void onMeasured(measure, length.value, typed.trim(), takenOn.value).then((saved) => {
      if (saved && (now.current[measure] ?? typed) === typed) settle(measure, null)
    })
  }
  return { problems, take }
}

/** The drawn body, front and back, with the tape that is being entered, and how to stand. */
function Figures({ side, onSide, active }: { side: Side; onSide: (side: Side) => void; active: BodyMeasureId | null }) {
  const { t } = useWords()
  return (
    <div class="wr-figures">
      <div class="wr-side">
        <Pick
          label={t('body.side')}
          options={SIDES.map((value) => ({ value, label: t(`body.side.${value}`) }))}
          value={side}
          onPick={onSide}
        />
      </div>
      {SIDES.map((one) => (
        <figure key={one} class={one === side ? 'wr-shown' : undefined}>
          <figcaption>{t(`body.side.${one}`)}</figcaption>
          <BodyFigure side={one} active={active} />
        </figure>
      ))}
      <ul class="wr-tips note">
        <li>{t('body.tip.stand')}</li>
        <li>{t('body.tip.level')}</li>
        <li>{t('body.tip.help')}</li>
      </ul>
    </div>
  )
}

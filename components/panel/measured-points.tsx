/** The points of measure: a whole tape for what misses or is moved, one line for what fits, and for what nobody measured; each can be corrected in place. */
import type { ComponentChildren } from 'preact'
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks'
import { POINTS_OF, type PointId } from '../../core/ids/points.ts'
import type { Correction, MeasureReading } from '../../core/reading/reading.ts'
import type { Judged } from '../judged.ts'
import { Tape } from '../tape/tape.tsx'
import { TapeKey } from '../tape/tape-key.tsx'
import { TapeLine } from '../tape/tape-line.tsx'
import { gapWords, isMeasured, wantedWords } from '../tape/tape-words.ts'
import { useWords, type Words } from '../words.tsx'
import { CorrectForm, draftOf } from './correct-form.tsx'
import { type PointRow, pointRows, withoutPoint, withPoint } from './point-rows.ts'
import { SizeLabel } from './size-label.tsx'

export interface MeasuredPointsProps {
  judged: Judged
  onCorrections: (corrections: Correction[]) => void
  /** As they would be with what is being typed: answered, not saved. null: as they are. */
  onTry?: ((corrections: Correction[] | null) => void) | undefined
  onDraft: (field: string, typed: string | null) => void
}

/** Where a point stands: outside what is wanted or moved by the plan, inside, or not measured. */
type Place = 'misses' | 'fits' | 'unknown'
const placeOf = ({ shown, whole }: PointRow): Place =>
  whole ? 'misses' : shown.garmentMm === null || !isMeasured(shown.from) ? 'unknown' : 'fits'

export function MeasuredPoints({ judged, onCorrections, onTry, onDraft }: MeasuredPointsProps) {
  const words = useWords()
  const { t } = words
  const known = pointRows(judged, words.units, words.figureAs)
  const { open, setOpen, toggle } = useOpened(() =>
    draftedPoints(judged).map((point) => known.find((row) => row.point === point) ?? emptyRow(point))
  )
  const [added, setAdded] = useState<readonly PointId[]>([])
  const rows = [...known, ...added.filter((point) => known.every((row) => row.point !== point)).map(emptyRow)]
  const form = (row: PointRow, id: string) =>
    open.has(row.point) && (
      <CorrectForm
        id={id}
        row={row}
        draft={judged.drafts[draftOf(row.point)]}
        onSet={(set) => onCorrections(withPoint(judged, row, set))}
        onTry={(set) => onTry?.(set === null ? null : withPoint(judged, row, set))}
        onDraft={(typed) => onDraft(draftOf(row.point), typed)}
        onNotThis={() => onCorrections(withPoint(judged, row, 'not-this-point'))}
        onUndo={row.correction === null ? null : () => onCorrections(withoutPoint(judged, row))}
        onClose={() => toggle(row)}
      />
    )
  const of = (place: Place) => rows.filter((row) => (open.get(row.point) ?? placeOf(row)) === place)
  const isDrafted = (some: readonly PointRow[]) => some.some(({ point }) => judged.drafts[draftOf(point)] !== undefined)
  const rowProps = (row: PointRow): RowProps => ({ row, open: open.has(row.point), onToggle: () => toggle(row), form })
  const table = (some: readonly PointRow[], label: string) => <QuietPoints rows={some.map(rowProps)} label={label} />
  const [misses, fits, unknown] = [of('misses'), of('fits'), of('unknown')]
  const addable = addableBeside(rows, judged.kind)
  return (
    <>
      {misses.length > 0 && (
        <section class="part" aria-labelledby="points-head">
          <div class="parthead">
            <h2 id="points-head">{t(misses.every(isOutside) ? 'points.misses' : 'points.misses-or-moved')}</h2>
            <span class="note">{t(`points.in.${words.units}`)}</span>
          </div>
          <details class="fold">
            <summary class="note">{t('help.link.tape')}</summary>
            <TapeKey />
          </details>
          {misses.map((row) => (
            <WholePoint key={row.point} {...rowProps(row)} />
          ))}
        </section>
      )}
      {fits.length > 0 && (
        <details class="part" open={misses.length === 0 || isDrafted(fits)}>
          <summary>
            <h2>{t(fits.every(isInside) ? 'points.fits' : 'points.rest')}</h2>
            <span class="note">{t('points.count', { n: fits.length })}</span>
          </summary>
          <div>
            {table(fits, t('points.fits'))}
            <p class="note">{t(`points.in.${words.units}`)}</p>
          </div>
        </details>
      )}
      {judged.kind !== null && (
        <Untold count={unknown.length} open={isDrafted(unknown)}>
          {unknown.length > 0 && table(unknown, t('points.unknown'))}
          {addable.length > 0 && (
            <AddPoint
              points={addable}
              onAdd={(point) => {
                setAdded([...added, point])
                setOpen(new Map([...open, [point, 'unknown']]))
              }}
            />
          )}
          <SizeLabel judged={judged} onCorrections={onCorrections} onDraft={onDraft} />
        </Untold>
      )}
    </>
  )
}

/** What nobody measured, folded away; where the kind is unknown there is none of it. */
function Untold({ count, open, children }: { count: number; open: boolean; children: ComponentChildren }) {
  const { t } = useWords()
  return (
    <details class="part" open={open}>
      <summary>
        <h2>{t('points.unknown')}</h2>
        {count > 0 && <span class="note">{t('points.count', { n: count })}</span>}
      </summary>
      <div>{children}</div>
    </details>
  )
}

/** The points of this kind that have no row yet. */
const addableBeside = (rows: readonly PointRow[], kind: Judged['kind']): PointId[] =>
  kind === null ? [] : POINTS_OF[kind].filter((point) => rows.every((row) => row.point !== point))

/** The points that are open, each with where it was opened: there it stays, whatever is typed, until it is closed. */
function useOpened(atFirst: () => readonly PointRow[]) {
  const [open, setOpen] = useState<ReadonlyMap<PointId, Place>>(() => new Map(atFirst().map((row) => [row.point, placeOf(row)])))
  // one that is closed may go to another place: who closed it stands at its button there
  const closed = useRef<PointId | null>(null)
  useLayoutEffect(() => {
    if (closed.current !== null) standAt(closed.current)
    closed.current = null
  }, [open])
  const toggle = (row: PointRow) => {
    const next = new Map(open)
    if (next.delete(row.point)) closed.current = row.point
    else next.set(row.point, placeOf(row))
    setOpen(next)
  }
  return { open, setOpen, toggle }
}

/** The keyboard goes on at the button of this point; a folded part is opened for it. */
function standAt(point: PointId): void {
  const its = document.querySelector<HTMLElement>(`[data-corrects="${point}"]`)
  const folded = its?.closest('details')
  if (folded) folded.open = true
  its?.focus()
}
/** Outside what is wanted: a point that the plan moves may lie inside. */
const isOutside = ({ shown }: PointRow): boolean => shown.gapMm !== 0
const isInside = ({ shown }: PointRow): boolean => shown.garmentMm !== null && shown.band !== null
const draftedPoints = ({ drafts, kind }: Judged): PointId[] =>
  kind === null ? [] : POINTS_OF[kind].filter((point) => drafts[draftOf(point)] !== undefined)
const emptyRow = (point: PointId): PointRow => ({
  point,
  shown: { point, garmentMm: null, from: 'inferred', sdMm: 0, band: null, gapMm: 0 },
  afterMm: null,
  said: [],
  correction: null,
  stated: null,
  ends: null,
  why: [],
  whole: false,
  folded: false
})

type Form = (row: PointRow, id: string) => preact.ComponentChild
interface RowProps {
  row: PointRow
  open: boolean
  onToggle: () => void
  form: Form
}

function WholePoint({ row, open, onToggle, form }: RowProps) {
  const words = useWords()
  const { t } = words
  const id = useId()
  const { point, shown, afterMm } = row
  return (
    <article class="point">
      <div class="phead">
        <h3>{t('points.point', { point })}</h3>
        <p class="gap">{gapWords(shown, words)}</p>
      </div>
      <Tape shown={shown} afterMm={afterMm} />
      <div class="pfoot">
        <span>
          <Wanted row={row} />
          {row.ends !== null && (
            <>
              {row.ends}
              <br />
            </>
          )}
          <Said row={row} />
        </span>
        <Toggle row={row} open={open} onToggle={onToggle} controls={id} />
      </div>
      {open && <Why row={row} />}
      {form(row, id)}
    </article>
  )
}

function Wanted({ row: { shown, afterMm } }: { row: PointRow }) {
  const words = useWords()
  // a whole tape draws it; that of what is moved, and a point with no tape, leave it to words
  if (shown.band === null || (afterMm === null && shown.garmentMm !== null)) return null
  return (
    <>
      {words.t('points.wanted', { wanted: wantedWords(shown.band, words) })}
      <br />
    </>
  )
}

/** Why so much is wanted here. */
function Why({ row: { point, why } }: { row: PointRow }) {
  const { t } = useWords()
  if (why.length === 0) return null
  return (
    <ul class="bullets note why-wanted" aria-label={t('points.why', { point })}>
      {why.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  )
}

/** What was stated, the newest first; what no longer counts is struck through. */
function Said({ row }: { row: PointRow }) {
  const words = useWords()
  const { t, inner } = words
  const { said, correction, shown, stated } = row
  const set = correction !== null && stated !== null
  if (said.length === 0 && !set) return <>{t(shown.garmentMm === null ? 'points.not-told' : `points.from.${shown.from}`)}</>
  return (
    <>
      {set && (
        <>
          {t('points.set-by-you')} <b class="n">{asStated(stated.typed, stated.unit, stated.basis, words)}</b>
        </>
      )}
      {said.map(({ reading, from, on, counts }, i) => (
        <span key={`${from} ${on} ${reading.stated.start}`}>
          {(set || i > 0) && '; '}
          {(set || i > 0 ? inner : t)(from === 'answer' ? 'points.answered' : 'points.stated')}{' '}
          {set || !counts ? <s>{quoteOf(reading)}</s> : <b>{quoteOf(reading)}</b>}
          {i === 0 && !set && aroundWords(reading, words)}
        </span>
      ))}
      {!set && said.filter(({ counts }) => counts).length > 1 && `; ${inner('points.mean')}`}
    </>
  )
}
/** What a figure laid flat is all around, and whether flat was only taken for granted. */
function aroundWords({ basis, basisFrom, mm }: MeasureReading, { inner, length }: Words): string {
  if (basis === 'length') return ''
  const judgedWord = basisFrom === 'judged' ? `, ${inner(`points.taken-as.${basis}`)}` : ''
  return basis === 'flat' ? `${judgedWord} = ${inner('points.around', { length: length(mm) })}` : judgedWord
}
const quoteOf = ({ stated }: MeasureReading): string => stated.text.replace(/\s+/g, ' ')
function asStated(typed: string, unit: 'in' | 'cm', basis: string, words: Words): string {
  const sign = words.unitSign(unit)
  return basis === 'flat' ? words.t('points.flat', { figure: typed, unit: sign }) : `${typed} ${sign}`
}

function Toggle({
  row: { point, shown, said, correction },
  open,
  onToggle,
  controls
}: Pick<RowProps, 'row' | 'open' | 'onToggle'> & { controls: string }) {
  const { t, inner } = useWords()
  const enter = said.length === 0 && correction === null && (shown.garmentMm === null || !isMeasured(shown.from))
  return (
    <button
      type="button"
      class="btn small"
      data-corrects={point}
      aria-expanded={open}
      aria-controls={open ? controls : undefined}
      onClick={onToggle}
    >
      {t(open ? 'points.close' : enter ? 'points.enter' : 'points.correct')}
      <span class="sr"> {inner('correct.of', { point })}</span>
    </button>
  )
}

function QuietPoints({ rows, label }: { rows: readonly RowProps[]; label: string }) {
  return (
    <table class="quiet" aria-label={label}>
      <tbody>
        {rows.map((row) => (
          <QuietPoint key={row.row.point} {...row} />
        ))}
      </tbody>
    </table>
  )
}

function QuietPoint({ row, open, onToggle, form }: RowProps) {
  const { t, figure } = useWords()
  const id = useId()
  const { point, shown, afterMm } = row
  const value = shown.garmentMm === null ? '–' : `${figure(shown.garmentMm)}${isMeasured(shown.from) ? '' : '?'}`
  return (
    <>
      <tr>
        <th scope="row">
          {t('points.point', { point })}
          {row.ends !== null && <span class="note ends">{row.ends}</span>}
        </th>
        <td class="drawn">{shown.garmentMm !== null && <TapeLine shown={shown} afterMm={afterMm} />}</td>
        <td class="v">{value}</td>
        <td class="do">
          <Toggle row={row} open={open} onToggle={onToggle} controls={id} />
        </td>
      </tr>
      {open && (
        <tr>
          <td class="opened" colSpan={4}>
            <p class="note">
              <Wanted row={row} />
              <Said row={row} />
            </p>
            <Why row={row} />
            {form(row, id)}
          </td>
        </tr>
      )}
    </>
  )
}

function AddPoint({ points, onAdd }: { points: readonly PointId[]; onAdd: (point: PointId) => void }) {
  const { t } = useWords()
  return (
    <div class="row addpoint">
      <select
        class="small"
        aria-label={t('points.add')}
        value=""
        onChange={(event) => {
          const point = points.find((one) => one === event.currentTarget.value)
          event.currentTarget.value = ''
          if (point !== undefined) onAdd(point)
        }}
      >
        <option value="">{t('points.add')}</option>
        {points.map((point) => (
          <option key={point} value={point}>
            {t('points.point', { point })}
          </option>
        ))}
      </select>
    </div>
  )
}

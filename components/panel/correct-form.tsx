/** Correcting a stated figure under its own tape: value, unit, flat or around, "not this point", and the way back. */
import { useState } from 'preact/hooks'
import { isGirth, type PointId } from '../../core/ids/points.ts'
import { type LengthUnit, parseLength } from '../../core/length.ts'
import type { Basis } from '../../core/reading/reading.ts'
import { LengthField } from '../length-field.tsx'
import { Pick } from '../pick.tsx'
import { gapWords } from '../tape/tape-words.ts'
import { useWords } from '../words.tsx'
import { aroundMm, type PointRow } from './point-rows.ts'

/** A figure as it is set: mm all around or along, with the unit and the basis it was typed in. */
export interface SetFigure {
  mm: number
  unit: 'in' | 'cm'
  basis: Basis
}

export interface CorrectFormProps {
  id: string
  row: PointRow
  draft: string | undefined
  onSet: (set: SetFigure) => void
  /** What is typed, to be answered before it is saved; null: nothing that can be. */
  onTry: (set: SetFigure | null) => void
  onDraft: (typed: string | null) => void
  onNotThis: () => void
  /** null: nothing was set here. */
  onUndo: (() => void) | null
  /** Leads back to the button that opened it. */
  onClose: () => void
}

export function CorrectForm({ id, row, draft, onSet, onTry, onDraft, onNotThis, onUndo, onClose }: CorrectFormProps) {
  const words = useWords()
  const { t, inner } = words
  const { point, stated } = row
  const girth = isGirth(point)
  const [unit, setUnit] = useState<'in' | 'cm'>(stated?.unit ?? words.units)
  const [basis, setBasis] = useState<Basis>(stated?.basis ?? (girth ? 'flat' : 'length'))
  const typed = draft ?? stated?.typed ?? ''
  const [text, setText] = useState(typed)
  const shownUnit = stated === null ? unit : stated.unit
  const shownBasis = stated === null ? basis : stated.basis

  const take = (value: number, its: LengthUnit, basisNow: Basis) => {
    const figure = figureOf(value, its, basisNow)
    setUnit(figure.unit)
    onSet(figure)
    onDraft(null)
  }
  const set = (typedNow: string, unitNow: 'in' | 'cm', basisNow: Basis) => {
    const parsed = parseLength(typedNow, unitNow)
    if (parsed.ok) take(parsed.value, parsed.unit, basisNow)
  }
  return (
    <fieldset
      class="correct stitched"
      id={id}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.stopPropagation()
        onClose()
      }}
    >
      <legend class="sr">{t('correct.group', { point })}</legend>
      <div class="grid">
        <LengthField
          label={t('correct.stated')}
          of={inner('correct.of', { point })}
          typed={typed}
          unit={shownUnit}
          focusFirst
          onTyped={(value) => {
            setText(value)
            onDraft(value)
          }}
          unsaved={draft !== undefined}
          onNow={(length) => onTry(length === null ? null : figureOf(length.value, length.unit, shownBasis))}
          onLength={({ value, unit: its }) => take(value, its, shownBasis)}
        />
        <Pick
          label={t('correct.unit')}
          options={[
            { value: 'in', label: 'in' },
            { value: 'cm', label: 'cm' }
          ]}
          value={shownUnit}
          onPick={(picked) => {
            setUnit(picked)
            set(bare(text), picked, shownBasis)
          }}
        />
      </div>
      {girth && (
        <FlatOrAround
          basis={shownBasis}
          onPick={(picked) => {
            setBasis(picked)
            set(text, shownUnit, picked)
          }}
        />
      )}
      {stated !== null && girth && <BothWays row={row} basis={shownBasis} />}
      <div class="row">
        <WaysBack row={row} onNotThis={onNotThis} onUndo={onUndo} />
      </div>
    </fieldset>
  )
}

const figureOf = (value: number, unit: LengthUnit, basis: Basis): SetFigure => ({
  mm: aroundMm(value, unit, basis),
  unit: unit === 'in' ? 'in' : 'cm',
  basis
})

function FlatOrAround({ basis, onPick }: { basis: Basis; onPick: (basis: 'flat' | 'around') => void }) {
  const { t } = useWords()
  return (
    <div class="measured">
      <Pick
        label={t('correct.measured')}
        options={[
          { value: 'flat', label: t('correct.flat') },
          { value: 'around', label: t('correct.around') }
        ]}
        value={basis === 'flat' ? 'flat' : 'around'}
        onPick={onPick}
      />
    </div>
  )
}

interface WaysBackProps {
  row: PointRow
  onNotThis: () => void
  onUndo: (() => void) | null
}

function WaysBack({ row: { point, said }, onNotThis, onUndo }: WaysBackProps) {
  const { t, inner } = useWords()
  return (
    <>
      {onUndo !== null && (
        <button type="button" class="btn small" onClick={onUndo}>
          {t('correct.undo')}
          <span class="sr"> {inner('correct.of', { point })}</span>
        </button>
      )}
      {said.length > 0 && (
        <button type="button" class="btn small" onClick={onNotThis}>
          {t('correct.not-this', { point })}
        </button>
      )}
    </>
  )
}

/** The figure without a unit word that was typed with it: the picked unit counts. */
const bare = (typed: string): string => typed.replace(/[a-z"”″.]+\s*$/i, '').trim()

/** Says the result both ways: what it is, and what it would be if it were measured the other way. */
function BothWays({ row, basis }: { row: PointRow; basis: Basis }) {
  const words = useWords()
  const { shown, point } = row
  if (shown.garmentMm === null) return null
  const flat = basis === 'flat'
  const other = flat ? shown.garmentMm / 2 : shown.garmentMm * 2
  const otherWords = shown.band === null ? null : gapWords({ ...shown, garmentMm: other }, words, 'inside')
  return (
    <p class="sum">
      {words.t(flat ? 'correct.sum.flat' : 'correct.sum.around', { around: shown.garmentMm, flat: shown.garmentMm / 2 })}{' '}
      {otherWords !== null && (
        <span class="note">{words.t(flat ? 'correct.other.around' : 'correct.other.flat', { point, gap: otherWords })}</span>
      )}
    </p>
  )
}

/** The field's name among what is typed and not yet taken. */
export const draftOf = (point: PointId): string => `stated.${point}`

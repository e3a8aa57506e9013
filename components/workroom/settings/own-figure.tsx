/** A figure of the person's own beside the usual one: kept when its field is left, taken away by one press. Empty: the usual one stands. */
import { useId, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Field } from '../field.tsx'
import type { Typed } from '../typed.ts'

export interface OwnFigureProps {
  /** The name its half-typed text is held under. */
  draft: string
  name: string
  label: string
  /** mm; null: the usual one stands. */
  ownMm: number | null
  read: (typed: string) => Typed<number | null>
  onOwn: (mm: number | null) => Saved
  /** The usual figure in words, and anything else that belongs to the row. */
  children: preact.ComponentChildren
}

/** Figures that differ by less show the same. */
const SAME_MM = 0.5

export function OwnFigure({ draft, name, label, ownMm, read, onOwn, children }: OwnFigureProps) {
  const { t, units, figure, unitSign } = useWords()
  const id = useId()
  const held = useDraft<string | null>(draft, null)
  const [left, setLeft] = useState(false)
  const shown = held.typed ?? (ownMm === null ? '' : figure(ownMm))
  const taken = read(shown)
  const send = useSend(onOwn, held.drop)
  const keep = () => {
    setLeft(true)
    if (held.typed === null || !taken.ok) return
    const { value } = taken
    const same = value === null || ownMm === null ? value === ownMm : Math.abs(value - ownMm) < SAME_MM
    if (same) held.drop()
    else send(value)
  }
  return (
    <li class="wr-own">
      <div>
        <h3 id={`${id}-name`}>{name}</h3>
        {children}
      </div>
      <div class="wr-own-figure">
        <Field
          label={label}
          labelledBy={`${id}-name`}
          typed={shown}
          unit={unitSign(units)}
          onTyped={(typed) => {
            setLeft(false)
            held.type(typed)
          }}
          onDone={keep}
          problem={taken.ok || !left ? null : t(taken.problem, { units })}
        />
        {ownMm !== null && (
          <button type="button" class="btn small bare" aria-label={t('own.reset', { name })} onClick={() => send(null)}>
            {t('own.usual')}
          </button>
        )}
      </div>
    </li>
  )
}

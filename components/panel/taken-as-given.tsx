/** How it is made, as far as it matters: what was told, and what is only assumed and can be set. */
import { useId, useState } from 'preact/hooks'
import type { Made } from '../../core/garment/garment-input.ts'
import type { Correction } from '../../core/reading/reading.ts'
import type { Judged } from '../judged.ts'
import { LengthField } from '../length-field.tsx'
import { Pick } from '../pick.tsx'
import { useWords, type Words } from '../words.tsx'
import { depthOf, HEM_KINDS, isDepth, isSo, isYesNo, partsOf, type Shown } from './made-parts.ts'

export interface TakenAsGivenProps {
  judged: Judged
  onCorrections: (corrections: Correction[]) => void
  /** As they would be with what is being typed: answered, not saved. null: as they are. */
  onTry?: ((corrections: Correction[] | null) => void) | undefined
  onDraft: (field: string, typed: string | null) => void
}

export function TakenAsGiven({ judged, onCorrections, onTry, onDraft }: TakenAsGivenProps) {
  const { t } = useWords()
  const { kind, assumed, corrections } = judged
  if (kind === null) return null
  const parts = partsOf(kind, judged.made)
  const open = parts.filter((part) => assumed.includes(part)).length
  const taken = judged.reckoning?.assumed ?? []
  const hints = new Map(taken.map(({ values, text }) => [values.part, text]))
  const others = taken.filter(({ values }) => !parts.some((part) => part === values.part))
  return (
    <details class="part">
      <summary>
        <h2>{t('given.head')}</h2>
        <span class="note">{t('given.assumed-count', { n: open })}</span>
      </summary>
      <ul class="given">
        {parts.map((part) => (
          <Given
            key={part}
            part={part}
            judged={judged}
            hint={hints.get(part) ?? null}
            onSet={(made) => onCorrections([...corrections.filter((one) => !sets(one, part)), { made }])}
            onTry={(made) => onTry?.(made === null ? null : [...corrections.filter((one) => !sets(one, part)), { made }])}
            onForget={
              corrections.some((one) => sets(one, part)) ? () => onCorrections(corrections.filter((one) => !sets(one, part))) : null
            }
            onDraft={onDraft}
          />
        ))}
      </ul>
      {others.length > 0 && (
        <ul class="bullets">
          {others.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </details>
  )
}

const sets = (correction: Correction, part: keyof Made): boolean => 'made' in correction && correction.made[part] !== undefined

interface GivenProps {
  part: Shown
  judged: Judged
  /** What is assumed and how to look for it. */
  hint: string | null
  onSet: (made: Partial<Made>) => void
  onTry: (made: Partial<Made> | null) => void
  onForget: (() => void) | null
  onDraft: TakenAsGivenProps['onDraft']
}

function Given({ part, judged, hint, onSet, onTry, onForget, onDraft }: GivenProps) {
  const words = useWords()
  const { t, inner } = words
  const id = useId()
  const [open, setOpen] = useState(judged.drafts[`made.${part}`] !== undefined)
  const assumed = judged.assumed.includes(part)
  return (
    <li>
      <span class="what">
        <b>{t(`made.${part}`)}</b>: {valueWords(part, judged.made, words)}
        <span class="note">{onForget !== null ? t('given.set') : assumed ? (hint ?? t('given.assumed')) : t('given.told')}</span>
      </span>
      <button type="button" class="btn small" aria-expanded={open} aria-controls={open ? id : undefined} onClick={() => setOpen(!open)}>
        {t(open ? 'points.close' : 'given.do-set')}
        <span class="sr"> {inner(`made.${part}`)}</span>
      </button>
      {open && (
        <div id={id} class="correct stitched grow">
          <Setting part={part} judged={judged} onSet={onSet} onTry={onTry} onDraft={onDraft} />
          {onForget !== null && (
            <div class="row">
              <button type="button" class="btn small" onClick={onForget}>
                {t('correct.undo')}
                <span class="sr"> {inner(`made.${part}`)}</span>
              </button>
            </div>
          )}
        </div>
      )}
    </li>
  )
}

function Setting({ part, judged, onSet, onTry, onDraft }: Omit<GivenProps, 'onForget' | 'hint'>) {
  const { t, figure, units } = useWords()
  const { made, assumed, drafts } = judged
  const label = t(`made.${part}`)
  if (isYesNo(part)) {
    return (
      <Pick
        label={label}
        options={[
          { value: 'yes', label: t('given.yes') },
          { value: 'no', label: t('given.no') }
        ]}
        value={assumed.includes(part) ? null : isSo(made, part) ? 'yes' : 'no'}
        onPick={(value) => onSet({ [part]: value === 'yes' })}
      />
    )
  }
  if (isDepth(part)) {
    return (
      <LengthField
        label={label}
        of=""
        typed={drafts[`made.${part}`] ?? figure(depthOf(made, part))}
        unit={units}
        unsaved={drafts[`made.${part}`] !== undefined}
        onTyped={(typed) => onDraft(`made.${part}`, typed)}
        onNow={(length) => onTry(length === null ? null : { [part]: length.mm })}
        onLength={({ mm }) => {
          onSet({ [part]: mm })
          onDraft(`made.${part}`, null)
        }}
      />
    )
  }
  return (
    <Pick
      label={label}
      options={HEM_KINDS.map((value) => ({ value, label: t(`made.hemKind.${value}`) }))}
      value={assumed.includes(part) ? null : made.hemKind}
      onPick={(hemKind) => onSet({ hemKind })}
    />
  )
}

function valueWords(part: Shown, made: Made, { inner, length }: Words): string {
  if (isYesNo(part)) return inner(isSo(made, part) ? 'given.yes' : 'given.no')
  if (isDepth(part)) return depthOf(made, part) === 0 ? inner('given.none') : length(depthOf(made, part))
  return inner(`made.hemKind.${made.hemKind}`)
}

/** The cut in one line of words ("low rise, bootcut, full length"), opened to be set: what a garment is meant to be decides what is too big on it. */
import { useId, useState } from 'preact/hooks'
import type { FacetRead } from '../../core/garment/cut.ts'
import type { Facet } from '../../core/ids/cut.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Correction } from '../../core/reading/reading.ts'
import { facetsAsked, valuesAsked } from '../cut/cut-choices.ts'
import { cutSet, isSet, withFacet } from '../cut/cut-set.ts'
import { cutWords } from '../cut/cut-words.ts'
import { FacetSelect } from '../cut/facet-select.tsx'
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

export interface CutLineProps {
  judged: Judged
  onCorrections: (corrections: Correction[]) => void
}

export function CutLine({ judged, onCorrections }: CutLineProps) {
  const words = useWords()
  const { t, inner } = words
  const id = useId()
  const [open, setOpen] = useState(false)
  const { kind, cut, corrections } = judged
  const facets = kind === null ? [] : facetsAsked(kind, cut)
  if (kind === null || facets.length === 0) return null
  const line = cutWords(kind, cut, words)
  return (
    <section class="part cut" aria-labelledby={`${id}-head`}>
      <div class="cut-line">
        <h2 id={`${id}-head`} class="label">
          {t('cut.head')}
        </h2>
        <p>{line === '' ? t('cut.unknown') : line}</p>
        <button type="button" class="btn small" aria-expanded={open} aria-controls={open ? id : undefined} onClick={() => setOpen(!open)}>
          {t(open ? 'cut.close' : 'cut.change')}
          <span class="sr"> {inner('cut.of')}</span>
        </button>
      </div>
      {open && (
        <div id={id} class="correct stitched">
          <p class="note">{t('cut.why')}</p>
          <div class="facets">
            {facets.map((facet) => (
              <FacetField
                key={facet}
                kind={kind}
                facet={facet}
                read={judged.cutAsRead[facet]}
                isSet={isSet(corrections, facet)}
                set={cutSet(corrections)[facet] ?? (isSet(corrections, facet) ? cut[facet]?.value : undefined)}
                onChoose={(value) => onCorrections(withFacet(corrections, facet, value))}
              />
            ))}
          </div>
        </div>
      )}
    </section>
  )
}

interface FacetFieldProps {
  kind: GarmentKind
  facet: Facet
  /** What there is without the person's own choice, and where it comes from. */
  read: FacetRead | undefined
  isSet: boolean
  set: string | undefined
  onChoose: (value: string | null) => void
}

function FacetField({ kind, facet, read, isSet: isOwn, set, onChoose }: FacetFieldProps) {
  const { t, inner } = useWords()
  return (
    <FacetSelect
      facet={facet}
      values={valuesAsked(kind, facet, set ?? read?.value)}
      value={set ?? null}
      unset={read === undefined ? t('cut.as-read-nothing') : t('cut.as-read', { value: inner(`cut.${facet}.${read.value}`) })}
      note={t(isOwn ? 'cut.set' : read === undefined ? 'cut.untold' : `cut.${read.from}`)}
      onChoose={onChoose}
    />
  )
}

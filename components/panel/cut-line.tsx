/** The cut in one line of words ("low rise, bootcut, full length"), opened to be set: what a garment is meant to be decides what is too big on it. */
import { useId, useState } from 'preact/hooks'
import type { FacetRead } from '../../core/garment/cut.ts'
import { type Cut, FACETS, type Facet } from '../../core/ids/cut.ts'
import type { Correction } from '../../core/reading/reading.ts'
import { facetsOf } from '../../core/wearer/cut/cut-table.ts'
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

export interface CutLineProps {
  judged: Judged
  onCorrections: (corrections: Correction[]) => void
}

export function CutLine({ judged, onCorrections }: CutLineProps) {
  const { t, inner } = useWords()
  const id = useId()
  const [open, setOpen] = useState(false)
  const { kind, corrections, reckoning } = judged
  if (kind === null || reckoning === null) return null
  const facets = facetsOf(kind)
  const { cut } = reckoning
  const known = facets.filter((facet) => cut[facet] !== undefined && cut[facet]?.from !== 'assumed')
  const set = setBy(corrections)
  const choose = (facet: Facet, value: string) => {
    const { [facet]: _, ...others } = set
    const next = value === '' ? others : { ...others, [facet]: value }
    const rest = corrections.filter((one) => !('cut' in one))
    onCorrections(Object.keys(next).length === 0 ? rest : [...rest, { cut: next as Cut }])
  }
  const line = known.map((facet) => inner(`cut.${facet}.${cut[facet]?.value}`)).join(', ')
  return (
    <section class="part cut" aria-labelledby={`${id}-head`}>
      <div class="row">
        <h2 id={`${id}-head`} class="label">
          {t('cut.head')}
        </h2>
        <p class="grow">{line === '' ? t('cut.unknown') : t('cut.line', { words: line })}</p>
        <button type="button" class="btn small" aria-expanded={open} aria-controls={open ? id : undefined} onClick={() => setOpen(!open)}>
          {t(open ? 'cut.close' : 'cut.change')}
        </button>
      </div>
      {open && (
        <div id={id} class="correct stitched grow">
          <p class="note">{t('cut.why')}</p>
          {facets.map((facet) => (
            <FacetField key={facet} facet={facet} read={cut[facet]} set={set[facet]} onChoose={(value) => choose(facet, value)} />
          ))}
        </div>
      )}
    </section>
  )
}

/** What the person set of the cut, the last of each facet. */
const setBy = (corrections: readonly Correction[]): Cut => Object.assign({}, ...corrections.map((one) => ('cut' in one ? one.cut : {})))

interface FacetFieldProps {
  facet: Facet
  read: FacetRead | undefined
  set: string | undefined
  onChoose: (value: string) => void
}

function FacetField({ facet, read, set, onChoose }: FacetFieldProps) {
  const { t, inner } = useWords()
  const id = useId()
  const as = read === undefined ? '' : `: ${inner(`cut.${facet}.${read.value}`)}, ${inner(`cut.${read.from}`)}`
  return (
    <div class="field">
      <label for={id} class="label">
        {t(`facet.${facet}`)}
      </label>
      <select id={id} value={set ?? ''} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        <option value="">{set === undefined ? `${t('cut.as-read')}${as}` : t('cut.as-read')}</option>
        {FACETS[facet].map((value) => (
          <option key={value} value={value}>
            {t(`cut.${facet}.${value}`)}
          </option>
        ))}
      </select>
    </div>
  )
}

/** What stands on the size label: read, or typed from a picture. It makes measures likely, never certain. */
import { useId, useState } from 'preact/hooks'
import type { Correction } from '../../core/reading/reading.ts'
import { labelsOf } from '../../core/reading/request/garment-from.ts'
import { labelEvidence } from '../../core/reading/sizes/label-evidence.ts'
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

const LABEL_DRAFT = 'size-label'

interface SizeLabelProps {
  judged: Judged
  onCorrections: (corrections: Correction[]) => void
  onDraft: (field: string, typed: string | null) => void
}

export function SizeLabel({ judged, onCorrections, onDraft }: SizeLabelProps) {
  const { t } = useWords()
  const id = useId()
  const { kind, reading, corrections, drafts } = judged
  const labels = labelsOf(reading, corrections)
  const known = labels.join(', ')
  // null: nothing is being typed, so what is known stands in the field
  const [typed, setTyped] = useState(drafts[LABEL_DRAFT] ?? null)
  if (kind === null) return null
  const settle = () => {
    if (typed === null) return
    onDraft(LABEL_DRAFT, null)
    setTyped(null)
    if (typed.trim() !== known) onCorrections([...corrections.filter((one) => !('label' in one)), { label: typed.trim() }])
  }
  const tells = labels.some((label) => labelEvidence(label, kind).length > 0)
  return (
    <div class="amount sizelabel">
      <label class="label" for={id}>
        {t('size-label.head')}
      </label>
      <input
        id={id}
        type="text"
        class="fieldin"
        autoComplete="off"
        value={typed ?? known}
        aria-describedby={`${id}-note`}
        onInput={(event) => {
          setTyped(event.currentTarget.value)
          onDraft(LABEL_DRAFT, event.currentTarget.value)
        }}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle()
        }}
      />
      <p class="note" id={`${id}-note`}>
        {t(labels.length === 0 ? 'size-label.none' : tells ? 'size-label.tells' : 'size-label.tells-nothing')}
      </p>
    </div>
  )
}

/** What a page shows when there is no answer yet: nothing to read, nobody to judge it for, a kind that is not known. Each says what to do next. */
import { useState } from 'preact/hooks'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import { noListingIn } from '../../core/reading/issues.ts'
import type { Judged, PageProblem } from '../judged.ts'
import { TypedText } from '../typed-text.tsx'
import { useWords } from '../words.tsx'

export const PASTE_DRAFT = 'paste'

export interface NothingReadProps {
  problem: PageProblem | 'nothing-yet'
  draft: string
  onPaste: (text: string) => void
  onDraft: (typed: string | null) => void
}

export function NothingRead({ problem, draft, onPaste, onDraft }: NothingReadProps) {
  const { t } = useWords()
  const [text, setText] = useState(draft)
  return (
    <>
      <section class="answer" aria-labelledby="nothing-head">
        <h2 class="plainhead" id="nothing-head">
          {t('nothing.head')}
        </h2>
        <p class="why">{t(`nothing.${problem}`)}</p>
        <TypedText
          label={t('nothing.label')}
          value={draft}
          rows={5}
          placeholder={t('nothing.example')}
          onTyped={(typed) => {
            setText(typed)
            onDraft(typed)
          }}
        />
        <div class="acts">
          <button type="button" class="btn main" disabled={text.trim() === ''} onClick={() => onPaste(text)}>
            {t('nothing.read')}
          </button>
        </div>
      </section>
      <section class="part" aria-labelledby="enough-head">
        <h2 id="enough-head">{t('enough.head')}</h2>
        <table class="need" aria-labelledby="enough-head">
          <tbody>
            {(['legs', 'skirts', 'upper', 'tailored'] as const).map((kind) => (
              <tr key={kind}>
                <th scope="row">{t(`enough.${kind}`)}</th>
                <td>{t(`enough.${kind}.needs`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  )
}

/** Nobody to judge it for: offers both ways to say what is wanted. */
export function NobodyYet({ onWorkroom }: { onWorkroom: (part: 'body' | 'garments') => void }) {
  const { t } = useWords()
  return (
    <section class="answer" aria-labelledby="nobody-head">
      <h2 class="plainhead" id="nobody-head">
        {t('nobody.head')}
      </h2>
      <p class="why">{t('nobody.why')}</p>
      <div class="acts">
        <button type="button" class="btn main" onClick={() => onWorkroom('body')}>
          {t('nobody.body')}
        </button>
        <button type="button" class="btn" onClick={() => onWorkroom('garments')}>
          {t('nobody.garment')}
        </button>
      </div>
    </section>
  )
}

export interface KindSelectProps {
  kind: GarmentKind | null
  /** In the order in which they are offered. */
  kinds: readonly GarmentKind[]
  onKind: (kind: GarmentKind) => void
}
/** The kind of garment: as read, or as the person says. */
export function KindSelect({ kind, kinds, onKind }: KindSelectProps) {
  const { t } = useWords()
  return (
    <select
      class="small"
      aria-label={t('kind.label')}
      value={kind ?? ''}
      onChange={(event) => {
        const chosen = kinds.find((one) => one === event.currentTarget.value)
        if (chosen !== undefined) onKind(chosen)
      }}
    >
      {kind === null && <option value="">{t('kind.choose')}</option>}
      {kinds.map((one) => (
        <option key={one} value={one}>
          {t('kind.name', { kind: one })}
        </option>
      ))}
    </select>
  )
}

/** Asked before any answer; what seems to be no garment, or no single listing, is said so. */
export function KindUnknown({ reading }: Pick<Judged, 'reading'>) {
  const { t } = useWords()
  const odd = noListingIn(reading.issues)
  return (
    <section class="answer" aria-labelledby="kind-head">
      <h2 class="plainhead" id="kind-head">
        {odd === undefined ? t('kind.head') : t(odd.code === 'reading.no-garment' ? 'kind.head.no-garment' : 'kind.head.no-single-listing')}
      </h2>
      <p class="why">{odd === undefined ? t('kind.why') : odd.text}</p>
    </section>
  )
}

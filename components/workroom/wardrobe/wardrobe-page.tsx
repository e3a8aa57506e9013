/** The garments a person owns, and the one of each kind that others are set beside. */
import { useContext } from 'preact/hooks'
import { HelpLink } from '../../help-link.tsx'
import { Outline } from '../../outline/outline.tsx'
import { useWords, type Words } from '../../words.tsx'
import { DraftsHeld, type Saved, useDraft, whenSaved } from '../drafts.tsx'
import { Empty, Headline } from '../frame.tsx'
import type { GarmentFields, GarmentShown } from '../shown.ts'
import { GarmentForm } from './garment-form.tsx'
import { type PointTyped, typedOf } from './garment-typed.ts'

export interface WardrobePageProps {
  name: string
  garments: readonly GarmentShown[]
  onAdd: (garment: GarmentFields) => Saved
  /** `began`: as the form showed it first. */
  onEdit: (id: string, garment: GarmentFields, began: GarmentFields) => Saved
  onRemove: (id: string) => void
  onFavourite: (id: string, on: boolean) => void
}

const NEW_GARMENT: GarmentFields = { name: '', kind: 'trousers', measures: [], notes: '' }

export function WardrobePage({ name, garments, onAdd, onEdit, onRemove, onFavourite }: WardrobePageProps) {
  const { t } = useWords()
  /** The garment being edited, 'new' for a new one. */
  const { typed: editing, type: setEditing, drop } = useDraft<string | null>('wardrobe', null)
  const held = useContext(DraftsHeld)
  // removed on another page while it was being changed here: what was typed stays, and can be saved as a new one
  const gone =
    editing !== null && editing !== 'new' && !garments.some(({ id }) => id === editing) && held?.has(`garment/${editing}`) === true
  /** Back to the button that opened the form. */
  const done = () => {
    drop()
    requestAnimationFrame(() => document.getElementById(editing === 'new' ? 'add-garment' : `change-${editing}`)?.focus())
  }
  return (
    <>
      <Headline
        title={t('wardrobe.title', { name })}
        note={garments.length === 0 ? null : t('wardrobe.told', { count: garments.length })}
      />
      <div class="wr-tools row">
        <HelpLink topic="measure-a-garment" />
        {editing !== 'new' && (
          <button type="button" id="add-garment" class="btn main" onClick={() => setEditing('new')}>
            {t('wardrobe.add')}
          </button>
        )}
      </div>
      {editing === 'new' && (
        <section class="wr-edit stitched">
          <h2>{t('wardrobe.add')}</h2>
          <GarmentForm garment={NEW_GARMENT} draft="garment" onCancel={done} onSave={(garment) => whenSaved(onAdd(garment), done)} />
        </section>
      )}
      {gone && (
        <section class="wr-edit stitched">
          <h2>{t('wardrobe.gone')}</h2>
          <p>{t('wardrobe.gone.what')}</p>
          <GarmentForm
            garment={NEW_GARMENT}
            draft={`garment/${editing}`}
            onCancel={done}
            onSave={(garment) => whenSaved(onAdd(garment), done)}
          />
        </section>
      )}
      {garments.length === 0 && editing === null && (
        <Empty>
          <p>{t('wardrobe.empty')}</p>
          <p>{t('wardrobe.empty.how')}</p>
        </Empty>
      )}
      <ul class="wr-garments">
        {garments.map((garment) => (
          <li key={garment.id} class="wr-garment">
            {editing === garment.id ? (
              <section class="wr-edit">
                <h2>{t('wardrobe.edit', { name: garment.name })}</h2>
                <GarmentForm
                  garment={garment}
                  draft={`garment/${garment.id}`}
                  onCancel={done}
                  onSave={(fields, began) => whenSaved(onEdit(garment.id, fields, began), done)}
                />
              </section>
            ) : (
              <GarmentRow
                garment={garment}
                onEdit={() => setEditing(garment.id)}
                onRemove={() => onRemove(garment.id)}
                onFavourite={(on) => onFavourite(garment.id, on)}
              />
            )}
          </li>
        ))}
      </ul>
    </>
  )
}

/** A measure as it was typed, and how it was laid: "38.5 flat". */
const asTyped = (typed: PointTyped | undefined, { inner }: Words): string =>
  typed === undefined ? '' : typed.laid === 'flat' ? `${typed.text} ${inner('garment.laid.flat')}` : typed.text

interface GarmentRowProps {
  garment: GarmentShown
  onEdit: () => void
  onRemove: () => void
  onFavourite: (on: boolean) => void
}

function GarmentRow({ garment, onEdit, onRemove, onFavourite }: GarmentRowProps) {
  const words = useWords()
  const { t, units, lengthAs } = words
  const typed = typedOf(garment.measures)
  const points = Object.fromEntries(garment.measures.map(({ point, mm }) => [point, mm]))
  return (
    <>
      <div class="wr-thumb">
        <Outline kind={garment.kind} points={points} plan={null} view="front" size="small" />
      </div>
      <div class="wr-told">
        <h2>{garment.name}</h2>
        <p class="note">
          {t('garment.kind.is', { kind: garment.kind })}
          {garment.favourite && <b class="wr-favourite"> {t('wardrobe.favourite')}</b>}
        </p>
        {garment.measures.length === 0 ? (
          <p>{t('wardrobe.no-measures')}</p>
        ) : (
          <dl class="wr-measures">
            {garment.measures.map(({ point, mm }) => (
              <div key={point}>
                <dt>{t('garment.point', { point })}</dt>
                <dd title={asTyped(typed[point], words)}>{lengthAs(mm, units)}</dd>
              </div>
            ))}
          </dl>
        )}
        {garment.notes !== '' && <p class="wr-notes">{garment.notes}</p>}
      </div>
      <div class="wr-acts row">
        <button type="button" class="btn small" aria-pressed={garment.favourite} onClick={() => onFavourite(!garment.favourite)}>
          {t('wardrobe.mark', { kind: garment.kind })}
        </button>
        <button
          type="button"
          id={`change-${garment.id}`}
          class="btn small"
          aria-label={t('wardrobe.edit', { name: garment.name })}
          onClick={onEdit}
        >
          {t('workroom.edit')}
        </button>
        <button type="button" class="btn small bare" aria-label={t('wardrobe.remove', { name: garment.name })} onClick={onRemove}>
          {t('workroom.remove')}
        </button>
      </div>
    </>
  )
}

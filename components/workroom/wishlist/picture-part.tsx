/** The picture that a person gives a listing: dropped here or chosen as a file, shown, and taken away again. */
import { useId, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { FileField } from '../file-field.tsx'

export interface PicturePartProps {
  title: string
  /** A data address; null: none. */
  picture: string | null
  /** What went wrong with the last file, as a code; null: nothing. */
  problem: string | null
  onFile: (file: File) => void
  onRemove: () => void
}

export function PicturePart({ title, picture, problem, onFile, onRemove }: PicturePartProps) {
  const { t } = useWords()
  const id = useId()
  const [over, setOver] = useState(false)
  const drop = (event: DragEvent) => {
    event.preventDefault()
    setOver(false)
    const file = event.dataTransfer?.files[0]
    if (file !== undefined) onFile(file)
  }
  return (
    <section
      aria-label={t('picture.part')}
      class={over ? 'wr-picture wr-over' : 'wr-picture'}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      {picture !== null && <img src={picture} alt={t('picture.of', { title })} />}
      <div class="stack">
        <FileField
          id={id}
          label={t(picture === null ? 'picture.add' : 'picture.other')}
          accept="image/*"
          describedBy={`${id}-what`}
          onFile={onFile}
        />
        <p class="note" id={`${id}-what`}>
          {t('picture.what')}
        </p>
        {problem !== null && (
          <p class="wrong" role="alert">
            {t(problem)}
          </p>
        )}
        {picture !== null && (
          <button
            type="button"
            class="btn small bare"
            onClick={() => {
              onRemove()
              // this button goes with the picture: back to the field
              document.getElementById(id)?.focus()
            }}
          >
            {t('picture.remove')}
          </button>
        )}
      </div>
    </section>
  )
}

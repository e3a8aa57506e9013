/** The picture that a person gives a listing: dropped here or chosen as a file, shown, and taken away again. */
import { useId, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'

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
        <label class="label" for={id}>
          {t(picture === null ? 'picture.add' : 'picture.other')}
        </label>
        <input
          id={id}
          class="wr-file"
          type="file"
          accept="image/*"
          aria-describedby={`${id}-what`}
          onChange={(event) => {
            const file = event.currentTarget.files?.[0]
            // the same file may be chosen again
            event.currentTarget.value = ''
            if (file !== undefined) onFile(file)
          }}
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

/** A file to choose. The browser's own button speaks the browser's language, so it lies unseen over one that speaks the page's. */
import { useWords } from '../words.tsx'

export interface FileFieldProps {
  id: string
  label: string
  /** What may be chosen: endings and media types, as HTML has them. */
  accept: string
  /** The id of what says more about it. */
  describedBy: string
  onFile: (file: File) => void
}

export function FileField({ id, label, accept, describedBy, onFile }: FileFieldProps) {
  const { t } = useWords()
  return (
    <div>
      <span class="label" id={`${id}-label`}>
        {label}
      </span>
      <label class="btn wr-file">
        <span id={`${id}-choose`}>{t('file.choose')}</span>
        <input
          id={id}
          type="file"
          accept={accept}
          aria-labelledby={`${id}-label ${id}-choose`}
          aria-describedby={describedBy}
          onChange={(event) => {
            const file = event.currentTarget.files?.[0]
            // the same file may be chosen again
            event.currentTarget.value = ''
            if (file !== undefined) onFile(file)
          }}
        />
      </label>
    </div>
  )
}

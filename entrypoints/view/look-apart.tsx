/** A look in its panel, apart: where one can't be drawn, the next tab, the next address and every other part of the page go on. */
import { useEffect } from 'preact/hooks'
import { Apart } from '../../components/apart.tsx'
import { BrokenListing } from '../../components/broken.tsx'
import { pasteInto, pasteNew, undoChoice } from '../../core/records/looks.ts'
import { platform } from '../platform/extension.ts'
import { LookPanel, type LookPanelProps } from './look-panel.tsx'

export function LookApart(props: LookPanelProps) {
  const { stamp, saving, look, windowId } = props
  const paste = (text: string) =>
    void saving.run<unknown>((records) =>
      look === null ? pasteNew(records, text, windowId, stamp()) : pasteInto(records, look.id, text, stamp())
    )
  return (
    <Apart
      of={look === null ? 'nothing' : `${look.id} ${look.revision} ${look.pageAddress}`}
      broken={(detail) => (
        <BrokenListing
          detail={detail}
          onReload={() => location.reload()}
          onBackup={() => void platform.openWorkroom('backup')}
          onPaste={paste}
          onUndo={
            look === null || look.undo.length === 0 ? null : () => void saving.run((records) => undoChoice(records, look.id, stamp()))
          }
        />
      )}
    >
      <LookPanel {...props} />
    </Apart>
  )
}

/** What is saved can't be followed any more: told, and the page stays as it is with what was typed into it. */
export function useFollowed(failure: unknown, tell: () => void): void {
  useEffect(() => {
    if (failure !== null) tell()
  }, [failure])
}

import { useEffect, useState } from 'preact/hooks'
import { GO_TO, TAILOR_PRICE } from '../../components/answer/go-to.ts'
import { Popup } from '../../components/popup/popup.tsx'
import { WordsOf } from '../../components/words.tsx'
import { keepDraft } from '../../core/records/looks.ts'
import { kindOf } from '../../core/records/read-saved.ts'
import { openPanel } from '../background/open-panel.ts'
import { captureTab, frontTab } from '../capture/capture-tab.ts'
import { personOf, whoOf } from '../view/judge-look.ts'
import type { PageProps } from '../view/page-start.tsx'
import { panelActions } from '../view/panel-actions.ts'
import { useJudged } from '../view/use-judged.ts'
import { allLooks, useKept, useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useWording } from '../view/wording-for.ts'

/** Reads the page in front, which the click on the button allows, and shows what came of it. */
export function ReadHere({ records, stamp, saving }: PageProps) {
  const [lookId, setLookId] = useState<string | null>(null)
  const [windowId, setWindowId] = useState<number | null>(null)
  const [failure, setFailure] = useState<unknown>(null)
  const looks = useSaved(records, allLooks, setFailure)
  const wardrobe = useSaved(records, wholeWardrobe, setFailure)
  useTheme(wardrobe?.settings.theme ?? 'system')
  useEffect(() => {
    const read = async () => {
      const tab = await frontTab()
      if (tab === null) return
      setWindowId(tab.windowId)
      setLookId((await captureTab(tab, records, stamp())).id)
    }
    read().catch(setFailure)
  }, [records, stamp])

  const look = looks?.find(({ id }) => id === lookId) ?? null
  const wording = useWording(look, wardrobe)
  const kept = useKept(records, look, setFailure)
  const judgedLook = useJudged(look, wardrobe, wording, { place: 'here', kept })
  const kind = judgedLook === null || look === null ? null : kindOf(judgedLook.read.whole, look.corrections)
  const person = wardrobe === null ? null : personOf(look, wardrobe)
  const actions = panelActions({ stamp, saving, look, judgedLook, person, windowId })
  return (
    <WordsOf.Provider value={wording}>
      <Popup
        who={whoOf(look, kind, wardrobe ?? { people: [], measures: [], garments: [], settings: { theme: 'system', personId: null } })}
        judged={judgedLook?.judged ?? null}
        failed={failure !== null}
        {...actions}
        onOpenBeside={() => {
          if (windowId === null) return
          openPanel(windowId)
          close()
        }}
        onEnterPrice={() => {
          if (windowId === null || look === null) return
          // only within the press; the panel finds the mark in the look, whether it is open already or not
          openPanel(windowId)
          void saving.run((records) => keepDraft(records, look.id, GO_TO, TAILOR_PRICE, stamp())).then(() => close())
        }}
      />
    </WordsOf.Provider>
  )
}

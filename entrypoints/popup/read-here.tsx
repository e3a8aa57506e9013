import { useEffect, useRef, useState } from 'preact/hooks'
import { GO_TO, TAILOR_PRICE } from '../../components/answer/go-to.ts'
import { Popup } from '../../components/popup/popup.tsx'
import { WordsOf } from '../../components/words.tsx'
import { keepDraft, type SeenPage, storeLook } from '../../core/records/looks.ts'
import { kindOf } from '../../core/records/read-saved.ts'
import type { Look } from '../../core/records/schemas.ts'
import { openPanel, openPanelOnceSaved } from '../background/open-panel.ts'
import { personOf, whoOf } from '../view/judge-look.ts'
import type { PageProps } from '../view/page-start.tsx'
import { panelActions } from '../view/panel-actions.ts'
import { useJudged } from '../view/use-judged.ts'
import { useKept, useLook, useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useWording } from '../view/wording-for.ts'

/** The page in front as it was found, and the window it is in. */
export interface SeenHere {
  windowId: number
  seen: SeenPage
}

/** Keeps what was read of the page in front, which the click on the button allows, and shows what came of it. `front`: null where there is no page. */
export function ReadHere({ records, stamp, saving, front }: PageProps & { front: Promise<SeenHere | null> }) {
  const [stored, setStored] = useState<Look | null>(null)
  const [windowId, setWindowId] = useState<number | null>(null)
  const [failure, setFailure] = useState<unknown>(null)
  const wardrobe = useSaved(records, wholeWardrobe, setFailure)
  useTheme(wardrobe?.settings.theme ?? 'system')
  useEffect(() => {
    const read = async () => {
      const here = await front
      if (here === null) return
      setWindowId(here.windowId)
      setStored(await storeLook(records, here.seen, stamp()))
    }
    read().catch(setFailure)
  }, [records, stamp, front])

  // as it was stored, until it is followed: that takes another reading of the records
  const followed = useLook(records, stored?.id ?? null, setFailure)
  const isFollowed = useRef(false)
  isFollowed.current ||= followed !== null
  const look = isFollowed.current ? followed : stored
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
          // the panel finds the mark in the look, whether it is open already or not
          const mark = () => saving.run((records) => keepDraft(records, look.id, GO_TO, TAILOR_PRICE, stamp()))
          void openPanelOnceSaved(windowId, mark).then((saved) => saved && close())
        }}
      />
    </WordsOf.Provider>
  )
}

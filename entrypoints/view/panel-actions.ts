/** What a person does to a look, saved at once. Every choice can be taken back; what is only typed is kept as it stands. */
import type { PanelActions } from '../../components/panel/panel.tsx'
import type { Status } from '../../core/ids/listing-statuses.ts'
import { remove } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { type AnswerKept, keepLook } from '../../core/records/kept.ts'
import { addAnswer, choose, keepDraft, pasteInto, pasteNew, undoChoice } from '../../core/records/looks.ts'
import { setSettings } from '../../core/records/owned.ts'
import { readAnswer } from '../../core/records/read-saved.ts'
import type { Look, LookChoices, Stamp } from '../../core/records/schemas.ts'
import { changeListing } from '../../core/records/shared-fields.ts'
import { platform } from '../platform/extension.ts'
import { askedOf } from './judge-look.ts'
import { keepPasteDraft } from './paste-draft.ts'
import type { JudgedLook } from './use-judged.ts'

export interface LookPlace {
  records: Records
  stamp: () => Stamp
  look: Look | null
  judgedLook: JudgedLook | null
  windowId: number | null
}

const PASTE_FIELD = 'paste'

export function panelActions({ records, stamp, look, judgedLook, windowId }: LookPlace): PanelActions {
  const set = (choices: Partial<LookChoices>) => {
    if (look !== null) void choose(records, look.id, choices, stamp())
  }
  const keep = async (): Promise<string | null> => {
    if (look === null) return null
    return (await keepLook(records, look.id, answerKept(judgedLook), stamp()))?.after.id ?? null
  }
  const setStatus = async (id: string, status: Status): Promise<void> => {
    await changeListing(records, id, stamp(), () => ({ status }))
  }
  return {
    onWho: (personId, fit) => {
      // whom the next page is read for, too
      void setSettings(records, { personId }, stamp())
      set({ personId, fit })
    },
    onFavourite: (favouriteId) => set({ favouriteId }),
    onCorrections: (corrections) => set({ corrections }),
    onAim: (aim) => set({ aim }),
    onMoney: (money) => set({ money }),
    onNotes: (notes) => set({ notes }),
    onDraft: (field, typed) => {
      if (look !== null) void keepDraft(records, look.id, field, typed, stamp())
      else if (field === PASTE_FIELD) keepPasteDraft(typed)
    },
    onUndo: () => {
      if (look !== null) void undoChoice(records, look.id, stamp())
    },
    onPaste: (text) => {
      if (look === null) void pasteNew(records, text, windowId, stamp()).then(() => keepPasteDraft(null))
      else void pasteInto(records, look.id, text, stamp()).then(() => keepDraft(records, look.id, PASTE_FIELD, null, stamp()))
    },
    onAnswer: (text) => {
      if (look === null) return
      const now = stamp()
      const asked = judgedLook === null ? undefined : askedOf(judgedLook.judged)
      const answer = { id: now.newId(), text, at: now.now, ...(asked === undefined ? {} : { asked }) }
      const read = readAnswer(text, judgedLook?.judged.kind ?? null, judgedLook?.units ?? 'cm', asked)
      void addAnswer(records, look.id, answer, read, now)
    },
    onKeep: async () => {
      const id = await keep()
      if (id !== null && judgedLook?.judged.kept === 'passed') await setStatus(id, 'watching')
    },
    onPass: async () => {
      const id = await keep()
      if (id !== null) await setStatus(id, 'passed')
    },
    onTakeBack: async (before) => {
      const keptId = look?.keptId ?? null
      if (keptId === null) return
      if (before === null) await remove(records, 'listingsKept', keptId, stamp())
      else await setStatus(keptId, before)
    },
    onWishlist: () => void platform.openWorkroom('wishlist'),
    onCopy: async (text) => {
      try {
        await navigator.clipboard.writeText(text)
        return true
      } catch {
        // the browser may refuse; the page says so and the question can be copied by hand
        return false
      }
    },
    onWorkroom: (part) => void platform.openWorkroom(part)
  }
}

const answerKept = (judgedLook: JudgedLook | null): AnswerKept | null => {
  const reckoning = judgedLook?.judged.reckoning ?? null
  const request = judgedLook?.request ?? null
  return reckoning === null || request === null ? null : { request, reckoning }
}

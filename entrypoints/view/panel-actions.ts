/** What a person does to a look, saved at once. Every choice can be taken back; what is only typed is kept as it stands. */
import type { PanelActions } from '../../components/panel/panel.tsx'
import type { Status } from '../../core/ids/listing-statuses.ts'
import { withLanguages } from '../../core/reading/text/lexicons.ts'
import { remove } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { edit } from '../../core/records/edit.ts'
import { one } from '../../core/records/find.ts'
import { type AnswerKept, keepLook } from '../../core/records/kept.ts'
import { addAnswer, choose, keepDraft, pasteInto, pasteNew, undoChoice } from '../../core/records/looks.ts'
import { setSettings } from '../../core/records/owned.ts'
import { readAnswer } from '../../core/records/read-saved.ts'
import type { Look, LookChoices, Person, Stamp } from '../../core/records/schemas.ts'
import { changeListing } from '../../core/records/shared-fields.ts'
import { there } from '../../core/records/trouble.ts'
import { platform } from '../platform/extension.ts'
import { askedOf } from './judge-look.ts'
import { keepPasteDraft } from './paste-draft.ts'
import type { Saving } from './saving.ts'
import type { JudgedLook } from './use-judged.ts'

export interface LookPlace {
  stamp: () => Stamp
  saving: Saving
  look: Look | null
  judgedLook: JudgedLook | null
  /** Whom the answer is for. */
  person: Person | null
  windowId: number | null
}

const PASTE_FIELD = 'paste'

/** Looks, as they are shown, on which something was chosen already. */
const chosenOn = new WeakSet<Look>()

export function panelActions(looked: LookPlace): PanelActions {
  const { stamp, saving, look, judgedLook, windowId } = looked
  /** `began`: how the look was shown when the choice was made; what was changed elsewhere since stays. */
  const set = (choices: Partial<LookChoices>, began: Partial<LookChoices> | null = look) => {
    if (look === null || began === null) return
    // chosen again before the choice before it has come back to the page: the later one counts, and nobody is asked
    const isQuick = chosenOn.has(look)
    chosenOn.add(look)
    void saving.run(async (records, settle) =>
      there(await choose(records, look.id, choices, stamp(), { began, settle: settle ?? (isQuick ? 'mine' : null) }))
    )
  }
  return {
    onWho: (personId, fit) => {
      // whom the next page is read for, too
      void saving.run((records) => setSettings(records, { personId }, stamp()))
      set({ personId, fit })
    },
    onFavourite: (favouriteId) => set({ favouriteId }),
    onCorrections: (corrections) => set({ corrections }),
    onAim: (aim) => set({ aim }),
    onMoney: (money) => set({ money }),
    onNotes: (notes, began) => set({ notes }, { notes: began }),
    onDraft: (field, typed) => {
      const keepIt = async (records: Records) => {
        if (look !== null) there(await keepDraft(records, look.id, field, typed, stamp()))
        else if (field === PASTE_FIELD) keepPasteDraft(typed)
      }
      // what is typed goes on standing in its field, so that it need not be tried again by itself
      void (typed === null ? saving.forget(keepIt) : saving.run(keepIt, { inForm: true }))
    },
    onUndo: () => {
      if (look !== null) void saving.run((records) => undoChoice(records, look.id, stamp()))
    },
    onPaste: (text) => {
      void saving.run(
        async (records) => {
          if (look === null) return void (await pasteNew(records, text, windowId, stamp()))
          there(await pasteInto(records, look.id, text, stamp()))
          await keepDraft(records, look.id, PASTE_FIELD, null, stamp())
        },
        { inForm: true, saved: () => look === null && keepPasteDraft(null) }
      )
    },
    onAnswer: (text) => {
      if (look === null) return
      const now = stamp()
      const asked = judgedLook === null ? undefined : askedOf(judgedLook.judged)
      const answer = { id: now.newId(), text, at: now.now, ...(asked === undefined ? {} : { asked }) }
      const read = () => readAnswer(text, judgedLook?.judged.kind ?? null, judgedLook?.units ?? 'cm', asked)
      void saving.run(async (records) => there(await addAnswer(records, look.id, answer, await withLanguages(read), now)))
    },
    ...keepActions(looked),
    ...tailorActions(looked),
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

/** Keep, or not for me, and the way back. */
function keepActions({ stamp, saving, look, judgedLook }: LookPlace): Pick<PanelActions, 'onKeep' | 'onPass' | 'onTakeBack'> {
  const setStatus = async (records: Records, id: string, status: Status) =>
    there(await changeListing(records, id, stamp(), () => ({ status })))
  const keep = async (records: Records, { id }: Look): Promise<string> =>
    there(await keepLook(records, id, answerKept(judgedLook), stamp())).after.id
  return {
    onKeep: async () => {
      if (look === null) return false
      return saving.run(async (records) => {
        const id = await keep(records, look)
        if (judgedLook?.judged.kept === 'passed') await setStatus(records, id, 'watching')
      })
    },
    onPass: async () => look !== null && saving.run(async (records) => setStatus(records, await keep(records, look), 'passed')),
    onTakeBack: async (before) => {
      if (look === null) return false
      return saving.run(async (records) => {
        // what was kept a moment ago may not have reached the page yet
        const { keptId } = there(await one(records, 'looks', look.id))
        if (keptId === null) return
        if (before === null) there(await remove(records, 'listingsKept', keptId, stamp()))
        else await setStatus(records, keptId, before)
      })
    }
  }
}

/** The tailor of whoever the answer is for: the same that stand in the settings, so every answer follows. */
function tailorActions({ stamp, saving, person }: LookPlace): Pick<PanelActions, 'onTailor' | 'onTailorPrice'> {
  const change = async (means: Partial<Person['means']>): Promise<boolean> => {
    if (person === null) return false
    const mine = { means: { ...person.means, ...means } }
    return saving.run((records) => edit(records, 'people', person.id, { began: person, mine, settle: 'mine' }, stamp()))
  }
  return {
    onTailor: (tailor) => change({ tailor }),
    onTailorPrice: (alteration, amount) => {
      const { [alteration]: _, ...others } = person?.means.tailorPrices ?? {}
      return change({ tailorPrices: amount === null ? others : { ...others, [alteration]: amount } })
    }
  }
}

const answerKept = (judgedLook: JudgedLook | null): AnswerKept | null => {
  const reckoning = judgedLook?.judged.reckoning ?? null
  const request = judgedLook?.request ?? null
  return reckoning === null || request === null ? null : { request, reckoning, price: judgedLook?.judged.price ?? null }
}

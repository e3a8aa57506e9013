// @vitest-environment happy-dom
/** No English stands on a German page: popup and panel over the main states of an answer, and pages of the workroom. */
import { afterEach, beforeAll, describe, expect, test } from 'vitest'
import { Panel, type PanelActions } from '../../../components/panel/panel.tsx'
import { Popup } from '../../../components/popup/popup.tsx'
import { AlterationsPage } from '../../../components/workroom/alterations/alterations-page.tsx'
import { firstDraft } from '../../../components/workroom/first/first-draft.ts'
import { FirstVisit } from '../../../components/workroom/first/first-visit.tsx'
import { withIssuesIn } from '../../../core/reading/issues.ts'
import { readSaved } from '../../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../../core/records/request-for.ts'
import type { Look } from '../../../core/records/schemas.ts'
import { loadWords } from '../../../core/words/languages.ts'
import type { Wording } from '../../../core/words/say.ts'
import { judgedOf, whoOf } from '../../../entrypoints/view/judge-look.ts'
import { wholeAnswer } from '../../../entrypoints/view/whole-answer.ts'
import { hide, inPage, show } from '../on-page.tsx'

beforeAll(() => loadWords('de'))
afterEach(hide)

/** Words that stand in almost every English sentence and in no German one. */
const ENGLISH =
  /\b(?:the|of|with|your|you|is|are|not|this|that|it|and|from|to|be|at|for|by|too|what|which|none|no|has|have|or|if|about|how|as)\b/i

/** Everything a person reads or hears on the page, a piece a line. */
function pieces(): string[] {
  const all: string[] = []
  const walk = (node: Node) => {
    if (node instanceof Element)
      for (const name of ['aria-label', 'title', 'placeholder', 'alt']) {
        const value = node.getAttribute(name)
        if (value !== null) all.push(value)
      }
    if (node.nodeType === Node.TEXT_NODE && node.textContent !== null) all.push(node.textContent)
    for (const child of node.childNodes) walk(child)
  }
  walk(inPage())
  return all.map((piece) => piece.trim()).filter((piece) => piece !== '')
}
const english = (): string[] => pieces().filter((piece) => ENGLISH.test(piece))

const stamp = { createdAt: '2026-11-01T00:00:00Z', updatedAt: '2026-11-01T00:00:00Z', deletedAt: null, revision: 1, device: 'd' }
const BODY = {
  stature: 1680,
  bustGirth: 920,
  waistGirth: 740,
  waistbandGirth: 790,
  hipGirth: 1000,
  shoulderWidth: 390,
  armLength: 590
} as const
const wardrobe: Wardrobe = {
  people: [
    { ...stamp, id: 'p', name: 'Wren', units: 'cm', currency: 'EUR', fit: 'as-cut', means: { level: 3, tailor: false }, sizes: 'women' }
  ],
  measures: Object.entries(BODY).map(([measure, mm]) => ({
    ...stamp,
    id: measure,
    personId: 'p',
    measure: measure as keyof typeof BODY,
    mm,
    stated: String(mm / 10),
    takenOn: '2026-10-01'
  })),
  garments: [],
  settings: { theme: 'system', personId: 'p' }
}
const lookAt = (title: string, text: string, units: 'cm' | 'in' = 'cm'): [Look, Wording] => [
  {
    ...stamp,
    id: 'l',
    title,
    text,
    textCutFrom: null,
    structured: [],
    price: { amount: 24, currency: 'EUR' },
    address: '',
    pageAddress: '',
    windowId: 1,
    tabId: 1,
    page: 'in-front',
    problem: null,
    drafts: {},
    undo: [],
    keptId: null,
    money: { price: null, postage: null, worth: 45 },
    corrections: [],
    answers: [],
    notes: '',
    personId: null,
    fit: null,
    favouriteId: null,
    aim: null
  } as unknown as Look,
  { units, language: 'de', currency: 'EUR' }
]
const done = async () => true
const actions: PanelActions = {
  onWho() {},
  onFavourite() {},
  onCorrections() {},
  onDraft() {},
  onAim() {},
  onMoney() {},
  onPaste() {},
  onAnswer() {},
  onNotes() {},
  onKeep: done,
  onPass: done,
  onTakeBack: done,
  onWishlist() {},
  onUndo() {},
  onCopy: done,
  onWorkroom() {}
} as unknown as PanelActions

function judge([look, wording]: [Look, Wording]) {
  const asRead = readSaved(look, wording.units)
  const read = { ...asRead, reading: withIssuesIn(asRead.reading, wording), whole: withIssuesIn(asRead.whole, wording) }
  const request = listingRequest(look, read, wardrobe)
  const { units, language = 'de' } = wording
  const answer = request === null ? { reckoning: null, wouldChange: [] } : wholeAnswer(request, { units, language, currency: 'EUR' })
  return {
    who: whoOf(look, request?.garment.kind ?? null, wardrobe),
    judged: judgedOf(look, read, wardrobe, { ...answer, settled: true }, { place: 'here', kept: null })
  }
}

describe.each([
  [
    'alters to fit',
    lookAt('Wollhose', 'Bundweite 42 cm flach, Hüfte 54 cm flach, Oberschenkel 32 cm, Innenbeinlänge 84 cm. 100 % Wolle, gefüttert.')
  ],
  ['as far as told', lookAt('Jeans dunkelblau', 'Bundweite 40 cm, Innenbeinlänge 76 cm, Leibhöhe 27 cm.')],
  ['leave it', lookAt('Hemd', 'Brust 38 cm flach, Schulter 34 cm, Ärmel 50 cm, Länge 60 cm.')],
  ['in inches', lookAt('Rock', 'Taille 40 cm flach, Hüfte 52 cm flach, Länge 66 cm.', 'in')],
  ['too little told', lookAt('Grünes Kleid', 'Schönes Kleid, Größe 40. Länge 108 cm.')],
  ['several sizes', lookAt('Leinenhose', 'Größe S: Bundweite 78 cm, Hüfte 96 cm\nGröße M: Bundweite 84 cm, Hüfte 102 cm.')],
  [
    'two garments',
    lookAt('Anzug', 'Sakko: Brust 52 cm flach, Schulter 45 cm, Ärmel 64 cm. Hose: Bundweite 44 cm flach, Hüfte 53 cm flach.')
  ],
  ['doubtful figures', lookAt('Hose', 'Bundweite 42, Hüfte 1/0 cm, Innenbeinlänge 900 cm, Bundweite 47 cm, 33 cm.')],
  ['no garment', lookAt('Ledertasche', 'Breite 30 cm, Höhe 22 cm.')]
] as [string, [Look, Wording]][])('%s', (_, given) => {
  test('the panel', () => {
    const { who, judged } = judge(given)
    show(<Panel who={who} judged={judged} {...actions} />, given[1])
    expect(pieces().length).toBeGreaterThan(10)
    expect(english()).toEqual([])
  })
  test('the popup', () => {
    const { who, judged } = judge(given)
    show(<Popup who={who} judged={judged} {...actions} onOpenBeside={() => {}} onEnterPrice={() => {}} />, given[1])
    expect(pieces().length).toBeGreaterThan(5)
    expect(english()).toEqual([])
  })
})

describe('the workroom', () => {
  const german = { units: 'cm', language: 'de', currency: 'EUR' } as const
  test('what can be altered', () => {
    show(<AlterationsPage />, german)
    expect(pieces().length).toBeGreaterThan(300)
    expect(english()).toEqual([])
  })
  test.each(['what', 'body', 'garment'] as const)('the first visit: %s', (step) => {
    const draft = { ...firstDraft('cm'), chosen: ['legs' as const, 'shirts' as const], step }
    show(<FirstVisit draft={draft} onDraft={() => {}} onBody={done} onGarment={done} onSkip={() => {}} onSample={() => {}} />, german)
    expect(pieces().length).toBeGreaterThan(10)
    expect(english()).toEqual([])
  })
})

test('an English word would be found', () => {
  show(<p title="Measure it">Länge</p>)
  expect(english()).toEqual(['Measure it'])
  expect(ENGLISH.test('Die Hose an der Hüfte in Form bringen, so war es am besten')).toBe(false)
})

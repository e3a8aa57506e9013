/** Invented finds from a seed, as they are saved: one person with a body, and so many kept listings of every kind. */
import { reckon } from '../../core/reckon.ts'
import { type FindAnswer, findAnswer } from '../../core/records/find-answer.ts'
import { verdictThen } from '../../core/records/kept.ts'
import { marked } from '../../core/records/merge.ts'
import { readSaved } from '../../core/records/read-saved.ts'
import { listingRequest } from '../../core/records/request-for.ts'
import type { BodyMeasurement, ListingKept, Person } from '../../core/records/schemas.ts'
import { toldMark } from '../../core/records/summaries.ts'
import { type AnswerRow, standsOn, type VerdictRow, wearerMarks, wordedAs } from '../../core/records/verdicts.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'
import { type Random, randomFrom } from '../law/requests.ts'

export interface KeptRows {
  people: Person[]
  bodyMeasurements: BodyMeasurement[]
  listingsKept: ListingKept[]
  settings: object[]
}
/** What is kept beside the finds once their answers are worked out. */
export interface KeptAnswers {
  verdicts: VerdictRow[]
  answers: AnswerRow[]
}

/** The answers of these finds as the engine of this mark keeps them; finds that say the same are worked out once. */
export function keptAnswers({ people, bodyMeasurements, listingsKept }: KeptRows, engine: string): KeptAnswers {
  const wardrobe = { people, measures: bodyMeasurements, garments: [], settings: { theme: 'system' as const, personId: 'p' } }
  const wording = { units: 'cm' as const, language: 'en', currency: 'GBP' }
  const wearer = wearerMarks(wardrobe, engine)
  const known = new Map<string, FindAnswer>()
  const kept: KeptAnswers = { verdicts: [], answers: [] }
  for (const listing of listingsKept) {
    const { text, id } = listing
    const { kind, brief, jobs, answer } = known.get(text) ?? findAnswer(listing, wardrobe, wording)
    known.set(text, { id, kind, brief, jobs, answer })
    const of = standsOn(toldMark(listing), wearer(listing.personId, kind))
    kept.verdicts.push({ id, written: 1, of, kind, brief, jobs })
    if (answer !== null) kept.answers.push({ id, of, worded: wordedAs(wording), answer })
  }
  return kept
}

const DEVICE = 'bench'
const AT = '2026-01-01T09:00:00.000Z'
const BODY: readonly (readonly [BodyMeasureId, number])[] = [
  ['waistbandGirth', 760],
  ['hipGirth', 990],
  ['bustGirth', 930],
  ['waistGirth', 730],
  ['shoulderWidth', 405],
  ['armLength', 580],
  ['insideLegLength', 770]
]
const COLOURS = ['bottle green', 'rust', 'navy', 'charcoal', 'cream', 'plum', 'mustard', 'grey', 'brown checked', 'indigo']
const CLOTHS = ['wool', 'cotton twill', 'linen', 'corduroy', 'flannel', 'denim', 'tweed', 'poplin']
const GARMENTS: readonly (readonly [name: string, figures: readonly (readonly [name: string, least: number, most: number])[]])[] = [
  [
    'trousers',
    [
      ['Waist', 34, 46],
      ['Hip', 46, 58],
      ['Thigh', 28, 36],
      ['Inside leg', 70, 86]
    ]
  ],
  [
    'jeans',
    [
      ['Waist', 34, 46],
      ['Hip', 46, 56],
      ['Inside leg', 70, 86]
    ]
  ],
  [
    'skirt',
    [
      ['Waist', 33, 46],
      ['Hip', 45, 58],
      ['Length', 50, 80]
    ]
  ],
  [
    'dress',
    [
      ['Bust', 42, 56],
      ['Waist', 34, 48],
      ['Hip', 45, 58],
      ['Length', 90, 120]
    ]
  ],
  [
    'shirt',
    [
      ['Pit to pit', 46, 60],
      ['Shoulders', 38, 48],
      ['Sleeve', 54, 66]
    ]
  ],
  [
    'jacket',
    [
      ['Pit to pit', 46, 60],
      ['Shoulder to shoulder', 39, 49],
      ['Sleeve', 55, 67]
    ]
  ],
  [
    'coat',
    [
      ['Pit to pit', 48, 64],
      ['Shoulders', 40, 50],
      ['Sleeve', 56, 68],
      ['Length', 90, 120]
    ]
  ]
]
const TALK =
  'Worn a handful of times and kept in a drawer since. Comes from a home without smoke or pets. Please go by the tape and not by the label, ' +
  'as sizes have changed a good deal over the years. No holes or stains that I can find; the buttons are all there and the seams are sound. ' +
  'Sent within two days of payment, folded in tissue. Ask me for more pictures, and I am glad to measure anything else that you want to know. '

const from = <T>(random: Random, all: readonly T[]): T => {
  const one = all[Math.floor(random() * all.length)]
  if (one === undefined) throw new Error('nothing to choose from')
  return one
}

/** The same rows for the same seed. `n` kept listings, the last kept on top. */
export function keptFinds(n: number, seed = 500): KeptRows {
  const random = randomFrom(seed)
  const base = { device: DEVICE, revision: 1, createdAt: AT, updatedAt: AT, deletedAt: null }
  const person: Person = {
    ...{ ...base, id: 'p', name: 'Juniper', units: 'cm', currency: 'GBP', fit: 'as-cut' },
    means: { level: 3, tailor: false, hourWorth: 8 }
  }
  const measures = BODY.map(
    ([measure, mm]): BodyMeasurement => ({
      ...base,
      id: `m-${measure}`,
      personId: 'p',
      measure,
      mm,
      stated: String(mm / 10),
      takenOn: '2026-01-01'
    })
  )
  const wardrobe = { people: [person], measures, garments: [], settings: { theme: 'system' as const, personId: 'p' } }
  const patterns = Array.from({ length: Math.min(n, PATTERNS) }, () => patternOf(random, wardrobe))
  const listingsKept = Array.from({ length: n }, (_, place): ListingKept => {
    const { title, ...told } = from(random, patterns)
    const at = new Date(Date.UTC(2024, 0, 1, 0, place * 7)).toISOString()
    const row = {
      ...{ ...base, ...told, createdAt: at, updatedAt: at, id: `l-${String(place).padStart(6, '0')}`, title: `${title}, no. ${place + 1}` },
      ...{ keptAt: at, tags: place % 5 === 0 ? ['wool'] : [], notes: place % 7 === 0 ? 'ask about the lining' : '' },
      status: from(random, ['watching', 'watching', 'watching', 'asked', 'passed'] as const)
    }
    return { ...row, ...marked(null, row, { device: DEVICE, revision: 1, at }) }
  })
  return {
    people: [person],
    bodyMeasurements: measures,
    listingsKept,
    settings: [{ ...base, id: 'settings', theme: 'system', personId: 'p' }]
  }
}
/** So many different garments; the others are told in the same words, with other titles. */
const PATTERNS = 60

function patternOf(random: Random, wardrobe: Parameters<typeof listingRequest>[2]) {
  const [name, figures] = from(random, GARMENTS)
  const title = `${from(random, COLOURS)} ${from(random, CLOTHS)} ${name}`
  const told = figures.map(([point, least, most]) => `${point} ${(least + random() * (most - least)).toFixed(1)} cm`).join(', ')
  const price = Math.round(5 + random() * 60)
  const listing = {
    ...{
      address: `https://rail-and-peg.example/${title.replaceAll(' ', '-')}`,
      title,
      site: 'rail-and-peg.example',
      images: [],
      structured: []
    },
    ...{ text: `${title}. Laid flat: ${told}. £${price}. ${TALK}`, textCutFrom: null, price: { amount: price, currency: 'GBP' } },
    ...{
      money: { price: null, postage: null, worth: 45 },
      corrections: [],
      answers: [],
      personId: null,
      fit: null,
      favouriteId: null,
      aim: null
    }
  }
  const request = listingRequest(listing, readSaved(listing, 'cm'), wardrobe)
  return { ...listing, request, verdictThen: request === null ? null : verdictThen(reckon(request, { units: 'cm' }), AT) }
}

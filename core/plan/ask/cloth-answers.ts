/**
 * What the seller could say of the cloth: each answer in turn is reckoned through. Only where it can matter: cloth of untold stretch with a girth so
 * close that only cloth that gives makes it right, and cloth that was never washed of which no fibre is told.
 */
import { type Garment, isTold } from '../../garment/garment-as-worn.ts'
import type { Cloth } from '../../garment/garment-input.ts'
import { isGirth } from '../../ids/points.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Outlook } from '../outlook/outlook.ts'
import type { ReckonRequest } from '../request.ts'

export interface ClothAnswers {
  about: 'stretch' | 'fibre'
  /** How often it is so (from memory, settings), and the share of draws that then work out. */
  answers: { share: number; likely: number }[]
}

/** null: as it is assumed where nothing is told. */
interface Answer {
  share: number
  cloth: Cloth | null
}
const STRETCHES: Record<'knit' | 'woven' | 'rigid', Answer[]> = {
  knit: [
    { share: 0.25, cloth: { stretchPercent: 10 } },
    { share: 0.5, cloth: null },
    { share: 0.25, cloth: { stretchPercent: 50 } }
  ],
  // as much as such cloth is thought to give, or nothing
  woven: [
    { share: 0.3, cloth: { stretchPercent: 0 } },
    { share: 0.7, cloth: null }
  ],
  // a woven that is taken to give nothing
  rigid: [
    { share: 0.7, cloth: null },
    { share: 0.3, cloth: { stretchPercent: 20 } }
  ]
}
/** As far as a woven is thought to give, %: what is closer than that no stretch would save. */
const MOST_WOVEN = 25
const fibre = (name: string): Cloth => ({ fibres: [{ fibre: name, percent: 100 }] })
const FIBRES: Answer[] = [
  // one that does not shrink
  { share: 0.4, cloth: null },
  { share: 0.4, cloth: fibre('cotton') },
  { share: 0.2, cloth: fibre('viscose') }
]
/** A told figure may lie this many sd off. */
const REACH_SD = 3

/** A request set beside the wearer. */
export interface Beside {
  garment: Garment
  gaps: readonly Gap[]
}
/** How a request with another cloth in it is set beside the wearer, and how its outlook is had. */
export interface Ways {
  setBeside(changed: ReckonRequest): Beside
  prepare(changed: ReckonRequest): { outlook(): Outlook }
}

/** `asAssumed` is the outlook with nothing told of the cloth, `now` the request as it stands. */
export function clothAnswers(request: ReckonRequest, now: Beside, asAssumed: Outlook, { setBeside, prepare }: Ways): ClothAnswers[] {
  const { cloth } = now.garment
  const asked: ClothAnswers[] = []
  const through = (about: ClothAnswers['about'], some: readonly Answer[]) =>
    asked.push({
      about,
      answers: some.map(({ share, cloth: answer }) => ({
        share,
        likely: (answer === null ? asAssumed : prepare(withCloth(request, answer)).outlook()).likely
      }))
    })
  const stretched = (stretchPercent: number) => setBeside(withCloth(request, { stretchPercent }))
  if (cloth.stretch.from === 'assumed') {
    const gives = cloth.stretch.usable > 0
    const without = gives ? stretched(0) : now
    if (cloth.structure === 'knit' && leansOnStretch(without)) through('stretch', STRETCHES.knit)
    if (cloth.structure === 'woven' && tooSmall(without) && !tooSmall(stretched(MOST_WOVEN)))
      through('stretch', gives ? STRETCHES.woven : STRETCHES.rigid)
  }
  if (!cloth.washed && cloth.fibres.length === 0) through('fibre', FIBRES)
  return asked
}

const withCloth = (request: ReckonRequest, cloth: Cloth): ReckonRequest => ({
  ...request,
  garment: { ...request.garment, cloth: { ...request.garment.cloth, ...cloth } }
})

/** Without any stretch, is some told girth so close that it is right only because the cloth gives? */
const leansOnStretch = ({ garment, gaps }: Beside): boolean =>
  gaps.some(
    ({ point, garmentMm, sdMm, band }) =>
      band !== null && isGirth(point) && isTold(garment.points.get(point)) && garmentMm - REACH_SD * sdMm < band.least
  )

/** Is some told girth too small all the same? */
const tooSmall = ({ garment, gaps }: Beside): boolean =>
  gaps.some(({ point, gapMm }) => isGirth(point) && gapMm < 0 && isTold(garment.points.get(point)))

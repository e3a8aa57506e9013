/**
 * What the seller could say of the cloth: each answer in turn is reckoned through. Only where it can matter: a knit of untold stretch that is worn
 * closer than it would be without, and cloth that was never washed of which no fibre is told.
 */
import { alterationsFor } from '../alterations/alterations-for.ts'
import { type Garment, garmentAsWorn, isTold } from '../garment/garment-as-worn.ts'
import type { Cloth } from '../garment/garment-input.ts'
import { isGirth } from '../garment/points.ts'
import { gapsBetween } from '../wearer/gaps.ts'
import { targetFor } from '../wearer/target.ts'
import { type Outlook, outlookOf } from './outlook.ts'
import { MARK_MM } from './plan-alterations.ts'
import type { ReckonRequest } from './request.ts'

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
const STRETCHES: Answer[] = [
  { share: 0.25, cloth: { stretchPercent: 10 } },
  { share: 0.5, cloth: null },
  { share: 0.25, cloth: { stretchPercent: 50 } }
]
const fibre = (name: string): Cloth => ({ fibres: [{ fibre: name, percent: 100 }] })
const FIBRES: Answer[] = [
  // one that does not shrink
  { share: 0.4, cloth: null },
  { share: 0.4, cloth: fibre('cotton') },
  { share: 0.2, cloth: fibre('viscose') }
]
/** A told figure may lie this many sd off. */
const REACH_SD = 3

/** `asAssumed` is the outlook with nothing told of the cloth. */
export function clothAnswers(request: ReckonRequest, { cloth }: Garment, asAssumed: Outlook): ClothAnswers[] {
  const asked: ClothAnswers[] = []
  const through = (about: ClothAnswers['about'], some: readonly Answer[]) =>
    asked.push({
      about,
      answers: some.map(({ share, cloth: answer }) => ({
        share,
        likely: likely(answer === null ? asAssumed : outlookWith(request, answer))
      }))
    })
  if (cloth.structure === 'knit' && cloth.assumed.includes('stretch') && leansOnStretch(request)) through('stretch', STRETCHES)
  if (!cloth.washed && cloth.fibres.length === 0) through('fibre', FIBRES)
  return asked
}

const likely = ({ works }: Outlook): number => works.filter((one) => one).length / works.length

const withCloth = (request: ReckonRequest, cloth: Cloth): ReckonRequest => ({
  ...request,
  garment: { ...request.garment, cloth: { ...request.garment.cloth, ...cloth } }
})

function outlookWith(request: ReckonRequest, cloth: Cloth): Outlook {
  const { garment: input, wearer, favourite, tried, means, limits = {} } = withCloth(request, cloth)
  const garment = garmentAsWorn(input)
  const target = targetFor(garment, wearer, favourite, tried)
  const gaps = gapsBetween(garment, target)
  const { options } = alterationsFor(garment, limits)
  return outlookOf({ garment, target, wearer, gaps, options, means, limits, markMm: means.markMm ?? MARK_MM })
}

/** Is some told girth so close that it is right only because the cloth gives? */
function leansOnStretch(request: ReckonRequest): boolean {
  const garment = garmentAsWorn(withCloth(request, { stretchPercent: 0 }).garment)
  return gapsBetween(garment, targetFor(garment, request.wearer, request.favourite, request.tried)).some(
    ({ point, garmentMm, sdMm, band }) =>
      band !== null && isGirth(point) && isTold(garment.points.get(point)) && garmentMm - REACH_SD * sdMm < band.least
  )
}

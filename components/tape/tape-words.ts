/** A tape in words: the aria-label of the drawing, the gap's words beside a point, and the table cell. */
import { isGirth, type PointId } from '../../core/ids/points.ts'
import type { BandShown, GapShown } from '../../core/reckon.ts'
import type { Words } from '../words.tsx'
import { NINE_IN_TEN } from './tape-geometry.ts'

export type GapState = 'over' | 'under' | 'probably-inside' | 'may-be-inside' | 'inside' | 'not-judged' | 'not-told'

/** What is known of a point, as a tape shows it. `garmentMm` null: neither told nor worked out. */
export interface PointShown extends Omit<GapShown, 'garmentMm' | 'because'> {
  garmentMm: number | null
}

/** Did somebody measure it? What is worked out, or only likely by a size label, is never drawn or said as told. */
export const isMeasured = (from: PointShown['from']): boolean => from === 'seller' || from === 'own'

/** Where a garment's point stands to what is wanted. */
export function gapState({ garmentMm, from, sdMm, band }: PointShown): GapState {
  if (garmentMm === null) return 'not-told'
  if (band === null) return 'not-judged'
  const { least, most } = edgesOf(band)
  if (garmentMm > most) return 'over'
  if (garmentMm < least) return 'under'
  const crosses = garmentMm + NINE_IN_TEN * sdMm > most || garmentMm - NINE_IN_TEN * sdMm < least
  if (!crosses) return 'inside'
  return isMeasured(from) ? 'probably-inside' : 'may-be-inside'
}

/** The edges as figures: a free one is never reached. */
const edgesOf = ({ least, most }: BandShown): { least: number; most: number } => ({
  least: least ?? Number.NEGATIVE_INFINITY,
  most: most ?? Number.POSITIVE_INFINITY
})

/** Nothing binds and nothing is aimed for. */
const isFree = (band: BandShown): boolean => shapeOf(band) === 'any' && band.ideal === null
const shapeOf = ({ least, most }: BandShown): 'between' | 'at-least' | 'at-most' | 'any' =>
  least === null ? (most === null ? 'any' : 'at-most') : most === null ? 'at-least' : 'between'

/** What is wanted, as a phrase in a sentence: `28¾–30½, best 29½`, `at least 98, free above`, `any`. */
export function wantedWords(band: BandShown, words: Words, as: 'written' | 'spoken' = 'written'): string {
  const { least, most, ideal } = band
  const shape = shapeOf(band)
  // what is not there is not named by its message
  const values = { ...(least === null ? {} : { least }), ...(most === null ? {} : { most }) }
  const edges = words.inner(`wanted.${shape === 'between' && as === 'spoken' ? 'from-to' : shape}`, values)
  return ideal === null ? edges : words.inner('wanted.with-best', { edges, best: ideal })
}

/** The same under a drawn tape, where there is room for the edges alone. */
export const wantedLabel = (band: BandShown, words: Words): string => {
  const { least, most } = band
  const values = { ...(least === null ? {} : { least }), ...(most === null ? {} : { most }) }
  return words.inner(`tape.label.wanted.${shapeOf(band)}`, values)
}

const WIDE: ReadonlySet<PointId> = new Set(['shoulderWidth', 'backWidth'])
/** Which pair of words a point takes: a girth is too big or too small, a length too long or too short, a width too wide or too narrow. */
export const gapKind = (point: PointId): 'girth' | 'length' | 'width' => (isGirth(point) ? 'girth' : WIDE.has(point) ? 'width' : 'length')

/** `1½ in too big`, `Probably inside`; `inside` another sentence without the capital. */
export function gapWords(shown: PointShown, words: Words, where: 'alone' | 'inside' = 'alone'): string {
  const t = where === 'alone' ? words.t : words.inner
  const state = gapState(shown)
  const { garmentMm, band, point } = shown
  if (garmentMm !== null && band !== null && (state === 'over' || state === 'under')) {
    const { least, most } = edgesOf(band)
    const mm = state === 'over' ? garmentMm - most : least - garmentMm
    if (words.figure(mm) === '0') return t('tape.on-the-edge')
    return t(`tape.${state}.${gapKind(point)}`, { mm })
  }
  return t(state === 'inside' && band !== null && isFree(band) ? 'tape.any' : `tape.${state}`)
}

/** The whole tape as sentences. */
export function tapeWords(shown: PointShown, afterMm: number | null, words: Words): string {
  const { point, garmentMm, from, sdMm, band } = shown
  const give = NINE_IN_TEN * sdMm
  const parts = [
    garmentMm === null
      ? words.t('tape.says.not-told', { point })
      : words.t(isMeasured(from) ? 'tape.says.told' : from === 'label' ? 'tape.says.label' : 'tape.says.worked-out', {
          point,
          mm: garmentMm,
          give
        })
  ]
  if (band !== null && !(garmentMm !== null && isFree(band)))
    parts.push(words.t('tape.says.wanted', { wanted: wantedWords(band, words, 'spoken') }))
  if (garmentMm !== null) parts.push(`${gapWords(shown, words)}.`)
  if (afterMm !== null) {
    const after: PointShown = { ...shown, garmentMm: afterMm, sdMm: 0 }
    const state = gapState(after)
    parts.push(
      state === 'over' || state === 'under'
        ? words.t('tape.says.after-outside', { mm: afterMm, gap: gapWords(after, words, 'inside') })
        : words.t('tape.says.after-inside', { mm: afterMm })
    )
  }
  return parts.join(' ')
}

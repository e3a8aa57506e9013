/** A tape in words: the aria-label of the drawing, the gap's words beside a point, and the table cell. */
import { isGirth, type PointId } from '../../core/ids/points.ts'
import type { GapShown } from '../../core/reckon.ts'
import { uncapped, type Words } from '../words.tsx'
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
  if (garmentMm > band.most) return 'over'
  if (garmentMm < band.least) return 'under'
  const crosses = garmentMm + NINE_IN_TEN * sdMm > band.most || garmentMm - NINE_IN_TEN * sdMm < band.least
  if (!crosses) return 'inside'
  return isMeasured(from) ? 'probably-inside' : 'may-be-inside'
}

const WIDE: ReadonlySet<PointId> = new Set(['shoulderWidth', 'backWidth'])
/** Which pair of words a point takes: a girth is too big or too small, a length too long or too short, a width too wide or too narrow. */
export const gapKind = (point: PointId): 'girth' | 'length' | 'width' => (isGirth(point) ? 'girth' : WIDE.has(point) ? 'width' : 'length')

/** `1½ in too big`, `Probably inside`. */
export function gapWords(shown: PointShown, words: Words): string {
  const state = gapState(shown)
  const { garmentMm, band, point } = shown
  if (garmentMm !== null && band !== null && (state === 'over' || state === 'under')) {
    const mm = state === 'over' ? garmentMm - band.most : band.least - garmentMm
    if (words.figure(mm) === '0') return words.t('tape.on-the-edge')
    return words.t(`tape.${state}.${gapKind(point)}`, { mm })
  }
  return words.t(`tape.${state}`)
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
  if (band !== null) parts.push(words.t('tape.says.wanted', { least: band.least, most: band.most, best: band.ideal }))
  if (garmentMm !== null) parts.push(`${gapWords(shown, words)}.`)
  if (afterMm !== null) {
    const after: PointShown = { ...shown, garmentMm: afterMm, sdMm: 0 }
    const state = gapState(after)
    parts.push(
      state === 'over' || state === 'under'
        ? words.t('tape.says.after-outside', { mm: afterMm, gap: uncapped(gapWords(after, words)) })
        : words.t('tape.says.after-inside', { mm: afterMm })
    )
  }
  return parts.join(' ')
}

/**
 * A verdict is the tape in small: band, pencil mark, tacked way. Two tacked lines stand for two who sew: oneself and a tailor.
 * Its words always stand beside it.
 */
import type { Verdict } from '../../core/reckon.ts'

/** Where the pencil mark and the tacked mark stand, in the 44 × 28 of the drawing. */
const MARKS: Record<Verdict, { now: number | null; after: number | null; hands: 1 | 2 }> = {
  'wears-as-is': { now: 11.5, after: null, hands: 1 },
  'alters-to-fit': { now: 35, after: 11.5, hands: 1 },
  'needs-a-tailor': { now: 35, after: 11.5, hands: 2 },
  'comes-close': { now: 37, after: 24.5, hands: 1 },
  'leave-it': { now: 38, after: null, hands: 1 },
  'too-little-told': { now: null, after: null, hands: 1 }
}

export function VerdictMark({ verdict, large = false }: { verdict: Verdict; large?: boolean }) {
  const { now, after, hands } = MARKS[verdict]
  const edge = 'M8 8H4V20h4M15 8h4V20h-4'
  return (
    <svg class="mark" viewBox="0 0 44 28" width={large ? 56 : 44} height={large ? 35.6 : 28} aria-hidden="true">
      <rect class="tp-body" x="0" y="8" width="44" height="12" />
      <path class="tp-rim" d="M0 8H44M0 20H44" />
      <rect class="tp-band" x="4" y="8" width="15" height="12" />
      <path class={now === null ? 'tp-edge tp-2 tp-broken' : 'tp-edge tp-2'} d={edge} />
      {now !== null && after !== null && (
        <path
          class={hands === 2 ? 'tp-aft tp-pair' : 'tp-aft tp-way'}
          d={hands === 2 ? `M${now} 23.4H${after + 5.5}M${now} 26.6H${after + 5.5}` : `M${now} 25H${after + 5.5}`}
        />
      )}
      {now === null ? (
        <>
          <path class="tp-whisk tp-dots" d="M6 4H40" />
          <path class="tp-hollow" d="M25 0h10L30 8.6z" />
        </>
      ) : (
        <>
          <path class="tp-now" d={`M${now} 8V20`} />
          <path class="tp-nowf" d={`M${now - 5} 0h10L${now} 9z`} />
        </>
      )}
      {after !== null && (
        <>
          <path class="tp-aft tp-2 tp-close" d={`M${after} 8V20`} />
          <path class="tp-aftf" d={`M${after} 20.5l-4.5 7h9z`} />
        </>
      )}
    </svg>
  )
}

/** The tape in one line, for tables: strip, band, mark; the figures stand beside it. Same width in every row. */
import { useWords } from '../words.tsx'
import { tapeInput } from './tape.tsx'
import { bracketsOf, drawTape } from './tape-geometry.ts'
import { type PointShown, tapeWords } from './tape-words.ts'

export interface TapeLineProps {
  shown: PointShown
  afterMm?: number | null | undefined
  width?: number
  /** A sign in the middle of the band, where the garment is not known: a question. */
  wanted?: string
}

export function TapeLine({ shown, afterMm = null, width = 112, wanted = '' }: TapeLineProps) {
  const words = useWords()
  const { band, now, after, ticks } = drawTape(tapeInput(shown, afterMm), words.units, width)
  return (
    <svg class="mini" role="img" aria-label={tapeWords(shown, afterMm, words)} viewBox={`0 0 ${width} 23`} width={width} height={23}>
      <rect class="tp-body" x={0} y={6} width={width} height={10} />
      {band && <rect class="tp-band" x={px(band.from)} y={6} width={px(Math.max(0, band.to - band.from))} height={10} />}
      <path class="tp-tick tp-faint" d={unitTicks(ticks, width)} />
      <path class="tp-rim" d={`M0 6H${width}M0 16H${width}`} />
      {band && <path class="tp-edge tp-2" d={bracketsOf(band, 6, 16, 3)} />}
      {band && wanted !== '' && (
        <text class="tp-ask" x={px((band.from + band.to) / 2)} y={14.5} text-anchor="middle">
          {wanted}
        </text>
      )}
      {now?.told && (
        <>
          <path class="tp-now tp-2" d={`M${px(now.x)} 6V16`} />
          <path class="tp-nowf" d={`M${px(now.x - 4.5)} 0h9L${px(now.x)} 7z`} />
        </>
      )}
      {now && !now.told && (
        <>
          <path class="tp-now tp-thin" d={`M${px(now.x - 1.75)} 6V16M${px(now.x + 1.75)} 6V16`} />
          <path class="tp-hollow tp-thin" d={`M${px(now.x - 4)} .8h8L${px(now.x)} 6.5z`} />
        </>
      )}
      {after && (
        <>
          <path class="tp-aft tp-2 tp-close" d={`M${px(after.x)} 6V16`} />
          <path class="tp-aftf tp-thin" d={`M${px(after.x)} 16.5l-4 5.8h8z`} />
        </>
      )}
    </svg>
  )
}

/** A tick each unit; where they would run together, fewer. */
function unitTicks(ticks: ReturnType<typeof drawTape>['ticks'], width: number): string {
  const whole = ticks.filter(({ length }) => length >= 9)
  const step = Math.max(1, Math.ceil(4.6 / Math.max(0.1, (whole[1]?.x ?? width) - (whole[0]?.x ?? 0))))
  return whole
    .filter((_, i) => i % step === 0)
    .map(({ x }) => `M${px(x)} 6v4`)
    .join('')
}
const px = (value: number): number => Math.round(value * 10) / 10

/** The tape: one drawing for one point of measure. What is wanted lies on it in chalk, the garment is a pencil mark above, the plan is tacked below. */
import { useId } from 'preact/hooks'
import { useWidth } from '../use-width.ts'
import { useWords } from '../words.tsx'
import { bracketsOf, drawTape, type Stretch, TAPE_BOTTOM, TAPE_TOP, type TapeDrawing, type TapeInput } from './tape-geometry.ts'
import { isMeasured, type PointShown, tapeWords, wantedLabel } from './tape-words.ts'

export interface TapeProps {
  shown: PointShown
  afterMm?: number | null | undefined
  /** One stretch for several tapes that are compared. */
  stretch?: Stretch | undefined
}

/** What the geometry needs of a point. */
export const tapeInput = (shown: PointShown, afterMm: number | null = null): TapeInput => ({
  now: shown.garmentMm === null ? null : { mm: shown.garmentMm, sdMm: shown.sdMm, told: isMeasured(shown.from) },
  band: shown.band,
  afterMm
})

export function Tape({ shown, afterMm = null, stretch }: TapeProps) {
  const words = useWords()
  const { ref, width } = useWidth<HTMLDivElement>(328)
  const clip = useId()
  const input = tapeInput(shown, afterMm)
  const drawing = drawTape(input, words.units, width, stretch)
  const top = -2
  return (
    <div class="tape" ref={ref}>
      <svg
        role="img"
        aria-label={tapeWords(shown, afterMm, words)}
        viewBox={`0 ${top} ${width} ${drawing.height - top}`}
        width={width}
        height={drawing.height - top}
      >
        <Strip drawing={drawing} clip={clip} />
        <Labels shown={shown} afterMm={afterMm} drawing={drawing} />
      </svg>
    </div>
  )
}

function Strip({ drawing, clip }: { drawing: TapeDrawing; clip: string }) {
  const { width, band, now, after } = drawing
  const tall = TAPE_BOTTOM - TAPE_TOP
  return (
    <>
      <rect class="tp-body" x={0} y={TAPE_TOP} width={width} height={tall} />
      {band && (
        <>
          <clipPath id={clip}>
            <rect x={band.from} y={TAPE_TOP} width={Math.max(0, band.to - band.from)} height={tall} />
          </clipPath>
          <rect class="tp-band" x={band.from} y={TAPE_TOP} width={Math.max(0, band.to - band.from)} height={tall} />
          <path class="tp-hatch" clip-path={`url(#${clip})`} d={drawing.hatch} />
        </>
      )}
      <path class="tp-tick" d={drawing.ticks.map(({ x, length }) => `M${px(x)} ${TAPE_TOP}v${length}`).join('')} />
      {drawing.numerals.map(({ x, text }) => (
        <text key={text} class="tp-num" x={px(x)} y={45.5}>
          {text}
        </text>
      ))}
      <path class="tp-rim" d={`M0 ${TAPE_TOP}H${width}M0 ${TAPE_BOTTOM}H${width}`} />
      {band && (
        <>
          <path class="tp-edge" d={bracketsOf(band, 24.5, 49.5, 5)} />
          {band.best !== null && <path class="tp-ideal" d={`M${px(band.best)} ${TAPE_TOP}V${TAPE_BOTTOM}`} />}
        </>
      )}
      {now && <NowMark now={now} />}
      {after && <AfterMark now={now} after={after} />}
    </>
  )
}

function NowMark({ now }: { now: NonNullable<TapeDrawing['now']> }) {
  const x = px(now.x)
  const feet = now.to - now.from > 1 ? `M${px(now.from)} 15v8M${px(now.to)} 15v8` : ''
  return (
    <>
      <path class={now.told ? 'tp-whisk' : 'tp-whisk tp-dots'} d={`M${px(now.from)} 19H${px(now.to)}`} />
      <path class="tp-whisk" d={feet} />
      {now.told ? (
        <>
          <path class="tp-now" d={`M${x} ${TAPE_TOP}V${TAPE_BOTTOM}`} />
          <path class="tp-nowf" d={`M${px(now.x - 6)} 13h12L${x} 26z`} />
        </>
      ) : (
        <>
          <path class="tp-now tp-thin" d={`M${px(now.x - 2)} ${TAPE_TOP}V${TAPE_BOTTOM}M${px(now.x + 2)} ${TAPE_TOP}V${TAPE_BOTTOM}`} />
          <path class="tp-hollow" d={`M${px(now.x - 6)} 13.5h12L${x} 25z`} />
        </>
      )}
    </>
  )
}

function AfterMark({ now, after }: { now: TapeDrawing['now']; after: NonNullable<TapeDrawing['after']> }) {
  const x = px(after.x)
  const side = now !== null && now.x < after.x ? -9 : 9
  return (
    <>
      {now !== null && after.stitched && <path class="tp-aft tp-run" d={`M${px(now.x)} 50V56H${px(after.x + side)}`} />}
      <path class="tp-aft" d={`M${x} ${TAPE_TOP}V${TAPE_BOTTOM}`} />
      <path class="tp-aftf" d={`M${x} 50l-5.5 10h11z`} />
    </>
  )
}

function Labels({ shown, afterMm, drawing }: { shown: PointShown; afterMm: number | null; drawing: TapeDrawing }) {
  const words = useWords()
  const { garmentMm, band, from } = shown
  const nowText =
    garmentMm === null
      ? ''
      : words.t(isMeasured(from) ? 'tape.label.now' : from === 'label' ? 'tape.label.size' : 'tape.label.worked-out', { mm: garmentMm })
  const underText = afterMm !== null ? words.t('tape.label.after', { mm: afterMm }) : band !== null ? wantedLabel(band, words) : ''
  const underX = drawing.after?.x ?? (drawing.band === null ? 0 : (drawing.band.from + drawing.band.to) / 2)
  return (
    <>
      {drawing.now && (
        <text class="tp-lab" x={px(drawing.clamp(drawing.now.x, labelWidth(nowText)))} y={10}>
          {nowText}
        </text>
      )}
      {underText !== '' && (
        <text
          class={afterMm !== null ? 'tp-lab tp-labA' : 'tp-lab tp-labW'}
          x={px(drawing.clamp(underX, labelWidth(underText)))}
          y={afterMm !== null ? 72 : 65}
        >
          {underText}
        </text>
      )}
    </>
  )
}

/** Room for a label of 12 px letters; generous, since the face is the system's. */
const labelWidth = (text: string): number => text.length * 6.9
const px = (value: number): number => Math.round(value * 10) / 10

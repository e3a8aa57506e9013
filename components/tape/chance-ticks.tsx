/** A chance as ten ticks, so many tall; those that stand only if the untold is as it must be are dotted. Always after the words, never instead. */
import { inTens } from '../../core/words/say.ts'

const TENTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const

/** Two chances that are said with the same words. */
export const sameInTens = (one: number, other: number): boolean => inTens(one) === inTens(other)

export function ChanceTicks({ chance, chanceIf = null }: { chance: number; chanceIf?: number | null }) {
  const tall = inTens(chance)
  const tallIf = chanceIf === null ? tall : inTens(chanceIf)
  return (
    <svg class="chn" viewBox="0 0 62 14" width="62" height="14" aria-hidden="true">
      <path class="g-off g-base" d="M0 13.5H62" />
      {TENTHS.map((tenth) => (
        <path
          key={tenth}
          class={tenth <= tall ? 'g-on g-tall' : tenth <= tallIf ? 'g-on g-tall g-dots' : 'g-off'}
          d={`M${tenth * 6 - 2} 13v${tenth <= Math.max(tall, tallIf) ? -11 : -5}`}
        />
      ))}
    </svg>
  )
}

/** A chance as ten ticks, so many tall. Always after the words, never instead. */
const TENTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const

export function ChanceTicks({ chance }: { chance: number }) {
  const tall = Math.round(chance * 10)
  return (
    <svg class="chn" viewBox="0 0 62 14" width="62" height="14" aria-hidden="true">
      <path class="g-off g-base" d="M0 13.5H62" />
      {TENTHS.map((tenth) => (
        <path key={tenth} class={tenth <= tall ? 'g-on g-tall' : 'g-off'} d={`M${tenth * 6 - 2} 13v${tenth <= tall ? -11 : -5}`} />
      ))}
    </svg>
  )
}

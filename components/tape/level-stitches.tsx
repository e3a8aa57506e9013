/** A level as five stitches: those needed solid, the rest dotted. Always after the words, never instead. */
const STITCHES = [1, 2, 3, 4, 5] as const

export function LevelStitches({ level }: { level: number }) {
  return (
    <svg class="lev" viewBox="0 0 52 8" width="52" height="8" aria-hidden="true">
      {STITCHES.map((stitch) => (
        <path key={stitch} class={stitch <= level ? 'g-on' : 'g-off g-dots'} d={`M${(stitch - 1) * 11} 4h8`} />
      ))}
    </svg>
  )
}

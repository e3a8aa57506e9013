/** The only sign there is: a notch over a running stitch. */
export function HouseMark() {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <path class="mark-notch" d="M1 3h4l3 6 3-6h4" />
      <path class="mark-stitch" d="M0 13h16" />
    </svg>
  )
}

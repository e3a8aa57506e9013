/** English: how to read what the pages show. */
export const help = {
  'tape-key.now': 'The solid triangle above is the garment as it measures now.',
  'tape-key.guessed': 'The empty triangle above is our estimate: nobody has measured it.',
  'tape-key.wanted': 'Between the brackets it fits you well.',
  'tape-key.after': 'The dashed triangle below is the garment after the alterations.'
}

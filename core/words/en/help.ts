/** English: the help, and how to read what the pages show. */
export const help = {
  'help.link': 'Help',
  'help.link.steps': 'How it works',
  'help.link.tape': 'How to read the tape',
  'help.link.answers': 'What the answers mean',
  'help.link.levels': 'How hard each level is',
  'help.link.measure-a-garment': 'How to measure a garment',
  'help.link.measure-yourself': 'How to measure yourself',
  'help.link.words': 'Words of the trade',

  'tape-key.now': 'The solid triangle above is the garment as it measures now.',
  'tape-key.guessed': 'The empty triangle above is our estimate: nobody has measured it.',
  'tape-key.wanted': 'Between the brackets it fits you well.',
  'tape-key.after': 'The dashed triangle below is the garment after the alterations.'
}

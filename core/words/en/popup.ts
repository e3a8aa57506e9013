/** English: popup. */
export const popup = {
  'popup.title': 'Seam Reckoner: read this page',
  'popup.reading': 'Reading the page.',
  'popup.failed': 'What is saved could not be reached. Close this window, load the page again and click the toolbar button.',
  'popup.cut': 'Cut: {cut}.',
  'popup.open-beside': 'Open beside the page',
  'popup.paste-beside': 'Open beside the page and paste',
  'popup.note.in': 'Inches, girths around.',
  'popup.note.cm': 'Centimetres, girths around.',
  'popup.note.in.hollow': 'Inches, girths around. A hollow mark was not told but worked out.',
  'popup.note.cm.hollow': 'Centimetres, girths around. A hollow mark was not told but worked out.',
  'popup.note.more': '{n} more beside the page.',
  'popup.read.head': 'Read here: {parts}.',
  'popup.read.measures': '{n} {n|one:measure|other:measures}',
  'popup.read.cloth': 'cloth',
  'popup.read.price': 'price',
  'popup.read.faults': '{n} {n|one:fault|other:faults}',
  'popup.read.doubts': '{n} doubtful.'
} as const

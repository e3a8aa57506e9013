/** English: popup. */
export const popup = {
  'popup.title': 'Seam Reckoner: read this page',
  'popup.reading': 'Reading the page.',
  'popup.failed': 'What is saved could not be reached. Close this window, load the page again and click the toolbar button.',
  'popup.open-beside': 'More details',
  'popup.paste-beside': 'Open beside the page and paste',
  'popup.workroom': 'Wishlist and measures',
  'popup.after': 'after the work {mm|figure}',
  'popup.note.in': 'Inches, all around.',
  'popup.note.cm': 'Centimetres, all around.',
  'popup.note.more': '{n} more under More details.'
} as const

/** German: popup. */
export const popup: Record<string, string> = {
  'popup.title': 'Seam Reckoner: diese Seite lesen',
  'popup.reading': 'Die Seite wird gelesen.',
  'popup.failed':
    'Das Gespeicherte war nicht zu erreichen. Schließ dieses Fenster, lade die Seite neu und klick auf den Knopf in der Symbolleiste.',
  'popup.after': 'nach der Arbeit {mm|figure}',
  'popup.open-beside': 'Einzelheiten',
  'popup.paste-beside': 'Neben der Seite öffnen und einfügen',
  'popup.workroom': 'Merkliste und Maße',
  'popup.note.in': 'Zoll; Weiten rundum.',
  'popup.note.cm': 'Zentimeter; Weiten rundum.',
  'popup.note.more': '{n} weitere unter „Einzelheiten“.'
}

/** German: the help, and how to read what the pages show. */
export const help: Record<string, string> = {
  'help.link': 'Hilfe',
  'help.link.steps': 'So funktioniert es',
  'help.link.tape': 'Wie man das Maßband liest',
  'help.link.answers': 'Was die Antworten bedeuten',
  'help.link.levels': 'Wie schwer jede Stufe ist',
  'help.link.measure-a-garment': 'Wie man ein Kleidungsstück misst',
  'help.link.measure-yourself': 'Wie man sich selbst misst',
  'help.link.words': 'Fachwörter',

  'tape-key.now': 'Das ausgefüllte Dreieck oben ist das Stück, wie es jetzt misst.',
  'tape-key.guessed': 'Das leere Dreieck oben ist unsere Schätzung: Niemand hat es gemessen.',
  'tape-key.wanted': 'Zwischen den Klammern passt es dir gut.',
  'tape-key.after': 'Das gestrichelte Dreieck unten ist das Stück nach den Änderungen.'
}

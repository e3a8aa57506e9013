/** Italian, as private sellers write it. */
import { asides } from './it/asides.ts'
import { cloth } from './it/cloth.ts'
import { amounts, cues } from './it/cues.ts'
import { cut } from './it/cut.ts'
import { garments } from './it/garments.ts'
import { kindSigns } from './it/kind-signs.ts'
import { measures } from './it/measures.ts'
import { words } from './it/words.ts'
import type { Lexicon } from './lexicon.ts'

export const it: Lexicon = {
  language: 'it',
  endings: [],
  headFirst: true,
  falseFriends: `
    max
    maximum
  `,
  common: `
    il
    la
    lo
    gli
    le
    di
    del
    della
    con
    e
    è
    un
    una
    per
    molto
    non
    taglia
    lunghezza
    larghezza
    ascella
    ascelle
    spalla
    spalle
    manica
    maniche
    petto
    vita
    fianchi
    misure
    stato
    cavallo
    piatto
    pantaloni
    vestito
    giacca
    camicia
    gonna
    senza
    come
    circa
    condizioni
    interno
    gamba
    orlo
  `,
  currencies: {
    EUR: `
      euro
      eur
    `
  },
  ...measures,
  words: { ...asides, ...words },
  ...garments,
  signs: kindSigns,
  cut,
  ...cloth,
  cues,
  amounts
}

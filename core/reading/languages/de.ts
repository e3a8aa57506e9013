/** German, as private sellers write it. */
import { asides } from './de/asides.ts'
import { cloth } from './de/cloth.ts'
import { amounts, cues } from './de/cues.ts'
import { cut } from './de/cut.ts'
import { garments } from './de/garments.ts'
import { kindSigns } from './de/kind-signs.ts'
import { measures } from './de/measures.ts'
import { words } from './de/words.ts'
import type { Lexicon } from './lexicon.ts'

export const de: Lexicon = {
  language: 'de',
  endings: ['n', 'en', 'e', 's'],
  joinedBy: ['en', 's', 'n', 'e'],
  falseFriends: `
    im
    aus
    am
    war
    bin
    max
    maximum
  `,
  common: `
    der
    die
    das
    und
    mit
    von
    bis
    ist
    im
    für
    nicht
    eine
    ein
    zu
    auf
    sehr
    größe
    gr
    länge
    breite
    weite
    achsel
    taille
    bund
    hüfte
    schulter
    ärmel
    ärmellänge
    gemessen
    flach
    liegend
    zustand
    maße
    getragen
    wurde
    habe
    ich
    aus
    innenbeinlänge
    bundweite
    einfach
    hose
    kleid
    jacke
    brustweite
    schrittlänge
    gesamtlänge
  `,
  currencies: {
    EUR: `
      euro
      eur
    `,
    CHF: `
      franken
      chf
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

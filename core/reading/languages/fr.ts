/** French, as private sellers write it. */
import { asides } from './fr/asides.ts'
import { cloth } from './fr/cloth.ts'
import { amounts, cues } from './fr/cues.ts'
import { cut } from './fr/cut.ts'
import { garments } from './fr/garments.ts'
import { kindSigns } from './fr/kind-signs.ts'
import { measures } from './fr/measures.ts'
import { words } from './fr/words.ts'
import type { Lexicon } from './lexicon.ts'

export const fr: Lexicon = {
  language: 'fr',
  endings: ['s', 'e', 'es'],
  headFirst: true,
  falseFriends: `
    au
    sale
    bra
    max
    maximum
    gilet
    bustier
  `,
  common: `
    le
    la
    les
    et
    avec
    de
    du
    des
    est
    une
    un
    pour
    pas
    très
    en
    au
    aux
    taille
    longueur
    largeur
    épaule
    épaules
    manche
    manches
    aisselle
    aisselles
    poitrine
    hanches
    à plat
    état
    mesures
    entrejambe
    porté
    jamais
    fermeture
    cette
    ce
    je
    sur
    robe
    veste
    pantalon
    jupe
    environ
    dos
  `,
  currencies: {
    EUR: `
      euro
      euros
      eur
    `,
    CHF: `
      chf
      francs
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

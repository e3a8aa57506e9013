/** Dutch, as private sellers write it. */

import type { Lexicon } from './lexicon.ts'
import { asides } from './nl/asides.ts'
import { cloth } from './nl/cloth.ts'
import { amounts, cues } from './nl/cues.ts'
import { cut } from './nl/cut.ts'
import { garments } from './nl/garments.ts'
import { kindSigns } from './nl/kind-signs.ts'
import { measures } from './nl/measures.ts'
import { words } from './nl/words.ts'

export const nl: Lexicon = {
  language: 'nl',
  endings: ['s', 'en', 'e'],
  joinedBy: ['en', 's', 'n', 'e'],
  falseFriends: `
    hem
    max
    maximum
  `,
  common: `
    de
    het
    een
    en
    met
    van
    is
    in
    voor
    niet
    zeer
    heel
    maat
    lengte
    breedte
    oksel
    schouder
    schouders
    mouw
    mouwen
    borst
    taille
    heup
    heupen
    gemeten
    plat
    staat
    maten
    binnenbeen
    broek
    jurk
    jas
    rok
    tot
    ik
    dit
    deze
    wijdte
    omtrek
    gedragen
    goede
    nieuw
    ongeveer
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

/** Norwegian, as private sellers write it. */

import type { Lexicon } from './lexicon.ts'
import { asides } from './no/asides.ts'
import { cloth } from './no/cloth.ts'
import { amounts, cues } from './no/cues.ts'
import { cut } from './no/cut.ts'
import { garments } from './no/garments.ts'
import { measures } from './no/measures.ts'
import { words } from './no/words.ts'

export const no: Lexicon = {
  language: 'no',
  endings: ['en', 'n', 'et', 'er', 'ene', 'a'],
  joinedBy: ['en', 's', 'n', 'e'],
  bareUnit: 'cm',
  alsoCalled: ['nb', 'nn'],
  falseFriends: `
    for
    fit
    max
    maximum
    bar
    at
    men
    god
    vest
  `,
  common: `
    og
    er
    med
    ikke
    av
    til
    på
    den
    det
    som
    jeg
    har
    selges
    selger
    brukt
    størrelse
    str
    lengde
    ermelengde
    skulderbredde
    livvidde
    hofte
    bryst
    uten
    også
    mye
    pris
    kun
    fin
    stand
    mål
    bukse
    kjole
    jakke
    skjorte
    skjørt
    kåpe
    bomull
    ull
    porto
    fra
    litt
    hvit
    svart
    blå
    veldig
    genser
  `,
  currencies: {
    NOK: `
      kr
      kroner
      kr.
      nok
    `,
    EUR: `
      euro
      eur
    `
  },
  ...measures,
  words: { ...asides, ...words },
  ...garments,
  ...cloth,
  cut,
  cues,
  amounts
}

/** Danish, as private sellers write it. */
import { asides } from './da/asides.ts'
import { cloth } from './da/cloth.ts'
import { amounts, cues } from './da/cues.ts'
import { cut } from './da/cut.ts'
import { garments } from './da/garments.ts'
import { measures } from './da/measures.ts'
import { words } from './da/words.ts'
import type { Lexicon } from './lexicon.ts'

export const da: Lexicon = {
  language: 'da',
  endings: ['en', 'n', 'et', 'er', 'ne', 'erne'],
  joinedBy: ['en', 's', 'n', 'e'],
  bareUnit: 'cm',
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
    af
    til
    på
    den
    det
    som
    jeg
    har
    sælges
    sælger
    brugt
    størrelse
    str
    længde
    ærmelængde
    skulderbredde
    livvidde
    hofte
    bryst
    uden
    også
    meget
    pris
    kun
    fin
    stand
    mål
    bukser
    kjole
    jakke
    skjorte
    nederdel
    frakke
    bomuld
    uld
    porto
    fra
    lidt
    hvid
    sort
    blå
  `,
  currencies: {
    DKK: `
      kr
      kroner
      kr.
      dkk
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

/** Polish, as private sellers write it. */

import type { Lexicon } from './lexicon.ts'
import { asides } from './pl/asides.ts'
import { cloth } from './pl/cloth.ts'
import { amounts, cues } from './pl/cues.ts'
import { cut } from './pl/cut.ts'
import { garments } from './pl/garments.ts'
import { kindSigns } from './pl/kind-signs.ts'
import { measures } from './pl/measures.ts'
import { words } from './pl/words.ts'

export const pl: Lexicon = {
  language: 'pl',
  endings: [],
  headFirst: true,
  falseFriends: `
    max
    maximum
  `,
  common: `
    i
    z
    w
    na
    do
    od
    jest
    nie
    po
    się
    rozmiar
    długość
    szerokość
    pacha
    pachy
    pachami
    ramiona
    rękaw
    rękawa
    talia
    pas
    biodra
    biust
    klatka
    stan
    wymiary
    płasko
    nogawka
    nogawki
    spodnie
    sukienka
    kurtka
    koszula
    spódnica
    bardzo
    dobry
    pod
    ok
    marynarka
    sweter
    dł
    szer
    mierzone
    bluzka
    płaszcz
    bez
    obwód
    wewnętrzna
  `,
  currencies: {
    PLN: `
      zł
      pln
      złotych
      zl
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

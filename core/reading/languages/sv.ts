/** Swedish, as private sellers write it. */

import type { Lexicon } from './lexicon.ts'
import { asides } from './sv/asides.ts'
import { cloth } from './sv/cloth.ts'
import { amounts, cues } from './sv/cues.ts'
import { cut } from './sv/cut.ts'
import { garments } from './sv/garments.ts'
import { kindSigns } from './sv/kind-signs.ts'
import { measures } from './sv/measures.ts'
import { words } from './sv/words.ts'

export const sv: Lexicon = {
  language: 'sv',
  endings: ['en', 'n', 'et', 'ar', 'er'],
  joinedBy: ['en', 's', 'n', 'e'],
  falseFriends: `
    bra
    hem
    max
  `,
  common: `
    och
    är
    en
    ett
    med
    av
    i
    på
    till
    från
    för
    inte
    mycket
    storlek
    längd
    bredd
    ärm
    ärmlängd
    armhåla
    axel
    axlar
    byst
    bröst
    midja
    midjemått
    höft
    mått
    plant
    mätt
    innerben
    byxor
    klänning
    jacka
    kjol
    skjorta
    skick
    fint
    stl
    ca
    som
    det
    den
    har
    jag
    tvärs
    benvidd
    rygg
    ytterben
    kappa
    tröja
  `,
  currencies: {
    SEK: `
      kr
      sek
      kronor
      :-
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

/** Finnish, as private sellers write it. */
import { asides } from './fi/asides.ts'
import { cloth } from './fi/cloth.ts'
import { amounts, cues } from './fi/cues.ts'
import { cut } from './fi/cut.ts'
import { garments } from './fi/garments.ts'
import { measures } from './fi/measures.ts'
import { words } from './fi/words.ts'
import type { Lexicon } from './lexicon.ts'

export const fi: Lexicon = {
  language: 'fi',
  endings: ['a', 'ä', 'n', 't', 'ssa', 'ssä', 'sta', 'stä', 'an', 'en', 'lla', 'llä', 'ta', 'tä', 'ia', 'iä', 'in'],
  joinedBy: ['n', 's', 'is'],
  bareUnit: 'cm',
  falseFriends: `
    on
    me
    no
    hame
    max
    top
    he
    tie
  `,
  common: `
    ja
    ei
    ole
    olen
    se
    että
    mutta
    koko
    pituus
    leveys
    hihan
    hiha
    hartiat
    vyötärö
    lantio
    rinta
    rinnanympärys
    kunto
    hyvä
    hyvässä
    kunnossa
    käytetty
    uusi
    myydään
    myyn
    hinta
    postikulut
    mitat
    mitattu
    tasossa
    noin
    n
    merkki
    väri
    musta
    valkoinen
    sininen
    punainen
    housut
    mekko
    takki
    paita
    hame
    puuvilla
    villa
    kainalosta
    kainaloon
    kpl
    vain
    erittäin
    todella
    nyt
    lahje
    lahkeen
    vähän
    hieman
    tai
    kanssa
  `,
  currencies: {
    EUR: `
      euro
      euroa
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

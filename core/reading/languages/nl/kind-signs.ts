/** What tells a kind in Dutch without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      resultaten
      sorteren op
      bekijk alles
      in winkelwagen
      nieuw binnen
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      niet inbegrepen
      op de foto
      op de foto's
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      verkoop ook
      ook te koop
      zie mijn andere
      andere advertenties
      ik zoek
      ruilen voor
      ruil voor
    `
  },
  {
    kinds: ['dress', 'skirt'],
    as: 'style',
    phrases: `
      midi
      mini
      maxi
    `
  },
  {
    kinds: ['trousers', 'jeans'],
    as: 'style',
    phrases: `
      bootcut
      flared
      wijde pijpen
      rechte pijp
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      gulp
      binnenbeen
      binnenbeenlengte
      riemlussen
      bandplooien
      kruis
      vijf zakken
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      revers
      dubbele rij knopen
      binnenzak
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      splitten
      schoudervullingen
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      manchetten
      knoopsluiting voor
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      buidelzak
      kabels
      grof gebreid
      handgebreid
      boorden
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      spaghettibandjes
      bandjes
      strapless
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: 'drukknopen in het kruis'
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      zijde
      chiffon
      satijn
      linnen
      viscose
      geweven
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      rib
      tricot
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      per meter
      naaipatroon
      hakhoogte
    `
  }
]

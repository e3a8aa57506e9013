/** What tells a kind in Italian without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      risultati
      ordina per
      vedi tutto
      aggiungi al carrello
      nuovi arrivi
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      non inclusa
      non incluso
      non inclusi
      nella foto
      nelle foto
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      vendo anche
      guarda i miei altri
      altri annunci
      cerco
      scambio con
    `
  },
  {
    kinds: ['dress'],
    as: 'style',
    phrases: 'chemisier'
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
      a zampa
      gamba larga
      gamba dritta
      palazzo
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      patta
      cavallo
      interno gamba
      passanti
      pinces
      cinque tasche
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      revers
      rever
      doppiopetto
      monopetto
      tasca interna
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      spacchi laterali
      spacco posteriore
      spalline imbottite
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      polsini
      colletto button down
      collo button down
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      tasca a marsupio
      trecce
      a coste
      fatto a mano ai ferri
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      spalline sottili
      bretelle
      senza spalline
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: 'bottoni al cavallo'
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      seta
      chiffon
      raso
      lino
      popeline
      viscosa
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      costina
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      al metro
      cartamodello
      altezza tacco
    `
  }
]

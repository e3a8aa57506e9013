/** What tells a kind in German without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      ergebnisse
      treffer
      sortieren nach
      alle anzeigen
      in den warenkorb
      neu eingetroffen
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      nicht dabei
      nicht im preis
      auf dem foto
      auf den fotos
      auf den bildern
      auf dem bild
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      verkaufe auch
      verkaufe außerdem
      biete auch
      außerdem
      siehe meine anderen
      schaut auch
      meine anderen anzeigen
      suche
      im tausch gegen
      tausche gegen
    `
  },
  {
    kinds: ['dress'],
    as: 'style',
    phrases: `
      etui
      hängerchen
      kleines schwarzes
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
      schlaghosen
      weites bein
      gerades bein
      marlene
      five pocket
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      hosenschlitz
      reißverschluss und knopf
      gürtelschlaufen
      innenbein
      innenbeinlänge
      schrittlänge
      bundfalten
      leibhöhe
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      revers
      reverskragen
      einreiher
      zweireiher
      innentasche
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      rückenschlitz
      seitenschlitze
    `
  },
  {
    kinds: ['coat'],
    as: 'construction',
    phrases: `
      daunen
      wasserdicht
      wattiert
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      knopfleiste
      manschetten
      haifischkragen
      button down
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      kängurutasche
      rippbündchen
      zopfmuster
      grobstrick
      feinstrick
      rollkragen
      handgestrickt
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      spaghettiträger
      trägerlos
      neckholder
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: `
      druckknöpfe im schritt
      latz
    `
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      seide
      seidig
      chiffon
      leinen
      gewebt
      satin
      viskose
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      rippstoff
      gerippt
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      pro meter
      vom meter
      schnittmuster
      anleitung
      absatzhöhe
      schaftweite
    `
  }
]

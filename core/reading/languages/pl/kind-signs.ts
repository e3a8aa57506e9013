/** What tells a kind in Polish without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      wyników
      wyniki
      sortuj
      zobacz wszystko
      dodaj do koszyka
      nowości
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      nie wchodzi w skład
      nie w zestawie
      na zdjęciu
      na zdjęciach
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      sprzedam też
      mam też
      zobacz moje inne
      inne aukcje
      szukam
      zamienię na
      wymienię na
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
    kinds: ['dress'],
    as: 'style',
    phrases: 'szmizjerka'
  },
  {
    kinds: ['trousers', 'jeans'],
    as: 'style',
    phrases: `
      bootcut
      dzwony
      szerokie nogawki
      proste nogawki
      rurki
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      rozporek
      szlufki
      nogawka
      nogawki
      krok
      długość nogawki
      w kant
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      klapy
      dwurzędowy
      dwurzędowa
      jednorzędowy
      jednorzędowa
      kieszeń wewnętrzna
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: 'poduszki na ramionach'
  },
  {
    kinds: ['coat'],
    as: 'construction',
    phrases: `
      puch
      wodoodporna
      wodoodporny
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      mankiety
      kołnierzyk
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      kieszeń kangurka
      warkocze
      ręcznie robiony
      ściągacz
      ściągacze
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      ramiączka
      cienkie ramiączka
      na ramiączkach
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: 'napy w kroku'
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      jedwab
      szyfon
      satyna
      len
      wiskoza
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      dżersej
      prążek
      dzianina
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      kupon
      wykrój
      za metr
      na metry
      obcas
    `
  }
]

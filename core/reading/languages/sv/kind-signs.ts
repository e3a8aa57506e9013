/** What tells a kind in Swedish without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      träffar
      sortera
      visa alla
      lägg i varukorgen
      nyheter
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      ingår ej
      ingår inte
      på bilden
      på bilderna
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      säljer även
      säljer också
      se mina andra
      andra annonser
      söker
      byter mot
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
      utsvängda
      vida ben
      raka ben
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      gylf
      innerben
      innerbenslängd
      hällor
      skärphällor
      gren
      fem fickor
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      slag
      dubbelknäppt
      enkelknäppt
      innerficka
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      sprund
      axelvaddar
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      manschetter
      button down
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      kängurufick
      kängurficka
      flätstickad
      handstickad
      muddar
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      smala axelband
      axelband
      spaghettiband
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: 'knappar i grenen'
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      siden
      chiffong
      satin
      linne tyg
      viskos
      vävd
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      ribbad
      trikå
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      metervara
      per meter
      symönster
      klackhöjd
    `
  }
]

/** What tells a kind in Spanish without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      resultados
      ordenar por
      ver todo
      añadir al carrito
      novedades
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      no incluido
      no incluida
      no incluidos
      en la foto
      en las fotos
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      también vendo
      mira mis otros
      otros artículos
      busco
      cambio por
      lo cambio por
    `
  },
  {
    kinds: ['dress'],
    as: 'style',
    phrases: 'camisero'
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
      acampanados
      pata ancha
      pierna recta
      pitillos
      pitillo
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      bragueta
      tiro
      entrepierna
      trabillas
      pinzas
      cinco bolsillos
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      solapas
      solapa
      cruzada
      bolsillo interior
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      hombreras
      abertura trasera
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      puños dobles
      cuello abotonado
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      bolsillo canguro
      punto grueso
      ochos
      tejido a mano
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      tirantes finos
      tirantes
      sin tirantes
      espalda descubierta
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: 'corchetes en la entrepierna'
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      seda
      gasa
      satén
      lino
      popelín
      viscosa
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      punto
      canalé
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      por metros
      por metro
      patrón
      altura del tacón
    `
  }
]

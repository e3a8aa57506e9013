/** Spanish, as private sellers write it. */
import { asides } from './es/asides.ts'
import { cloth } from './es/cloth.ts'
import { amounts, cues } from './es/cues.ts'
import { cut } from './es/cut.ts'
import { garments } from './es/garments.ts'
import { kindSigns } from './es/kind-signs.ts'
import { measures } from './es/measures.ts'
import { words } from './es/words.ts'
import type { Lexicon } from './lexicon.ts'

export const es: Lexicon = {
  language: 'es',
  endings: ['s', 'es'],
  headFirst: true,
  falseFriends: `
    max
    maximum
  `,
  common: `
    el
    la
    los
    las
    de
    del
    con
    y
    en
    es
    una
    un
    para
    por
    muy
    no
    talla
    largo
    ancho
    axila
    sisa
    hombro
    hombros
    manga
    pecho
    cintura
    cadera
    medidas
    estado
    tiro
    entrepierna
    plano
    pantalón
    vestido
    chaqueta
    camisa
    falda
    está
    sin
    como
    más
    mide
    contorno
    bajo
  `,
  currencies: {
    EUR: `
      euro
      euros
      eur
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

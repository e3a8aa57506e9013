/** Portuguese, as private sellers write it. */

import type { Lexicon } from './lexicon.ts'
import { asides } from './pt/asides.ts'
import { cloth } from './pt/cloth.ts'
import { amounts, cues } from './pt/cues.ts'
import { cut } from './pt/cut.ts'
import { garments } from './pt/garments.ts'
import { measures } from './pt/measures.ts'
import { words } from './pt/words.ts'

export const pt: Lexicon = {
  language: 'pt',
  endings: ['s', 'es'],
  headFirst: true,
  bareUnit: 'cm',
  falseFriends: `
    max
    maximum
    top
    as
    a
    me
    pants
    use
    male
    come
    do
    no
    on
    sale
  `,
  common: `
    o
    os
    da
    das
    do
    dos
    de
    com
    em
    no
    na
    uma
    um
    para
    por
    muito
    não
    tamanho
    comprimento
    largura
    axila
    cava
    ombro
    ombros
    manga
    peito
    busto
    cintura
    quadril
    anca
    medidas
    estado
    gancho
    entrepernas
    calça
    vestido
    casaco
    camisa
    saia
    está
    sem
    como
    mais
    mede
    peça
    usada
    usado
    cor
    portes
    frete
    vendo
    novo
    nova
    tecido
    também
    ou
    lã
    algodão
  `,
  currencies: {
    EUR: `
      euro
      euros
      eur
    `,
    BRL: `
      real
      reais
      brl
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

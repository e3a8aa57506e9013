/** Czech, as private sellers write it. */
import { asides } from './cs/asides.ts'
import { cloth } from './cs/cloth.ts'
import { amounts, cues } from './cs/cues.ts'
import { cut } from './cs/cut.ts'
import { garments } from './cs/garments.ts'
import { measures } from './cs/measures.ts'
import { words } from './cs/words.ts'
import type { Lexicon } from './lexicon.ts'

export const cs: Lexicon = {
  language: 'cs',
  endings: [],
  headFirst: true,
  bareUnit: 'cm',
  falseFriends: `
    a
    to
    on
    do
    pas
    max
    top
    jo
    sed
    no
  `,
  common: `
    a
    je
    na
    se
    do
    od
    ve
    v
    s
    z
    pro
    za
    po
    není
    nové
    nový
    nová
    délka
    rukáv
    rukávu
    šířka
    přes
    prsa
    pas
    boky
    ramena
    velikost
    vel
    stav
    cena
    prodám
    prodávám
    kalhoty
    šaty
    sukně
    košile
    kabát
    bunda
    svetr
    bavlna
    vlna
    podpaží
    míry
    rozměry
    měřeno
    ploše
    obvod
    nohavice
    krok
    sed
    poštovné
    krásné
    krásná
    krásný
    bez
    jen
    velmi
    dobrý
    dobrém
    černá
    černé
    bílá
    modrá
    nošené
    nošená
    podšívka
    podšívkou
    nebo
    má
    mají
    kč
  `,
  currencies: {
    CZK: `
      kč
      czk
      korun
      koruna
    `,
    EUR: `
      euro
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

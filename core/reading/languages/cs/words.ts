/** The small words, and those of sizes, cloth and sale, in Czech. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    míry
    rozměry
    míra
    rozměr
    měřeno
    přeměřeno
    naměřeno
    míry oděvu
  `,
  position: `
    nad
    pod
    výše
    níže
  `,
  from: `
    od
    ode
  `,
  letDown: `
    dá se pustit
    k povolení
    lze povolit
    dá se prodloužit
  `,
  letOut: `
    lze povolit v bocích
    dá se rozšířit
  `,
  seamAllowance: 'švový přídavek',
  relaxed: `
    v klidu
    nenatažené
    nenatažený
    bez natažení
    volně
  `,
  stretched: `
    natažené
    natažený
    po natažení
    natáhne se na
    natáhne na
    v natažení
    max
    napnuté
    roztáhne se na
    až
  `,
  cuffed: `
    s ohrnutím
    ohrnuté
  `,
  uncuffed: 'bez ohrnutí',
  front: `
    vpředu
    přední
    zepředu
  `,
  back: `
    vzadu
    zadní
    zezadu
    záda
  `,
  inner: `
    vnitřní
    z podpaží
    od podpaží
    uvnitř
  `,
  including: `
    včetně
    bez
  `,
  measures: `
    měří
    má
    mají
    je
  `,
  light: `
    cca
    asi
    přibližně
    je
    jsou
    na
    v
    ve
    od
    do
    s
    se
    z
    po
    a
    i
    to
    ten
    ta
    celkem
    celá
    celkový
    celková
    nejširší
    místo
    místě
    šev
    švu
    jen
    trochu
    měřeno
    dole
    nahoře
    u
    přes
    kolem
    při
  `,
  to: `
    do
    k
    ke
    až
    po
  `,
  between: 'mezi',
  and: `
    a
    i
  `,
  or: `
    nebo
    neboli
  `,
  size: `
    velikost
    vel
    vel.
    velikosti
    štítek
    na štítku
    označení
    uvedená velikost
  `,
  region: `
    cz
    eu
    uk
    us
  `,
  letterSize: `
    univerzální
    uni
  `,
  age: 'věk',
  years: `
    let
    rok
    roky
    měsíců
  `,
  all: `
    všechny
    vše
    všechno
  `,
  not: `
    bez
    není
    nejsou
    nemá
    ne
    žádné
    žádný
    žádná
    nikdy
    ani
  `,
  partLined: `
    částečně podšité
    poloviční podšívka
    částečná podšívka
    napůl podšitý
  `,
  lining: `
    podšívka
    výplň
    náplet
    vložka
  `,
  retail: `
    původní cena
    původně
    stálo
    stály
    pořizovací cena
    pc
    pořízeno za
    koupeno za
    poštovné
    zásilkovna
    doprava
    pošta
    nová cena
    nové stálo
  `,
  price: `
    cena
    prodám
    prodám za
    prodávám
    nyní
    teď
    za
    sleva na
    nabízím za
  `,
  condition: `
    stav
    stavu
  `,
  conditionWord: `
    velmi
    dobrý
    dobrém
    pěkný
    pěkném
    perfektní
    perfektním
    výborný
    výborném
    nový
    nové
    nová
    jako
    nošený
    nošené
    použité
    krásný
    krásném
    bezvadný
    bezvadném
    v
  `,
  conditionPhrase: `
    jako nové
    jako nový
    jako nová
    nové s visačkou
    nenošené
    nový s visačkou
    nová s visačkou
    nenošený
    nenošená
    velmi dobrý stav
    v dobrém stavu
    v pěkném stavu
    perfektní stav
    výborný stav
    top stav
    nové
  `,
  shell: `
    materiál
    látka
    vrchní materiál
    složení
    svrchní materiál
    vrch
  `,
  nightwear: `
    pyžamo
    noční košile
  `,
  backPockets: 'zadní kapsy',
  apart: 'vzdálenost',
  mended: `
    zašité
    zašitý
    opravené
    opravený
    zalátané
    zašito
  `,
  but: `
    ale
    kromě
    pouze
  `,
  imitation: `
    imitace
    umělá
    umělé
    eko
    koženka
  `,
  stretch: `
    strečové
    streč
    elastické
  `,
  half: 'půl'
}

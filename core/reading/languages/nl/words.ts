/** The small words, and those of sizes, cloth and sale, in Dutch. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    maten
    afmetingen
    opmetingen
    opgemeten
    gemeten
    de maten
    afmeting
    nagemeten
    opgemeten maten
  `,
  position: `
    boven
    onder
    boven de
    onder de
    lager
    hoger
  `,
  from: `
    vanaf
    van
    vanuit
  `,
  letDown: `
    zoom om uit te leggen
    om uit te leggen
    zoomtoeslag
    kan uitgelegd worden
    om te verlengen
    zoom uit te leggen
  `,
  letOut: `
    om wijder te maken
    uit te leggen in de naad
    om uit te nemen
  `,
  seamAllowance: 'naadtoeslag',
  ownTape: `
    zelf gemeten
    zelf opgemeten
    door mij gemeten
    ik heb gemeten
    ik meet
    eigen maten
    werkelijke maten
    in werkelijkheid
    nagemeten
  `,
  shopCopy: `
    volgens de website
    volgens het merk
    volgens de fabrikant
    van de website
    productomschrijving
    maten van de website
    omschrijving van de winkel
  `,
  closed: `
    gestrikt
    geknoopt
    dichtgeknoopt
    gesloten
    dichtgebonden
    vastgeknoopt
    dicht
    gewikkeld
  `,
  opened: `
    open
    opengeslagen
    helemaal open
    opengelegd
    losgeknoopt
    uitgespreid
  `,
  relaxed: `
    ongerekt
    niet uitgerekt
    ontspannen
    niet gerekt
    onuitgerekt
  `,
  stretched: `
    uitgerekt
    gerekt
    rekbaar tot
    rekt tot
    opgerekt
    te rekken tot
    uitgerekt tot
    rekt uit tot
  `,
  cuffed: `
    omgeslagen
    opgerold
    met omslag
  `,
  uncuffed: `
    niet omgeslagen
    zonder omslag
    uitgerold
  `,
  front: `
    voor
    voorkant
    voorzijde
  `,
  back: `
    achter
    achterkant
    rug
    achterzijde
  `,
  inner: `
    onder de arm
    onder de oksel
    binnenkant
    binnen
    binnenzijde
  `,
  including: `
    inclusief
    incl
    zonder
    exclusief
  `,
  measures: `
    meet
    meten
    bedraagt
  `,
  light: `
    de
    het
    een
    is
    zijn
    ca
    circa
    ongeveer
    plm
    ong
    op
    aan
    in
    bij
    met
    van
    en
    per
    elk
    heeft
    er
    de hele
    totaal
    om
    naar
    breedste
    punt
    naad
    kant
    zij
    zo n
    iets
    net
    dit
    midden
    helft
    gehele
    ter
    hoogte
    over
  `,
  to: `
    tot
    naar
    t m
    tot aan
    tot de
  `,
  between: 'tussen',
  and: 'en',
  or: `
    of
    oftewel
    dus
  `,
  size: `
    maat
    label
    maatlabel
    volgens label
    labelmaat
    maat label
    op label
    mt
    kledingmaat
    staat maat
  `,
  region: 'nl',
  letterSize: 'one size',
  age: 'leeftijd',
  years: `
    jaar
    maanden
  `,
  all: `
    alle
    alles
  `,
  not: `
    geen
    niet
    zonder
    nooit
    noch
  `,
  partLined: `
    half gevoerd
    gedeeltelijk gevoerd
    deels gevoerd
    halve voering
  `,
  lining: `
    voering
    vulling
    bies
  `,
  retail: `
    nieuwprijs
    verzendkosten
    verzending
    origineel
    kostte
    np
    gekocht voor
    oorspronkelijk
  `,
  price: `
    prijs
    vraagprijs
    te koop
    nu
  `,
  condition: `
    staat
    conditie
  `,
  conditionWord: `
    zeer
    goede
    goed
    prima
    nette
    nieuwe
    perfecte
    nieuw
    als
    gebruikt
    gedragen
    uitstekende
    in
    prachtige
    redelijke
    mooie
    keurige
  `,
  conditionPhrase: `
    nieuw met kaartje
    zo goed als nieuw
    als nieuw
    nooit gedragen
    ongedragen
    één keer gedragen
    nieuw met label
    in nieuwstaat
    in zeer goede staat
    z g a n
  `,
  shell: `
    buitenkant
    stof
    materiaal
    samenstelling
    buitenstof
  `,
  nightwear: `
    pyjama
    nachthemd
    slaapzak
    boxpakje
  `,
  backPockets: `
    achterzakken
    kontzakken
    zakken achter
  `,
  apart: `
    uit elkaar
    afstand
    tussen
  `,
  mended: `
    gerepareerd
    gerepareerde
    gestopt
    gestopte
    hersteld
    herstelde
    dichtgenaaid
    versteld
  `,
  but: `
    maar
    behalve
  `,
  imitation: `
    kunst
    nep
    look
    imitatie
    faux
  `,
  stretch: `
    stretch
    rekbaar
    elastisch
    rek
  `,
  half: 'halve'
}

/** What is no measure of the garment, in Dutch: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    sleep
    voeringlengte
    kraag
    kraaghoogte
    revers
    zak
    zakken
    split
    rits
    riem
    knopen
    knoop
    riemlussen
    capuchon
    hak
    hakken
    hakhoogte
    ruche
    strik
    kant
    franje
    bandhoogte
    omslag
    decolleté
    voering
    oksel tot zoom
    kraagbreedte
    oksel tot onderkant
  `,
  thing: `
    panty
    maillot
    tas
    handtas
    schoudertas
    heuptas
    boodschappentas
    clutch
    rugzak
    schoenen
    laarzen
    enkellaarsjes
    laptop
    telefoon
    hoed
    muts
    pet
    sjaal
    stof
    lap stof
    gordijn
    kussen
    koffer
    zool
    schacht
    portemonnee
    sluier
    naaipatroon
    ketting
    oorbellen
    broche
    handschoenen
    stropdas
    paspop
  `,
  height: 'lichaamslengte',
  model: `
    model
    paspop
    etalagepop
    ik ben
    ik draag
    zij draagt
    mijn maten
    ze draagt
    zij is
    hij is
    bij mij
    op mij
    ze is
  `,
  fits: `
    past
    past bij
    geschikt voor
    ideaal voor
    zou passen
    past tot
    valt als
    aanbevolen voor
    voor een
    kan passen
    zal passen
    passend voor
    komt overeen met
    valt als een
  `,
  parcel: `
    pakket
    pakketje
    verzending
    doos
    verpakking
    brievenbuspakje
  `,
  elsewhere: `
    andere advertentie
    aparte advertentie
    apart te koop
    los te koop
  `,
  nothing: `
    lange mouwen
    korte mouwen
    lange mouw
    korte mouw
    hoge taille
    lage taille
    knielang
    enkellang
    knielengte
    ronde hals
    v hals
    col
    borstzak
    driekwart mouw
    3 4 mouw
    elastische taille
    hoge kraag
    lange tijd
    mouwloos
    broekzak
    hoge band
    elastische band
    colkraag
    heuplengte
    zolang
    schoudervulling
  `,
  otherUnit: `
    knopen
    zakken
    stuks
    stuk
    paar
    dagen
    dag
    jaar
    maanden
    procent
    graden
    kg
    g
    gram
    euro
    keer
    uur
    gaatjes
    gaten
    weken
    lussen
    foto s
  `,
  sizeChart: `
    maattabel
    matentabel
    maatgids
  `,
  bodyChart: 'lichaamsmaten',
  cutFor: `
    voor borstomvang
    voor tailleomvang
    voor heupomvang
  `
}

/** What is no measure of the garment, in Swedish: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    krage
    krag
    slag
    ficka
    fickor
    slits
    dragkedja
    blixtlås
    skärp
    bälte
    knappar
    knapp
    hällor
    huva
    klack
    klackhöjd
    volang
    rosett
    spets
    fransar
    linningens höjd
    uppslag
    foder
    kraghöjd
    armhåla till fåll
    släp
    urringning
    linning höjd
  `,
  thing: `
    strumpbyxor
    strumpbyxa
    väska
    handväska
    ryggsäck
    skor
    stövlar
    stövletter
    dator
    telefon
    hatt
    mössa
    keps
    halsduk
    sjal
    tyg
    stuvbit
    gardin
    kudde
    resväska
    sula
    skaft
    plånbok
    klackar
    slöja
    brudslöja
    symönster
    halsband
    örhängen
    brosch
    handskar
    slips
    provdocka
  `,
  height: `
    lång person
    kroppslängd
  `,
  model: `
    modell
    modellen
    provdocka
    jag är
    jag har
    hon är
    hon har
    mina mått
    han är
    på mig
    bär storlek
    dockan
    jag bär
    som är
  `,
  fits: `
    passar
    passar till
    passar på
    passar bra på
    lämplig för
    bäst för
    rekommenderas för
    passar upp till
    passar någon
    skulle passa
    sitter som
    för en
    motsvarar
    passar en
    upp till
  `,
  parcel: `
    paket
    frakt
    försändelse
    kartong
    påse
    skickas
  `,
  elsewhere: `
    annan annons
    egen annons
    säljs separat
    separat annons
  `,
  nothing: `
    lång ärm
    kort ärm
    långärmad
    kortärmad
    hög midja
    låg midja
    knälång
    ankellång
    v ringad
    rund hals
    bröstficka
    ärmlös
    trekvartsärm
    3 4 ärm
    resår i midjan
    polokrage
    resår i midja
    långa ärmar
    korta ärmar
    höga midjan
    höftficka
    golvlång
    vadlång
    normal midja
    låg gren
    axelvaddar
  `,
  otherUnit: `
    knappar
    fickor
    stycken
    st
    styck
    par
    dagar
    dag
    år
    månader
    procent
    grader
    kg
    g
    gram
    kr
    kronor
    sek
    gånger
    timmar
    hål
    veckor
    delar
    bilder
  `,
  sizeChart: `
    storlekstabell
    storleksguide
  `,
  bodyChart: 'kroppsmått',
  cutFor: `
    för bystmått
    för midjemått
    för höftmått
  `
}

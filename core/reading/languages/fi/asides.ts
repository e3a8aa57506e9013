/** What is no measure of the garment, in Finnish: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    kaulus
    kauluksen korkeus
    käänne
    tasku
    taskut
    halkio
    vetoketju
    vyö
    napit
    nappi
    huppu
    korko
    koron korkeus
    röyhelö
    rusetti
    pitsi
    hapsut
    vuori
    kaula-aukko
    olkain
    olkaimet
  `,
  thing: `
    laukku
    käsilaukku
    reppu
    kengät
    saappaat
    nilkkurit
    sandaalit
    puhelin
    hattu
    pipo
    lippis
    huivi
    kangas
    verho
    tyyny
    matkalaukku
    pohja
    varsi
    lompakko
    sukkahousut
    sukat
  `,
  height: `
    pitkä
    pituinen henkilö
  `,
  model: `
    malli
    mallin
    mallinukke
    olen
    minulla
    minun mitat
    hän on
    päälläni
    käytän kokoa
    itse olen
    itse käytän
  `,
  fits: `
    sopii
    sopii myös
    sopinee
    vastaa kokoa
    vastaa
    suositellaan
    mahtuu
    sopiva
  `,
  parcel: `
    paketti
    lähetys
    laatikko
    postitus
  `,
  elsewhere: `
    toinen ilmoitus
    erillinen ilmoitus
    myydään erikseen
    eri ilmoituksessa
  `,
  nothing: `
    pitkät hihat
    lyhyet hihat
    pitkähihainen
    lyhythihainen
    hihaton
    korkea vyötärö
    matala vyötärö
    polvipituinen
    v kaula
    v-kaula
    pyöreä kaula
    rintatasku
    kuminauhavyötärö
    poolokaulus
    korkeavyötäröiset
  `,
  otherUnit: `
    nappia
    taskua
    kpl
    kappaletta
    pari
    päivä
    päivää
    vuotta
    vuosi
    kuukautta
    prosenttia
    astetta
    kg
    g
    grammaa
    euroa
    e
    kertaa
    tuntia
    viikkoa
    kuvaa
    reikää
  `,
  sizeChart: `
    kokotaulukko
    kokoopas
  `,
  bodyChart: 'vartalon mitat',
  cutFor: 'vartalon rinnanympärys'
}

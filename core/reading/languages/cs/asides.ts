/** What is no measure of the garment, in Czech: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    límec
    výška límce
    klopa
    kapsa
    kapsy
    rozparek
    zip
    pásek
    knoflíky
    knoflík
    poutka
    kapuce
    podpatek
    volán
    mašle
    krajka
    třásně
    podšívka
    výstřih
    ramínka délka
  `,
  thing: `
    kabelka
    taška
    batoh
    boty
    kozačky
    sandály
    tenisky
    lodičky
    telefon
    klobouk
    čepice
    šála
    šátek
    látka
    závěs
    polštář
    kufr
    podrážka
    peněženka
    ponožky
    punčochy
    stélka
  `,
  height: `
    vysoká
    vysoký
    výška postavy
  `,
  model: `
    modelka
    figurína
    měřím
    mám
    vážím
    moje míry
    na mně
    nosím velikost
    já mám
    jsem
  `,
  fits: `
    sedne
    sedí na
    vhodné pro
    vhodné na
    odpovídá
    doporučuji
    bude sedět
    hodí se
  `,
  parcel: `
    balík
    zásilka
    krabice
    balíček
  `,
  elsewhere: `
    jiný inzerát
    v jiném inzerátu
    prodávám zvlášť
    prodám zvlášť
  `,
  nothing: `
    dlouhý rukáv
    krátký rukáv
    dlouhé rukávy
    krátké rukávy
    bez rukávů
    vysoký pas
    nízký pas
    délka ke kolenům
    ke kolenům
    po kolena
    výstřih do v
    kulatý výstřih
    náprsní kapsa
    guma v pase
    pas do gumy
    rolák límec
    tříčtvrteční rukáv
  `,
  otherUnit: `
    knoflíky
    kapsy
    ks
    kus
    kusy
    pár
    dní
    den
    let
    rok
    roky
    měsíců
    procent
    stupňů
    kg
    g
    gramů
    kč
    korun
    krát
    hodin
    týdnů
    fotky
  `,
  sizeChart: 'tabulka velikostí',
  bodyChart: 'tělesné míry',
  cutFor: 'na obvod prsou'
}

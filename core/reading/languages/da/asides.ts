/** What is no measure of the garment, in Danish: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    krave
    kravehøjde
    revers
    lomme
    lommer
    slids
    slidser
    lynlås
    bælte
    knapper
    knap
    stropper til bælte
    hætte
    hæl
    hælhøjde
    flæse
    sløjfe
    blonder
    frynser
    opslag
    for
    foer
    fór
    udskæring
    linning højde
    slæb
  `,
  thing: `
    taske
    håndtaske
    rygsæk
    sko
    støvler
    støvletter
    sandaler
    computer
    telefon
    hat
    hue
    kasket
    halstørklæde
    sjal
    stof
    stofrest
    gardin
    pude
    kuffert
    sål
    skaft
    pung
    strømper
    strømpebukser
  `,
  height: `
    høj
    person
    kropshøjde
  `,
  model: `
    model
    modellen
    mannequin
    gine
    jeg er
    jeg har
    hun er
    hun har
    mine mål
    på mig
    bruger str
    bruger størrelse
    jeg bruger
    som er
  `,
  fits: `
    passer
    passer til
    passer en
    svarer til
    fitter
    bedst til
    anbefales til
    vil passe
    kan passe
    velegnet til
  `,
  parcel: `
    pakke
    forsendelse
    kasse
    pose
    sendes
  `,
  elsewhere: `
    anden annonce
    egen annonce
    sælges separat
    separat annonce
    i en anden annonce
  `,
  nothing: `
    lange ærmer
    korte ærmer
    langærmet
    kortærmet
    ærmeløs
    høj talje
    lav talje
    høj liv
    knælang
    knælængde
    ankellang
    v hals
    v-hals
    rund hals
    brystlomme
    trekvartærmer
    elastik i taljen
    rullekrave
    høj hals
    halvlange ærmer
  `,
  otherUnit: `
    knapper
    lommer
    stk
    styk
    par
    dage
    dag
    år
    måneder
    procent
    grader
    kg
    g
    gram
    kr
    kroner
    dkk
    gange
    timer
    huller
    uger
    dele
    billeder
  `,
  sizeChart: `
    størrelsesguide
    størrelsesskema
  `,
  bodyChart: 'kropsmål',
  cutFor: `
    til brystmål
    til taljemål
  `
}

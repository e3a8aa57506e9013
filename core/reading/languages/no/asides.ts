/** What is no measure of the garment, in Norwegian: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    krage
    kragehøyde
    slag
    lomme
    lommer
    splitt
    glidelås
    belte
    knapper
    knapp
    hette
    hæl
    hælhøyde
    volang
    sløyfe
    blonder
    frynser
    oppbrett
    fôr
    utringning
    linning høyde
    slep
  `,
  thing: `
    veske
    håndveske
    ryggsekk
    sko
    støvler
    støvletter
    sandaler
    pc
    telefon
    hatt
    lue
    caps
    skjerf
    sjal
    stoff
    stoffrest
    gardin
    pute
    koffert
    såle
    skaft
    lommebok
    strømper
    strømpebukse
  `,
  height: `
    høy
    person
    kroppshøyde
  `,
  model: `
    modell
    modellen
    mannekeng
    jeg er
    jeg har
    hun er
    hun har
    mine mål
    på meg
    bruker str
    bruker størrelse
    jeg bruker
    som er
  `,
  fits: `
    passer
    passer til
    passer en
    tilsvarer
    best for
    anbefales til
    vil passe
    kan passe
    egner seg for
  `,
  parcel: `
    pakke
    forsendelse
    eske
    pose
    sendes
  `,
  elsewhere: `
    annen annonse
    egen annonse
    selges separat
    separat annonse
    i en annen annonse
  `,
  nothing: `
    lange ermer
    korte ermer
    langermet
    kortermet
    ermeløs
    høyt liv
    høy midje
    lav midje
    knelang
    knelengde
    ankellang
    v hals
    v-hals
    rund hals
    brystlomme
    trekvart ermer
    strikk i livet
    strikk i midjen
    rullekrage
    høy hals
    høyhalset
  `,
  otherUnit: `
    knapper
    lommer
    stk
    stykk
    par
    dager
    dag
    år
    måneder
    prosent
    grader
    kg
    g
    gram
    kr
    kroner
    nok
    ganger
    timer
    uker
    deler
    bilder
  `,
  sizeChart: `
    størrelsesguide
    størrelsestabell
  `,
  bodyChart: 'kroppsmål',
  cutFor: `
    for brystmål
    for midjemål
  `
}

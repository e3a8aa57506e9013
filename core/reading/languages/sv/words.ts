/** The small words, and those of sizes, cloth and sale, in Swedish. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    mått
    måtten
    uppmätta mått
    mäter
    mätt
    plaggets mått
    måtten är
    mätta
    uppmätt
  `,
  position: `
    över
    under
    ovanför
    nedanför
    ovan
    nedan
  `,
  from: `
    från
    fr
  `,
  letDown: `
    fåll att lägga ner
    att lägga ut
    fållmån
    kan läggas ut
    att släppa ner
    fåll att släppa
    att lägga ned
    fåll att ta av
    fåll att lägga ut
  `,
  letOut: `
    att släppa ut
    kan släppas ut
    sömsmån att släppa
    att lägga ut i sidorna
  `,
  seamAllowance: 'sömsmån',
  ownTape: `
    egna mått
    mätt själv
    mätt av mig
    jag har mätt
    jag mäter
    uppmätt av mig
    verkliga mått
    i verkligheten
    själv mätt
  `,
  shopCopy: `
    enligt hemsidan
    enligt märket
    enligt tillverkaren
    från hemsidan
    produktbeskrivning
    tillverkarens mått
    butikens beskrivning
  `,
  closed: `
    knuten
    knytt
    stängd
    knäppt
    hopknuten
    omlott knuten
    ihopknuten
  `,
  opened: `
    öppen
    utbredd
    helt öppen
    oknuten
    uppknäppt
    utvikt
  `,
  relaxed: `
    outsträckt
    ostretchad
    ej utsträckt
    ej stretchat
    utan att sträckas
    i vila
    ouppsträckt
    utan stretch
    otänjd
  `,
  stretched: `
    utsträckt
    stretchad
    sträckt
    töjbar till
    utdragen
    kan sträckas till
    uttöjd
    stretchat
    uttänjd
    stretchar till
    max utsträckt
    utdraget
  `,
  cuffed: `
    uppvikt
    upprullad
    uppvikta
    med uppslag
  `,
  uncuffed: `
    nedvikt
    utrullad
    ej uppvikt
    utan uppslag
  `,
  front: `
    fram
    framtill
    framsida
    framsidan
  `,
  back: `
    bak
    baktill
    rygg
    baksida
    baksidan
  `,
  inner: `
    under armen
    under ärmen
    insida
    inner
    insidan
  `,
  including: `
    inklusive
    inkl
    utan
    exklusive
  `,
  measures: `
    mäter
    är uppmätt
  `,
  light: `
    en
    ett
    den
    det
    är
    ca
    cirka
    ungefär
    c a
    på
    i
    av
    vid
    med
    till
    från
    och
    för
    har
    om
    per
    varje
    totalt
    hela
    som
    mitt
    över
    plus
    omkring
    det är
    bredaste
    stället
    sömmen
    kanten
    runt ca
    denna
    dess
    lite
    ungefärlig
    strax
    mellersta
    punkt
  `,
  to: `
    till
    ner till
    ned till
  `,
  between: 'mellan',
  and: `
    och
    samt
  `,
  or: `
    eller
    dvs
    alltså
  `,
  size: `
    storlek
    stl
    strl
    st
    storleken
    storlekslapp
    lapp
    märkt
    på lappen
    lappen
    etikett
    märkt storlek
    stl.
  `,
  region: `
    se
    sv
  `,
  letterSize: 'one size',
  age: 'ålder',
  years: `
    år
    månader
  `,
  all: `
    alla
    allt
  `,
  not: `
    inga
    ingen
    inte
    utan
    aldrig
    ej
    inget
    varken
  `,
  partLined: `
    halvfodrad
    delvis fodrad
    halvfodrat
    delvis fodrat
  `,
  lining: `
    foder
    fyllning
    fodret
  `,
  retail: `
    nypris
    frakt
    ordinarie
    kostade
    köpt för
    porto
    ord pris
    inköpt för
    fraktkostnad
  `,
  price: `
    pris
    säljes
    säljs
    nu
  `,
  condition: 'skick',
  conditionWord: `
    mycket
    bra
    gott
    fint
    utmärkt
    nytt
    nyskick
    perfekt
    använt
    fin
    toppen
    som
    i
    väldigt
    begagnat
    ok
    jättefint
  `,
  conditionPhrase: `
    ny med lapp
    nytt med lapp
    nyskick
    som ny
    aldrig använd
    oanvänd
    mycket gott skick
    i nyskick
    gott skick
    fint skick
    använd en gång
    mycket fint skick
    bra skick
    helt ny
  `,
  shell: `
    yttertyg
    material
    tyg
    utsida
  `,
  nightwear: `
    pyjamas
    nattlinne
    sparkdräkt
  `,
  backPockets: `
    bakfickor
    bakfickorna
    bakfickorna bak
  `,
  apart: `
    isär
    avstånd
    mellan
  `,
  mended: `
    lagad
    lagat
    lagade
    stoppad
    stoppat
    stoppade
    ihopsydd
    reparerad
    reparerat
  `,
  but: `
    men
    förutom
  `,
  imitation: `
    konst
    fejk
    imitation
    look
    liknande
  `,
  stretch: `
    stretch
    stretchig
    elastisk
    stretchigt
  `,
  half: 'halv'
}

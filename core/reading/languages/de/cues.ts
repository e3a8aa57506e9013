/** Single words that tip a rule of the reader, in German, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  under: 'unter',
  // text and figures
  shortForm: `
    ca
    nr
    ungef
    ggf
    inkl
  `,
  paid: `
    gekauft
    bezahlt
  `,
  joinsPart: 'und',
  onePart: `
    ein
    eine
  `,
  inchBegins: 'zoll',
  // names
  with: 'mit',
  counted: `
    inbegriffen
    eingeschlossen
  `,
  whose: `
    von
    vom
    aus
  `,
  width: 'breite',
  at: `
    am
    an
  `,
  // links
  verb: `
    ist
    sind
    misst
  `,
  unbounded: `
    frei
    weit
  `,
  howItRan: `
    lang
    lange
    breit
  `,
  wide: 'breit',
  along: 'lang',
  upright: 'hoch',
  actually: `
    tatsächlich
    effektiv
  `,
  nearer: 'eher',
  fitsFigure: 'passt',
  // figures and their words
  besideFigureOnly: `
    halb
    halbe
    gesamt
  `,
  girthOrWidth: `
    rundum
    breit
    quer
    umfang
  `,
  frontInName: `
    vorne
    vorn
    vordere
  `,
  backInName: `
    hinten
    hintere
  `,
  leadsOn: `
    bis
    auf
  `,
  doubled: `
    verdoppelt
    doppelt
  `,
  // garment and cloth
  goesWith: `
    passend
    passende
    passender
    passendes
    passt
    kombinierbar
    kombiniert
  `,
  anyGarment: `
    ein
    eine
    einen
    einem
    einer
    deine
    meine
    jede
    jeder
  `,
  likeGarment: `
    wie
    als
  `,
  sale: `
    verkaufen
    verkauf
    klein
    kleine
    gross
    große
    eng
    enge
    kurz
    weit
    damen
    herren
    frauen
    männer
    mädchen
    jungen
  `,
  notItself: `
    stil
    optik
    form
    knopf
    knöpfe
    schnitt
  `,
  thingInPassing: `
    gürtel
    tuch
    schal
    mütze
    stoff
    hut
    decke
    kissen
    absätze
    schuhe
    stiefel
    kleiderbügel
  `,
  thisOne: `
    dieses
    diese
    diesen
    verkaufe
    biete
    schöne
    schönes
    schöner
    wunderschönes
    wunderschöne
    tolle
    tolles
  `,
  itemHead: `
    artikel
    kategorie
    art
    kleidungsstück
    typ
  `,
  otherPart: `
    unterrock
    reißverschluss
    besatz
    kragen
    bündchen
    füllung
    wattierung
    gürtel
    spitze
    polster
    einsatz
  `,
  noneOfIt: `
    keine
    keins
    kein
    nein
  `,
  justSo: `
    sondern
    einfach
    nur
  `,
  priceNow: `
    jetzt
    nur
  `,
  anotherItem: `
    andere
    anderen
    anderes
  `,
  vagueKind: 'jeans',
  besideGarment: `
    mit
    für
    zu
    zur
    zum
    über
    unter
  `,
  percent: 'prozent',
  liningName: `
    futter
    innenfutter
  `,
  ofCloth: `
    mit
    aus
  `,
  paleLook: `
    verwaschen
    verwaschenes
  `,
  notYet: `
    werden
    leicht
    kann
    muss
  `,
  pure: `
    reine
    reiner
    reines
    reinem
    rein
  `,
  betweenFibres: `
    und
    mischung
    mit
  `,
  feelsLike: 'wie',
  besideShares: `
    mischung
    gemisch
  `,
  hem: `
    saum
    saumzugabe
    saumreserve
  `,
  hemDepth: 'saumhöhe',
  deep: `
    tief
    hoch
    saumhöhe
  `,
  ofTheBack: `
    rückennaht
    gesässnaht
    gesäßnaht
    mittelnaht
    hintere
  `,
  seamOrCentre: `
    naht
    hinten
  `,
  backSeam: `
    rückennaht
    gesässnaht
    gesäßnaht
    mittelnaht
  `,
  toLetOut: `
    auslassen
    rauslassen
    herauslassen
    weiten
  `,
  allOfIt: `
    komplett
    vollst
    ganz
  `,
  // price
  extra: `
    mehr
    dazu
  `,
  onTop: `
    zzgl
    zuzüglich
  `,
  whenNew: `
    neupreis
    np
    uvp
  `,
  excluded: 'separat',
  hence: `
    daher
    deshalb
  `,
  letsGo: 'verkaufe',
  postage: `
    versand
    porto
  `,
  postIncluded: `
    inkl
    inklusive
    inbegriffen
  `,
  priceName: `
    vb
    vhb
    festpreis
    fp
    preis
  `,
  haggled: `
    vb
    vhb
    abholung
    selbstabholung
    abholen
    selbstabholer
  `,
  // sizes
  also: 'auch',
  tag: 'etikett',
  measuresPair: `
    misst
    gemessen
  `,
  besideWhose: `
    abteilung
    stil
    look
  `,
  ofSomebody: `
    meine
    meiner
    meinem
    mein
  `,
  womensBegins: 'damen',
  mensBegins: 'herren',
  forOne: 'für',
  collarSize: 'kragenweite'
}

export const amounts: Amounts = {
  parts: {
    drei: 3
  },
  part: {
    viertel: 0.25
  },
  place: {
    erste: 1,
    erster: 1,
    erstes: 1,
    zweite: 2,
    zweiter: 2,
    zweites: 2
  }
}

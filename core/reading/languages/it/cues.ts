/** Single words that tip a rule of the reader, in Italian, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  perCentFirst: 'per',
  perCentSecond: 'cento',
  under: 'sotto',
  // text and figures
  paid: `
    pagato
    pagata
    acquistato
    acquistata
  `,
  joinsPart: 'e',
  onePart: 'una',
  inchBegins: 'pol',
  // names
  with: 'con',
  counted: `
    incluso
    inclusa
  `,
  whose: `
    del
    da
    dal
    dalla
  `,
  width: 'larghezza',
  at: `
    al
    alla
    ai
    sul
  `,
  // links
  ofMeasure: `
    di
    del
  `,
  verb: `
    sono
    misura
  `,
  unbounded: `
    libero
    liberi
  `,
  howItRan: `
    lungo
    lunga
  `,
  along: `
    largo
    larga
    larghi
    lungo
    lunga
  `,
  upright: `
    alto
    largo
  `,
  actually: `
    reale
    effettiva
  `,
  // figures and their words
  frontInName: `
    davanti
    anteriore
  `,
  backInName: `
    dietro
    posteriore
  `,
  leadsOn: 'a',
  doubled: 'raddoppiato',
  // garment and cloth
  goesWith: `
    abbinato
    abbinata
    abbinare
    abbinabile
    coordinato
    coordinata
  `,
  anyGarment: `
    un
    una
    qualsiasi
    tuo
    tua
    mio
    mia
  `,
  likeGarment: 'come',
  sale: `
    vendita
    donna
    uomo
    bambina
    bambino
  `,
  notItself: `
    stile
    tipo
    effetto
  `,
  thingInPassing: `
    foulard
    sciarpa
    tessuto
    cappello
    stivali
    scarpe
    cuscino
  `,
  thisOne: `
    questa
    questo
    vendo
    bella
    bello
    bellissima
    bellissimo
    splendido
    splendida
  `,
  itemHead: `
    articolo
    categoria
    capo
  `,
  otherPart: `
    sottogonna
    zip
    cerniera
    bordo
    bordi
    colletto
    polsini
    imbottitura
    cintura
    pizzo
    spalline
  `,
  noneOfIt: `
    nessuna
    no
    senza
  `,
  justSo: `
    solo
    semplicemente
    bensì
  `,
  priceNow: `
    ora
    adesso
  `,
  anotherItem: `
    altro
    altra
  `,
  besideGarment: `
    con
    per
    sotto
    sopra
  `,
  liningName: 'fodera',
  ofCloth: `
    di
    in
  `,
  paleLook: 'sbiadito',
  notYet: `
    essere
    facilmente
  `,
  pure: `
    puro
    pura
    puri
  `,
  betweenFibres: `
    e
    misto
  `,
  feelsLike: 'come',
  besideShares: `
    misto
    mista
  `,
  hem: `
    orlo
    orli
  `,
  ofTheBack: `
    dietro
    posteriore
  `,
  seamOrCentre: `
    centro
    cucitura
  `,
  toLetOut: 'allargare',
  allOfIt: `
    interamente
    completamente
  `,
  // price
  extra: 'più',
  onTop: 'più',
  postageApart: 'parte',
  excluded: `
    esclusa
    escluse
  `,
  hence: 'quindi',
  letsGo: `
    lascio
    cedo
  `,
  postage: 'spedizione',
  postIncluded: `
    incluso
    inclusa
  `,
  priceName: 'prezzo',
  // sizes
  also: 'anche',
  tag: 'etichetta',
  measuresPair: `
    misura
    misurano
  `,
  besideWhose: `
    reparto
    stile
  `,
  ofSomebody: `
    mia
    mio
    sua
    suo
  `,
  forOne: `
    da
    per
  `,
  collarSize: 'collo'
}

export const amounts: Amounts = {
  parts: {
    tre: 3
  },
  part: {
    quarto: 0.25,
    quarti: 0.25
  },
  place: {
    primo: 1,
    prima: 1,
    secondo: 2,
    seconda: 2
  }
}

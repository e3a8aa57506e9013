/** Single words that tip a rule of the reader, in Swedish, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'procent',
  under: 'under',
  // text and figures
  paid: `
    köpte
    köpt
    inköpt
  `,
  joinsPart: 'och',
  onePart: 'en',
  inchBegins: 'tum',
  // names
  with: 'med',
  width: 'bredd',
  at: `
    på
    i
  `,
  // links
  verb: `
    är
    mäter
  `,
  unbounded: `
    fri
    vid
  `,
  howItRan: 'bred',
  wide: 'bred',
  upright: 'hög',
  actually: `
    faktisk
    faktiskt
  `,
  fitsFigure: 'passar',
  // figures and their words
  besideFigureOnly: 'runt',
  frontInName: 'fram',
  backInName: 'bak',
  leadsOn: 'till',
  doubled: 'dubbelt',
  // garment and cloth
  goesWith: `
    matchande
    matchar
    passar
  `,
  anyGarment: `
    en
    ett
    valfri
    din
    min
  `,
  likeGarment: 'som',
  sale: `
    salu
    dam
    herr
    flickor
    pojkar
  `,
  notItself: `
    stil
    modell
  `,
  thingInPassing: `
    tyg
    sjal
    halsduk
    hatt
    mössa
    stövlar
    skor
    kudde
  `,
  thisOne: `
    denna
    detta
    säljer
    fin
    fint
    snygg
    vacker
  `,
  itemHead: `
    artikel
    kategori
    plagg
  `,
  otherPart: `
    underkjol
    dragkedja
    kant
    krage
    muddar
    fyllning
    stoppning
    skärp
    spets
  `,
  noneOfIt: `
    inget
    ingen
    nej
  `,
  justSo: `
    utan
    bara
  `,
  priceNow: 'nu',
  anotherItem: `
    annan
    andra
  `,
  besideGarment: `
    med
    för
    till
    över
    under
  `,
  liningName: 'foder',
  ofCloth: 'av',
  notYet: `
    lätt
    bli
    behöver
  `,
  pure: `
    ren
    rent
    helt
  `,
  betweenFibres: 'och',
  feelsLike: 'som',
  hem: `
    fåll
    fållen
  `,
  ofTheBack: `
    bakre
    baksöm
  `,
  seamOrCentre: `
    söm
    mitt
  `,
  backSeam: 'baksöm',
  toLetOut: 'ut',
  allOfIt: 'hel',
  // price
  money: `
    kr
    sek
  `,
  extra: 'till',
  excluded: 'exkl',
  letsGo: 'säljer',
  postage: 'frakt',
  postIncluded: `
    ingår
    med
  `,
  priceName: 'pris',
  // sizes
  also: 'också',
  measuresPair: 'mäter',
  besideWhose: `
    avdelning
    stil
    look
  `,
  ofSomebody: `
    min
    mina
    hans
    hennes
  `,
  womensBegins: 'dam',
  mensBegins: 'herr',
  forOne: 'för',
  collarSize: `
    krage
    halsvidd
  `
}

export const amounts: Amounts = {
  parts: {
    tre: 3
  },
  place: {
    första: 1,
    andra: 2
  }
}

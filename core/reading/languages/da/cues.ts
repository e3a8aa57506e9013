/** Single words that tip a rule of the reader, in Danish, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'procent',
  paid: `
    købt
    købte
  `,
  joinsPart: 'og',
  onePart: 'en',
  inchBegins: 'tomm',
  with: 'med',
  width: 'bredde',
  at: `
    på
    i
  `,
  verb: `
    er
    måler
  `,
  unbounded: 'fri',
  howItRan: `
    bred
    lang
  `,
  wide: 'bred',
  along: 'lang',
  upright: 'høj',
  actually: 'faktisk',
  fitsFigure: 'passer',
  besideFigureOnly: 'rundt',
  frontInName: 'foran',
  backInName: `
    bag
    ryg
  `,
  leadsOn: 'til',
  doubled: 'dobbelt',
  besideGarment: 'med',
  liningName: `
    foer
    fór
  `,
  ofCloth: 'af',
  notYet: 'skal',
  pure: `
    ren
    rent
  `,
  betweenFibres: `
    og
    med
  `,
  besideShares: 'blanding',
  feelsLike: 'som',
  hem: `
    søm
    sømmen
  `,
  ofTheBack: `
    bag
    ryg
  `,
  seamOrCentre: `
    søm
    midt
  `,
  toLetOut: 'ud',
  allOfIt: 'hel',
  money: `
    kr
    dkk
  `,
  extra: 'ekstra',
  excluded: `
    ekskl
    eksklusiv
  `,
  letsGo: `
    sælges
    sælger
  `,
  postage: `
    porto
    fragt
    forsendelse
  `,
  postIncluded: `
    inkl
    inkluderet
  `,
  priceName: `
    pris
    mp
    mindstepris
  `,
  also: 'også',
  measuresPair: 'måler',
  besideWhose: `
    afdeling
    stil
  `,
  ofSomebody: `
    min
    hans
    hendes
  `,
  womensBegins: 'dame',
  mensBegins: 'herre',
  forOne: 'til',
  collarSize: `
    krave
    halsvidde
  `,
  denim: `
    cowboy
    denim
  `,
  pocket: 'lomme',
  pocketLining: 'foer',
  has: 'har'
}

export const amounts: Amounts = {
  parts: {
    tre: 3
  },
  place: {
    'første': 1,
    anden: 2
  }
}

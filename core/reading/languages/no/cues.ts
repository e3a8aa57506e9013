/** Single words that tip a rule of the reader, in Norwegian, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'prosent',
  paid: `
    kjøpt
    kjøpte
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
  upright: 'høy',
  actually: 'faktisk',
  fitsFigure: 'passer',
  besideFigureOnly: 'rundt',
  frontInName: 'foran',
  backInName: `
    bak
    rygg
  `,
  leadsOn: 'til',
  doubled: 'dobbelt',
  besideGarment: 'med',
  liningName: 'innerfôr',
  ofCloth: 'av',
  notYet: 'lett',
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
    fald
  `,
  ofTheBack: `
    bak
    rygg
  `,
  seamOrCentre: `
    søm
    midt
  `,
  toLetOut: 'ut',
  allOfIt: 'hel',
  money: `
    kr
    nok
  `,
  extra: 'ekstra',
  excluded: `
    ekskl
    eksklusiv
  `,
  letsGo: `
    selges
    selger
  `,
  postage: `
    porto
    frakt
  `,
  postIncluded: `
    inkl
    inkludert
  `,
  priceName: `
    pris
    prisantydning
  `,
  also: 'også',
  measuresPair: 'måler',
  besideWhose: `
    avdeling
    stil
  `,
  ofSomebody: `
    min
    hans
    hennes
  `,
  womensBegins: 'dame',
  mensBegins: 'herre',
  forOne: 'til',
  collarSize: `
    krage
    halsvidde
  `,
  denim: `
    denim
    ola
  `,
  pocket: 'lomme',
  pocketLining: 'innerfôr',
  has: 'har'
}

export const amounts: Amounts = {
  parts: {
    tre: 3
  },
  place: {
    'første': 1,
    andre: 2
  }
}

/** Single words that tip a rule of the reader, in Finnish, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'prosenttia',
  paid: `
    ostettu
    ostin
    ostettiin
  `,
  joinsPart: 'ja',
  inchBegins: 'tuum',
  width: 'leveys',
  unbounded: 'vapaa',
  howItRan: `
    leveä
    pitkä
  `,
  wide: 'leveä',
  along: 'pitkä',
  upright: 'korkea',
  besideFigureOnly: 'koko',
  frontInName: `
    etu
    edestä
  `,
  backInName: `
    taka
    takaa
  `,
  besideGarment: 'kanssa',
  liningName: 'vuori',
  pure: `
    puhdas
    puhdasta
  `,
  betweenFibres: 'ja',
  besideShares: 'sekoite',
  hem: 'helma',
  ofTheBack: `
    taka
    selkä
  `,
  seamOrCentre: `
    sauma
    keski
  `,
  allOfIt: 'koko',
  money: 'euroa',
  extra: 'lisää',
  letsGo: `
    myydään
    myyn
  `,
  postage: `
    postikulut
    posti
  `,
  postIncluded: `
    sisältyy
    sis
  `,
  priceName: `
    hinta
    hp
  `,
  also: 'myös',
  womensBegins: 'nais',
  mensBegins: 'mies',
  collarSize: 'kaulus',
  denim: `
    farkku
    denim
    farkut
  `,
  pocket: 'tasku',
  pocketLining: 'vuori'
}

export const amounts: Amounts = {
  parts: {
    kolme: 3
  }
}

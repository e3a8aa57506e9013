/** Single words that tip a rule of the reader, in Dutch, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'procent',
  under: 'onder',
  // text and figures
  paid: `
    gekocht
    betaald
  `,
  joinsPart: 'en',
  onePart: 'een',
  inchBegins: 'duim',
  // names
  with: 'met',
  whose: 'van',
  width: 'breedte',
  at: `
    aan
    op
  `,
  // links
  verb: `
    zijn
    meet
  `,
  unbounded: `
    vrij
    wijd
  `,
  howItRan: 'breed',
  wide: 'breed',
  upright: 'hoog',
  actually: 'werkelijk',
  nearer: 'eerder',
  fitsFigure: 'past',
  // figures and their words
  besideFigureOnly: `
    rond
    om
    totaal
    rondom
  `,
  frontInName: `
    voor
    voorkant
  `,
  backInName: `
    achter
    achterkant
  `,
  leadsOn: 'tot',
  doubled: 'dubbel',
  // garment and cloth
  goesWith: `
    bijpassend
    bijpassende
    combineren
  `,
  anyGarment: `
    een
    elke
    je
    mijn
  `,
  likeGarment: `
    als
    zoals
  `,
  sale: `
    koop
    dames
    heren
    meisjes
    jongens
    vrouwen
    mannen
  `,
  notItself: `
    stijl
    model
  `,
  thingInPassing: `
    riem
    stof
    sjaal
    hoed
    muts
    laarzen
    schoenen
    kussen
  `,
  thisOne: `
    deze
    verkoop
    mooie
    leuke
    prachtige
  `,
  itemHead: `
    artikel
    categorie
    kledingstuk
  `,
  otherPart: `
    onderrok
    rits
    bies
    kraag
    boorden
    vulling
    riem
    kant
    schoudervulling
  `,
  noneOfIt: `
    geen
    nee
  `,
  justSo: `
    gewoon
    maar
    juist
  `,
  priceNow: 'nu',
  anotherItem: 'andere',
  besideGarment: `
    in
    met
    voor
    bij
    onder
    over
  `,
  liningName: 'voering',
  ofCloth: 'van',
  notYet: `
    worden
    makkelijk
    kan
    moet
  `,
  pure: `
    zuiver
    zuivere
  `,
  betweenFibres: 'en',
  feelsLike: 'als',
  hem: `
    zoom
    zomen
  `,
  ofTheBack: 'achternaad',
  seamOrCentre: 'naad',
  backSeam: 'achternaad',
  allOfIt: `
    volledig
    helemaal
  `,
  // price
  extra: 'meer',
  postageApart: `
    apart
    aparte
    extra
  `,
  excluded: `
    exclusief
    apart
  `,
  hence: 'dus',
  letsGo: 'verkoop',
  postage: `
    verzending
    verzendkosten
  `,
  postIncluded: 'inclusief',
  priceName: `
    prijs
    vraagprijs
  `,
  haggled: `
    ophalen
    afhalen
  `,
  // sizes
  also: 'ook',
  measuresPair: `
    meet
    meten
  `,
  besideWhose: `
    afdeling
    stijl
    look
  `,
  ofSomebody: `
    mijn
    haar
    zijn
  `,
  womensBegins: 'dames',
  mensBegins: 'heren',
  forOne: 'voor',
  collarSize: `
    boord
    kraagmaat
  `
}

export const amounts: Amounts = {
  parts: {
    drie: 3
  },
  part: {
    kwart: 0.25
  },
  place: {
    eerste: 1,
    tweede: 2
  }
}

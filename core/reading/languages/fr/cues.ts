/** Single words that tip a rule of the reader, in French, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  perCentFirst: 'pour',
  perCentSecond: 'cent',
  under: 'sous',
  // text and figures
  paid: `
    acheté
    achetée
    achetés
    payé
    payée
  `,
  joinsPart: 'et',
  onePart: 'un',
  inchBegins: 'pou',
  inchShort: 'po',
  // names
  with: 'avec',
  counted: `
    inclus
    incluse
    exclu
    compris
    comprise
  `,
  whose: `
    de
    du
    des
    d
  `,
  width: 'largeur',
  at: `
    au
    aux
    sur
    en
  `,
  // links
  ofMeasure: `
    de
    d
  `,
  verb: `
    est
    sont
    mesure
  `,
  unbounded: `
    libre
    libres
  `,
  howItRan: 'longue',
  wide: 'large',
  upright: 'haut',
  actually: `
    réel
    réelle
    réellement
  `,
  nearer: 'plutôt',
  atDistance: 'à',
  // figures and their words
  besideFigureOnly: 'demi',
  girthOrWidth: 'tour',
  frontInName: `
    devant
    avant
  `,
  backInName: `
    dos
    arrière
  `,
  leadsOn: `
    à
    jusqu
  `,
  doubled: `
    double
    doublée
  `,
  // garment and cloth
  goesWith: `
    assorti
    assortie
    assortis
    assorties
    accompagné
  `,
  anyGarment: `
    un
    une
    votre
    mon
    ma
    ton
  `,
  likeGarment: 'comme',
  sale: `
    vente
    femme
    homme
    fille
    garçon
    femmes
    hommes
  `,
  notItself: `
    style
    façon
    effet
    forme
  `,
  thingInPassing: `
    écharpe
    foulard
    tissu
    semelle
    tige
    sac
    chapeau
    coussin
    rideau
    escarpins
    bottines
    bottes
  `,
  thisOne: `
    cette
    cet
    vends
    superbe
    belle
    jolie
    joli
    magnifique
  `,
  itemHead: `
    article
    catégorie
    produit
  `,
  otherPart: `
    jupon
    zip
    garniture
    garnitures
    col
    bord
    bords
    rembourrage
    garnissage
    ceinture
    dentelle
    épaulettes
  `,
  noneOfIt: `
    aucune
    non
    sans
  `,
  justSo: `
    juste
    simplement
    plutôt
  `,
  priceNow: 'maintenant',
  anotherItem: 'autre',
  besideGarment: `
    en
    avec
    pour
    sous
    sur
  `,
  liningName: 'doublure',
  ofCloth: `
    en
    de
    d
  `,
  paleLook: `
    délavé
    délavée
  `,
  notYet: `
    être
    facilement
  `,
  pure: `
    pur
    purs
    pure
  `,
  betweenFibres: `
    et
    mélange
  `,
  feelsLike: 'comme',
  besideShares: `
    mélange
    mélangée
  `,
  hem: `
    ourlet
    ourlets
  `,
  deep: 'profondeur',
  ofTheBack: `
    dos
    derrière
  `,
  seamOrCentre: `
    couture
    milieu
  `,
  toLetOut: `
    élargir
    relâcher
    agrandir
  `,
  allOfIt: `
    enti
    total
  `,
  // price
  whenNew: 'neuf',
  postageApart: `
    sus
    plus
    supplément
  `,
  excluded: 'exclu',
  hence: 'donc',
  letsGo: `
    laisse
    cède
  `,
  postage: `
    port
    frais
    envoi
  `,
  postIncluded: `
    inclus
    compris
    fdpin
  `,
  priceName: 'prix',
  // sizes
  also: 'aussi',
  measuresPair: `
    mesure
    mesurent
  `,
  besideWhose: `
    rayon
    style
    look
    inspiration
  `,
  ofSomebody: `
    ma
    mon
    sa
    son
  `,
  forOne: `
    pour
    de
    d
  `,
  collarSize: `
    col
    encolure
  `
}

export const amounts: Amounts = {
  parts: {
    trois: 3
  },
  part: {
    quart: 0.25,
    quarts: 0.25
  },
  place: {
    premier: 1,
    première: 1,
    deuxième: 2,
    seconde: 2
  }
}

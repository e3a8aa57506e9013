/** Single words that tip a rule of the reader, in Spanish, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  perCentFirst: 'por',
  perCentSecond: 'ciento',
  under: 'bajo',
  // text and figures
  paid: `
    comprado
    comprada
    compré
    pagado
  `,
  joinsPart: 'y',
  onePart: 'una',
  inchBegins: 'pul',
  // names
  with: 'con',
  counted: `
    incluido
    incluida
  `,
  whose: 'del',
  width: `
    ancho
    anchura
  `,
  at: `
    al
    en
  `,
  // links
  ofMeasure: `
    de
    del
  `,
  verb: `
    es
    son
    mide
  `,
  unbounded: `
    libre
    suelta
  `,
  howItRan: `
    largo
    larga
  `,
  wide: 'ancho',
  along: `
    largo
    larga
  `,
  upright: 'alto',
  actually: `
    real
    reales
  `,
  atDistance: 'a',
  // figures and their words
  besideFigureOnly: `
    medio
    total
  `,
  girthOrWidth: `
    ancho
    contorno
  `,
  frontInName: `
    delantero
    delantera
    delante
    frontal
  `,
  backInName: `
    espalda
    trasero
    trasera
  `,
  leadsOn: `
    a
    hasta
  `,
  doubled: `
    doblado
    doble
  `,
  // garment and cloth
  goesWith: `
    combina
    combinar
    combinado
    juego
  `,
  anyGarment: `
    un
    una
    cualquier
    tu
    mi
    unos
  `,
  likeGarment: 'como',
  sale: `
    venta
    mujer
    hombre
    niña
    niño
    vestir
  `,
  notItself: `
    estilo
    tipo
    efecto
  `,
  thingInPassing: `
    pañuelo
    tela
    sombrero
    gorro
    bufanda
    botas
    botines
    zapatos
    cojín
  `,
  thisOne: `
    este
    esta
    vendo
    preciosa
    precioso
    bonita
    bonito
  `,
  itemHead: `
    artículo
    categoría
    prenda
  `,
  otherPart: `
    enagua
    cremallera
    ribete
    cuello
    puños
    relleno
    cinturón
    encaje
    hombreras
    canalé
  `,
  noneOfIt: `
    ninguno
    sin
    no
  `,
  justSo: `
    sino
    simplemente
    solo
  `,
  priceNow: 'ahora',
  anotherItem: `
    otro
    otra
  `,
  besideGarment: `
    en
    con
    para
    sobre
    debajo
  `,
  liningName: 'forro',
  ofCloth: 'de',
  paleLook: 'desgastado',
  notYet: `
    ser
    facilmente
  `,
  pure: `
    puro
    pura
  `,
  betweenFibres: `
    y
    mezcla
  `,
  feelsLike: 'como',
  besideShares: 'mezcla',
  hem: `
    dobladillo
    bajo
    bajos
  `,
  ofTheBack: `
    trasera
    espalda
  `,
  seamOrCentre: `
    costura
    centro
  `,
  toLetOut: `
    ensanchar
    sacar
    agrandar
  `,
  // price
  extra: 'más',
  onTop: 'más',
  postageApart: 'aparte',
  excluded: 'aparte',
  letsGo: `
    dejo
    vendo
  `,
  postage: 'envío',
  postIncluded: `
    incluido
    incluidos
  `,
  priceName: 'precio',
  // sizes
  also: 'también',
  tag: 'etiqueta',
  measuresPair: `
    mide
    miden
  `,
  besideWhose: `
    sección
    estilo
  `,
  ofSomebody: `
    mi
    su
  `,
  forOne: `
    para
    de
  `,
  collarSize: 'cuello'
}

export const amounts: Amounts = {
  parts: {
    tres: 3
  },
  part: {
    cuarto: 0.25,
    cuartos: 0.25
  },
  place: {
    primer: 1,
    primera: 1,
    segunda: 2,
    segundo: 2
  }
}

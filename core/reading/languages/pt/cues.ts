/** Single words that tip a rule of the reader, in Portuguese, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  perCentFirst: 'por',
  perCentSecond: 'cento',
  paid: `
    comprado
    comprada
    comprei
    paguei
    custou
    pago
  `,
  joinsPart: 'e',
  onePart: 'uma',
  inchBegins: 'poleg',
  with: 'com',
  counted: `
    incluído
    incluída
  `,
  whose: 'da',
  width: `
    largura
    largo
    larga
  `,
  at: `
    na
    ao
  `,
  ofMeasure: 'de',
  verb: `
    são
    mede
    tem
  `,
  unbounded: `
    livre
    solto
    solta
    ajustável
  `,
  howItRan: `
    comprido
    comprida
    longo
    longa
  `,
  wide: `
    largura
    largo
  `,
  along: `
    comprido
    comprida
    longo
  `,
  upright: 'alto',
  actually: `
    real
    reais
  `,
  atDistance: 'a',
  besideFigureOnly: `
    meio
    total
  `,
  girthOrWidth: `
    largura
    contorno
  `,
  frontInName: `
    frente
    dianteiro
    dianteira
  `,
  backInName: `
    costas
    traseiro
    traseira
    trás
  `,
  leadsOn: `
    até
    a
    para
  `,
  doubled: `
    dobrado
    duplo
  `,
  besideGarment: `
    em
    com
    para
    combina
  `,
  liningName: 'forro',
  ofCloth: `
    de
    em
  `,
  paleLook: `
    desbotado
    destonado
  `,
  notYet: `
    ser
    precisa
    facilmente
  `,
  pure: `
    puro
    pura
  `,
  betweenFibres: `
    e
    misto
    mistura
    com
  `,
  feelsLike: 'como',
  besideShares: `
    misto
    mistura
  `,
  hem: `
    bainha
    barra
  `,
  ofTheBack: `
    traseira
    costas
  `,
  seamOrCentre: `
    costura
    centro
  `,
  toLetOut: `
    alargar
    soltar
  `,
  postageApart: `
    parte
    comprador
    compradora
  `,
  excluded: `
    parte
    fora
  `,
  letsGo: `
    vendo
    deixo
    faço
  `,
  postage: `
    portes
    frete
    envio
    correio
  `,
  postIncluded: `
    incluído
    incluídos
    incluso
    incluída
    grátis
    gratuito
    gratuitos
    com
  `,
  priceName: `
    preço
    valor
  `,
  also: 'também',
  tag: 'etiqueta',
  measuresPair: `
    mede
    medem
  `,
  besideWhose: `
    seção
    secção
    estilo
  `,
  ofSomebody: `
    meu
    minha
  `,
  forOne: `
    para
    de
  `,
  collarSize: 'colarinho',
  and: 'e',
  denim: 'ganga',
  inside: 'dentro',
  beside: `
    perto
    junto
  `,
  pocket: 'bolso',
  pocketLining: 'forro',
  imitated: 'falso',
  has: 'tem',
  when: 'quando',
  leadsToName: 'na',
  neck: `
    gola
    pescoço
  `
}

export const amounts: Amounts = {
  parts: {
    'três': 3
  },
  part: {
    quarto: 0.25,
    quartos: 0.25
  },
  place: {
    primeiro: 1,
    primeira: 1,
    segunda: 2,
    segundo: 2
  },
  sum: {
    cinco: 5,
    seis: 6,
    sete: 7,
    oito: 8,
    nove: 9,
    dez: 10,
    doze: 12,
    quinze: 15,
    dezoito: 18,
    vinte: 20,
    trinta: 30,
    quarenta: 40,
    cinquenta: 50,
    sessenta: 60,
    setenta: 70,
    oitenta: 80,
    noventa: 90,
    cem: 100,
    cento: 100,
    duzentos: 200,
    trezentos: 300,
    quatrocentos: 400,
    quinhentos: 500
  }
}

/** Single words that tip a rule of the reader, in Polish, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'procent',
  under: 'pod',
  // text and figures
  shortForm: 'ok',
  paid: `
    kupiłam
    kupiona
    kupione
    kupiony
  `,
  joinsPart: 'i',
  inchBegins: 'cal',
  // names
  withOrOf: 'z',
  whose: 'z',
  width: `
    szerokość
    szer
  `,
  at: 'na',
  // links
  ofMeasure: 'z',
  verb: `
    jest
    mierzy
  `,
  unbounded: `
    luźne
    luźny
  `,
  fitsFigure: 'pasuje',
  // figures and their words
  besideFigureOnly: 'wokół',
  frontInName: 'przód',
  backInName: 'tył',
  leadsOn: 'do',
  doubled: `
    podwójnie
    podwójony
  `,
  // garment and cloth
  goesWith: `
    pasuje
    pasująca
    pasujący
    pasujące
  `,
  anyGarment: `
    każdej
    każdego
    twojej
    mojej
  `,
  likeGarment: `
    jak
    jako
  `,
  sale: `
    sprzedaż
    sprzedania
    kobiet
    mężczyzn
    dziewczynki
    chłopca
    pracy
    szkoły
  `,
  notItself: 'styl',
  thingInPassing: `
    materiał
    tkanina
    szalik
    kapelusz
    czapka
    obcasy
    buty
    kozaki
  `,
  thisOne: `
    sprzedam
    piękna
    piękny
    śliczna
    śliczny
  `,
  itemHead: `
    przedmiot
    kategoria
    rodzaj
  `,
  otherPart: `
    halka
    zamek
    wykończenie
    kołnierz
    ściągacze
    wypełnienie
    pasek
    koronka
  `,
  noneOfIt: `
    brak
    bez
    nie
  `,
  justSo: `
    tylko
    lecz
  `,
  priceNow: 'teraz',
  anotherItem: `
    inna
    inny
    drugi
  `,
  besideGarment: `
    w
    z
    do
    na
    pod
  `,
  liningName: 'podszewka',
  ofCloth: 'z',
  notYet: `
    łatwo
    być
  `,
  pure: `
    czysty
    czysta
    czystej
  `,
  betweenFibres: 'i',
  feelsLike: 'jak',
  hem: `
    podwinięcie
    podwinięcia
    dół
  `,
  ofTheBack: `
    tylny
    tylnym
  `,
  seamOrCentre: `
    szew
    szwie
  `,
  toLetOut: `
    poszerzenia
    wypuszczenia
  `,
  allOfIt: `
    cało
    calo
  `,
  // price
  money: `
    zł
    pln
  `,
  extra: 'więcej',
  letsGo: 'sprzedam',
  postage: 'wysyłka',
  postIncluded: 'wliczona',
  priceName: 'cena',
  // sizes
  also: 'także',
  tag: `
    metka
    metce
  `,
  measuresPair: `
    mierzą
    mierzone
  `,
  besideWhose: `
    dział
    styl
    stylu
  `,
  ofSomebody: `
    moja
    mojej
    mojego
  `,
  forOne: 'dla',
  collarSize: `
    kołnierzyk
    kołnierzyka
  `
}

export const amounts: Amounts = {
  place: {
    pierwsza: 1,
    pierwszy: 1,
    druga: 2,
    drugi: 2
  }
}

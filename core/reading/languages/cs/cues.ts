/** Single words that tip a rule of the reader, in Czech, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  percent: 'procent',
  paid: `
    koupeno
    koupené
    koupila
    koupil
    kupováno
  `,
  width: 'šířka',
  verb: 'měří',
  unbounded: `
    volné
    volný
  `,
  howItRan: `
    široký
    široké
    dlouhé
    dlouhý
  `,
  wide: `
    široký
    šířka
  `,
  along: `
    dlouhý
    dlouhé
  `,
  upright: 'vysoký',
  besideFigureOnly: 'celkem',
  frontInName: `
    přední
    vpředu
  `,
  backInName: `
    zadní
    vzadu
    záda
  `,
  leadsOn: 'až',
  besideGarment: 'ke',
  liningName: `
    podšívka
    výplň
  `,
  pure: `
    čistá
    čistý
  `,
  besideShares: 'směs',
  feelsLike: 'jako',
  hem: 'lem',
  ofTheBack: `
    zadní
    záda
  `,
  seamOrCentre: `
    šev
    střed
  `,
  money: 'kč',
  extra: 'navíc',
  letsGo: `
    prodám
    prodávám
  `,
  postage: `
    poštovné
    doprava
  `,
  postIncluded: `
    včetně
    zdarma
  `,
  priceName: 'cena',
  tag: `
    štítek
    visačka
  `,
  measuresPair: 'měří',
  womensBegins: 'dám',
  mensBegins: 'pán',
  forOne: 'pro',
  collarSize: 'límec',
  denim: `
    džíny
    denim
    rifle
    džínové
    džínová
  `,
  pocket: 'kapsa',
  pocketLining: 'podšívka'
}

export const amounts: Amounts = {
  parts: {
    'tři': 3
  }
}

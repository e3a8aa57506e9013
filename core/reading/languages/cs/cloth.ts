/** Cloth in Czech: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      bavlna
      bavlny
      bavlněné
    `,
    wool: `
      vlna
      vlny
      merino vlna
      merino
      střižní vlna
      ovčí vlna
    `,
    linen: `
      len
      lnu
    `,
    silk: `
      hedvábí
      pravé hedvábí
    `,
    viscose: `
      viskóza
      viskózy
      viskoza
    `,
    polyester: `
      polyester
      polyesteru
    `,
    polyamide: `
      polyamid
      polyamidu
      nylon
    `,
    elastane: `
      elastan
      elastanu
      spandex
      lycra
    `,
    acrylic: `
      akryl
      akrylu
      polyakryl
    `,
    cashmere: `
      kašmír
      kašmíru
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetát',
    cupro: 'cupro',
    mohair: 'mohér',
    alpaca: 'alpaka',
    angora: 'angora',
    hemp: 'konopí'
  },
  structures: {
    woven: `
      tkané
      denim
      manšestr
      flanel
      popelín
    `,
    knit: `
      pletené
      pletený
      pletenina
      úplet
      žebrované
    `,
    leather: `
      kůže
      pravá kůže
      semiš
      kožený
      kožená
    `
  },
  traits: {
    rigid: `
      bez elastanu
      nepruží
      nepružné
    `,
    denim: `
      denim
      džínovina
      džínová
      džínové
    `,
    pile: `
      samet
      manšestr
      velur
    `,
    check: `
      kostkovaná
      kostkované
      kostkovaný
      kostka
      káro
    `,
    stripe: `
      pruhovaná
      pruhované
      proužek
      proužky
      pruhovaný
    `,
    sheer: `
      průhledné
      tyl
      šifon
    `,
    slippery: `
      satén
      saténové
    `,
    beaded: `
      korálky
      flitry
    `,
    pleated: `
      plisovaná
      plisované
      skládaná
    `,
    suede: 'semiš',
    vinyl: `
      koženka
      imitace kůže
      lakované
    `,
    silk: 'hedvábí'
  },
  colours: {
    black: `
      černá
      černé
      černý
    `,
    white: `
      bílá
      bílé
      bílý
    `,
    grey: `
      šedá
      šedé
      šedý
    `,
    navy: `
      tmavě modrá
      tmavě modré
      tmavě modrý
      námořnická
    `,
    blue: `
      modrá
      modré
      modrý
      světle modrá
    `,
    teal: `
      tyrkysová
      petrolejová
    `,
    green: `
      zelená
      zelené
      zelený
      khaki
    `,
    red: `
      červená
      červené
      červený
    `,
    burgundy: `
      vínová
      vínové
      bordó
    `,
    pink: `
      růžová
      růžové
      růžový
    `,
    purple: `
      fialová
      fialové
      lila
    `,
    orange: `
      oranžová
      oranžové
    `,
    yellow: `
      žlutá
      žluté
    `,
    brown: `
      hnědá
      hnědé
      hnědý
      camel
    `,
    beige: `
      béžová
      béžové
      béžový
    `,
    cream: `
      krémová
      smetanová
    `,
    gold: 'zlatá',
    silver: 'stříbrná'
  }
}

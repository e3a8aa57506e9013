/** Cloth in Dutch: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      katoen
      biokatoen
    `,
    wool: `
      wol
      scheerwol
      merinowol
      lamswol
      merino
      wollen
    `,
    linen: `
      linnen
      vlas
    `,
    silk: `
      zijde
      zijden
    `,
    viscose: `
      viscose
      rayon
    `,
    polyester: 'polyester',
    polyamide: `
      polyamide
      nylon
    `,
    elastane: `
      elastaan
      elastane
      lycra
      spandex
      elasthan
    `,
    acrylic: `
      acryl
      polyacryl
    `,
    cashmere: `
      kasjmier
      cashmere
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetaat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'hennep',
    polyurethane: 'polyurethaan'
  },
  structures: {
    woven: `
      geweven
      denim
      popeline
      flanel
      ribfluweel
      ribstof
    `,
    knit: `
      gebreid
      tricot
      jersey
      gebreide
      gehaakt
      grof gebreid
    `,
    leather: `
      leer
      leren
      suède
      suede
      echt leer
      nappaleer
    `
  },
  traits: {
    rigid: `
      niet rekbaar
      geen stretch
      zonder stretch
      geen rek
    `,
    denim: `
      denim
      spijkerstof
      spijkerbroek
      spijkerjas
      spijkerrok
      spijkerjasje
    `,
    pile: `
      corduroy
      fluweel
      ribfluweel
      ribstof
      velours
      ribbroek
    `,
    check: `
      geruit
      ruit
      ruitjes
      tartan
      geruite
      pied de poule
    `,
    stripe: `
      gestreept
      streep
      strepen
      krijtstreep
      gestreepte
    `,
    sheer: `
      doorzichtig
      chiffon
      tule
      organza
      doorschijnend
    `,
    slippery: `
      satijn
      satijnen
    `,
    beaded: `
      pailletten
      kralen
    `,
    pleated: `
      plissé
      plooien
      geplisseerd
      plooirok
    `,
    suede: `
      suède
      suede
    `,
    vinyl: `
      kunstleer
      nepleer
      lak
      imitatieleer
    `,
    coated: `
      gewaxt
      gecoat
      waxjas
    `,
    silk: `
      zijde
      zijden
    `,
    taffeta: `
      taf
      tafzijde
    `
  },
  colours: {
    black: `
      zwart
      zwarte
    `,
    white: `
      wit
      witte
    `,
    grey: `
      grijs
      grijze
      antraciet
    `,
    navy: `
      donkerblauw
      marineblauw
      donkerblauwe
    `,
    blue: `
      blauw
      blauwe
      lichtblauw
      kobalt
      lichtblauwe
    `,
    teal: `
      turquoise
      petrol
    `,
    green: `
      groen
      groene
      olijfgroen
      donkergroen
      legergroen
    `,
    red: `
      rood
      rode
    `,
    burgundy: `
      bordeaux
      wijnrood
    `,
    pink: `
      roze
      fuchsia
    `,
    purple: `
      paars
      paarse
      lila
    `,
    orange: `
      oranje
      roest
    `,
    yellow: `
      geel
      gele
      mosterdgeel
      oker
    `,
    brown: `
      bruin
      bruine
      cognac
      donkerbruin
    `,
    beige: `
      beige
      zand
      camel
      taupe
    `,
    cream: `
      creme
      crème
      ivoor
      ecru
    `,
    gold: `
      goud
      gouden
    `,
    silver: `
      zilver
      zilveren
    `
  }
}

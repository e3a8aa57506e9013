/** Cloth in German: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      baumwolle
      bw baumwolle
      biobaumwolle
    `,
    wool: `
      wolle
      schurwolle
      merinowolle
      schafwolle
      lammwolle
      merino
      reine schurwolle
      neue wolle
    `,
    linen: `
      leinen
      flachs
    `,
    silk: `
      seide
      reine seide
    `,
    viscose: `
      viskose
      rayon
    `,
    polyester: 'polyester',
    polyamide: `
      polyamid
      nylon
    `,
    elastane: `
      elasthan
      elastan
      spandex
      lycra
    `,
    acrylic: `
      acryl
      polyacryl
      polyacrylnitril
    `,
    cashmere: `
      kaschmir
      cashmere
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: `
      acetat
      triacetat
    `,
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: `
      alpaka
      alpaca
    `,
    angora: 'angora',
    hemp: 'hanf',
    polyurethane: 'polyurethan'
  },
  structures: {
    woven: `
      gewebt
      gewebe
      denim
      popeline
      köper
      cord
      leinwand
      flanell
    `,
    knit: `
      strick
      strickjacke
      strickpullover
      strickkleid
      strickpulli
      strickweste
      gestrickt
      jersey
      feinstrick
      grobstrick
      handgestrickt
      sweatstoff
      gehäkelt
    `,
    leather: `
      leder
      lederjacke
      lederhose
      ledermantel
      lederrock
      lederweste
      echtleder
      wildleder
      lammleder
      echt leder
      glattleder
      nappaleder
      veloursleder
    `
  },
  traits: {
    rigid: `
      rohdenim
      nicht dehnbar
      ohne stretch
      nicht elastisch
      kein stretch
    `,
    denim: `
      denim
      jeansstoff
      jeanshose
      jeansjacke
      jeansrock
      jeanskleid
      jeanshemd
    `,
    pile: `
      cord
      samt
      kord
      velours
      nicki
      samtjacke
      cordhose
      cordjacke
      cordrock
    `,
    nap: `
      moleskin
      fleece
    `,
    check: `
      kariert
      karo
      karomuster
      schottenkaro
      hahnentritt
      karierte
      kariertes
      karierter
      tartan
      glencheck
    `,
    stripe: `
      gestreift
      streifen
      nadelstreifen
      gestreifte
      gestreiftes
      gestreifter
      ringel
      geringelt
    `,
    'large-print': `
      großes muster
      großer print
    `,
    sheer: `
      durchsichtig
      transparent
      chiffon
      organza
      tüll
    `,
    slippery: 'satin',
    beaded: `
      pailletten
      perlen
      perlenbesatz
      paillettenkleid
    `,
    pleated: `
      plissee
      plissiert
      faltenrock
      plisseerock
      plissiertes
    `,
    suede: `
      wildleder
      veloursleder
    `,
    vinyl: `
      lack
      kunstleder
      lackleder
      vinyl
    `,
    coated: `
      beschichtet
      gewachst
      wachsjacke
    `,
    silk: `
      seide
      reine seide
    `,
    taffeta: 'taft'
  },
  colours: {
    black: `
      schwarz
      schwarze
      schwarzer
      schwarzes
    `,
    white: `
      weiß
      weisse
      weiße
      weißes
      weißer
    `,
    grey: `
      grau
      graue
      grauer
      graues
      anthrazit
      dunkelgrau
      hellgrau
    `,
    navy: `
      dunkelblau
      marine
      marineblau
      navy
    `,
    blue: `
      blau
      blaue
      blauer
      blaues
      hellblau
      royalblau
      indigo
    `,
    teal: `
      petrol
      türkis
    `,
    green: `
      grün
      grüne
      grüner
      grünes
      olive
      oliv
      dunkelgrün
      tannengrün
      hellgrün
    `,
    red: `
      rot
      rote
      roter
      rotes
      dunkelrot
    `,
    burgundy: `
      bordeaux
      weinrot
    `,
    pink: `
      rosa
      pink
      altrosa
    `,
    purple: `
      lila
      violett
      flieder
    `,
    orange: `
      orange
      rostrot
    `,
    yellow: `
      gelb
      senfgelb
      gelbe
      gelbes
    `,
    brown: `
      braun
      braune
      brauner
      braunes
      cognac
      dunkelbraun
      hellbraun
    `,
    beige: `
      beige
      sand
      taupe
      camel
    `,
    cream: `
      creme
      wollweiß
      elfenbein
    `,
    gold: `
      gold
      golden
    `,
    silver: 'silber'
  }
}

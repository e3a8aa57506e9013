/** Cloth in Finnish: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      puuvilla
      puuvillaa
    `,
    wool: `
      villa
      villaa
      merinovilla
      lampaanvilla
      merinovillaa
    `,
    linen: `
      pellava
      pellavaa
    `,
    silk: `
      silkki
      silkkiä
    `,
    viscose: `
      viskoosi
      viskoosia
    `,
    polyester: `
      polyesteri
      polyesteriä
    `,
    polyamide: `
      polyamidi
      polyamidia
      nailon
    `,
    elastane: `
      elastaani
      elastaania
      spandex
      lycra
    `,
    acrylic: `
      akryyli
      akryyliä
    `,
    cashmere: `
      kashmir
      kashmiria
    `,
    modal: `
      modaali
      modaalia
    `,
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'asetaatti',
    cupro: 'kupro',
    mohair: `
      mohair
      mohairia
    `,
    alpaca: `
      alpakka
      alpakkaa
    `,
    angora: 'angora',
    hemp: 'hamppu'
  },
  structures: {
    woven: `
      kudottu
      denim
      vakosametti
      flanelli
      popliini
    `,
    knit: `
      neulos
      neulottu
      trikoo
      jersey
      resori
    `,
    leather: `
      nahka
      aito nahka
      mokka
      nahkaa
    `
  },
  traits: {
    rigid: `
      ei jousta
      joustamaton
    `,
    denim: `
      denim
      farkku
    `,
    pile: `
      sametti
      vakosametti
      velour
    `,
    check: `
      ruudullinen
      ruutu
      ruudut
    `,
    stripe: `
      raidallinen
      raidat
      liituraita
    `,
    sheer: `
      läpikuultava
      tylli
      sifonki
    `,
    slippery: 'satiini',
    beaded: `
      helmi
      paljetti
      paljetit
    `,
    pleated: `
      vekitetty
      pliseerattu
    `,
    suede: 'mokka',
    vinyl: `
      tekonahka
      keinonahka
    `,
    silk: 'silkki'
  },
  colours: {
    black: `
      musta
      mustat
    `,
    white: `
      valkoinen
      valkoiset
    `,
    grey: `
      harmaa
      harmaat
    `,
    navy: `
      tummansininen
      laivastonsininen
    `,
    blue: `
      sininen
      vaaleansininen
      siniset
    `,
    teal: `
      turkoosi
      petroli
    `,
    green: `
      vihreä
      vihreät
      khaki
    `,
    red: `
      punainen
      punaiset
    `,
    burgundy: 'viininpunainen',
    pink: `
      vaaleanpunainen
      pinkki
      roosa
    `,
    purple: `
      violetti
      liila
    `,
    orange: 'oranssi',
    yellow: 'keltainen',
    brown: `
      ruskea
      ruskeat
      camel
    `,
    beige: 'beige',
    cream: `
      kerma
      luonnonvalkoinen
    `,
    gold: 'kulta',
    silver: 'hopea'
  }
}

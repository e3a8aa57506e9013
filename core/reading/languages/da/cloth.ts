/** Cloth in Danish: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      bomuld
      økologisk bomuld
    `,
    wool: `
      uld
      merinould
      lammeuld
      ny uld
    `,
    linen: 'hør',
    silk: 'silke',
    viscose: 'viskose',
    polyester: 'polyester',
    polyamide: `
      polyamid
      nylon
    `,
    elastane: `
      elastan
      elasthan
      spandex
      lycra
    `,
    acrylic: 'akryl',
    cashmere: `
      kashmir
      cashmere
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaka',
    angora: 'angora',
    hemp: 'hamp',
    polyurethane: 'polyuretan'
  },
  structures: {
    woven: `
      vævet
      denim
      fløjl
      flonel
      poplin
    `,
    knit: `
      strik
      strikket
      jersey
      rib
    `,
    leather: `
      læder
      skind
      ruskind
      ægte læder
    `
  },
  traits: {
    rigid: `
      ingen stretch
      uden stretch
    `,
    denim: `
      denim
      cowboystof
    `,
    pile: `
      fløjl
      velour
      jernbanefløjl
    `,
    check: `
      ternet
      tern
      skotskternet
    `,
    stripe: `
      stribet
      striber
      nålestriber
    `,
    sheer: `
      gennemsigtig
      tyl
      chiffon
      organza
    `,
    slippery: 'satin',
    beaded: `
      perler
      pailletter
    `,
    pleated: `
      plisseret
      plissé
    `,
    suede: 'ruskind',
    vinyl: `
      kunstlæder
      imiteret læder
      lak
    `,
    coated: `
      coated
      voksbehandlet
    `,
    silk: 'silke',
    taffeta: 'taft'
  },
  colours: {
    black: `
      sort
      sorte
    `,
    white: `
      hvid
      hvidt
      hvide
    `,
    grey: `
      grå
      gråt
    `,
    navy: `
      marineblå
      navy
      mørkeblå
    `,
    blue: `
      blå
      blåt
      lyseblå
    `,
    teal: `
      turkis
      petrol
    `,
    green: `
      grøn
      grønt
      grønne
    `,
    red: `
      rød
      rødt
      røde
    `,
    burgundy: `
      bordeaux
      vinrød
    `,
    pink: `
      lyserød
      rosa
      pink
    `,
    purple: 'lilla',
    orange: 'orange',
    yellow: `
      gul
      gult
    `,
    brown: `
      brun
      brunt
    `,
    beige: `
      beige
      sand
    `,
    cream: `
      creme
      råhvid
    `,
    gold: 'guld',
    silver: 'sølv'
  }
}

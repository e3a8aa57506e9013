/** Cloth in Norwegian: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      bomull
      økologisk bomull
    `,
    wool: `
      ull
      merinoull
      lammeull
      ny ull
    `,
    linen: 'lin',
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
    alpaca: 'alpakka',
    angora: 'angora',
    hemp: 'hamp',
    polyurethane: 'polyuretan'
  },
  structures: {
    woven: `
      vevd
      denim
      fløyel
      flanell
      poplin
    `,
    knit: `
      strikk
      strikket
      jersey
      rib
    `,
    leather: `
      skinn
      lær
      semsket
      ekte skinn
    `
  },
  traits: {
    rigid: `
      ingen stretch
      uten stretch
    `,
    denim: `
      denim
      dongeri
    `,
    pile: `
      fløyel
      velur
      kordfløyel
    `,
    check: `
      rutete
      ruter
      skotskrutet
    `,
    stripe: `
      stripete
      striper
      nålestriper
    `,
    sheer: `
      gjennomsiktig
      tyll
      chiffon
      organza
    `,
    slippery: 'sateng',
    beaded: `
      perler
      paljetter
    `,
    pleated: `
      plissert
      plissé
    `,
    suede: 'semsket',
    vinyl: `
      kunstskinn
      imitert skinn
      lakk
    `,
    coated: `
      vokset
      belagt
    `,
    silk: 'silke',
    taffeta: 'taft'
  },
  colours: {
    black: `
      svart
      svarte
      sort
    `,
    white: `
      hvit
      hvitt
      hvite
    `,
    grey: `
      grå
      grått
    `,
    navy: `
      marineblå
      navy
      mørkeblå
    `,
    blue: `
      blå
      blått
      lyseblå
    `,
    teal: `
      turkis
      petrol
    `,
    green: `
      grønn
      grønt
      grønne
    `,
    red: `
      rød
      rødt
      røde
    `,
    burgundy: `
      burgunder
      vinrød
    `,
    pink: 'rosa',
    purple: 'lilla',
    orange: 'oransje',
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
      kremhvit
      offwhite
    `,
    gold: 'gull',
    silver: 'sølv'
  }
}

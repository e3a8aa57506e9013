/** Cloth in Swedish: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      bomull
      ekologisk bomull
    `,
    wool: `
      ull
      merinoull
      lammull
      ren ull
      ny ull
      merino
      ren ny ull
    `,
    linen: `
      lin
      linne tyg
      linnetyg
    `,
    silk: `
      siden
      silke
      rent siden
    `,
    viscose: `
      viskos
      rayon
    `,
    polyester: 'polyester',
    polyamide: `
      polyamid
      nylon
    `,
    elastane: `
      elastan
      elasthan
      lycra
      spandex
    `,
    acrylic: 'akryl',
    cashmere: `
      kashmir
      cashmere
      kaschmir
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: `
      alpacka
      alpaca
    `,
    angora: 'angora',
    hemp: 'hampa',
    polyurethane: 'polyuretan'
  },
  structures: {
    woven: `
      vävd
      denim
      poplin
      flanell
      manchester
      vävt
    `,
    knit: `
      stickad
      trikå
      jersey
      stickat
      virkad
      handstickad
      stickade
    `,
    leather: `
      läder
      skinn
      mocka
      äkta skinn
      äkta läder
      nappa
      skinnjacka
      skinnbyxor
    `
  },
  traits: {
    rigid: `
      ej stretch
      ingen stretch
      utan stretch
      styv denim
    `,
    denim: `
      denim
      jeanstyg
      jeansjacka
      jeanskjol
      jeansskjorta
    `,
    pile: `
      manchester
      sammet
      velour
      manchesterbyxor
    `,
    check: `
      rutig
      rutigt
      rutiga
      tartan
      hundtand
    `,
    stripe: `
      randig
      randigt
      kritstreck
      randiga
      kritstrecksrandig
    `,
    sheer: `
      genomskinlig
      chiffong
      tyll
      organza
      transparent
    `,
    slippery: 'satin',
    beaded: `
      paljetter
      pärlor
      paljettklänning
    `,
    pleated: `
      plisserad
      plissé
      plisserat
    `,
    suede: `
      mocka
      mockajacka
    `,
    vinyl: `
      vinyl
      konstläder
      lack
      skinnimitation
    `,
    coated: `
      vaxad
      coated
      vaxat
    `,
    silk: `
      siden
      silke
      sidenblus
    `,
    taffeta: 'taft'
  },
  colours: {
    black: `
      svart
      svarta
    `,
    white: `
      vit
      vita
      vitt
    `,
    grey: `
      grå
      gråa
      grått
      mörkgrå
      ljusgrå
      antracit
    `,
    navy: `
      marinblå
      mörkblå
      marinblått
    `,
    blue: `
      blå
      blåa
      ljusblå
      blått
      kornblå
    `,
    teal: `
      turkos
      petrol
    `,
    green: `
      grön
      gröna
      olivgrön
      grönt
      mörkgrön
    `,
    red: `
      röd
      röda
      rött
    `,
    burgundy: `
      vinröd
      vinröda
    `,
    pink: `
      rosa
      cerise
    `,
    purple: `
      lila
      lavendel
    `,
    orange: `
      orange
      roströd
    `,
    yellow: `
      gul
      gula
      senapsgul
      gult
    `,
    brown: `
      brun
      bruna
      cognac
      brunt
      mörkbrun
    `,
    beige: `
      beige
      sand
      kamel
    `,
    cream: `
      creme
      benvit
      gräddvit
      naturvit
    `,
    gold: 'guld',
    silver: 'silver'
  }
}

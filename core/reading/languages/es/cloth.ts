/** Cloth in Spanish: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: 'algodón',
    wool: `
      lana
      lana virgen
      lana merino
      merino
    `,
    linen: 'lino',
    silk: `
      seda
      seda natural
    `,
    viscose: `
      viscosa
      rayón
    `,
    polyester: `
      poliéster
      poliester
    `,
    polyamide: `
      poliamida
      nailon
      nylon
    `,
    elastane: `
      elastano
      spandex
      licra
      lycra
    `,
    acrylic: 'acrílico',
    cashmere: `
      cachemir
      cachemira
      cashmere
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetato',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'cáñamo',
    polyurethane: 'poliuretano'
  },
  structures: {
    woven: `
      tejido plano
      denim
      pana
      popelín
      franela
      loneta
    `,
    knit: `
      punto
      tricotado
      punto grueso
      de punto
      ganchillo
    `,
    leather: `
      cuero
      piel
      ante
      piel auténtica
      cuero auténtico
      napa
    `
  },
  traits: {
    rigid: `
      rígido
      no elástico
      sin elasticidad
      no elásticos
      rígidos
    `,
    denim: `
      denim
      vaquera
      vaquero
      vaqueros
      tejanos
    `,
    pile: `
      pana
      terciopelo
    `,
    check: `
      cuadros
      a cuadros
      tartán
      pata de gallo
      vichy
      de cuadros
    `,
    stripe: `
      rayas
      a rayas
      de rayas
      raya diplomática
    `,
    sheer: `
      transparente
      gasa
      tul
      organza
    `,
    slippery: `
      satén
      satinado
      satinada
      raso
    `,
    beaded: `
      lentejuelas
      pedrería
      abalorios
    `,
    pleated: `
      plisada
      plisado
      tablas
    `,
    suede: `
      ante
      antelina
    `,
    vinyl: `
      vinilo
      polipiel
      cuero sintético
      charol
    `,
    coated: `
      encerado
      encerada
    `,
    silk: `
      seda
      seda natural
    `,
    taffeta: 'tafetán'
  },
  colours: {
    black: `
      negro
      negra
    `,
    white: `
      blanco
      blanca
    `,
    grey: 'gris',
    navy: `
      azul marino
      marino
    `,
    blue: `
      azul
      celeste
      azul claro
      azul oscuro
    `,
    teal: `
      turquesa
      petróleo
    `,
    green: `
      verde
      caqui
      verde oliva
    `,
    red: `
      rojo
      roja
    `,
    burgundy: `
      burdeos
      granate
    `,
    pink: `
      rosa
      fucsia
    `,
    purple: `
      morado
      morada
      lila
      violeta
    `,
    orange: `
      naranja
      teja
    `,
    yellow: `
      amarillo
      amarilla
      mostaza
    `,
    brown: `
      marrón
      camel
      chocolate
    `,
    beige: `
      beige
      arena
    `,
    cream: `
      crema
      crudo
      marfil
    `,
    gold: `
      dorado
      dorada
    `,
    silver: `
      plateado
      plateada
    `
  }
}

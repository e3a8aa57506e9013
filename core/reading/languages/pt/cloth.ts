/** Cloth in Portuguese: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: 'algodão',
    wool: `
      lã
      lã virgem
      lã merino
      merino
      pura lã
    `,
    linen: 'linho',
    silk: `
      seda
      seda natural
      seda pura
    `,
    viscose: `
      viscose
      rayon
      viscolycra
    `,
    polyester: `
      poliéster
      poliester
    `,
    polyamide: `
      poliamida
      nylon
      náilon
      nailon
    `,
    elastane: `
      elastano
      spandex
      licra
      lycra
      elastane
    `,
    acrylic: `
      acrílico
      acrílica
    `,
    cashmere: `
      caxemira
      cashmere
      casimira
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
      liocel
    `,
    acetate: 'acetato',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angorá',
    hemp: 'cânhamo',
    polyurethane: 'poliuretano',
    ramie: 'rami',
    down: 'penas'
  },
  structures: {
    woven: `
      tecido plano
      denim
      bombazine
      veludo cotelê
      popeline
      flanela
      sarja
      tricoline
    `,
    knit: `
      malha
      de malha
      tricô
      tricot
      malha canelada
      crochê
      crochet
      de tricô
    `,
    leather: `
      couro
      pele
      couro legítimo
      pele genuína
      camurça
      napa
      cabedal
    `
  },
  traits: {
    rigid: `
      rígido
      rígida
      sem elasticidade
      não estica
      sem elastano
    `,
    denim: `
      denim
      ganga
      jeans
    `,
    pile: `
      bombazine
      veludo
      veludo cotelê
    `,
    check: `
      xadrez
      aos quadrados
      quadrados
      tartan
      pied de poule
      vichy
      axadrezada
      axadrezado
    `,
    stripe: `
      riscas
      às riscas
      listrado
      listrada
      listras
      risca de giz
    `,
    sheer: `
      transparente
      tule
      organza
      musselina
      chiffon
    `,
    slippery: `
      cetim
      acetinado
      acetinada
    `,
    beaded: `
      lantejoulas
      paetês
      paetê
      pedraria
      missangas
    `,
    pleated: `
      plissada
      plissado
      pregas
    `,
    suede: 'camurça',
    vinyl: `
      vinil
      couro sintético
      couro ecológico
      pele sintética
      napa sintética
      courino
      verniz
    `,
    coated: `
      encerado
      encerada
      resinado
    `,
    silk: `
      seda
      seda natural
    `,
    taffeta: 'tafetá'
  },
  colours: {
    black: `
      preto
      preta
    `,
    white: `
      branco
      branca
    `,
    grey: `
      cinza
      cinzento
      cinzenta
      grafite
      mescla
    `,
    navy: `
      azul marinho
      marinho
      azul escuro
    `,
    blue: `
      azul
      azul claro
      celeste
      azul royal
    `,
    teal: `
      turquesa
      petróleo
    `,
    green: `
      verde
      caqui
      verde oliva
      verde militar
    `,
    red: `
      vermelho
      vermelha
      encarnado
    `,
    burgundy: `
      bordô
      bordeaux
      vinho
      marsala
    `,
    pink: `
      rosa
      cor de rosa
      fúcsia
      pink
    `,
    purple: `
      roxo
      roxa
      lilás
      violeta
    `,
    orange: `
      laranja
      coral
      terracota
    `,
    yellow: `
      amarelo
      amarela
      mostarda
    `,
    brown: `
      castanho
      castanha
      marrom
      caramelo
      camel
      chocolate
    `,
    beige: `
      bege
      areia
      nude
    `,
    cream: `
      creme
      cru
      marfim
      off white
    `,
    gold: `
      dourado
      dourada
    `,
    silver: `
      prateado
      prateada
    `
  }
}

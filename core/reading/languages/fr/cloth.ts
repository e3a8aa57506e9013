/** Cloth in French: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      coton
      coton bio
    `,
    wool: `
      laine
      laine vierge
      laine mérinos
      mérinos
      laine d agneau
      pure laine
    `,
    linen: 'lin',
    silk: `
      soie
      pure soie
    `,
    viscose: `
      viscose
      rayonne
    `,
    polyester: 'polyester',
    polyamide: `
      polyamide
      nylon
    `,
    elastane: `
      élasthanne
      elasthane
      elastane
      lycra
      spandex
    `,
    acrylic: 'acrylique',
    cashmere: 'cachemire',
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: `
      acétate
      triacétate
    `,
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaga',
    angora: 'angora',
    hemp: 'chanvre',
    polyurethane: 'polyuréthane'
  },
  structures: {
    woven: `
      tissé
      denim
      popeline
      flanelle
      toile
      jean
      velours côtelé
    `,
    knit: `
      maille
      tricot
      jersey
      tricoté
      tricotée
      crochet
      grosse maille
    `,
    leather: `
      cuir
      daim
      cuir véritable
      cuir d agneau
      nubuck
    `
  },
  traits: {
    rigid: `
      rigide
      brut
      non extensible
      sans élasthanne
      pas extensible
    `,
    denim: `
      denim
      en jean
      jean brut
      jean
    `,
    pile: `
      velours
      velours côtelé
    `,
    check: `
      carreaux
      à carreaux
      tartan
      écossais
      pied de poule
      vichy
      écossaise
    `,
    stripe: `
      rayé
      rayée
      rayures
      à rayures
      rayés
      tennis rayures
      marinière
    `,
    sheer: `
      transparent
      transparente
      mousseline
      organza
      tulle
      voile transparent
    `,
    slippery: `
      satin
      satinée
      satiné
    `,
    beaded: `
      sequins
      perles
      perlé
      paillettes
      pailletée
    `,
    pleated: `
      plissé
      plissée
      plis
    `,
    suede: `
      daim
      suédine
    `,
    vinyl: `
      vinyle
      simili cuir
      similicuir
      faux cuir
      verni
    `,
    coated: `
      enduit
      ciré
      huilé
    `,
    silk: `
      soie
      pure soie
    `,
    taffeta: 'taffetas'
  },
  colours: {
    black: `
      noir
      noire
    `,
    white: `
      blanc
      blanche
    `,
    grey: `
      gris
      grise
      anthracite
    `,
    navy: `
      bleu marine
      marine
    `,
    blue: `
      bleu
      bleue
      bleu ciel
      bleu clair
      bleu roi
      bleu foncé
    `,
    teal: `
      bleu canard
      turquoise
      bleu pétrole
    `,
    green: `
      vert
      verte
      kaki
      vert olive
      vert sapin
    `,
    red: 'rouge',
    burgundy: 'bordeaux',
    pink: `
      rose
      fuchsia
    `,
    purple: `
      violet
      violette
      mauve
      lilas
      prune
    `,
    orange: `
      orange
      rouille
    `,
    yellow: `
      jaune
      moutarde
    `,
    brown: `
      marron
      brun
      brune
      camel
      chocolat
      cognac
    `,
    beige: `
      beige
      taupe
      sable
    `,
    cream: `
      crème
      ivoire
      écru
    `,
    gold: `
      doré
      dorée
      or
    `,
    silver: `
      argent
      argenté
    `
  }
}

/** Cloth in English: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    camel: `
      camel
      camel hair
      camelhair
    `,
    cotton: `
      cotton
      pima cotton
      organic cotton
      egyptian cotton
      coton
    `,
    wool: `
      wool
      lambswool
      lamb wool
      merino
      merino wool
      virgin wool
      new wool
      pure wool
      shetland wool
      harris wool
      worsted wool
      woollen
      woolen
      shetland
      woolmix
    `,
    linen: `
      linen
      flax
      irish linen
    `,
    silk: `
      silk
      pure silk
      raw silk
      mulberry silk
    `,
    viscose: `
      viscose
      rayon
    `,
    polyester: `
      polyester
      poly
      recycled polyester
      trevira
    `,
    polyamide: `
      polyamide
      nylon
    `,
    elastane: `
      elastane
      spandex
      lycra
      elastan
      elastaine
    `,
    acrylic: 'acrylic',
    cashmere: 'cashmere',
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: `
      acetate
      triacetate
    `,
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: `
      alpaca
      baby alpaca
    `,
    angora: 'angora',
    hemp: 'hemp',
    ramie: 'ramie',
    polyurethane: 'polyurethane',
    metallic: `
      lurex
      metallic fibre
      metallic fiber
    `,
    jute: 'jute',
    bamboo: 'bamboo'
  },
  structures: {
    woven: `
      woven
      denim
      twill
      poplin
      tweed
      corduroy
      cord
      gabardine
      canvas
      flannel
      chambray
      seersucker
      moleskin
      oxford cloth
      broadcloth
      voile
      organza
    `,
    knit: `
      knit
      knitted
      jersey
      ribbed knit
      cable knit
      crochet
      crocheted
      hand knit
      hand knitted
      fleece
      french terry
      interlock
      sweatshirt fabric
      cardigan
      knitwear
      handknit
      handknitted
    `,
    leather: `
      leather
      suede
      nappa
      lambskin
      sheepskin
      shearling
      nubuck
      real leather
      genuine leather
      cowhide
      pigskin
    `
  },
  traits: {
    rigid: `
      rigid
      raw denim
      rigid denim
      non stretch
      no stretch
      zero stretch
      selvedge
      selvage
      non-stretch
      without stretch
      no give
      selvedge denim
    `,
    denim: `
      denim
      denims
      raw denim
      rigid denim
      selvedge denim
      chambray denim
      double denim
    `,
    pile: `
      corduroy
      cord
      velvet
      velour
      velveteen
      cords
      corduroys
      plush
      faux fur
      needlecord
      jumbo cord
      chenille
    `,
    nap: `
      moleskin
      brushed cotton
      fleece
      brushed wool
      flannelette
    `,
    check: `
      check
      checked
      checks
      plaid
      tartan
      gingham
      houndstooth
      windowpane
      prince of wales check
      glen check
      dogtooth
      glen plaid
      checkered
      argyle
      buffalo check
    `,
    stripe: `
      stripe
      striped
      stripes
      pinstripe
      pinstriped
      pin stripe
      chalk stripe
      breton stripe
      pin striped
      pinstripes
      chalkstripe
    `,
    'large-print': `
      large print
      big print
      bold print
      oversized print
      large floral
      large scale print
      huge print
      large repeat
    `,
    sheer: `
      sheer
      see through
      chiffon
      organza
      tulle
      voile
      transparent
      semi sheer
      georgette
      see-through
      mesh
    `,
    slippery: `
      satin
      charmeuse
      slippery
      sateen satin
      satiny
    `,
    fraying: `
      bouclé
      boucle
      loosely woven
      frays easily
      loose weave
      open weave
    `,
    beaded: `
      beaded
      sequin
      sequins
      sequinned
      sequined
      beading
      beadwork
      beads
      rhinestone
      rhinestones
      embellished
    `,
    pleated: `
      pleated
      pleats
      knife pleats
      accordion pleats
      box pleats
      sunray pleats
      plissé
      plisse
    `,
    suede: `
      suede
      nubuck
      faux suede
    `,
    vinyl: `
      vinyl
      pvc
      patent
      faux leather
      pleather
      vegan leather
      leatherette
      pu leather
    `,
    coated: `
      coated
      waxed
      oilskin
      rubberised
      rubberized
      wax cotton
      waxed cotton
      oilcloth
    `,
    silk: `
      silk
      pure silk
      raw silk
      mulberry silk
    `,
    taffeta: 'taffeta'
  },
  colours: {
    black: `
      black
      jet black
      jet
    `,
    white: `
      white
      off white
      off-white
    `,
    grey: `
      grey
      gray
      charcoal
      slate
    `,
    navy: `
      navy
      navy blue
      dark navy
      midnight blue
    `,
    blue: `
      blue
      light blue
      dark blue
      baby blue
      sky blue
      royal blue
      pale blue
      cobalt
      powder blue
      indigo
      bright blue
      mid blue
    `,
    teal: `
      teal
      petrol
      turquoise
      aqua
    `,
    green: `
      green
      olive
      khaki green
      forest green
      emerald
      sage
      bottle green
      olive green
      mint green
      dark green
      lime
      moss green
      sage green
      light green
    `,
    khaki: 'khaki',
    red: `
      red
      scarlet
      cherry red
      bright red
      dark red
      crimson
    `,
    burgundy: `
      burgundy
      maroon
      wine
      oxblood
    `,
    pink: `
      pink
      hot pink
      dusty pink
      rose
      fuchsia
      blush
      magenta
      coral
      salmon
      baby pink
      pale pink
      light pink
    `,
    purple: `
      purple
      lilac
      lavender
      violet
      plum
      mauve
      aubergine
    `,
    orange: `
      orange
      rust
      terracotta
      burnt orange
      peach
      apricot
    `,
    yellow: `
      yellow
      mustard
      lemon
      ochre
    `,
    brown: `
      brown
      chocolate
      tan
      chestnut
      camel
      cognac
      tobacco
      dark brown
      light brown
      rust brown
      caramel
      mocha
    `,
    beige: `
      beige
      sand
      stone
      taupe
      oatmeal
      ecru
      nude
    `,
    cream: `
      cream
      ivory
    `,
    gold: `
      gold
      golden
    `,
    silver: 'silver'
  }
}

/** Words of the cut: what a seller calls a shape, a rise, a length. Which facets count for which kinds stands in core/wearer/cut. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    'ultra-low': `
      ultra low rise
      super low rise
      ultra low waist
      hip huggers
      hip hugger
      hiphuggers
      hipsters
      hipster jeans
    `,
    low: `
      low rise
      low-rise
      lowrise
      low waist
      low waisted
      low slung
      sits on the hips
      sit on the hips
      sits low on the hips
      sits low
      low on the hip
      low on the hips
    `,
    mid: `
      mid rise
      mid-rise
      midrise
      mid waist
      medium rise
      regular rise
      normal rise
      sits below the navel
      sits just below the navel
      sits just below the waist
    `,
    high: `
      high rise
      high-rise
      highrise
      high waist
      high waisted
      high-waisted
      highwaisted
      high waistband
    `,
    waist: `
      natural waist
      at the natural waist
      sits at the waist
      sits on the waist
      super high rise
      super high waist
      super high waisted
      ultra high rise
      extra high rise
      extra high waist
      paperbag
      paper bag waist
      paperbag waist
    `
  },
  leg: {
    skinny: `
      skinny
      super skinny
      skinny fit
      skinny leg
      skinny jeans
      spray on
      second skin
    `,
    slim: `
      slim
      slim leg
      slim fit jeans
      slim fit trousers
      slim fit chinos
      slim jeans
      slim straight
      cigarette
      cigarette leg
      drainpipe
      drainpipes
      narrow leg
      slim cut jeans
      slim chinos
      slim trousers
      slim fit
    `,
    straight: `
      straight up and down
      straight up and down leg
      straight leg
      straight-leg
      straight cut
      straight fit
      stovepipe
      five pocket straight
      regular leg
      classic straight
      straight jeans
      straight legged
    `,
    tapered: `
      tapered
      tapered leg
      tapering leg
      taper
      peg leg
      pegged
      carrot
      carrot fit
      cone leg
      slim from the knee
      tapers
    `,
    relaxed: `
      relaxed leg
      relaxed fit jeans
      relaxed fit
      boyfriend jeans
      girlfriend jeans
      mom jeans
      mom jean
      mom fit
      mum jeans
      dad jeans
      baggy
      baggy jeans
      skater
      skater jeans
      easy fit
      loose fit jeans
      loose leg
    `,
    bootcut: `
      bootcut
      bootcuts
      boot cuts
      boot cut
      boot-cut
      boot leg
      bootleg
      slim boot
    `,
    flared: `
      flared leg
      flared jeans
      flared trousers
      flares
      flare jeans
      flare leg
      bell bottom
      bell bottoms
      bellbottoms
      kick flare
      kick flares
      flared
      flare
    `,
    wide: `
      wide cord
      wide linen
      wide cotton
      wide wool
      wide denim
      wide leg
      wide-leg
      wide legged
      wide legs
      full leg
      sailor trousers
      oxford bags
      culottes
      culotte
      wide cut leg
      wide cut
    `,
    palazzo: `
      palazzo
      palazzos
      palazzo pants
      palazzo trousers
      split skirt
      hakama
      harem
    `,
    barrel: `
      barrel leg
      barrel
      balloon leg
      horseshoe leg
      banana leg
      lantern leg
      curved leg
    `,
    legging: `
      7/8 leggings
      leggings
      legging
      treggings
      running tights
      cycling shorts
      yoga pants
      jeggings
      jegging
    `,
    jogger: `
      joggers
      jogging bottoms
      tracksuit bottoms
      sweatpants
      track pants
      cuffed joggers
      jogger
    `
  },
  legLength: {
    full: `
      full length
      full-length
      long leg
      extra long leg
    `,
    puddle: `
      puddle hem
      pooling
      floor sweeping
      floor-sweeping
    `,
    stacked: `
      stacked
      to stack
      stacking
    `,
    ankle: `
      ankle length
      ankle-length
      ankle grazer
      ankle grazers
      ankle grazing
      ankle jeans
      ankle trousers
      ankle pants
    `,
    'seven-eighths': `
      7/8 length
      7/8 leg
      7/8 legs
      7/8 inseam
      7/8 jeans
      7/8 trousers
      7/8 pants
      7/8 leggings
      7/8 chinos
      seven eighths
      7/8ths
      7 8 length
    `,
    cropped: `
      cropped
      crop
      cropped leg
      crop leg
      cropped jeans
      cropped trousers
      cropped length
      cropped flare
      cropped wide leg
    `,
    capri: `
      capri
      capris
      capri pants
      three quarter length
      three-quarter length
      3/4 length
      clamdiggers
    `,
    pedal: `
      pedal pushers
      pedal pusher
      knee length
    `,
    bermuda: `
      bermuda
      bermudas
      bermuda shorts
      city shorts
      walking shorts
    `,
    shorts: `
      hot pants
      short shorts
    `
  },
  silhouette: {
    pencil: `
      pencil
      pencil skirt
      straight skirt
      tube skirt
      column skirt
    `,
    'a-line': `
      a-line
      a line
      aline
      a-line skirt
      a-line dress
    `,
    flared: `
      flared skirt
      flared
      skater skirt
      trumpet skirt
      godet skirt
      godets
      gored skirt
      gored
      fluted
      swing skirt
    `,
    gathered: `
      gathered
      gathered skirt
      dirndl
      peasant skirt
      prairie skirt
      ruffled skirt
      tiered
      tiered skirt
      ra-ra skirt
      full skirt
      full gathered
    `,
    circle: `
      circle skirt
      full circle
      half circle
      full circle skirt
      half circle skirt
      quarter circle
    `,
    pleated: `
      pleated skirt
      knife pleats
      knife pleated
      box pleats
      box pleated
      box pleat skirt
      sunray
      sunray pleats
      accordion pleats
      accordion pleated
      pleated all round
      pleated midi
      pleated midi skirt
      pleated maxi skirt
      tennis skirt
    `,
    kilt: `
      kilt
      kilts
      kilt skirt
    `,
    wrap: `
      wrap dress
      wrap skirt
      wrapover
      wrap over
      wraparound
      wrap around
      true wrap
      wrap style
      sarong
      wrap front
    `,
    bias: `
      bias cut
      bias-cut
      cut on the bias
      slip dress
      slip skirt
      satin slip
      bias
    `,
    bodycon: `
      bodycon
      body con
      tube dress
      bandage dress
      bandage
      stretch pencil
    `,
    puffball: `
      puffball
      bubble hem
      bubble skirt
      tulip skirt
    `,
    shift: `
      shift
      shift dress
      tunic dress
      straight dress
    `,
    sheath: `
      sheath
      sheath dress
      wiggle dress
      column dress
      pencil dress
      column gown
      wiggle
      tailored dress
    `,
    'fit-flare': `
      fit and flare
      fit & flare
      fit-and-flare
      skater dress
      tea dress
      prom dress
      swing dance dress
      full skirted
      full skirt dress
      ball gown
      ballgown
    `,
    empire: `
      empire
      empire line
      empire waist
      empire-line
      regency
      under the bust seam
      babydoll dress
      baby doll dress
    `,
    'drop-waist': `
      drop waist
      dropped waist
      drop-waist
      flapper dress
      low waist dress
      drop waisted
    `,
    'shirt-dress': `
      shirt dress
      shirtdress
      shirtwaister
      shirt waister
      utility dress
      button through dress
      button-through dress
    `,
    smock: `
      smock
      smock dress
      tent dress
      trapeze
      trapeze dress
      kaftan
      caftan
      muumuu
      lagenlook
      tiered dress
      tiered maxi
      prairie dress
      swing dress
      trapeze cut
    `,
    jersey: `
      jersey dress
      t-shirt dress
      tshirt dress
      tee dress
      jumper dress
      sweater dress
      jersey jumpsuit
      unitard
      bodysuit
      onesie
    `,
    strapless: `
      strapless
      bandeau
      bustier dress
      strapless dress
      strapless gown
    `,
    sun: `
      sundress
      sun dress
      spaghetti straps
      spaghetti strap
      pinafore
      pinafore dress
      strappy
      cami dress
      thin straps
    `,
    princess: `
      princess seams
      princess seam
      princess line
      princess cut
      coat dress
    `,
    blouse: `
      blouse
      pussy bow
      pussybow
      tie neck blouse
      shell top
    `,
    boxy: `
      boxy
      boxy fit
      boxy cut
      square cut
      boxy shape
    `,
    peplum: `
      peplum
      basque
      peplum hem
    `,
    swing: `
      swing top
      swing cut
      swing shape
      trapeze top
      a-line top
      smock top
      babydoll top
      tent shape
      swing
    `,
    cocoon: `
      cocoon
      cocoon coat
      egg shape
      poncho
    `,
    camisole: `
      camisole
      cami
      cami top
      vest top
      tank top
      racer back
      racerback
      strappy top
    `,
    corset: `
      corset
      corset top
      bustier
      boned bodice
      corset dress
      overbust corset
    `,
    boiler: `
      boiler suit
      boilersuit
      utility jumpsuit
      flight suit
      flightsuit
      coverall
      coveralls
      overall suit
    `,
    dungarees: `
      dungarees
      dungaree
      bib and brace
      salopettes
      bib overalls
      dungaree dress
    `
  },
  waistSeam: {
    natural: `
      waist seam
      seam at the waist
      seamed waist
      seamed at the waist
    `,
    none: `
      no waist seam
      without a waist seam
    `
  },
  dressLength: {
    micro: `
      micro
      micro mini
    `,
    mini: `
      mini
      mini skirt
      miniskirt
      mini dress
      minidress
      mini length
    `,
    'above-knee': `
      above the knee
      above knee
      just above the knee
      over the knee length
    `,
    knee: `
      knee length
      knee-length
      to the knee
      on the knee
      street length
      hits at the knee
    `,
    'below-knee': `
      below the knee
      below knee
      just below the knee
      cocktail length
      under the knee
    `,
    midi: `
      midi
      midi length
      midi skirt
      midi dress
      mid calf
      mid-calf
      calf length
      mid length skirt
    `,
    tea: `
      tea length
      tea-length
      ballerina length
    `,
    ankle: `
      ankle length
      ankle-length
    `,
    maxi: `
      full length dress
      full length skirt
      full length gown
      full-length evening dress
      maxi
      maxi length
      maxi skirt
      maxi dress
      floor length
      floor-length
      to the floor
    `,
    train: `
      with a train
      sweep train
      chapel train
      court train
    `
  },
  topLength: {
    cropped: `
      cropped
      crop
      crop top
      cropped length
      cropped fit
    `,
    longline: `
      longline
      long line
      tunic
      tunic length
      duster
    `
  },
  hem: {
    'drawn-in': `
      ribbed hem
      elasticated hem
      elastic hem
      ribbed hem and cuffs
      ribbed cuffs and hem
      rib hem
      rib trim
      knitted hem
      blouson
    `
  },
  closeness: {
    fitted: `
      fitted
      close fitting
      figure hugging
      body skimming
      fitted tee
      baby tee
      tight fit
      close fit
      nipped in
    `,
    slim: `
      slim fit
      slim
      extra slim
      extreme slim
      tailored fit
      darted back
      slim cut
    `,
    classic: `
      classic fit
      regular fit
      standard fit
      normal fit
      traditional fit
      full cut
      full fit
      comfort fit
      generous cut
    `,
    relaxed: `
      relaxed
      relaxed fit
      loose fit
      loose fitting
      easy fit
      boyfriend shirt
      boyfriend fit
      roomy
    `,
    oversized: `
      oversized
      over sized
      oversize
      slouchy
      slouch
      baggy
      baggy fit
      lagenlook
      meant to be worn big
      supposed to be big
      supposed to be oversized
      meant to be oversized
    `
  },
  shoulder: {
    drop: `
      drop shoulder
      drop shoulders
      dropped shoulder
      dropped shoulders
      drop-shoulder
      drop sleeve
    `,
    raglan: `
      raglan
      raglan sleeve
      raglan sleeves
      saddle shoulder
      baseball sleeves
    `,
    dolman: `
      dolman
      dolman sleeve
      dolman sleeves
      batwing
      bat wing
      batwing sleeves
      magyar sleeves
      cut in one with the body
    `,
    kimono: `
      kimono sleeve
      kimono sleeves
      grown on sleeves
      t-shape
      cut in one sleeves
    `,
    halter: `
      halter
      halterneck
      halter neck
      halter-neck
      one shoulder
      cold shoulder
      off the shoulder
      off-the-shoulder
      bardot
      off shoulder
    `
  },
  sleeve: {
    sleeveless: `
      sleeveless
      no sleeves
      without sleeves
      armless
      tank top
      vest top
    `,
    cap: `
      cap sleeve
      cap sleeves
      flutter sleeves
      petal sleeves
      angel sleeves
      capped sleeves
    `,
    short: `
      short sleeve
      short sleeves
      short sleeved
      short-sleeved
      short puff sleeves
    `,
    elbow: `
      elbow length sleeves
      half sleeve
      half sleeves
      elbow sleeves
      sleeves to the elbow
      elbow length
    `,
    'three-quarter': `
      three quarter sleeve
      sleeves are three quarter
      three quarter sleeves
      three-quarter sleeves
      3/4 sleeve
      3/4 sleeves
      3/4 length sleeves
      three quarter length sleeves
      3 4 sleeves
      3/4 sleeved
    `,
    bracelet: `
      bracelet sleeve
      bracelet sleeves
      bracelet length
      bracelet length sleeves
      7/8 sleeves
      cropped sleeves
    `,
    long: `
      long sleeve
      long sleeves
      long sleeved
      long-sleeved
      full length sleeves
    `,
    balloon: `
      bishop sleeve
      bishop sleeves
      balloon sleeve
      balloon sleeves
      puff sleeves
      puffed sleeves
      leg of mutton
      bell sleeves
      bell sleeve
      poet sleeves
      trumpet sleeves
      full sleeves
    `
  },
  layer: {
    suit: `
      suit jacket
      dinner jacket
      tuxedo
      two piece suit
      three piece suit
      morning coat
    `,
    blazer: `
      blazer
      sports jacket
      sport coat
      sports coat
      hacking jacket
      tweed jacket
      boucle jacket
      school blazer
    `,
    boyfriend: `
      boyfriend blazer
      boyfriend jacket
      oversized blazer
      longline blazer
      power shoulder
      power shoulders
      big shoulder pads
      boyfriend cut
    `,
    denim: `
      denim jacket
      trucker
      trucker jacket
      jean jacket
      chore jacket
      chore coat
      worker jacket
    `,
    overshirt: `
      overshirt
      shacket
      shirt jacket
      over shirt
    `,
    biker: `
      biker
      biker jacket
      moto jacket
      motorcycle jacket
      leather jacket
      suede jacket
      perfecto
    `,
    bomber: `
      bomber
      bomber jacket
      blouson
      varsity jacket
      flight jacket
      harrington
      harrington jacket
      track top
      track jacket
      souvenir jacket
      baseball jacket
    `,
    field: `
      parka
      unlined parka
      field jacket
      safari jacket
      military jacket
      army jacket
      utility jacket
      m65
      m-65
      light parka
      fishtail parka
    `,
    waxed: `
      waxed jacket
      waxed coat
      waxed cotton jacket
      waxed cotton coat
      waxed field coat
      waxed field jacket
      wax jacket
      shooting jacket
      rain jacket
      raincoat
      rain mac
      cagoule
      anorak
      waterproof jacket
      country jacket
      windbreaker
    `,
    fleece: `
      fleece
      fleece jacket
      softshell
      sherpa
      teddy
      teddy jacket
      borg
    `,
    puffer: `
      puffer
      puffer jacket
      down jacket
      padded jacket
      padded coat
      quilted jacket
      ski jacket
      down parka
      padded parka
      lined parka
      down coat
      puffa
      quilted coat
      winter parka
    `,
    kimono: `
      kimono
      kimono jacket
      haori
      cape
      poncho
      dressing gown
    `,
    overcoat: `
      overcoat
      topcoat
      top coat
      chesterfield
      greatcoat
      great coat
      crombie style
    `,
    coat: `
      car coat
      trench
      trench coat
      mac
      pea coat
      peacoat
      duffle
      duffle coat
      duffel coat
      reefer
    `,
    'fitted-coat': `
      princess coat
      fit and flare coat
      redingote
      frock coat
      fitted coat
      princess line coat
    `,
    'swing-coat': `
      swing coat
      trapeze coat
      a-line coat
      tent coat
      opera coat
    `,
    'wrap-coat': `
      wrap coat
      belted coat
      robe coat
      clutch coat
      belted wrap coat
    `,
    'suit-waistcoat': `
      suit waistcoat
      tweed waistcoat
      morning waistcoat
      waistcoat with strap
      cinch back
      adjustable back strap
    `,
    'casual-waistcoat': `
      gilet
      bodywarmer
      body warmer
      leather waistcoat
      denim waistcoat
      long waistcoat
      sleeveless jacket
    `
  },
  knit: {
    ribbed: `
      ribbed
      rib knit
      skinny rib
      fitted rib
      ribbed knit
      rib top
      ribbed top
      2x2 rib
    `,
    fine: `
      fine knit
      fine gauge
      fine-knit
      lightweight knit
    `,
    standard: `
      crew neck jumper
      v-neck jumper
      pullover
      medium knit
    `,
    chunky: `
      chunky
      chunky knit
      cable knit
      aran
      fisherman
      cowichan
      heavy knit
      chunky cable
      thick knit
      cable
    `,
    felted: `
      felted
      boiled wool
      shrunk
      has shrunk
      shrunken
      felted in the wash
    `,
    tee: `
      t-shirt
      tshirt
      tee
      tee shirt
      polo
      polo shirt
    `,
    sweatshirt: `
      sweatshirt
      hoodie
      hoody
      hooded sweatshirt
      sweat top
      sweater fleece
      sweat shirt
    `,
    slipover: `
      slipover
      knitted vest
      sweater vest
      knit vest
      tank top knit
      knitted tank
    `
  },
  closing: {
    fly: `
      zip fly
      button fly
      fly front
    `,
    'side-zip': `
      side zip
      zip at the side
      side zipper
      zips at the side
      side fastening
      zip on the side
      zip to the side
      metal side zip
    `,
    'back-zip': `
      full length zip at the back
      full length back zip
      back zip
      zip at the back
      zip up the back
      back zipper
      centre back zip
      center back zip
      zips up the back
      zip down the back
      zip to the back
      concealed back zip
      zips at the back
    `,
    'front-zip': `
      front zip
      zip front
      zip up front
      zip through
      zips up the front
      zip-up
      zip up
      full zip
      zipped front
      asymmetric zip
      two way zip
    `,
    buttons: `
      button front
      buttons down the front
      button through
      button up
      single breasted
      double breasted
      three button
      two button
    `,
    hook: `
      hook and eye
      hook and bar
      hook fastening
      hook closure
      hooks and eyes
    `,
    elastic: `
      elasticated waist
      elastic waist
      elasticated waistband
      elastic waistband
      pull on
      pull-on
      stretch waistband
      elasticated at the waist
    `,
    drawstring: `
      drawstring
      drawstring waist
      drawcord
      tie waist trousers
      draw string
    `,
    buckles: `
      buckles
      buckle fastening
      straps and buckles
      buckled
      leather straps
      buckle straps
    `,
    ties: `
      ties at the waist
      tie waist
      tie fastening
      self tie
      ties at the side
      tie belt
      lace up back
      laces up
      lacing
    `,
    wrap: `
      wraps over
      wraps around
      true wrap
    `,
    snaps: `
      press studs
      poppers
      snap front
      snap fastening
      snaps
      pearl snaps
    `,
    none: `
      slips on
      pulls on over the head
      no fastening
      no fastenings
      pull over the head
      pulls over the head
    `
  },
  turnUps: {
    made: `
      turn-ups
      turn ups
      turnups
      turned up cuffs
      trouser cuffs
      cuffed hem
      cuffed hems
      cuffed trousers
      with cuffs at the hem
      turn up
    `,
    rolled: `
      rolled hem
      rolled hems
      rolled up
      roll ups
      rolled cuffs
    `,
    none: `
      no turn-ups
      no turn ups
      without turn-ups
      plain hems
      plain hem
    `
  },
  vent: {
    vent: `
      back vent
      vent at the back
      single vent
      double vent
      twin vents
      vented
      rear vent
      vent
    `,
    slit: `
      side slit
      side slits
      slit
      front slit
      back slit
      side split
      side splits
      split at the back
      thigh split
    `,
    'kick-pleat': `
      kick pleat
      kick-pleat
    `,
    none: `
      no vent
      no vents
      ventless
      no slit
    `
  },
  yoke: {
    yoke: `
      yoked
      with a yoke
      back yoke
      front yoke
    `
  },
  boning: {
    boned: `
      corset
      corset top
      overbust corset
      bustier
      boned
      boning
      steel boned
      boned bodice
      with boning
    `
  },
  layers: {
    several: `
      layers of tulle
      layers of chiffon
      three layers
      four layers
      several layers
      two layers
      tulle layers
      tulle skirt
      layers of net
      petticoat layers
      multi layered
    `
  },
  pleats: {
    front: `
      pleated front
      front pleats
      double pleats
      double pleated
      single pleat
      double pleat
      forward pleats
      reverse pleats
      pleated trousers
      pleat front
      single pleated
    `,
    none: `
      flat front
      no pleats
      pleat free
    `
  },
  era: {
    '1930s': `
      1930s
      30s
      thirties
      1930's
    `,
    '1940s-50s': `
      1940s
      1950s
      40s
      50s
      forties
      fifties
      1950's
      1940's
    `,
    '1960s': `
      1960s
      60s
      sixties
      1960's
    `,
    '1970s': `
      1970s
      70s
      seventies
      1970's
    `,
    '1980s': `
      1980s
      80s
      eighties
      1980's
    `,
    '2000s': `
      y2k
      2000s
      noughties
    `
  },
  bump: {
    maternity: `
      maternity
      over bump
      over the bump
      under bump
      under the bump
      nursing
    `
  }
}

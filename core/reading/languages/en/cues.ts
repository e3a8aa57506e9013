/** Single words that tip a rule of the reader, in English, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'
import { measures } from './measures.ts'

export const cues: Cues = {
  perCentFirst: 'per',
  perCentSecond: 'cent',
  // text and figures
  shortForm: `
    approx
    aprox
    appx
    apx
    circ
    incl
    excl
    meas
    in
    ins
    cm
    no
    st
    vs
    e
    g
    i
    ex
    max
    min
  `,
  imitated: `
    faux
    vegan
    imitation
    fake
    pu
    mock
  `,
  paid: `
    bought
    paid
    purchased
  `,
  shorthand: `
    w
    l
    h
    r
    i
    t
    b
    c
    s
    k
    lo
    sl
    sh
    il
    ol
    fr
    br
    ptp
    x
  `,
  beforeYear: `
    style
    item
    ref
    sku
    lot
    model
    code
    art
    article
    line
    chapter
    class
    since
    from
    circa
    in
    year
  `,
  afterPreposition: `
    the
    a
    an
    my
    our
    his
    her
    your
    this
    that
    each
    total
    all
    very
    both
  `,
  joinsPart: `
    and
    n
  `,
  onePart: `
    a
    one
  `,
  inch: `
    inch
    inches
  `,
  numbered: 'no',
  and: 'and',
  half: 'half',
  article: `
    a
    an
  `,
  couple: 'couple',
  of: 'of',
  the: 'the',
  // names
  with: 'with',
  counted: `
    included
    excluded
    counted
  `,
  closed: `
    buttoned
    fastened
    closed
    zipped
  `,
  width: `
    width
    across
  `,
  ofTheEdge: `
    rib
    ribbing
    elastic
    drawstring
  `,
  at: `
    at
    on
    in
    along
  `,
  under: `
    under
    below
    underneath
    beneath
  `,
  neck: `
    neckline
    edge
    side
  `,
  middleOfBack: `
    back
    centre
    center
    cb
    nape
    collar
    middle
    mid
    base
  `,
  theTop: `
    the
    top
  `,
  letterName: `
    w
    h
    r
    i
    l
    t
    b
    c
    s
    k
    lo
    sl
    sh
    il
    ol
  `,
  drop: 'drop',
  from: 'from',
  when: 'when',
  longSize: 'long',
  // links
  verb: `
    is
    are
    was
  `,
  leadsToName: `
    at
    in
    across
    around
    on
    of
    a
    an
    the
  `,
  unbounded: `
    free
    full
    open
    loose
    na
    n
    any
    stretchy
    x
    tbc
  `,
  howItRan: `
    long
    wide
    deep
    tall
  `,
  wide: 'wide',
  across: 'across',
  along: `
    long
    deep
    tall
  `,
  upright: `
    deep
    tall
    high
    broad
  `,
  actually: `
    measure
    actual
    actually
    really
  `,
  nearer: `
    closer
    nearer
    more
    like
  `,
  same: 'same',
  sameAt: `
    at
    for
    across
    around
    on
    in
  `,
  fitsFigure: 'fits',
  atDistance: 'at',
  iAm: `
    m
    im
    am
  `,
  posing: `
    wearing
    standing
  `,
  waistband: 'waistband',
  measureVerb: 'measure',
  limit: `
    max
    maximum
  `,
  measurements: `
    measurements
    measurement
  `,
  butFirst: 'but',
  me: 'me',
  on: 'on',
  atFigure: 'at',
  say: 'say',
  has: 'has',
  opening: 'opening',
  doingEnds: 'ing',
  // figures and their words
  besideFigureOnly: `
    across
    around
    round
    total
    half
    one
    in
    girth
    x
    circ
    when
    both
    doubled
    edge
  `,
  girthOrWidth: `
    across
    around
    round
    circumference
    circ
    wide
  `,
  frontInName: 'front',
  backInName: `
    back
    rear
  `,
  leadsOn: `
    to
    up
    till
  `,
  doubled: 'doubled',
  taken: `
    taken
    is
    are
  `,
  // garment and cloth
  otherPart: `
    underskirt
    petticoat
    slip
    zip
    zipper
    trim
    trims
    collar
    cuffs
    rib
    ribs
    ribbing
    filling
    wadding
    padding
    belt
    lace
    pads
    embroidery
    panels
    contrast
    pocket
    pockets
  `,
  noneOfIt: `
    none
    no
  `,
  justSo: `
    just
    simply
    rather
  `,
  priceNow: 'now',
  anotherItem: `
    other
    another
  `,
  besideGarment: `
    with
    for
    by
    in
    w
    from
    goes
    under
    over
  `,
  vagueKind: `
    top
    tops
    knit
    knitwear
    body
    set
    flannel
    fleece
    smock
  `,
  kindInPassing: `
    flannel
    tuxedo
    top
    tops
    knit
    fleece
    slip
    crop
    tank
    polo
    jersey
    flares
    suit
    robe
    body
    vest
    denims
    cords
    kimono
    cape
    shorts
    tee
    shirt
  `,
  anyGarment: `
    matching
    any
    a
    your
    my
    other
    favourite
  `,
  goesWith: `
    matching
    matches
    match
    coordinating
    complements
    alongside
    instead
    teamed
    paired
    photographed
    pictured
  `,
  likeGarment: `
    like
    as
    resembles
    similar
  `,
  sale: `
    sale
    women
    men
    womens
    mens
    ladies
    her
    him
    girls
    boys
    ebay
  `,
  notItself: `
    style
    styled
    weight
    type
    inspired
    collar
    collars
    lapel
    lapels
    shaped
    shape
    pattern
    patterns
    effect
    look
    pocket
    pockets
    season
    rail
    hook
    hooks
    rack
    stand
    brush
    hanger
    hangers
    buttons
    tails
    print
    fabric
    cloth
    material
    form
    clip
    clips
    guard
    shopping
    code
  `,
  thingInPassing: `
    belt
    ring
    rings
    watch
    frame
    crown
    throw
    book
    screen
    sole
    heel
    heels
    shaft
    material
    fabric
    cap
    caps
    mirror
    phone
    bottle
    hanger
    brim
    hat
    hats
    glasses
    poster
    doll
    scarf
    scarves
    tie
    ties
    monitor
    tv
    towel
    socks
    bracelet
    gloves
    cushion
    curtain
    curtains
    pillow
    trainers
    boot
    boots
    sandals
    shoe
    shoes
    sneakers
    umbrella
    teddy
    laptop
    remnant
    headband
  `,
  thisOne: `
    this
    these
    selling
    lovely
    beautiful
    gorgeous
    stunning
  `,
  itemHead: `
    item
    category
    type
    garment
    style
    product
    piece
    what
    department
  `,
  traitInProse: `
    check
    checks
    stripe
    stripes
    mesh
    coated
    pile
  `,
  imitating: `
    faux
    imitation
    fake
    vegan
    artificial
    mock
  `,
  elasticity: `
    stretch
    give
    stretchy
  `,
  percent: 'percent',
  liningName: `
    lining
    linings
  `,
  ofCloth: `
    in
    with
    is
    of
  `,
  paleLook: `
    faded
    bleached
  `,
  inside: `
    in
    inside
  `,
  beside: `
    near
    by
    beside
    below
    above
    under
    on
    next
    at
  `,
  pocket: `
    pocket
    pockets
  `,
  pocketLining: `
    lining
    linings
  `,
  notYet: `
    easily
    easy
    could
    can
    be
    needs
    need
    to
    should
    must
    wants
    unrepaired
  `,
  pure: `
    pure
    all
  `,
  betweenFibres: `
    and
    blend
    mix
    mixed
    with
    x
  `,
  feelsLike: `
    like
    feels
  `,
  besideShares: `
    blend
    mix
    mixed
    is
    of
    about
    approx
    fabric
    in
    a
  `,
  hem: `
    hem
    hems
    hemline
  `,
  deep: `
    deep
    depth
  `,
  ofTheBack: `
    back
    seat
  `,
  seamOrCentre: `
    centre
    center
    cb
    seam
  `,
  backSeam: 'cb',
  toLetOut: 'out',
  allOfIt: `
    full
    throughout
  `,
  denim: 'denim',
  // price
  money: `
    eur
    euro
    euros
    gbp
    usd
    pounds
    quid
    bucks
    dollars
  `,
  extra: `
    more
    extra
    ship
  `,
  onTop: 'plus',
  whenNew: `
    nwt
    bnwt
    tags
    tag
    rrp
    msrp
  `,
  excluded: `
    excluded
    exclusive
    excl
    extra
  `,
  hence: `
    so
    hence
    therefore
  `,
  letsGo: `
    accept
    accepting
  `,
  postPaid: `
    posted
    shipped
    delivered
    free
  `,
  postage: `
    post
    postage
    shipping
    ship
    delivery
    p
  `,
  postIncluded: `
    free
    paid
    inc
    incl
    included
    including
    inclusive
  `,
  dollars: `
    dollar
    dollars
    bucks
  `,
  priceName: `
    price
    asking
  `,
  haggled: `
    ono
    obo
    ovno
  `,
  weight: `
    weigh
    weighs
    weight
    weighing
    heavy
    lighter
  `,
  otherProperty: `
    size
    weight
    parcel
    package
  `,
  costs: 'cost',
  hundred: 'hundred',
  oneHundred: 'a',
  sizeWord: 'size',
  // sizes
  also: 'also',
  forWhom: `
    mens
    womens
    ladies
    s
  `,
  tag: `
    tag
    tagged
    label
    labelled
    labeled
    marked
  `,
  measuresPair: `
    measures
    measured
    measuring
    actual
    actually
    measure
  `,
  furtherName: `
    h
    r
    i
    t
    lo
    fr
  `,
  waistOfSize: 'waist',
  besideWhose: `
    department
    section
    style
    styled
    inspired
    feel
    look
    vibe
    vibes
    rail
    aisle
    like
  `,
  ofSomebody: `
    my
    her
    his
    your
    our
  `,
  forOne: 'for',
  collarSize: `
    collar
    neck
  `
}

export const amounts: Amounts = {
  inches: {
    a: 1,
    an: 1,
    another: 1,
    one: 1,
    two: 2,
    three: 3,
    four: 4
  },
  parts: {
    three: 3,
    five: 5,
    seven: 7
  },
  part: {
    quarter: 0.25,
    quarters: 0.25,
    eighth: 0.125,
    eighths: 0.125
  },
  place: {
    first: 1,
    second: 2
  },
  sum: {
    ...measures.numbers,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90
  },
  note: {
    fiver: 5,
    tenner: 10
  }
}

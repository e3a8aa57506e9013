/** The small words, and those of sizes, cloth and sale, in English. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    measurements
    measurement
    measurments
    measurement are
    dimensions
    sizing
    sizes
    meas
    measures
    specs
    approx measurements
    approximate measurements
    garment measurements
    actual measurements
    measurements are
    my measurements of it
    size guide
    measuring
    measured
    meaurements
    mesurements
    measurments are
    item measurements
    taken
  `,
  ownTape: `
    // I measure
    i measure
    i measured
    i have measured
    i've measured
    i make it
    i get
    i got
    measured by me
    measured by hand
    measured myself
    measured it myself
    measured with my own tape
    mine measured
    mine measures
    mine measure
    measured at home
    // my own figures
    my tape
    my tape says
    my tape reads
    my tape measure
    my tape measure says
    my tape measure reads
    my own tape
    my own tape says
    my own tape reads
    by my tape
    with my own tape
    my own measurements
    my measurements of it
    my measurements for this
    my measurements of this
    actual
    actuals
    actual measurements
    actual garment measurements
    actual garment
    true measurements
    real measurements
    in real life
    in reality
  `,
  shopCopy: `
    // what a shop or a maker says
    website says
    website states
    website description
    site says
    shop says
    retailer says
    retailer states
    brand says
    brand states
    maker says
    manufacturer says
    manufacturer states
    listing says
    listed online as
    according to the website
    according to the brand
    according to the retailer
    according to the manufacturer
    per the website
    per the brand
    as per website
    // from where it is taken
    from the website
    from the brand
    from the retailer
    from the shop
    from the manufacturer
    from the product page
    from the brand's website
    from the brand's site
    from their website
    from their site
    from the original listing
    copied from
    original listing
    product description
    product details
    product info
    retailer description
    retailer's description
    retail description
    shop description
    brand description
    brand's description
    official description
    // their figures
    brand measurements
    brand's measurements
    official measurements
    manufacturer measurements
    manufacturer's measurements
    retailer measurements
    retailer's measurements
    website measurements
    stated measurements
    brand chart
    brand's chart
    brand's size chart
    brand size chart
    their size chart
  `,
  closed: `
    tied
    when tied
    tied closed
    wrapped
    wrapped over
    wrapped and tied
    wrapped closed
    when wrapped
    as worn
    when worn
    done up
    when done up
    when closed
    closed
    buttoned
    buttoned up
    when buttoned up
    fastened
    zipped
    zipped up
  `,
  opened: `
    open
    opened
    opened out
    opened right out
    opened up
    opened flat
    all opened out
    laid open
    when open
    fully open
    wide open
    open flat
    unwrapped
    untied
    when untied
    undone
    unbuttoned
    unfastened
    unzipped
  `,
  position: `
    below
    above
    under
    underneath
    beneath
    down from
    up from
    away from
    away
    off the
    higher than
    lower than
    past
    over the knee
    short of
    apart
    inside of
    from edge
    near
    longer than
    shorter than
    longer in
    longer at
    shorter in
    shorter at
    higher
    lower
  `,
  from: `
    from
    down
  `,
  letDown: `
    // can, could be let or come down
    hem that could be let down
    hem that can be let down
    hem which could be let down
    hem which can be let down
    can be let down
    hem that could come down
    hem that can come down
    hem which could come down
    hem you could let down
    hem that could drop
    could be let down
    in the hem that could be let down
    hem could come down
    hem can come down
    hem can be let down
    hem could be let down
    hem lets down
    // allowance, spare, extra, left
    hem allowance
    hem to spare
    of hem allowance
    extra hem
    of fabric in the hem
    hem available
    extra length in the hem
    left in the hem
    fabric to let down
    spare in the hem
    extra in the hem
    available to let down
    extra fabric in the hem
    hem left to let down
    of hem left to let down
    of hem left
    left to let down
    spare hem
    of spare hem
    left in hem
    hem left
    generous hem allowance
    hem allowance inside
    inch hem allowance
    allowance in the hem
    of allowance in the hem
    fabric left in the hem
    // to let down, to lengthen
    to let down
    hem to let down
    to lengthen
    for lengthening
    hem to drop
    to come down
    in the hem to let down
    to let down in the hem
    hem to take down
    of hem to let down
    to take down
    turned up in the hem to let down
    hem to play with
    deep hem to let down
    // turned up inside
    let down
    hem turned up
    turned up inside
    of hem
    folded up inside
    hem inside
    let down hem
    of material in the hem
    hem if you want to let it down
    hem if you need to let it down
    more turned under
    turned under
  `,
  letOut: `
    // can, could be let out
    could be taken out
    can be taken out
    be taken out
    can be let out
    to be let out
    could be let out
    // left or spare in a seam
    extra fabric in the seam
    extra fabric in the seams
    extra in the waist
    extra in the seams
    spare in the seam
    spare in the seams
    of extra fabric in the waist
    left to let out
    excess fabric in the seams
    left in the centre back
    left in the center back
    left in the back seam
    left in the centre back seam
    left in the center back seam
    left in the seam
    left in the seams
    left in the side seams
    left in the seat seam
    spare in the centre back
    spare in the back seam
    extra in the back seam
    extra in the centre back
    of cloth in the back seam
    of fabric in the back seam
    of cloth in the centre back
    spare in the waist
    of inlay
    inlay
    left in the back
    spare in the back
    // to let out
    to let out
    let out
    taken out
    seam to let out
    room to let out
    of room to let out
    fabric to let out
    to take out
    available to let out
    material to let out
    in the seams to let out
    of seam to let out
    inside to let out
    to come out
  `,
  seamAllowance: `
    seam allowance
    seam allowances
  `,
  relaxed: `
    relaxed
    unstretched
    un stretched
    not stretched
    at rest
    resting
    without stretch
    without stretching
    elastic relaxed
    before stretching
    before stretch
    un-stretched
    non stretched
    when relaxed
    unstreched
    ribbing at rest
    rib at rest
    ribbing relaxed
    rib relaxed
    ribbing unstretched
    rib unstretched
    as it lies
    lying relaxed
    pulls not
  `,
  stretched: `
    // stretches to
    stretchy to
    stretchy up to
    pulls to
    pulls out to
    eases to
    eases out to
    stretches to
    stretching to
    stretch to
    stretches out to
    will stretch to
    can stretch to
    stretches up to
    stretch up to
    expands to
    extends to
    stretching up to
    gives to
    comfortably stretches to
    stretches comfortably to
    has stretch to
    can be stretched to
    streches to
    stretch out to
    pulled to
    // stretched, pulled out
    stretched
    stretched out
    when stretched
    fully stretched
    fully extended
    extended
    at full stretch
    max stretch
    elastic stretched
    up to when stretched
    streched
    stretched fully
    with stretch
    at max
    pulled out
    pulled
    when pulled
    when you pull it out
    when you pull it right out
    when pulled right out
    pulled right out
    up to stretched
  `,
  cuffed: `
    // with the cuff
    cuffed
    when cuffed
    as shown cuffed
    with cuff
    with cuffs
    with turn ups
    as cuffed
    with turn up
    to cuff fold
    with the cuff folded back
    with the cuffs folded back
    with cuffs folded back
    with cuff folded back
    with the cuff turned back
    with the cuffs turned back
    with cuffs turned back
    with cuff turned back
    with the cuff folded
    with the cuffs folded
    with cuffs folded
    with the cuff turned up
    with the cuffs turned up
    with cuffs turned up
    // turned, folded
    turned up
    folded up
    folded cuff
    when folded
    cuffs folded
    turn the cuffs back
    turn the cuff back
    turn cuffs back
    turn back the cuffs
    turn the cuffs up
    turn up the cuffs
    fold the cuffs back
    fold the cuff back
    fold back the cuffs
    fold cuffs back
    cuffs turned back once
    if turned back
    when turned back
    when folded back
    // rolled
    rolled
    rolled up
    when rolled
    as rolled
    rolled once
    worn rolled
  `,
  uncuffed: `
    // without, not
    uncuffed
    un cuffed
    un-cuffed
    without cuff
    without the cuff
    not cuffed
    when uncuffed
    without cuffs
    uncuff
    if you uncuff
    with cuffs down
    with the cuffs down
    with turn ups down
    with turn ups let down
    with the turn ups let down
    with turn ups undone
    with the turn ups undone
    turn ups let down
    turn ups undone
    left long
    with cuff undone
    without turn ups
    not rolled
    not rolled up
    not turned up
    not folded
    without rolling
    // undone, down
    turned down
    unfolded
    rolled down
    cuffs down
    let down fully
    cuff down
    unfold
    if you unfold
    cuffs undone
    cuff undone
    if let down
    // rolled out
    unrolled
    un rolled
    unroll
    if you unroll
    if unrolled
    rolled out
  `,
  front: `
    front
    in front
    in the front
    at front
    at the front
    on the front
    the front
  `,
  back: `
    back
    in back
    in the back
    at back
    at the back
    on the back
    rear
  `,
  inner: `
    underarm
    under arm
    inner
    inside
    armpit
    under the arm
  `,
  measures: `
    measures
    measure
    measuring
    measured
    measured at
    comes in at
    comes up
    coming in at
    measurement is
    comes out
    come to
    comes to
    coming to
    came to
    come in at
    came in at
    come up at
    comes up at
    come out at
    comes out at
    came out at
    works out at
    work out at
    clocks in at
    clock in at
    lies at
    lie at
    lying at
    come up
    sit at
    sits at
    i get
    i make it
    tapes at
    taped at
    goes around for
    goes round for
    go around for
    goes around
    goes round
    runs
    run to
    measured up at
  `,
  light: `
    // articles, prepositions, pronouns
    the
    a
    an
    at
    of
    in
    its
    it
    and
    on
    through
    thru
    for
    with
    to
    from
    by
    both
    each
    these
    this
    i
    or so
    so
    they
    anything
    when
    as
    up
    of the
    all
    then
    along
    them
    out
    // about, exactly
    quite
    rather
    fairly
    about
    approx
    approximately
    aprox
    appx
    around about
    approximate
    circa
    ca
    roughly
    just
    just over
    just under
    exactly
    max
    min
    actual
    adjust
    adjusts
    adjustable
    nearly
    almost
    only
    apx
    aproximately
    apprx
    // is, has, measures
    is
    are
    was
    has
    have
    measuring
    taken
    will do
    does
    dropped
    measure
    comes
    // part of the garment meant
    your
    outer
    widest
    part
    point
    center
    centre
    middle
    side
    edge
    seam
    seams
    straight
    fully
    top
    bottom
    // a length named once more
    size
    measurement
    three quarter
    three quarter length
    bracelet length
    elbow length
    total
    overall
    inch
    inches
    length
    total of
    measurment
    // the rest
    unworn
    new
    good
  `,
  to: `
    to
    out to
    down to
    till
    til
    until
    thru
    through to
    all the way to
    up to
    towards
  `,
  between: 'between',
  and: 'and',
  or: `
    or
    aka
    i e
    ie
    otherwise
    equals
    about
  `,
  size: `
    // the tag, the label
    tag
    tagged
    tag says
    tag reads
    tag size
    tagged size
    label
    labelled
    labeled
    label says
    label size
    labelled as
    marked
    marked as
    marked size
    marked a
    size on label
    size on tag
    size label
    label reads
    tagged as
    tagged a
    size marked
    size tag
    tag states
    labelled size
    vintage size
    marked on label
    tag marked
    tagged waist
    labelled waist
    marked waist
    label waist
    // a size
    size
    sz
    sized
    size is
    stated size
    recorded size
    waist size
    sizing
    a size
    in a size
    in size
    sizes
    size fits
    modern size
    roughly a size
    brand size
    size waist
    // said, listed, judged
    says
    states
    modern
    listed as
    listed as a
  `,
  region: `
    uk
    us
    usa
    eu
    eur
    euro
    it
    ita
    fr
    de
    au
    aus
    jp
    jpn
    ger
    italian
    french
    european
    british
    american
    german
    int
  `,
  letterSize: `
    xxs
    xs
    s
    m
    l
    xl
    xxl
    xxxl
    2xl
    3xl
    4xl
    5xl
    small
    medium
    large
    x large
    extra large
    x small
    extra small
    one size
    os
    osfa
    petite
    s m
    m l
    xs s
    l xl
    large tall
    xlarge
    xxlarge
    xsmall
    free size
  `,
  age: `
    age
    aged
    ages
  `,
  years: `
    years
    yrs
    yr
    year
    months
    mths
    mth
    month
    yo
    y o
    year old
    years old
    t
  `,
  including: `
    including
    incl
    include
    includes
    excluding
    excl
    exclude
    excluding the
    including the
    not including
    plus
    inc
    inclusive of
    minus
    apart from
    except
    without
    w o
  `,
  all: `
    all
    everything
    every
    measurements
  `,
  not: `
    no
    not
    non
    without
    free of
    free from
    free
    isn't
    doesn't
    never
    none
    zero
    nor
    any
    hasn't
    don't
    cannot
    can't
    wasn't
    haven't
    lacks
    lacking
    isnt
    aren't
    arent
    weren't
  `,
  partLined: `
    // half, part, quarter
    half lined
    half lining
    part lined
    part lining
    partially lined
    partly lined
    partial lining
    quarter lined
    semi lined
    three quarter lined
    3 4 lined
    1 2 lined
    1 4 lined
    lining is half
    half the lining
    // only some parts
    body lined
    lined body
    bodice lined
    lined bodice
    bodice is lined
    skirt lined
    skirt is lined
    lined to the knee
    lined to knee
    lined to the hip
    lined front
    lined at front
    front is lined
    lined sleeves
    sleeves lined
    sleeves are lined
    lined hood
    hood is lined
    lined collar
    lined pockets
    sleeves unlined
    unlined sleeves
    sleeves are unlined
    sleeves not lined
    lined except the sleeves
    lined except sleeves
    only the bodice is lined
    only the skirt is lined
    upper back lined
    yoke lined
  `,
  lining: `
    lining
    lined
    inner
    interior
    padding
    filling
    fill
    wadding
    trim
    contrast
    collar
    cuffs
    pocket lining
    pockets
    insert
    lace
    ribbing
    rib
    secondary
    facing
    backing
    sleeve lining
    hood
    trimming
    piping
    embroidery
  `,
  retail: `
    rrp
    retail
    retails
    retailed
    originally
    off the postage
    off postage
    off the total
    works out at
    works out as
    works out to
    i asked
    was asking
    original price
    cost
    costs
    worth
    was
    new price
    full price
    paid
    bought for
    postage
    shipping
    delivery
    p p
    post
    over
    off
    save
    savings
    value
    valued
    orders over
    deposit
    new
    retail price
    fee
    per
    bid
    bids
    current bid
    starting bid
    store credit
    credit
    voucher
  `,
  price: `
    price
    would like
    hoping for
    ono
    obo
    or nearest offer
    or best offer
    o n o
    asking
    today it is
    today it's
    now
    for sale
    selling for
    only
    sale
    buy it now
    priced at
    yours for
    reduced to
    down to
    selling at
    i want
    wanting
    after
    take
    firm
    letting it go for
    let go for
    looking for
  `,
  condition: `
    condition
    cond
    cond.
  `,
  conditionWord: `
    // how often worn
    used
    vintage
    worn
    preowned
    pre owned
    pre loved
    preloved
    new
    brand
    as new
    gently
    secondhand
    second hand
    unworn
    deadstock
    // how good
    excellent
    good
    great
    very
    fair
    perfect
    mint
    pristine
    fantastic
    lovely
    near
    like
    beautiful
    superb
    amazing
    decent
    poor
    immaculate
    wonderful
    overall
    nearly
    fabulous
    nice
    really
    well
    exceptional
    clean
    ok
    okay
    reasonable
    average
  `,
  conditionPhrase: `
    new with tags
    brand new with tags
    bnwt
    nwt
    bnwot
    nwot
    new without tags
    like new
    as new
    never worn
    vgc
    euc
    guc
    worn once
    dead stock
    deadstock
    new old stock
    unworn
    brand new
    excellent used condition
  `,
  shell: `
    shell
    outer
    outer shell
    main
    main fabric
    fabric
    outside
    self
    composition
    material
    made of
    made from
    body fabric
  `,
  nightwear: `
    pyjama
    pyjamas
    pajama
    pajamas
    pjs
    nightdress
    nightie
    nightgown
    sleepsuit
    sleepwear
    nightwear
    babygrow
    pyjama set
    pajama set
    pyjamas set
    pajamas set
    onesie pyjamas
    sleepsuit onesie pyjamas
    night dress
    night shirt
  `,
  backPockets: `
    back pockets
    rear pockets
    hip pockets
    seat pockets
  `,
  apart: `
    apart
    between
    gap
    distance
  `,
  mended: `
    mended
    repaired
    darned
    patched
    sewn up
    stitched up
    fixed
    been mended
    invisibly mended
    re sewn
    resewn
    sewn closed
  `,
  but: `
    but
    except
    apart from
    other than
    aside from
    however
    save for
  `,
  imitation: `
    faux
    imitation
    fake
    vegan
    artificial
    mock
    look
    effect
    like
    feel
    style
    coloured
    colored
    type
  `,
  stretchMuch: `
    super stretchy
    super stretch
    very stretchy
    really stretchy
    so stretchy
    extremely stretchy
    lots of stretch
    lots of give
    loads of stretch
    loads of give
    plenty of stretch
    plenty of give
    tons of stretch
    lot of stretch
    lot of give
    power stretch
    high stretch
    stretches a lot
  `,
  stretchSome: `
    good stretch
    nice stretch
    good bit of stretch
    good bit of give
    good amount of stretch
    good amount of give
    some stretch
    some give
    has stretch
    have stretch
    with stretch
    has give
    are stretchy
    is stretchy
    stretchy fabric
    stretchy material
    stretch fabric
    stretch denim
    stretch cotton
    stretch twill
    stretch jeans
  `,
  stretchLittle: `
    slight stretch
    slight give
    little stretch
    little give
    bit of stretch
    bit of give
    touch of stretch
    hint of stretch
    minimal stretch
    comfort stretch
    slightly stretchy
    a little stretch
    a bit stretchy
  `,
  stretchGone: `
    no longer stretchy
    no longer stretches
    not stretchy any more
    not stretchy anymore
    not stretchy
    lost its stretch
    lost their stretch
    lost the stretch
    lost its elasticity
    stretch has gone
    stretch is gone
    elastane has gone
    elastic has gone in the fabric
    does not stretch
    doesn't stretch
    do not stretch
    don't stretch
  `,
  unwashed: `
    never washed
    never been washed
    unwashed
    not been washed
    not washed
    hasn't been washed
    loomstate
    shrink to fit
    raw denim
    unsanforised
    unsanforized
    before its first wash
  `,
  stretch: `
    stretch
    stretchy
    stretches
    give
    elasticity
  `,
  half: `
    half
    halves
  `
}

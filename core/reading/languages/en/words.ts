/** The small words, and those of sizes, cloth and sale, in English. */
import type { AsideRole, Phrases, WordRole } from '../lexicon.ts'

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
    to let down
    let down
    hem that could be let down
    hem that can be let down
    hem which could be let down
    hem which can be let down
    hem to let down
    hem allowance
    hem to spare
    hem turned up
    can be let down
    turned up inside
    to lengthen
    for lengthening
    of hem
    of hem allowance
    extra hem
    of fabric in the hem
    folded up inside
    hem to drop
    hem available
    hem inside
    extra length in the hem
    to come down
    left in the hem
    in the hem to let down
    fabric to let down
    to let down in the hem
    spare in the hem
    let down hem
    extra in the hem
    available to let down
    extra fabric in the hem
    of material in the hem
    hem that could come down
    hem that can come down
    hem which could come down
    hem you could let down
    hem if you want to let it down
    hem if you need to let it down
    hem to take down
    hem left to let down
    of hem left to let down
    of hem left
    left to let down
    hem that could drop
    of hem to let down
    spare hem
    of spare hem
    left in hem
    hem left
    to take down
    generous hem allowance
    hem allowance inside
    turned up in the hem to let down
    hem to play with
    deep hem to let down
    inch hem allowance
    allowance in the hem
    of allowance in the hem
    fabric left in the hem
    could be let down
    in the hem that could be let down
    more turned under
    turned under
    hem could come down
    hem can come down
    hem can be let down
    hem could be let down
    hem lets down
  `,
  letOut: `
    to let out
    let out
    taken out
    could be taken out
    can be taken out
    be taken out
    can be let out
    seam to let out
    extra fabric in the seam
    extra fabric in the seams
    room to let out
    of room to let out
    to be let out
    fabric to let out
    extra in the waist
    extra in the seams
    spare in the seam
    spare in the seams
    to take out
    available to let out
    of extra fabric in the waist
    left to let out
    excess fabric in the seams
    material to let out
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
    in the seams to let out
    of seam to let out
    spare in the waist
    inside to let out
    to come out
    of inlay
    inlay
    left in the back
    spare in the back
    could be let out
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
    stretched
    stretchy to
    stretchy up to
    pulls to
    pulls out to
    eases to
    eases out to
    stretches to
    stretched out
    when stretched
    fully stretched
    fully extended
    extended
    stretching to
    stretch to
    stretches out to
    will stretch to
    can stretch to
    stretches up to
    stretch up to
    expands to
    at full stretch
    max stretch
    extends to
    elastic stretched
    up to when stretched
    stretching up to
    gives to
    streched
    stretched fully
    with stretch
    comfortably stretches to
    stretches comfortably to
    has stretch to
    can be stretched to
    streches to
    stretch out to
    at max
    pulled out
    pulled
    pulled to
    when pulled
    when you pull it out
    when you pull it right out
    when pulled right out
    pulled right out
    up to stretched
  `,
  cuffed: `
    cuffed
    rolled
    rolled up
    turned up
    when cuffed
    when rolled
    folded up
    as shown cuffed
    with cuff
    with cuffs
    with turn ups
    as cuffed
    as rolled
    with turn up
    to cuff fold
    folded cuff
    when folded
    cuffs folded
    rolled once
    worn rolled
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
  `,
  uncuffed: `
    uncuffed
    unrolled
    un cuffed
    un-cuffed
    turned down
    without cuff
    without the cuff
    unfolded
    not cuffed
    when uncuffed
    rolled down
    un rolled
    cuffs down
    let down fully
    without cuffs
    unroll
    if you unroll
    if unrolled
    uncuff
    if you uncuff
    rolled out
    with cuffs down
    with the cuffs down
    cuff down
    unfold
    if you unfold
    with turn ups down
    with cuff undone
    without turn ups
    cuffs undone
    cuff undone
    if let down
    not rolled
    not rolled up
    not turned up
    not folded
    without rolling
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
    the
    quite
    rather
    fairly
    a
    an
    is
    are
    was
    at
    of
    in
    its
    it
    and
    on
    for
    with
    to
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
    has
    have
    from
    measuring
    by
    both
    each
    these
    this
    size
    measurement
    max
    min
    i
    taken
    actual
    or so
    so
    they
    anything
    will do
    does
    adjust
    adjusts
    adjustable
    dropped
    three quarter
    three quarter length
    bracelet length
    elbow length
    nearly
    almost
    only
    your
    apx
    aproximately
    apprx
    measure
    total
    overall
    when
    as
    up
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
    of the
    all
    then
    seams
    straight
    fully
    top
    bottom
    unworn
    along
    them
    inch
    inches
    length
    new
    good
    total of
    measurment
    comes
    out
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
    size
    sz
    sized
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
    size is
    size label
    label reads
    says
    states
    stated size
    recorded size
    waist size
    tagged as
    tagged a
    size marked
    sizing
    a size
    in a size
    in size
    size tag
    sizes
    tag states
    size fits
    labelled size
    modern size
    modern
    vintage size
    roughly a size
    listed as
    listed as a
    marked on label
    brand size
    tag marked
    tagged waist
    labelled waist
    marked waist
    size waist
    label waist
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
  `,
  partLined: `
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
    lining is half
    half the lining
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
    excellent
    good
    great
    very
    fair
    perfect
    mint
    used
    vintage
    worn
    pristine
    fantastic
    lovely
    preowned
    pre owned
    pre loved
    preloved
    near
    like
    new
    brand
    beautiful
    superb
    amazing
    decent
    poor
    as new
    immaculate
    wonderful
    gently
    overall
    nearly
    fabulous
    nice
    really
    well
    secondhand
    second hand
    exceptional
    unworn
    deadstock
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

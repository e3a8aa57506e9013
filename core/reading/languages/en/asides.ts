/** What is no measure of the garment, in English: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    // collar, neckline, lapel
    lapel
    lapels
    lapel width
    collar height
    collar width
    collar length
    collar depth
    collar point
    collar points
    collar spread
    neckline depth
    neckline drop
    neck drop
    neck depth
    neck width
    v neck depth
    fur collar
    neckline to hem front
    neck tie
    collar tips
    collar wings
    sleeve from side of neck
    sleeves from the side of neck
    sleeve from the side of the neck
    sleeves from side of neck
    sleeve from neck point
    neck edge to cuff
    neck edge to end of sleeve
    neckline to cuff
    sleeve from neck edge
    sleeve from side neck
    side of neck to cuff
    side neck to cuff
    neck band height
    neckband height
    neck band depth
    // pockets
    pocket
    pockets
    pocket depth
    pocket width
    pocket opening
    welt pocket
    welt pockets
    jetted pockets
    ticket pocket
    hidden pocket
    cargo pocket
    // slits, vents, openings, fastenings
    slit
    slits
    slit length
    slit height
    vent
    vents
    vent length
    back vent
    zip
    zipper
    zip length
    zipper length
    zippers
    fly
    belt loop
    belt loops
    button
    buttons
    gap
    flap
    placket
    loop
    loops
    busk
    cuff slit
    placket length
    keyhole
    keyhole back
    arm slit
    arm slits
    cuff zip
    cuff zips
    // belts, ties, straps
    belt
    belts
    sash
    tie
    ties
    bow
    strap drop
    handle
    handle drop
    strap width
    straps width
    width of straps
    drawstring
    drawstring length
    waist sash
    scarf
    spaghetti straps
    belt length
    belt width
    back strap
    back straps
    sash length
    tie belt
    // cuffs and how they turn
    cuff height
    cuff depth
    cuff length
    turn ups
    turn up
    turnup
    turn-ups
    turn-up
    cuffs turned
    cuffs fold
    cuff turn up
    turned back cuff
    turn back cuff
    turned back cuffs
    turn back cuffs
    cuffs are turned back
    cuffs turned back
    cuffs turn back
    cuff turns back
    cuff turned back
    cuffs folded back
    cuff folded back
    cuffs are folded back
    cuffs fold back
    cuff folds back
    folded back cuff
    folded back cuffs
    fold back cuff
    fold back cuffs
    cuffs folded up
    cuffs folded over
    cuffs turn up
    turned up cuff
    turned up cuffs
    // hem, train, layers, linings
    tier
    ruffle
    ruffles
    frill
    fringe
    fringing
    fringe length
    train
    train length
    hem depth
    pleat
    pleats
    dart
    godet
    panel
    flounce
    hem from floor
    bust to hem
    apron
    hem fold
    slip
    petticoat length
    peplum
    peplum length
    deep hem
    depth of hem
    hem is deep
    hem deep
    modesty panel
    front panel
    back panel
    lining
    lining hem
    lining length
    hem of lining
    outer tulle
    // bands, ribs, yokes, elastic
    waistband height
    waist band height
    height of waistband
    waistband depth
    waistband width tall
    ribbing
    rib
    elastic width
    yoke depth
    bib
    bib height
    bib width
    yoke height
    rib height
    welt depth
    welt height
    waist rib height
    band height
    // distances between other places
    waist to hip
    bust to waist
    side length
    underarm to waist
    armpit to waist
    pit to waist
    drop
    shoulder drop
    sleeve drop
    high hip
    upper hip
    wingspan
    // trimming, pattern, what is sewn on
    lace
    trim
    trimming
    patch
    logo
    embroidery
    appliqué
    print
    graphic
    fur trim
    stripe
    stripes
    check size
    checks
    motif
    repeat
    beading
    medallion
    crest
    badge
    ruching
    epaulettes
    name tape
    // height, depth, thickness of anything
    hood height
    hood length
    heel height
    gauge
    pile height
    thick
    thickness
    depth
    deep
    // the rest
    hood
    shoulder pad
    shoulder pads
    heel
    heels
    platform
    boning
    cummerbund
  `,
  thing: `
    // bags
    bag
    bags
    garment bag
    suit bag
    shoulder bag
    crossbody
    handbag
    hand bag
    tote
    purse
    clutch
    backpack
    rucksack
    suitcase
    wallet
    // shoes and boots
    shoe
    shoes
    boot
    boots
    sandals
    trainers
    sneakers
    heels
    shaft
    shaft height
    sole
    insole
    outsole
    socks
    // hats, jewellery and what is worn beside garments
    belt
    scarf
    scarves
    shawl
    stole
    gloves
    tie
    ties
    neck tie
    necktie
    bow tie
    veil
    wedding veil
    bridal veil
    tiara
    headband
    jewellery
    jewelry
    pendant
    cufflinks
    cuff links
    hat
    cap
    beanie
    earrings
    necklace
    bracelet
    ring
    brooch
    watch
    glasses
    sunglasses
    brim
    crown
    // cloth, patterns and household linen
    sewing pattern
    sewing patterns
    dress pattern
    dress patterns
    paper pattern
    pdf pattern
    pattern pdf
    digital pattern
    digital pdf pattern
    pattern envelope
    quilt
    sweater clip
    sweater clips
    sweater guard
    jacket clip
    coat hanger
    coat rack
    coat stand
    dress shoes
    clothes rail
    knitting pattern
    dress form
    tailors dummy
    tailor's dummy
    dressmaking dummy
    dressmakers dummy
    mannequin
    dress fabric
    coat fabric
    shirt fabric
    suit fabric
    fat quarter
    fabric
    material piece
    remnant
    fabric piece
    curtain
    curtains
    cushion
    blanket
    rug
    throw
    duvet
    bedding
    towel
    tablecloth
    pillow
    // other things
    laptop
    phone
    poster
    frame
    mirror
    umbrella
    hanger
    screen
    tv
    monitor
    bottle
    box frame
    book
    doll
    teddy
  `,
  height: `
    tall
    height
    heights
    in height
    feet tall
    foot tall
  `,
  model: `
    // the one who sells or wears
    i am
    i'm
    im
    i wear
    i usually wear
    my height
    my measurements
    my waist
    my bust
    my hips
    my chest
    my wife is
    my husband is
    my daughter is
    on me
    my body
    my model
    for reference i
    i measure
    our model
    my daughter
    my son
    my niece
    my sister
    my friend
    my mum
    my mother
    our stand
    my stand
    i have a
    i've got a
    my husband has
    my boyfriend has
    my partner has
    my wife has
    my girlfriend has
    // another person
    she is
    she's
    she wears
    he is
    he's
    he wears
    her height
    his height
    wearer
    her measurements
    his measurements
    someone
    he has a
    he was
    he has an
    he's got a
    // a dress form or stand
    mannequin
    manequin
    mannequins
    dress form
    dressform
    dummy
    tailor's dummy
    the form measures
    form is
    form measures
    on a 5
    dress form set
    the stand
    form set to
    // a model
    model
    models
    model is
    model's
    model wears
    model measures
    model measurements
    body measurements
    model info
    model stats
    shown on
    modelled on
    modeled on
    photographed on
    modelled by
    modeled by
  `,
  fits: `
    // fits …
    fits up to
    fit up to
    best fits
    fits best
    fits a
    fits an
    fit a
    fits like
    fits like a
    fits someone
    fits sizes
    fits size
    fits waist
    fits bust
    fits chest
    fits hips
    fits hip
    fits approx
    fits approximately
    fits about
    fits around
    fits between
    fits from
    comfortably fits
    fits comfortably
    fits comfortably up to
    fits most
    fits me
    fits my
    fits true
    fits hips up to
    fits bust up to
    fit someone
    fits chests
    fits a chest
    // would, will, can fit
    would fit
    will fit
    should fit
    could fit
    can fit
    may fit
    might fit
    would best fit
    will best fit
    should best fit
    would suit
    i would recommend
    would work
    would work for
    will work
    would probably fit
    would likely fit
    would say
    will stretch to fit
    would suit up to
    // up to, no more than
    bust up to
    waist up to
    hips up to
    not exceed
    shouldn't exceed
    no larger than
    no bigger than
    no more than
    or smaller
    maximum
    max
    max size
    suit up to
    good up to
    // best for, ideal for, made for
    best fit
    best for
    best suited
    best suits
    best on
    suits
    suit a
    suitable for
    ideal for
    perfect for
    recommended for
    recommend for
    recommend
    recommended
    i recommend
    i'd recommend
    to suit
    designed for
    made to fit
    made for
    meant for
    intended for
    great for
    good for
    works for
    work for
    suit someone
    made for my
    made to measure for
    // to fit
    to fit
    to fit bust
    to fit waist
    to fit chest
    // for somebody
    for a
    for someone
    for those
    for bust
    for waist
    for my
    // guessed
    comfy for
    comfortable for
    i'd say
    estimate
    estimated to fit
    estimated size
    accommodate
    accommodates
    equates to
    closest to a
  `,
  parcel: `
    parcel
    package
    packet
    packaging
    postage
    shipping
    shipped
    ships
    box
    boxed
    envelope
    posted
    mailer
    mailing bag
    jiffy bag
    storage bag
  `,
  elsewhere: `
    another listing
    other listing
    separate listing
    separate listings
    listed separately
    sold separately
    for sale separately
    selling separately
    available separately
    my other listings
    own listing
    separate auction
  `,
  nothing: `
    double check
    double checked
    double checking
    double-check
    // rises and waists
    waist open
    waist free
    waist is open
    high rise
    mid rise
    low rise
    high waist
    high waisted
    high-waisted
    low waist
    low waisted
    natural waistline
    drop waist
    dropped waist
    waist length jacket
    belted waist
    tie waist
    cinched waist
    elastic waist
    elasticated waist
    elastic waistband
    elasticated waistband
    drawstring waist
    empire waistline
    no waist
    pinched waist
    cuffs and waist
    raised waist
    at the waist tie
    waist tie
    waist darts
    waist dart
    waist adjusters
    waist adjuster
    waist tabs
    waist belt
    waist trainer
    tab waist
    waist seam
    waist detail
    waist cincher
    waist sash tie
    // how long it is meant
    knee length
    knee-length
    hip length
    ankle length
    floor length
    full length
    mid length
    midi length
    maxi length
    mini length
    tea length
    calf length
    mid calf
    thigh length
    mid thigh
    thigh high
    knee high
    over the knee
    cropped length
    3 4 length
    3 4 length sleeve
    3 4 length sleeves
    7 8 length
    short sleeved
    long sleeved
    long line
    longline
    long john
    long johns
    long lengths
    short length
    regular length
    long length
    petite length
    bracelet length
    elbow length
    elbow length sleeves
    wrist length
    three quarter length
    3 4 arms
    fingertip length
    ballet length
    // sleeves and shoulders
    3 4 sleeve
    3 4 sleeves
    1 2 sleeve
    sleeveless
    cap sleeve
    cap sleeves
    bell sleeve
    puff sleeve
    puff sleeves
    balloon sleeve
    balloon sleeves
    bishop sleeve
    bishop sleeves
    kimono sleeve
    dolman sleeve
    batwing sleeve
    flutter sleeve
    angel sleeve
    shoulder padding
    padded shoulder
    padded shoulders
    cold shoulder
    off the shoulder
    off shoulder
    one shoulder
    drop shoulder
    dropped shoulder
    sleeve head
    sleeve heads
    shoulder tabs
    sleeve detail
    bracelet sleeve
    bracelet sleeves
    elbow sleeves
    three quarter sleeve
    three quarter sleeves
    trumpet sleeve
    trumpet sleeves
    raglan sleeves
    set in sleeve
    set in sleeves
    leg of mutton sleeves
    juliet sleeves
    // necks and collars
    roll neck
    polo neck
    crew neck
    crewneck
    v neck
    v-neck
    round neck
    scoop neck
    boat neck
    turtle neck
    turtleneck
    mock neck
    high neck
    cowl neck
    halter neck
    halterneck
    sweetheart neckline
    square neck
    neck label
    neck tag
    shirt collar
    peter pan collar
    button down collar
    grandad collar
    mandarin collar
    cuban collar
    camp collar
    revere collar
    shawl collar
    spread collar
    pussy bow
    collar and cuffs
    round collar
    neck scarf
    tie neck
    funnel neck
    mock turtleneck
    wing collar
    sailor collar
    bertha collar
    notch collar
    notched collar
    pointed collar
    dagger collar
    corduroy collar
    velvet collar
    leather collar
    wide collar
    contrast collar
    zip neck
    neck bow
    // pockets
    chest pocket
    breast pocket
    hip pocket
    hip pockets
    back pocket
    back pockets
    front pocket
    front pockets
    side pockets
    side pocket
    patch pockets
    cargo pockets
    chest pockets
    breast pockets
    jacket pocket
    inside pocket
    inner pocket
    inside pockets
    inner pockets
    top pocket
    inner pocket label
    large pockets
    // legs, bottoms, seats
    hips free
    hip free
    hips full
    hips open
    hips are free
    hips are full
    hips are open
    free hips
    wide leg
    wide-leg
    straight leg
    skinny leg
    slim leg
    tapered leg
    bootleg
    bell bottoms
    knee patches
    knee patch
    knee pads
    jogging bottoms
    bikini bottoms
    pyjama bottoms
    pajama bottoms
    tracksuit bottoms
    jogger bottoms
    track bottoms
    leg warmers
    knee hole
    knee rips
    hip huggers
    seat of the pants
    front seat
    back seat
    relaxed leg
    // hems and cuffs
    hem line original
    raw hem
    frayed hem
    ruffle hem
    ruffled hem
    curved hem
    scalloped hem
    asymmetric hem
    original hem
    lettuce hem
    dip hem
    step hem
    hem tape
    front hem
    elastic hem
    elastic cuffs
    elastic cuff
    ribbed cuffs
    ribbed cuff
    button cuffs
    button cuff
    french cuffs
    french cuff
    double cuff
    double cuffs
    barrel cuff
    barrel cuffs
    ribbed cuffs and hem
    cuffs and hem
    cuff buttons
    hem stitch
    drop hem
    hem line
    // zips, fronts, breasts, tabs, yokes, darts
    1 4 zip
    1 2 zip
    3 4 zip
    half zip
    quarter zip
    single breasted
    double breasted
    single-breasted
    double-breasted
    front zip
    full zip
    bust darts
    bust dart
    side adjusters
    back yoke
    front yoke
    western yoke
    elbow patches
    elbow patch
    elbow pads
    top button
    top stitching
    topstitching
    side zip
    back zip
    flat front
    flat fronted
    pleated front
    flat front trousers
    // fits free or full
    boy fit
    full body
    boxy fit
    armhole free
    relaxed fit
    relaxed style
    // labels and sizes
    inside label
    inside tag
    inner label
    size up
    size down
    true to size
    fits true to size
    fit true to size
    fits true to its size
    chest size label
    // sayings with a word of measure in them
    long time
    how long
    as long as
    no longer
    long lasting
    before long
    all day long
    lifelong
    long live
    long story
    along
    at length
    length of time
    long weekend
    bottom line
    bottoms up
    hip hop
    flat shipping
    i'm too
    im too
    i am too
    she's too
    he's too
    baby doll
    babydoll
    baby tee
    baby shower
    girls night
    trade mark
    back in stock
    worldwide
    wide range
    wide variety
    world wide
    nation wide
    body warmer
    bodywarmer
    body con
    bodycon
    body shape
    body type
    top condition
    top quality
    top notch
    tank top
    crop top
    top drawer
    inner lining
    outer shell
    small mark on
    flat felled
    flat-felled
    flat knit
    flat rate
    half price
    half way
    half term
    across the world
    across town
    all round good
    year round
    all year round
    round the clock
    under garment
    undergarment
    total look
    in total contrast
    total bargain
    arm candy
    total weight
    up to date
    broken in
    well broken in
    broke in
  `,
  otherUnit: `
    // parts of a garment
    pockets
    pocket
    buttons
    button
    belt loops
    loops
    zips
    layers
    tiers
    pleats
    darts
    vents
    ties
    snaps
    studs
    poppers
    hooks
    straps
    panels
    sided
    thread
    // time
    days
    day
    hours
    hrs
    minutes
    mins
    weeks
    week
    years
    year
    yrs
    yr
    months
    month
    pm
    am
    century
    th century
    // money and sale
    watching
    watchers
    sold
    available
    stars
    star
    p
    gbp
    usd
    eur
    euros
    euro
    dollars
    quid
    bucks
    likes
    followers
    reviews
    bids
    bid
    offers
    // weight, measure, share
    percent
    per cent
    degrees
    degree
    deg
    c
    f
    kg
    kgs
    g
    gr
    grams
    gram
    lb
    lbs
    pound
    pounds
    oz
    ounce
    ounces
    gsm
    denier
    den
    ml
    litre
    litres
    fill
    k
    mah
    gb
    ply
    wale
    tog
    quality
    plus
    grade
    // pieces
    piece
    pieces
    pcs
    pc
    pair
    pairs
    set
    pack
    items
    item
    photos
    pictures
    pics
    colours
    colors
    owner
    owners
    people
    sizes
    rows
    row
    // faults
    small holes
    holes
    hole
    stains
    marks
    spots
    moth holes
    // times, places in an order and the rest
    times
    time
    out of
    st
    nd
    rd
    th
    others
    more
    previous
    wear
    wears
    washes
    wash
    way
    in 1
    in one
    or more
    for
  `,
  sizeChart: `
    size guide
    size guides
    size chart
    sizing chart
    sizing guide
  `,
  bodyChart: `
    body measurements
    body measurement
    body size
    body sizes
    body size chart
  `,
  cutFor: `
    to fit
    to fit bust
    to fit waist
    to fit chest
    to fit hips
    to fit hip
    fits waist
    fits bust
    fits chest
    fits hips
    fits hip
    for bust
    for waist
    for hips
    for chest
    cut for
    is cut for
    designed to fit
  `
}

/** What is no measure of the garment, in English: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole, Phrases } from '../lexicon.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
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
    pocket
    pockets
    pocket depth
    pocket width
    pocket opening
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
    belt
    belts
    belt loop
    belt loops
    sash
    tie
    ties
    bow
    ruffle
    ruffles
    frill
    fringe
    fringing
    fringe length
    lace
    trim
    trimming
    button
    buttons
    patch
    logo
    embroidery
    appliqué
    print
    graphic
    hood
    hood height
    hood length
    train
    train length
    waistband height
    waist band height
    height of waistband
    waistband depth
    waistband width tall
    cuff height
    cuff depth
    cuff length
    turn ups
    turn up
    turnup
    turn-ups
    turn-up
    hem depth
    ribbing
    rib
    strap drop
    handle
    handle drop
    strap width
    straps width
    width of straps
    elastic width
    waist to hip
    bust to waist
    shoulder pad
    shoulder pads
    heel
    heels
    heel height
    platform
    pleat
    pleats
    dart
    godet
    panel
    tier
    flounce
    yoke depth
    gap
    drawstring
    drawstring length
    pit to hem
    armpit to hem
    pit to bottom
    armpit to bottom
    underarm to hem
    underarm to bottom
    side length
    underarm to waist
    armpit to waist
    pit to waist
    fur collar
    fur trim
    hem from floor
    drop
    neckline to hem front
    bust to hem
    apron
    flap
    placket
    loop
    loops
    cuffs turned
    waist sash
    stripe
    stripes
    check size
    checks
    motif
    gauge
    scarf
    cuffs fold
    hem fold
    pile height
    shoulder drop
    neck tie
    slip
    petticoat length
    cuff turn up
    repeat
    thick
    thickness
    depth
    deep
    welt pocket
    welt pockets
    jetted pockets
    sleeve drop
    bib
    bib height
    bib width
    beading
    yoke height
    ticket pocket
    spaghetti straps
    boning
    busk
    medallion
    crest
    badge
    peplum
    peplum length
    ruching
    epaulettes
    cummerbund
    cuff slit
    placket length
    rib height
    welt depth
    welt height
    waist rib height
    belt length
    belt width
    back strap
    back straps
    sash length
    tie belt
    hidden pocket
    cargo pocket
    keyhole
    keyhole back
    collar tips
    collar wings
    deep hem
    depth of hem
    hem is deep
    hem deep
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
    high hip
    upper hip
    arm slit
    arm slits
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
    modesty panel
    front panel
    back panel
    neck band height
    neckband height
    band height
    neck band depth
    lining
    lining hem
    lining length
    hem of lining
    outer tulle
    wingspan
    cuff zip
    cuff zips
    name tape
  `,
  thing: `
    bag
    handbag
    hand bag
    tote
    purse
    clutch
    backpack
    rucksack
    suitcase
    laptop
    phone
    shoe
    shoes
    boot
    boots
    sandals
    trainers
    sneakers
    heels
    hat
    cap
    beanie
    shaft
    shaft height
    sole
    insole
    outsole
    earrings
    necklace
    bracelet
    ring
    brooch
    watch
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
    poster
    frame
    mirror
    wallet
    umbrella
    glasses
    sunglasses
    socks
    hanger
    screen
    tv
    monitor
    bottle
    box frame
    book
    doll
    teddy
    brim
    crown
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
    model
    models
    model is
    model's
    mannequin
    manequin
    mannequins
    dress form
    dressform
    dummy
    tailor's dummy
    i am
    i'm
    im
    i wear
    i usually wear
    she is
    she's
    she wears
    he is
    he's
    he wears
    my height
    her height
    his height
    my measurements
    model wears
    model measures
    model measurements
    wearer
    my waist
    my bust
    my hips
    my chest
    my wife is
    my husband is
    my daughter is
    body measurements
    on me
    my body
    model info
    model stats
    my model
    for reference i
    i measure
    our model
    shown on
    modelled on
    modeled on
    photographed on
    the form measures
    form is
    form measures
    on a 5
    my daughter
    my son
    her measurements
    his measurements
    someone
    modelled by
    modeled by
    my niece
    my sister
    my friend
    my mum
    my mother
    dress form set
    our stand
    my stand
    the stand
    form set to
    he has a
    he was
    he has an
    i have a
    i've got a
    he's got a
    my husband has
    my boyfriend has
    my partner has
    my wife has
    my girlfriend has
  `,
  fits: `
    fits up to
    fit up to
    would fit
    comfy for
    comfortable for
    will fit
    should fit
    could fit
    can fit
    may fit
    might fit
    would best fit
    will best fit
    should best fit
    best fits
    best fit
    fits best
    best for
    best suited
    best suits
    best on
    suits
    suit a
    would suit
    suitable for
    ideal for
    perfect for
    recommended for
    recommend for
    recommend
    recommended
    i recommend
    i'd recommend
    i would recommend
    to fit
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
    to suit
    designed for
    made to fit
    made for
    meant for
    intended for
    fits approx
    fits approximately
    fits about
    fits around
    fits between
    fits from
    great for
    good for
    works for
    work for
    would work
    would work for
    will work
    for a
    for someone
    for those
    for bust
    for waist
    comfortably fits
    fits comfortably
    fits comfortably up to
    fits most
    would probably fit
    would likely fit
    would say
    i'd say
    estimate
    estimated to fit
    estimated size
    fits me
    fits my
    to fit bust
    to fit waist
    to fit chest
    will stretch to fit
    fits true
    accommodate
    accommodates
    bust up to
    waist up to
    hips up to
    fits hips up to
    not exceed
    shouldn't exceed
    no larger than
    no bigger than
    no more than
    or smaller
    maximum
    max
    max size
    fits bust up to
    would suit up to
    suit up to
    suit someone
    fit someone
    good up to
    made for my
    fits chests
    fits a chest
    made to measure for
    for my
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
    hips free
    hip free
    hips full
    hips open
    hips are free
    hips are full
    hips are open
    free hips
    waist open
    waist free
    waist is open
    i'm too
    im too
    i am too
    she's too
    he's too
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
    knee length
    knee-length
    hip length
    ankle length
    floor length
    waist length jacket
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
    3 4 sleeve
    3 4 sleeves
    3 4 length sleeve
    3 4 length sleeves
    7 8 length
    1 4 zip
    1 2 zip
    1 2 sleeve
    3 4 zip
    half zip
    quarter zip
    short sleeved
    long sleeved
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
    chest pocket
    breast pocket
    hip pocket
    hip pockets
    hip hop
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
    long line
    longline
    wide leg
    wide-leg
    straight leg
    skinny leg
    slim leg
    tapered leg
    bootleg
    bell bottoms
    single breasted
    double breasted
    single-breasted
    double-breasted
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
    baby doll
    babydoll
    baby tee
    baby shower
    girls night
    boy fit
    trade mark
    shoulder padding
    padded shoulder
    padded shoulders
    cold shoulder
    off the shoulder
    off shoulder
    one shoulder
    drop shoulder
    dropped shoulder
    back in stock
    bottom line
    long time
    how long
    as long as
    no longer
    long lasting
    before long
    all day long
    lifelong
    long live
    long john
    long johns
    long lengths
    long story
    along
    worldwide
    wide range
    wide variety
    world wide
    nation wide
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
    pinched waist
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
    cuffs and waist
    collar and cuffs
    cuff buttons
    raised waist
    at the waist tie
    front zip
    full zip
    waist tie
    hem stitch
    sleeve head
    sleeve heads
    long weekend
    bust darts
    waist darts
    bust dart
    waist dart
    short length
    regular length
    long length
    petite length
    waist adjusters
    waist adjuster
    side adjusters
    waist tabs
    shoulder tabs
    back yoke
    front yoke
    western yoke
    knee patches
    elbow patches
    elbow patch
    knee patch
    knee pads
    elbow pads
    waist belt
    waist trainer
    body warmer
    bodywarmer
    full body
    body con
    bodycon
    body shape
    body type
    top condition
    top quality
    top notch
    tank top
    crop top
    top button
    top stitching
    topstitching
    top pocket
    top drawer
    inside label
    inside tag
    inner label
    inner lining
    outer shell
    inner pocket label
    side zip
    back zip
    size up
    size down
    true to size
    large pockets
    small mark on
    flat front
    flat fronted
    flat felled
    flat-felled
    flat knit
    flat shipping
    flat rate
    half price
    half way
    half term
    across the world
    across town
    all round good
    year round
    all year round
    round collar
    round the clock
    bottoms up
    jogging bottoms
    bikini bottoms
    pyjama bottoms
    pajama bottoms
    tracksuit bottoms
    jogger bottoms
    track bottoms
    boxy fit
    under garment
    undergarment
    total look
    in total contrast
    total bargain
    leg warmers
    tab waist
    armhole free
    arm candy
    waist seam
    knee hole
    knee rips
    neck scarf
    sleeve detail
    length of time
    at length
    waist detail
    hip huggers
    waist cincher
    seat of the pants
    front seat
    back seat
    relaxed fit
    relaxed style
    relaxed leg
    total weight
    bracelet length
    bracelet sleeve
    bracelet sleeves
    elbow length
    elbow length sleeves
    elbow sleeves
    wrist length
    three quarter length
    three quarter sleeve
    three quarter sleeves
    3 4 arms
    fingertip length
    ballet length
    trumpet sleeve
    trumpet sleeves
    raglan sleeves
    set in sleeve
    set in sleeves
    leg of mutton sleeves
    juliet sleeves
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
    waist sash tie
    pleated front
    flat front trousers
    drop hem
    hem line
    chest size label
    up to date
    broken in
    well broken in
    broke in
  `,
  otherUnit: `
    pockets
    pocket
    buttons
    button
    piece
    pieces
    pcs
    pc
    pair
    pairs
    set
    pack
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
    watching
    watchers
    sold
    available
    items
    item
    photos
    pictures
    pics
    times
    time
    stars
    star
    out of
    belt loops
    loops
    zips
    layers
    tiers
    pleats
    darts
    vents
    st
    nd
    rd
    th
    pm
    am
    p
    gbp
    usd
    eur
    euros
    euro
    dollars
    quid
    bucks
    k
    mah
    gb
    ply
    wale
    colours
    colors
    others
    more
    left
    owner
    owners
    previous
    wear
    wears
    washes
    wash
    people
    likes
    followers
    reviews
    bids
    bid
    offers
    ties
    way
    in 1
    in one
    small holes
    holes
    hole
    stains
    marks
    spots
    moth holes
    sizes
    or more
    for
    century
    th century
    snaps
    studs
    poppers
    hooks
    straps
    panels
    rows
    row
    sided
    thread
    tog
    quality
    plus
    grade
  `
}

/** The garment in English: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'
import { CUFFS_ARE_SHAM, CUFFS_OPEN } from './cuff-buttons.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        jean
        denims
        denim trousers
        denim pants
        jeggings
        denim jeans
        mom jeans
        mum jeans
        boyfriend jeans
        bell bottom jeans
        flared jeans
        bootcut jeans
        skinny jeans
      `
    },
    {
      kind: 'trousers',
      phrases: `
        trousers
        trouser
        slacks
        khakis
        joggers
        jogging bottoms
        tracksuit bottoms
        track pants
        sweatpants
        leggings
        cords
        corduroys
        palazzos
        dress pants
        flares
        bell bottoms
        cargos
        cargo pants
        breeches
        jodhpurs
        pyjama bottoms
        pyjama trousers
        pajama pants
        pajama bottoms
        pyjama pants
        pyjamas
        pajamas
        pjs
        ski pants
        suit trousers
        suit pants
        dungaree trousers
        pantaloons
        capris
        capri pants
        plus fours
        treggings
        harem pants
        salopettes
        jogger
        track bottoms
        trews
        overtrousers
        work pants
        cargo trousers
      `
    },
    {
      kind: 'trousers',
      or: 'shorts',
      phrases: `
        pants
        pant
        culottes
        chinos
        chino
      `
    },
    {
      kind: 'shorts',
      phrases: `
        shorts
        bermudas
        hot pants
        bermuda shorts
        short pants
        culotte shorts
        jorts
        swim trunks
        trunks
        board shorts
        skort
        denim shorts
        jean shorts
      `
    },
    {
      kind: 'skirt',
      phrases: `
        skirt
        skt
        miniskirt
        kilt
        maxi skirt
        midi skirt
        mini skirt
        pencil skirt
        circle skirt
        denim skirt
        jean skirt
        sarong skirt
        petticoat
        tutu
        half slip
        underskirt
      `
    },
    {
      kind: 'dress',
      phrases: `
        dress
        dresses
        gown
        frock
        sundress
        shirt dress
        shirtdress
        t shirt dress
        maxi dress
        midi dress
        mini dress
        shift dress
        wrap dress
        tea dress
        pinafore
        pinafore dress
        jumper dress
        sweater dress
        wedding dress
        slip dress
        coat dress
        jacket dress
        caftan
        kaftan
        housedress
        house dress
        blazer dress
        knit dress
        prairie dress
        smock dress
        tunic dress
        ballgown
        cheongsam
        qipao
        shirtwaist dress
        slip
        denim dress
        muumuu
        dressing gown dress
        sheath dress
        robe dress
        dungaree dress
        sweatshirt dress
        bodycon dress
        skater dress
        shirtwaist
        dirndl
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        playsuit
        romper
        overalls
        dungarees
        boiler suit
        boilersuit
        coveralls
        coverall
        flightsuit
        flight suit
        onesie
        catsuit
        unitard
        all in one
        bodysuit
        leotard
        dungers
        dungaree shorts
        ski suit
        snow suit
        flying suit
        jump suit
        play suit
        cat suit
        overall shorts
        short dungarees
        bib overalls
        sleepsuit
        onesie pyjamas
        sleepsuit onesie pyjamas
        rompers
        body suit
        snowsuit
      `
    },
    {
      kind: 'shirt',
      phrases: `
        shirt
        corset
        corset top
        overbust corset
        steel boned corset
        bustier
        blouse
        blouses
        bustier top
        button up
        button down
        button up shirt
        button down shirt
        dress shirt
        oxford shirt
        tunic
        flannel shirt
        flannel
        overshirt
        shacket
        chemise
        polo shirt dress shirt
        hawaiian shirt
        western shirt
        denim shirt
        kimono top
        work shirt
        pyjama top
        pyjama shirt
        pajama top
        smock
        smock top
        button-up
        button-down
        camp shirt
        bowling shirt
        peasant blouse
        shirt jacket
        jean shirt
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        tee
        baby tee
        baby tees
        tee shirt
        t-shirt
        crop top
        vest top
        camisole
        cami
        polo
        polo shirt
        polo top
        long sleeve top
        jersey top
        henley
        rugby shirt
        football shirt
        jersey shirt
        singlet
        halter top
        tube top
        bandeau
        ringer tee
        baseball tee
        muscle tee
        sports bra
        base layer
        football jersey
        baseball jersey
        hockey jersey
        rugby top
        cycling jersey
        cycle jersey
        sports jersey
        basketball jersey
        soccer jersey
        ringer
        bralette
      `
    },
    {
      kind: 'knit-top',
      or: 'jumper',
      phrases: `
        tank top
        tank
      `
    },
    {
      kind: 'knit-top',
      or: 'shirt',
      phrases: `
        top
        crop
      `
    },
    {
      kind: 'jumper',
      or: 'dress',
      phrases: 'jumper'
    },
    {
      kind: 'jumper',
      phrases: `
        sweater
        pullover
        merino crew neck
        lambswool crew neck
        wool crew neck
        cashmere crew neck
        merino v neck
        lambswool v neck
        wool v neck
        cashmere v neck
        merino roll neck
        wool roll neck
        cashmere roll neck
        wool polo neck
        merino polo neck
        shetland crew neck
        cardigan
        cardi
        knit jacket
        knitted jacket
        cardigan jacket
        knit
        knitwear
        sweatshirt
        hoodie
        hoody
        hooded sweatshirt
        crewneck sweatshirt
        cable knit
        turtleneck
        roll neck jumper
        sweater vest
        tank knit
        fleece
        polo neck
        guernsey
        twinset
        crewneck
        quarter zip fleece
        jumper knit
        knit jumper
        knit sweater
        sweatshirt top
        fisherman jumper
        fair isle
        wool jumper
        turtleneck sweater
        jumper top
        knitted top
        knitted jumper
        aran
        half zip sweatshirt
        zip up hoodie
        sweater jacket
        hooded top
      `
    },
    {
      kind: 'jacket',
      phrases: `
        blazer
        sport coat
        sports coat
        sportcoat
        sports jacket
        sport jacket
        suit jacket
        tuxedo
        tuxedo jacket
        dinner jacket
        suit
        two piece suit
        three piece suit
        tailcoat
        morning coat
        tux
        suit coat
        skirt suit
        trouser suit
        pant suit
        pantsuit
        tailored jacket
        smoking jacket
        hacking jacket
        suit blazer
        nehru jacket
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      or: 'coat',
      phrases: `
        jacket
        jkt
        jckt
      `,
      made: { tailored: false }
    },
    {
      kind: 'jacket',
      phrases: `
        blouson
        chore
        shrug
        jean jacket
        denim jacket
        leather jacket
        biker jacket
        bomber jacket
        trucker jacket
        chore jacket
        track jacket
        work jacket
        suede jacket
        harrington jacket
        harrington
        bolero
        field jacket
        safari jacket
        moto jacket
        varsity jacket
        letterman jacket
        corduroy jacket
        cord jacket
        utility jacket
        flight jacket
        chore coat
        quilted liner
        jean coat
        cropped jacket
        bomber
        biker
        trucker
        military jacket
        tracksuit top
        track top
        tracksuit jacket
        tweed jacket
        velvet jacket
        wool jacket
        linen jacket
        wax jacket
        waxed jacket
        quilted jacket
        padded jacket
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      or: 'jacket',
      phrases: 'coat'
    },
    {
      kind: 'coat',
      phrases: `
        kagoul
        kagoule
        pac a mac
        overcoat
        topcoat
        top coat
        covert coat
        camel coat
        trench
        trench coat
        trenchcoat
        parka
        anorak
        puffer
        puffer jacket
        down jacket
        down coat
        raincoat
        rain jacket
        rain coat
        peacoat
        pea coat
        duffle coat
        duffel coat
        duster
        windbreaker
        wind breaker
        windcheater
        waterproof jacket
        shell jacket
        ski jacket
        fleece jacket
        mac
        mackintosh
        fur coat
        wool coat
        gilet coat
        hi vis jacket
        high visibility jacket
        high visibility work jacket
        motorcycle jacket
        motorbike jacket
        faux fur coat
        faux fur jacket
        fur jacket
        swing coat
        opera coat
        greatcoat
        afghan coat
        house coat
        housecoat
        car coat
        barn coat
        barn jacket
        sheepskin coat
        shearling coat
        shearling jacket
        sheepskin jacket
        lab coat
        winter jacket
        winter coat
        snow jacket
        insulated jacket
        cagoule
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        waistcoat
        gilet
        suit vest
        bodywarmer
        body warmer
        puffer vest
        down vest
        denim vest
        leather vest
        fleece vest
        wool vest
        quilted vest
        suede vest
        biker vest
        fur vest
        utility vest
        fishing vest
        tweed vest
        padded vest
        wescot
        sleeveless jacket
        tactical vest
        waist coat
      `
    },
    {
      kind: 'waistcoat',
      or: 'knit-top',
      phrases: `
        vest
      `
    },
    {
      kind: 'other',
      phrases: `
        swimsuit
        swimming costume
        bathing suit
        one piece swimsuit
        tankini
        cape
        capes
        cloak
        poncho
        capelet
        kimono
        kimono robe
        haori
        haori jacket
        haori kimono
        kimono cardigan
        haori kimono jacket
        haori kimono cardigan jacket
        kimono cardigan jacket
        kimono jacket
        yukata
        robe
        bathrobe
        bath robe
        dressing gown
        negligee
        peignoir
        nightgown
        nightdress
        nightie
        night dress
        night shirt
        nightshirt
        pyjama set
        pajama set
        pyjamas set
        pajamas set
        sarong
        sarong wrap
        basque
        girdle
        body shaper
        nightwear
        wetsuit
        wet suit
        underbust corset
        bikini
        lingerie
        full slip
        full length slip
        nylon slip
        underslip
        under slip
        vintage slip
        bra
        knickers
        swim shorts bikini
        sari
        saree
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        lined
        fully lined
        full lining
        lining
        is lined
        satin lining
        silk lining
        lined throughout
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        unlined
        not lined
        no lining
        without lining
        un lined
        non lined
        without a lining
        has no lining
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        short sleeve
        short sleeves
        short sleeved
        short-sleeved
        short-sleeve
        sleeveless
        cap sleeve
        cap sleeves
        capped sleeves
        three quarter sleeve
        three quarter sleeves
        3 4 sleeve
        3 4 sleeves
        3 4 length sleeve
        3 4 length sleeves
        bracelet sleeve
        bracelet sleeves
        elbow sleeves
        elbow length sleeves
        half sleeve
        half sleeves
        three quarter length sleeves
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        elastic waist
        elasticated waist
        elastic waistband
        elasticated waistband
        elasticised waist
        stretch waistband
        stretchy waistband
        elastic at waist
        elastic at the waist
        elasticated at the waist
        elastic in waist
        elastic back waist
        elasticated back
        shirred waist
        elastic back
        stretch waist
        elasticized waist
        elasticised waistband
        elasticized waistband
        stretchy waist
        elastic in the waist
        elastic drawstring waist
        elasticated drawstring waist
        waist is elastic
        waist elastic
        elastic waisted
      `
    },
    {
      fact: { fact: 'workingCuffButtons', value: true },
      phrases: CUFFS_OPEN
    },
    {
      fact: { fact: 'workingCuffButtons', value: false },
      phrases: CUFFS_ARE_SHAM
    },
    {
      fact: { fact: 'backSeam', value: true },
      phrases: `
        centre back seam
        center back seam
        back seam
        seam down the back
        seam at the back
        back centre seam
        back center seam
        seam up the back
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: `
        darts
        darted
        bust darts
        waist darts
        front darts
        back darts
        dart
        bust dart
      `
    },
    {
      fact: { fact: 'darts', value: false },
      phrases: `
        no darts
        without darts
      `
    },
    {
      fact: { fact: 'felledSeams', value: true },
      phrases: `
        flat felled
        felled seams
        flat felled seams
        double felled seams
        flat-felled
        triple stitched seams
        triple stitched
        felled
      `
    },
    {
      fact: { fact: 'slantPockets', value: true },
      phrases: `
        slant pockets
        slanted pockets
        slash pockets
        slanting pockets
        angled pockets
        slanted side pockets
        slash side pockets
        slant front pockets
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        pencil skirt
        straight skirt
        tube skirt
        column skirt
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        a line skirt
        a-line
        aline
        flared skirt
        flare skirt
        a line
        full skirt
        gored skirt
        skater skirt
        swing skirt
        tulip skirt flared
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: `
        circle skirt
        full circle skirt
        full circle
        half circle skirt
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        pleated skirt
        pleated midi skirt
        knife pleats
        accordion pleats
        box pleats
        sunray pleats
        pleated mini skirt
        pleated maxi skirt
        kilt
        sunray pleated
        box pleated
        pleated wool skirt
        pleated tennis skirt
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: `
        original hem
        original hems
        original factory hem
        factory hem
        hem is original
        unaltered hem
        unhemmed original
        hems are original
      `
    },
    {
      fact: { fact: 'hemKind', value: 'blind' },
      phrases: `
        blind hem
        blind hemmed
        invisible hem
        blind stitched hem
        hand rolled hem
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        side zip
        back zip
        side zipper
        back zipper
        side zip fastening
        zip at back
        zip at the back
        zip at side
        zips at the side
        zips at the back
        zip up back
        zips up the back
        metal side zip
        zipper in back
        zipper at back
        concealed zip
        invisible zip
        concealed back zip
        invisible back zip
        concealed side zip
        rear zip
      `
    },
    {
      fact: { fact: 'opens', value: ['hem'] },
      phrases: `
        side vents
        back vents
        double vent
        double vented
        single vent
        single vented
        centre vent
        center vent
        twin vents
        back vent
        dual vents
        two side vents
        vented
        vents
        rear vent
        rear vents
        dual vented
        side vented
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        back slit
        side slit
        side slits
        front slit
        kick pleat
        slit at back
        slit at the back
        back split
        side split
        slit up the back
        slit at the side
        thigh slit
        back kick pleat
      `
    },
    {
      fact: { fact: 'opens', value: ['legOpening'] },
      phrases: `
        ankle zips
        ankle zip
        zipped ankles
        zips at ankle
        zips at the ankle
        ankle zippers
        zip ankles
        zip at ankle
        zips at ankles
      `
    }
  ],
  uses: {
    protective: `
      hi vis
      hi viz
      high vis
      high visibility
      high-visibility
      flame resistant
      flame retardant
      fire resistant
      fire retardant
      arc rated
      ce armour
      ce armor
      ce approved armour
      body armour
      body armor
      motorcycle armour
      motorcycle armor
      armoured
      armored
      chainsaw trousers
      chainsaw protection
      cut resistant
      bulletproof
      stab proof
      stab vest
      kevlar lined
      kevlar lining
      climbing
      welding
      chemical resistant
      fire proof
      fireproof
      hazmat
      knee armour
      safety vest
      bite suit
      motorcycle jacket with armour
      armor pads
      firefighter
      turnout gear
      hi-visibility
      nomex
      safety harness
    `,
    child: `
      kids
      kid's
      children's
      childrens
      girls
      girl's
      boys
      boy's
      toddler
      toddlers
      baby
      infant
      newborn
      junior boys
      junior girls
      child's
      youth size
      baby's
      children
      teen girls
      teen boys
    `,
    'child-sleepwear': `
      kids pyjamas
      children's pyjamas
      childrens pyjamas
      boys pyjamas
      girls pyjamas
      baby sleepsuit
      children's nightwear
      kids pajamas
      children's pajamas
      toddler pyjamas
      kids nightdress
      girls nightdress
      girls nightie
      baby grow
      babygrow
      sleepsuit
      boys pyjama
      girls pyjama
      boys pajama
      girls pajama
      boys' pyjama
      girls' pyjama
      kids pyjama
      children's sleepwear
      kids sleepwear
      boys pajamas
      girls pajamas
      baby sleepsuits
      children's dressing gown
      toddler pajamas
      kids nightie
    `,
    'medical-compression': `
      medical compression
      compression stockings
      compression hosiery
      compression garment
      post surgery compression
      class 1 compression
      class 2 compression
      compression class
      lymphoedema
      lymphedema
      post surgical
      varicose
      medical grade compression
      mmhg
      compression therapy
    `
  },
  whose: {
    women: `
      womens
      women's
      woman's
      ladies
      lady's
      womenswear
      for women
      for ladies
      for a woman
    `,
    men: `
      mens
      men's
      man's
      gents
      gent's
      gentleman's
      gentlemen's
      menswear
      for men
      for gents
      for a man
    `,
    'women named': `
      women
      woman
    `,
    'men named': 'men',
    both: `
      unisex
      gender neutral
      genderless
      for men and women
      for women and men
      for men or women
      for women or men
      mens and womens
      men's and women's
      womens and mens
      women's and men's
      mens or womens
      men's or women's
      womens or mens
      women's or men's
      mens womens
      womens mens
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        moth hole
        moth holes
        moth damage
        moth eaten
        mothing
        moth nip
        moth nips
        mothed
        moth bites
      `
    },
    {
      mending: ['patch'],
      phrases: `
        hole
        holes
        tear
        tears
        rip
        rips
        ripped
        torn
        pin hole
        pinhole
        pinholes
        pin holes
        small hole
        worn through
        threadbare
        cigarette burn
        burn hole
        burn mark
        nick
        slash
        cut in the fabric
      `
    },
    {
      mending: ['clean'],
      phrases: `
        age spot
        age spots
        stain
        stains
        stained
        staining
        discolouration
        discoloration
        discoloured
        discolored
        sweat marks
        yellowing
        watermark
        water marks
        water mark
        makeup mark
        grubby
        musty
        dirty
        smell
        odour
        odor
        small mark
        marks
        mark
        foxing
        rust spot
        rust spots
        dusty
        deodorant marks
        needs cleaning
        needs a clean
        needs washing
        dirt
        ink mark
        grease
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        missing button
        missing buttons
        missing a button
        button missing
        buttons missing
        missing one button
        broken button
        lost button
        one button missing
        a button is missing
        missing its top button
        missing 1 button
        buttons are missing
        chipped button
      `
    },
    {
      mending: ['sew-shank'],
      phrases: `
        loose button
        loose buttons
        button is loose
        button loose
        buttons are loose
        buttons loose
        button needs re sewing
        button hanging by a thread
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        open seam
        split seam
        seam split
        seam has come undone
        seam coming apart
        seam undone
        popped seam
        seam has split
        loose stitching
        stitching coming undone
        torn lining
        lining torn
        ripped lining
        lining ripped
        lining is torn
        tear in lining
        tear in the lining
        seam separation
        stitching has come loose
        hem has come down
        hem coming down
        hem is coming down
        hem undone
        loose seam
        seam is open
        seam coming undone
        split in the seam
        split at the seam
        seam opening up
        fallen hem
        stitching undone
        popped stitches
        hem down
        shattered lining
        lining has come away
        lining coming away
        lining has come loose
        lining is coming away
        lining loose
        loose lining
        lining has dropped
        seam has gone
        seam gone
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        broken zip
        broken zipper
        zip broken
        zipper broken
        zip is broken
        zip sticks
        zipper sticks
        zip needs replacing
        zipper needs replacing
        faulty zip
        zip missing
        zip is stiff
        zip pull missing
        missing zip pull
        zipper is broken
        zip stuck
        zip catches
        zip does not work
        zipper does not work
        zipper missing
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        elastic gone
        elastic perished
        perished elastic
        elastic has gone
        worn elastic
        tired elastic
        elastic is tired
        elastic is shot
        elastic is worn
        elastic stretched out
        loose elastic
        elastic needs replacing
        elastic has perished
        elastic has lost
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        pilling
        bobbling
        bobbled
        pilled
        bobbles
        pills
        bobbly
        piling
      `
    },
    {
      mending: ['lift-crease'],
      phrases: `
        crease mark
        crease marks
        old hem line
        hem line visible
        fold line
        fold lines
        hem crease
        old hemline visible
        fold marks
        creased from storage
        line from old hem
        visible old hem
      `
    },
    {
      mending: ['dye'],
      phrases: `
        faded
        fading
        sun fading
        sun faded
        fade
        colour loss
        color loss
        light fading
        colour run
        washed out patches
        bleach mark
        bleach spot
        bleached
        bleach marks
        bleach stain
      `
    },
    {
      mending: ['re-line-pocket'],
      phrases: `
        pocket hole
        hole in pocket
        hole in the pocket
        pocket lining hole
        pocket lining torn
        holes in pocket
        holes in the pocket
        torn pocket lining
        hole in pocket lining
        hole in the pocket lining
        holes in pockets
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        scuff
        scuffs
        scuffed
        scuffing
        dry leather
        leather is dry
        scuff marks
      `
    },
    {
      mending: ['re-proof'],
      phrases: `
        needs re proofing
        needs reproofing
        needs rewaxing
        needs re waxing
        needs a rewax
        no longer waterproof
        needs waxing
        waterproofing gone
      `
    },
    {
      mending: ['block-knit'],
      phrases: `
        misshapen
        out of shape
        stretched out of shape
        needs blocking
        lost its shape
      `
    },
    {
      mending: [],
      phrases: `
        // felt does not come back
        felted
        snag
        snags
        pulled thread
        pulled threads
        pulls
        flaw
        flaws
        damage
        damaged
        wear to
        fraying
        frayed
        missing belt
        belt missing
        missing beads
        missing sequins
        repair
        repaired
        darned
        altered
        visible wear
        signs of wear
        broken
        peeling
        cracking
        cracked
        distressed lining
        loose thread
        loose threads
        hook missing
        missing hook
      `
    }
  ]
}

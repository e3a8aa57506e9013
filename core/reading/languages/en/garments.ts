/** The garment in English: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'faults'> = {
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
        pants
        pant
        slacks
        chinos
        chino
        khakis
        joggers
        jogging bottoms
        tracksuit bottoms
        track pants
        sweatpants
        leggings
        cords
        corduroys
        culottes
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
        pyjamas
        pajamas
        pjs
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
        maxi
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
        nightgown
        nightdress
        nightie
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
        swimsuit
      `
    },
    {
      kind: 'shirt',
      phrases: `
        shirt
        blouse
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
        top
        crop top
        tank top
        tank
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
        bustier
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
        corset top
        crop
        ringer
        bralette
      `
    },
    {
      kind: 'jumper',
      phrases: `
        jumper
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
      phrases: `
        jacket
        jkt
        jckt
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
        kimono jacket
        military jacket
        tracksuit top
        track top
        tracksuit jacket
        haori
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
      phrases: `
        coat
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
        cape
        cloak
        poncho
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
        dressing gown
        robe
        bathrobe
        house coat
        housecoat
        kimono
        car coat
        barn coat
        barn jacket
        sheepskin coat
        shearling coat
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
        vest
        suit vest
        bodywarmer
        body warmer
        puffer vest
        down vest
        denim vest
        leather vest
        wescot
        sleeveless jacket
        tactical vest
      `
    },
    {
      kind: 'other',
      phrases: `
        wetsuit
        wet suit
        corset
        overbust corset
        underbust corset
        steel boned corset
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
      phrases: `
        working cuffs
        surgeon cuffs
        surgeon's cuffs
        surgeons cuffs
        functional cuffs
        functioning cuffs
        working cuff buttons
        functional cuff buttons
        functioning cuff buttons
        real cuff buttons
        working buttonholes
        surgeon's cuff
        working button cuffs
        working sleeve buttons
        functional sleeve buttons
        functional buttons on cuffs
        functional button cuffs
        cuffs unbutton
        cuff buttons are functional
        cuff buttons work
        cuffs are functional
        kissing buttons functional
        cuff buttons are working
        cuff buttons are real
        cuff buttons open
        cuff buttons undo
        cuff buttons unbutton
        cuff buttons do open
        cuff buttons do undo
        cuff buttons actually open
        cuff buttons actually work
        cuff buttons all work
        cuff buttons all open
        sleeve buttons work
        sleeve buttons open
        sleeve buttons undo
        sleeve buttons unbutton
        sleeve buttons are functional
        sleeve buttons are working
        sleeve buttons are real
        sleeve buttons do open
        sleeve buttons do undo
        sleeve buttons actually open
        sleeve buttons actually work
        sleeve buttons all work
        sleeve buttons all open
        buttons on cuffs work
        buttons on cuffs open
        buttons on cuffs undo
        buttons on cuffs unbutton
        buttons on cuffs are functional
        buttons on cuffs are working
        buttons on cuffs are real
        buttons on cuffs do open
        buttons on cuffs do undo
        buttons on cuffs actually open
        buttons on cuffs actually work
        buttons on cuffs all work
        buttons on cuffs all open
        buttons on the cuffs work
        buttons on the cuffs open
        buttons on the cuffs undo
        buttons on the cuffs unbutton
        buttons on the cuffs are functional
        buttons on the cuffs are working
        buttons on the cuffs are real
        buttons on the cuffs do open
        buttons on the cuffs do undo
        buttons on the cuffs actually open
        buttons on the cuffs actually work
        buttons on the cuffs all work
        buttons on the cuffs all open
        buttons on cuff work
        buttons on cuff open
        buttons on cuff undo
        buttons on cuff unbutton
        buttons on cuff are functional
        buttons on cuff are working
        buttons on cuff are real
        buttons on cuff do open
        buttons on cuff do undo
        buttons on cuff actually open
        buttons on cuff actually work
        buttons on cuff all work
        buttons on cuff all open
        buttons on the cuff work
        buttons on the cuff open
        buttons on the cuff undo
        buttons on the cuff unbutton
        buttons on the cuff are functional
        buttons on the cuff are working
        buttons on the cuff are real
        buttons on the cuff do open
        buttons on the cuff do undo
        buttons on the cuff actually open
        buttons on the cuff actually work
        buttons on the cuff all work
        buttons on the cuff all open
        buttons on sleeves work
        buttons on sleeves open
        buttons on sleeves undo
        buttons on sleeves unbutton
        buttons on sleeves are functional
        buttons on sleeves are working
        buttons on sleeves are real
        buttons on sleeves do open
        buttons on sleeves do undo
        buttons on sleeves actually open
        buttons on sleeves actually work
        buttons on sleeves all work
        buttons on sleeves all open
        buttons on the sleeves work
        buttons on the sleeves open
        buttons on the sleeves undo
        buttons on the sleeves unbutton
        buttons on the sleeves are functional
        buttons on the sleeves are working
        buttons on the sleeves are real
        buttons on the sleeves do open
        buttons on the sleeves do undo
        buttons on the sleeves actually open
        buttons on the sleeves actually work
        buttons on the sleeves all work
        buttons on the sleeves all open
        buttons at the cuffs work
        buttons at the cuffs open
        buttons at the cuffs undo
        buttons at the cuffs unbutton
        buttons at the cuffs are functional
        buttons at the cuffs are working
        buttons at the cuffs are real
        buttons at the cuffs do open
        buttons at the cuffs do undo
        buttons at the cuffs actually open
        buttons at the cuffs actually work
        buttons at the cuffs all work
        buttons at the cuffs all open
        buttons at the cuff work
        buttons at the cuff open
        buttons at the cuff undo
        buttons at the cuff unbutton
        buttons at the cuff are functional
        buttons at the cuff are working
        buttons at the cuff are real
        buttons at the cuff do open
        buttons at the cuff do undo
        buttons at the cuff actually open
        buttons at the cuff actually work
        buttons at the cuff all work
        buttons at the cuff all open
        buttons at cuffs work
        buttons at cuffs open
        buttons at cuffs undo
        buttons at cuffs unbutton
        buttons at cuffs are functional
        buttons at cuffs are working
        buttons at cuffs are real
        buttons at cuffs do open
        buttons at cuffs do undo
        buttons at cuffs actually open
        buttons at cuffs actually work
        buttons at cuffs all work
        buttons at cuffs all open
        cuffs open
        cuffs undo
        cuffs actually open
        cuffs do open
        real buttonholes on the cuffs
        real buttonholes at the cuffs
        real working cuffs
        opening cuffs
        working button holes
        working buttonholes at cuffs
      `
    },
    {
      fact: { fact: 'workingCuffButtons', value: false },
      phrases: `
        sham cuffs
        non functional cuffs
        non working cuffs
        non-functioning cuffs
        faux cuff buttons
        mock cuffs
        dummy cuff buttons
        cuff buttons are non functional
        cuff buttons are not functional
        cuff buttons do not open
        decorative cuff buttons
        cuff buttons are decorative
        sham buttons
        false cuffs
        non-functional cuff buttons
        non working cuff buttons
        cuffs do not open
        sham cuff buttons
        cuff buttons are sham
        cuff buttons are for show
        cuff buttons do not work
        non-functioning cuff buttons
        cuff buttons are non-working
        cuff buttons are not working
        cuff buttons are faux
        cuff buttons don't open
        cuff buttons don't undo
        cuff buttons do not undo
        cuff buttons don't unbutton
        cuff buttons do not unbutton
        cuff buttons don't work
        cuff buttons aren't functional
        cuff buttons aren't working
        cuff buttons are non working
        cuff buttons are fake
        cuff buttons are purely decorative
        cuff buttons are just decorative
        cuff buttons are only decorative
        cuff buttons are just for show
        cuff buttons are stitched on
        cuff buttons are not real
        cuff buttons aren't real
        sleeve buttons don't open
        sleeve buttons do not open
        sleeve buttons don't undo
        sleeve buttons do not undo
        sleeve buttons don't unbutton
        sleeve buttons do not unbutton
        sleeve buttons don't work
        sleeve buttons do not work
        sleeve buttons aren't functional
        sleeve buttons are not functional
        sleeve buttons are non functional
        sleeve buttons aren't working
        sleeve buttons are not working
        sleeve buttons are non working
        sleeve buttons are sham
        sleeve buttons are fake
        sleeve buttons are faux
        sleeve buttons are decorative
        sleeve buttons are purely decorative
        sleeve buttons are just decorative
        sleeve buttons are only decorative
        sleeve buttons are just for show
        sleeve buttons are for show
        sleeve buttons are stitched on
        sleeve buttons are not real
        sleeve buttons aren't real
        buttons on cuffs don't open
        buttons on cuffs do not open
        buttons on cuffs don't undo
        buttons on cuffs do not undo
        buttons on cuffs don't unbutton
        buttons on cuffs do not unbutton
        buttons on cuffs don't work
        buttons on cuffs do not work
        buttons on cuffs aren't functional
        buttons on cuffs are not functional
        buttons on cuffs are non functional
        buttons on cuffs aren't working
        buttons on cuffs are not working
        buttons on cuffs are non working
        buttons on cuffs are sham
        buttons on cuffs are fake
        buttons on cuffs are faux
        buttons on cuffs are decorative
        buttons on cuffs are purely decorative
        buttons on cuffs are just decorative
        buttons on cuffs are only decorative
        buttons on cuffs are just for show
        buttons on cuffs are for show
        buttons on cuffs are stitched on
        buttons on cuffs are not real
        buttons on cuffs aren't real
        buttons on the cuffs don't open
        buttons on the cuffs do not open
        buttons on the cuffs don't undo
        buttons on the cuffs do not undo
        buttons on the cuffs don't unbutton
        buttons on the cuffs do not unbutton
        buttons on the cuffs don't work
        buttons on the cuffs do not work
        buttons on the cuffs aren't functional
        buttons on the cuffs are not functional
        buttons on the cuffs are non functional
        buttons on the cuffs aren't working
        buttons on the cuffs are not working
        buttons on the cuffs are non working
        buttons on the cuffs are sham
        buttons on the cuffs are fake
        buttons on the cuffs are faux
        buttons on the cuffs are decorative
        buttons on the cuffs are purely decorative
        buttons on the cuffs are just decorative
        buttons on the cuffs are only decorative
        buttons on the cuffs are just for show
        buttons on the cuffs are for show
        buttons on the cuffs are stitched on
        buttons on the cuffs are not real
        buttons on the cuffs aren't real
        buttons on cuff don't open
        buttons on cuff do not open
        buttons on cuff don't undo
        buttons on cuff do not undo
        buttons on cuff don't unbutton
        buttons on cuff do not unbutton
        buttons on cuff don't work
        buttons on cuff do not work
        buttons on cuff aren't functional
        buttons on cuff are not functional
        buttons on cuff are non functional
        buttons on cuff aren't working
        buttons on cuff are not working
        buttons on cuff are non working
        buttons on cuff are sham
        buttons on cuff are fake
        buttons on cuff are faux
        buttons on cuff are decorative
        buttons on cuff are purely decorative
        buttons on cuff are just decorative
        buttons on cuff are only decorative
        buttons on cuff are just for show
        buttons on cuff are for show
        buttons on cuff are stitched on
        buttons on cuff are not real
        buttons on cuff aren't real
        buttons on the cuff don't open
        buttons on the cuff do not open
        buttons on the cuff don't undo
        buttons on the cuff do not undo
        buttons on the cuff don't unbutton
        buttons on the cuff do not unbutton
        buttons on the cuff don't work
        buttons on the cuff do not work
        buttons on the cuff aren't functional
        buttons on the cuff are not functional
        buttons on the cuff are non functional
        buttons on the cuff aren't working
        buttons on the cuff are not working
        buttons on the cuff are non working
        buttons on the cuff are sham
        buttons on the cuff are fake
        buttons on the cuff are faux
        buttons on the cuff are decorative
        buttons on the cuff are purely decorative
        buttons on the cuff are just decorative
        buttons on the cuff are only decorative
        buttons on the cuff are just for show
        buttons on the cuff are for show
        buttons on the cuff are stitched on
        buttons on the cuff are not real
        buttons on the cuff aren't real
        buttons on sleeves don't open
        buttons on sleeves do not open
        buttons on sleeves don't undo
        buttons on sleeves do not undo
        buttons on sleeves don't unbutton
        buttons on sleeves do not unbutton
        buttons on sleeves don't work
        buttons on sleeves do not work
        buttons on sleeves aren't functional
        buttons on sleeves are not functional
        buttons on sleeves are non functional
        buttons on sleeves aren't working
        buttons on sleeves are not working
        buttons on sleeves are non working
        buttons on sleeves are sham
        buttons on sleeves are fake
        buttons on sleeves are faux
        buttons on sleeves are decorative
        buttons on sleeves are purely decorative
        buttons on sleeves are just decorative
        buttons on sleeves are only decorative
        buttons on sleeves are just for show
        buttons on sleeves are for show
        buttons on sleeves are stitched on
        buttons on sleeves are not real
        buttons on sleeves aren't real
        buttons on the sleeves don't open
        buttons on the sleeves do not open
        buttons on the sleeves don't undo
        buttons on the sleeves do not undo
        buttons on the sleeves don't unbutton
        buttons on the sleeves do not unbutton
        buttons on the sleeves don't work
        buttons on the sleeves do not work
        buttons on the sleeves aren't functional
        buttons on the sleeves are not functional
        buttons on the sleeves are non functional
        buttons on the sleeves aren't working
        buttons on the sleeves are not working
        buttons on the sleeves are non working
        buttons on the sleeves are sham
        buttons on the sleeves are fake
        buttons on the sleeves are faux
        buttons on the sleeves are decorative
        buttons on the sleeves are purely decorative
        buttons on the sleeves are just decorative
        buttons on the sleeves are only decorative
        buttons on the sleeves are just for show
        buttons on the sleeves are for show
        buttons on the sleeves are stitched on
        buttons on the sleeves are not real
        buttons on the sleeves aren't real
        buttons at the cuffs don't open
        buttons at the cuffs do not open
        buttons at the cuffs don't undo
        buttons at the cuffs do not undo
        buttons at the cuffs don't unbutton
        buttons at the cuffs do not unbutton
        buttons at the cuffs don't work
        buttons at the cuffs do not work
        buttons at the cuffs aren't functional
        buttons at the cuffs are not functional
        buttons at the cuffs are non functional
        buttons at the cuffs aren't working
        buttons at the cuffs are not working
        buttons at the cuffs are non working
        buttons at the cuffs are sham
        buttons at the cuffs are fake
        buttons at the cuffs are faux
        buttons at the cuffs are decorative
        buttons at the cuffs are purely decorative
        buttons at the cuffs are just decorative
        buttons at the cuffs are only decorative
        buttons at the cuffs are just for show
        buttons at the cuffs are for show
        buttons at the cuffs are stitched on
        buttons at the cuffs are not real
        buttons at the cuffs aren't real
        buttons at the cuff don't open
        buttons at the cuff do not open
        buttons at the cuff don't undo
        buttons at the cuff do not undo
        buttons at the cuff don't unbutton
        buttons at the cuff do not unbutton
        buttons at the cuff don't work
        buttons at the cuff do not work
        buttons at the cuff aren't functional
        buttons at the cuff are not functional
        buttons at the cuff are non functional
        buttons at the cuff aren't working
        buttons at the cuff are not working
        buttons at the cuff are non working
        buttons at the cuff are sham
        buttons at the cuff are fake
        buttons at the cuff are faux
        buttons at the cuff are decorative
        buttons at the cuff are purely decorative
        buttons at the cuff are just decorative
        buttons at the cuff are only decorative
        buttons at the cuff are just for show
        buttons at the cuff are for show
        buttons at the cuff are stitched on
        buttons at the cuff are not real
        buttons at the cuff aren't real
        buttons at cuffs don't open
        buttons at cuffs do not open
        buttons at cuffs don't undo
        buttons at cuffs do not undo
        buttons at cuffs don't unbutton
        buttons at cuffs do not unbutton
        buttons at cuffs don't work
        buttons at cuffs do not work
        buttons at cuffs aren't functional
        buttons at cuffs are not functional
        buttons at cuffs are non functional
        buttons at cuffs aren't working
        buttons at cuffs are not working
        buttons at cuffs are non working
        buttons at cuffs are sham
        buttons at cuffs are fake
        buttons at cuffs are faux
        buttons at cuffs are decorative
        buttons at cuffs are purely decorative
        buttons at cuffs are just decorative
        buttons at cuffs are only decorative
        buttons at cuffs are just for show
        buttons at cuffs are for show
        buttons at cuffs are stitched on
        buttons at cuffs are not real
        buttons at cuffs aren't real
        cuffs don't open
        cuffs don't undo
        cuffs do not undo
        cuffs don't unbutton
        cuffs do not unbutton
        cuffs don't work
        cuffs do not work
        cuffs aren't functional
        cuffs are not functional
        cuffs are non functional
        cuffs aren't working
        cuffs are not working
        cuffs are non working
        cuffs are sham
        cuffs are fake
        cuffs are faux
        cuffs are decorative
        cuffs are purely decorative
        cuffs are just decorative
        cuffs are only decorative
        cuffs are just for show
        cuffs are for show
        cuffs are stitched on
        cuffs are not real
        cuffs aren't real
        sleeve cuffs don't open
        sleeve cuffs do not open
        sleeve cuffs don't undo
        sleeve cuffs do not undo
        sleeve cuffs don't unbutton
        sleeve cuffs do not unbutton
        sleeve cuffs don't work
        sleeve cuffs do not work
        sleeve cuffs aren't functional
        sleeve cuffs are not functional
        sleeve cuffs are non functional
        sleeve cuffs aren't working
        sleeve cuffs are not working
        sleeve cuffs are non working
        sleeve cuffs are sham
        sleeve cuffs are fake
        sleeve cuffs are faux
        sleeve cuffs are decorative
        sleeve cuffs are purely decorative
        sleeve cuffs are just decorative
        sleeve cuffs are only decorative
        sleeve cuffs are just for show
        sleeve cuffs are for show
        sleeve cuffs are stitched on
        sleeve cuffs are not real
        sleeve cuffs aren't real
        fake cuff buttons
        sham sleeve buttons
        decorative sleeve buttons
        non working sleeve buttons
        cuffs have sham buttons
        sham buttons on cuffs
        sham buttons at cuffs
        non opening cuffs
        cuff buttons just for show
        no working cuffs
        cuffs not functional
        cuffs non functional
      `
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
        zips up the back| metal side zip
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
        felted
        needs blocking
        lost its shape
      `
    },
    {
      mending: [],
      phrases: `
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

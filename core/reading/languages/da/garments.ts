/** The garment in Danish: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        cowboybukser
        denimbukser
        cowboybuks
      `
    },
    {
      kind: 'trousers',
      phrases: `
        bukser
        buks
        habitbukser
        chinos
        leggings
        fløjlsbukser
        hørbukser
        skindbukser
        joggingbukser
        slacks
        cargobukser
        uldbukser
        træningsbukser
      `
    },
    {
      kind: 'shorts',
      phrases: `
        shorts
        bermudashorts
        denimshorts
      `
    },
    {
      kind: 'skirt',
      phrases: `
        nederdel
        nederdelen
        skørt
        mininederdel
        plisseret nederdel
        denimnederdel
        blyantnederdel
      `
    },
    {
      kind: 'dress',
      phrases: `
        kjole
        brudekjole
        aftenkjole
        skjortekjole
        sommerkjole
        slå om kjole
        strikket kjole
        festkjole
        strikkjole
        maxikjole
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        buksedragt
        overalls
        heldragt
        smækbukser
      `
    },
    {
      kind: 'shirt',
      phrases: `
        skjorte
        bluse
        tunika
        silkebluse
        flonelsskjorte
        hørskjorte
        overshirt
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        top
        polo
        poloshirt
        undertrøje
        tanktop
        bodystocking
        korset
        t-shirt
        langærmet t shirt
      `
    },
    {
      kind: 'jumper',
      phrases: `
        sweater
        trøje
        strik
        strikket sweater
        cardigan
        hættetrøje
        sweatshirt
        striktrøje
        pullover
        uldsweater
        rullekravesweater
        hoodie
        striksweater
        uldtrøje
        strikbluse
      `
    },
    {
      kind: 'jacket',
      phrases: `
        blazer
        habit
        habitjakke
        smoking
        jakkesæt
        tweedjakke
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jakke
        denimjakke
        cowboyjakke
        læderjakke
        skindjakke
        bomberjakke
        bolero
        ruskindsjakke
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        frakke
        uldfrakke
        trenchcoat
        parka
        dunjakke
        regnjakke
        vinterjakke
        poncho
        kappe
        pels
        vinterfrakke
        regnfrakke
        skijakke
        overgangsjakke
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        vest
        habitvest
        dunvest
        quiltet vest
      `
    },
    {
      kind: 'other',
      phrases: `
        bikini
        badedragt
        natkjole
        pyjamas
        badekåbe
        bh
        undertøj
        kimono
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        foret
        med for
        med foer
        helforet
        med fór
        foer
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        uforet
        uden foer
        ikke foret
        intet for
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        korte ærmer
        kortærmet
        ærmeløs
        uden ærmer
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        elastik i taljen
        elastik i livet
        elastisk talje
        elastiklinning
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'indsnit'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: 'blyantnederdel'
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        a linje
        a-form
        a form
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: 'plisseret'
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: `
        original søm
        ikke lagt op
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        lynlås i siden
        lynlås bagpå
        lynlås i ryggen
        skjult lynlås
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        slids bag
        slids i siden
      `
    }
  ],
  uses: {
    protective: `
      refleks
      flammehæmmende
      sikkerhedsvest
    `,
    child: `
      børn
      barn
      pige
      dreng
      baby
    `,
    'child-sleepwear': 'børnepyjamas',
    'medical-compression': `
      støttestrømper
      kompressionsstrømper
    `
  },
  whose: {
    women: `
      til damer
      til kvinder
      til dame
    `,
    men: `
      til herrer
      til mænd
      til herre
    `,
    'women named': `
      dame
      damer
    `,
    'men named': `
      herre
      herrer
    `,
    both: `
      unisex
      dame og herre
      herre og dame
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        mølhul
        mølhuller
        møl
      `
    },
    {
      mending: ['patch'],
      phrases: `
        hul
        huller
        flænge
        lille hul
        revne
      `
    },
    {
      mending: ['clean'],
      phrases: `
        plet
        pletter
        misfarvning
        plettet
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        mangler en knap
        knap mangler
        manglende knap
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        gået op i syningen
        søm gået op
        syning gået op
        hul i for
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        defekt lynlås
        lynlås i stykker
        lynlåsen virker ikke
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: 'slap elastik'
    },
    {
      mending: ['de-pill'],
      phrases: `
        fnuller
        fnuldret
        noppet
      `
    },
    {
      mending: ['dye'],
      phrases: `
        falmet
        afbleget
      `
    },
    {
      mending: [],
      phrases: `
        slid
        brugsspor
        fejl
        tråd trukket
        skade
      `
    }
  ]
}

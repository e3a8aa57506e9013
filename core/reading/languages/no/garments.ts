/** The garment in Norwegian: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        olabukse
        dongeribukse
        denimbukse
        olabukser
      `
    },
    {
      kind: 'trousers',
      phrases: `
        bukse
        bukser
        dressbukse
        chinos
        leggings
        kordfløyelsbukse
        linbukse
        skinnbukse
        joggebukse
        cargobukse
        ullbukse
        treningsbukse
        tights
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
        skjørt
        skjørtet
        miniskjørt
        plissert skjørt
        denimskjørt
        blyantskjørt
      `
    },
    {
      kind: 'dress',
      phrases: `
        kjole
        brudekjole
        ballkjole
        skjortekjole
        sommerkjole
        omslagskjole
        strikket kjole
        festkjole
        strikkekjole
        maxikjole
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        buksedress
        overall
        heldress
        snekkerbukse
        selebukse
      `
    },
    {
      kind: 'shirt',
      phrases: `
        skjorte
        bluse
        tunika
        silkebluse
        flanellskjorte
        linskjorte
        overshirt
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t skjorte
        tskjorte
        t-skjorte
        t shirt
        topp
        piké
        poloskjorte
        singlet
        body
        korsett
        tanktopp
      `
    },
    {
      kind: 'jumper',
      phrases: `
        genser
        strikkegenser
        kofte
        cardigan
        hettegenser
        sweatshirt
        ullgenser
        pullover
        strikkejakke
        collegegenser
        hoodie
        høyhalset genser
        jumper
      `
    },
    {
      kind: 'jacket',
      phrases: `
        blazer
        dress
        dressjakke
        smoking
        tweedjakke
        dressen
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jakke
        denimjakke
        olajakke
        skinnjakke
        bomberjakke
        bolero
        semsket jakke
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        kåpe
        frakk
        ullkåpe
        trenchcoat
        parkas
        dunjakke
        boblejakke
        regnjakke
        vinterjakke
        poncho
        cape
        pels
        ullfrakk
        vinterkåpe
        skijakke
        dunkåpe
        allværsjakke
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        vest
        dressvest
        dunvest
        vattert vest
      `
    },
    {
      kind: 'other',
      phrases: `
        bikini
        badedrakt
        nattkjole
        pyjamas
        badekåpe
        bh
        undertøy
        kimono
        bunad
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        fôret
        med fôr
        helfôret
        foret
        innerfôr
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        ufôret
        uten fôr
        ikke fôret
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        korte ermer
        kortermet
        ermeløs
        uten ermer
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        strikk i livet
        strikk i midjen
        elastisk midje
        strikk i linningen
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'innsnitt'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: 'blyantskjørt'
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        a linje
        a-linje
        a form
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: 'plissert'
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'originalsøm'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        glidelås i siden
        glidelås bak
        glidelås i ryggen
        skjult glidelås
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        splitt bak
        splitt i siden
      `
    }
  ],
  uses: {
    protective: `
      refleks
      flammehemmende
      vernevest
    `,
    child: `
      barn
      jente
      gutt
      baby
    `,
    'child-sleepwear': 'barnepyjamas',
    'medical-compression': `
      støttestrømper
      kompresjonsstrømper
    `
  },
  whose: {
    women: `
      til dame
      for damer
      til kvinner
    `,
    men: `
      til herre
      for menn
      til menn
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
        møllhull
        møll
      `
    },
    {
      mending: ['patch'],
      phrases: `
        hull
        rift
        lite hull
        flenge
      `
    },
    {
      mending: ['clean'],
      phrases: `
        flekk
        flekker
        misfarging
        flekkete
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        mangler en knapp
        knapp mangler
        manglende knapp
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        søm har gått opp
        gått opp i sømmen
        hull i fôr
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        ødelagt glidelås
        glidelås defekt
        glidelåsen virker ikke
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: 'slapp strikk'
    },
    {
      mending: ['de-pill'],
      phrases: `
        nupper
        nuppete
        nuppet
      `
    },
    {
      mending: ['dye'],
      phrases: `
        falmet
        bleket
      `
    },
    {
      mending: [],
      phrases: `
        slitasje
        bruksspor
        feil
        tråd trukket
        skade
      `
    }
  ]
}

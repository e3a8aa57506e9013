/** The garment in Dutch: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        spijkerbroek
        jeans
        jeansbroek
        flared jeans
      `
    },
    {
      kind: 'trousers',
      phrases: `
        broeken
        broek
        pantalon
        legging
        joggingbroek
        chino
        nette broek
        ribbroek
        leren broek
        pantalons
        wollen broek
        linnen broek
        wijde broek
        flared broek
      `
    },
    {
      kind: 'shorts',
      phrases: `
        korte broek
        short
        bermuda
        shorts
        jeansshort
      `
    },
    {
      kind: 'skirt',
      phrases: `
        rokken
        rok
        minirok
        kokerrok
        plooirok
        spijkerrok
        maxirok
        rokje
        midirok
        jeansrok
        wollen rok
      `
    },
    {
      kind: 'dress',
      phrases: `
        jurken
        jurk
        jurkje
        trouwjurk
        avondjurk
        maxijurk
        zomerjurk
        overhemdjurk
        wikkeljurk
        galajurk
        midi jurk
        gebreide jurk
        overgooier
        spijkerjurk
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        tuinbroek
        overall
        playsuit
        boxpakje
      `
    },
    {
      kind: 'shirt',
      phrases: `
        overhemd
        blouse
        hemd
        bloes
        tuniek
        spijkerblouse
        houthakkershemd
        zijden blouse
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        shirt
        top
        topje
        polo
        hemdje
        longsleeve
        korset
        shirtje
      `
    },
    {
      kind: 'jumper',
      phrases: `
        truien
        trui
        vest gebreid
        sweater
        hoodie
        spencer
        cardigan
        coltrui
        gebreide trui
        pullover
        wollen trui
        gebreid vest
        sweatshirt
        vest
        truitje
      `
    },
    {
      kind: 'jacket',
      phrases: `
        colbert
        blazer
        pak
        smoking
        kostuum
        mantelpak
        broekpak
        driedelig pak
        jasje colbert
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jasje
        spijkerjas
        leren jas
        leren jack
        jack
        bomberjack
        bikerjack
        spijkerjasje
        jeansjack
        leren jasje
        suede jas
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        jassen
        jas
        damesjas
        herenjas
        mantel
        trenchcoat
        parka
        regenjas
        winterjas
        donsjas
        wollen jas
        lange jas
        ski jas
        skijas
        bontjas
        pufferjas
        veiligheidsjas
        motorjas
        regenjack
        wollen mantel
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        gilet
        bodywarmer
        mouwloos vest
      `
    },
    {
      kind: 'other',
      phrases: `
        poncho
        cape
        badjas
        kamerjas
        nachthemd
        badpak
        bikini
        kimono
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        gevoerd
        met voering
        volledig gevoerd
        voering
        helemaal gevoerd
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        ongevoerd
        niet gevoerd
        zonder voering
        geen voering
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        korte mouwen
        korte mouw
        driekwart mouwen
        driekwart mouw
        mouwloos
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        elastische taille
        elastiek in de taille
        elastische band
        elastische tailleband
        elastiek in taille
        taille met elastiek
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: `
        figuurnaden
        coupenaden
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        kokerrok
        rechte rok
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        a lijn
        uitlopende rok
        klokrok
        a-lijn
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: 'cirkelrok'
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        plooirok
        plissérok
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'originele zoom'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        rits opzij
        rits aan de zijkant
        rits achter
        rits op de rug
        rits aan de achterkant
        blinde rits
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        split achter
        split opzij
        split aan de zijkant
      `
    }
  ],
  uses: {
    protective: `
      hoge zichtbaarheid
      brandwerend
      veiligheidskleding
      veiligheidsjas
      veiligheidshesje
      met protectie
      zaagbroek
      vlamvertragend
    `,
    child: `
      kinder
      meisjes
      jongens
      baby
      kinderen
      kinderjurk
    `,
    'child-sleepwear': `
      kinderpyjama
      babypyjama
      boxpakje
    `,
    'medical-compression': `
      steunkousen
      compressiekousen
    `
  },
  whose: {
    women: `
      voor dames
      voor vrouwen
      dameskleding
      damesmaat
    `,
    men: `
      voor heren
      voor mannen
      herenkleding
      herenmaat
    `,
    'women named': `
      dames
      vrouwen
    `,
    'men named': `
      heren
      mannen
    `,
    both: `
      unisex
      dames en heren
      heren en dames
      voor dames en heren
      voor heren en dames
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        mottengat
        mottengaatje
        mottengaatjes
        mottengaten
      `
    },
    {
      mending: ['patch'],
      phrases: `
        gat
        gaatje
        gaatjes
        gaten
        scheur
        scheurtje
        gescheurd
        winkelhaak
      `
    },
    {
      mending: ['clean'],
      phrases: `
        vlek
        vlekken
        vlekje
        vlekjes
        verkleuring
        verkleurd
        vergeeld
        muf
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        knoop mist
        knoop ontbreekt
        missende knoop
        er mist een knoop
        knoop kwijt
        mist een knoop
      `
    },
    {
      mending: ['sew-shank'],
      phrases: `
        losse knoop
        knoop zit los
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        naad los
        losse naad
        zoom los
        voering gescheurd
        naad open
        loszittende naad
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        rits kapot
        kapotte rits
        rits stuk
        rits defect
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        elastiek uitgelubberd
        elastiek is slap
        elastiek versleten
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        pilling
        pluisjes
        pluizen
        gepild
      `
    },
    {
      mending: ['dye'],
      phrases: `
        vervaagd
        verbleekt
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        krassen
        kras
        schaafplek
      `
    },
    {
      mending: [],
      phrases: `
        gebruikssporen
        beschadiging
        beschadigd
        foutje
        slijtage
        draadje los
        losse draad
      `
    }
  ]
}

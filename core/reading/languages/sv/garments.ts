/** The garment in Swedish: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        jeansbyxor
        utsvängda jeans
      `
    },
    {
      kind: 'trousers',
      phrases: `
        byxor
        byxa
        kostymbyxor
        chinos
        leggings
        mjukisbyxor
        manchesterbyxor
        linnebyxor
        skinnbyxor
        kostymbyxa
        byxorna
        ullbyxor
        träningsbyxor
      `
    },
    {
      kind: 'shorts',
      phrases: `
        shorts
        bermudas
        jeansshorts
      `
    },
    {
      kind: 'skirt',
      phrases: `
        kjolar
        kjol
        minikjol
        pennkjol
        plisserad kjol
        jeanskjol
        plisskjol
        maxikjol
        midikjol
        ullkjol
      `
    },
    {
      kind: 'dress',
      phrases: `
        klänningar
        klänning
        brudklänning
        aftonklänning
        skjortklänning
        omlottklänning
        sommarklänning
        festklänning
        maxiklänning
        stickad klänning
        balklänning
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        overall
        hängselbyxor
        byxdress
        sparkdräkt
      `
    },
    {
      kind: 'shirt',
      phrases: `
        skjorta
        blus
        tunika
        flanellskjorta
        jeansskjorta
        linneskjorta
        sidenblus
        overshirt
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        topp
        linne
        piké
        polotröja
        korsett
        t-tröja
        body
        pikétröja
      `
    },
    {
      kind: 'jumper',
      phrases: `
        tröjor
        tröja
        stickad tröja
        kofta
        cardigan
        hoodie
        sweatshirt
        polotröja stickad
        collegetröja
        pullover
        ulltröja
        luvtröja
        jumper
        slipover
        stickad
      `
    },
    {
      kind: 'jacket',
      phrases: `
        kavaj
        blazer
        kostym
        smoking
        frack
        dräkt
        kavajen
        tweedkavaj
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jacka
        jeansjacka
        skinnjacka
        bomberjacka
        bolero
        mockajacka
        manchesterjacka
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        kappa
        rock
        trenchcoat
        parkas
        dunjacka
        regnjacka
        vinterjacka
        päls
        ullkappa
        regnrock
        skidjacka
        varseljacka
        mc jacka
        täckjacka
        duffel
        överrock
        vindjacka
        vinterkappa
        ullrock
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        väst
        kostymväst
        dunväst
      `
    },
    {
      kind: 'other',
      phrases: `
        poncho
        cape
        morgonrock
        badrock
        nattlinne
        baddräkt
        bikini
        kimono
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        fodrad
        helfodrad
        med foder
        foder
        fodrat
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        ofodrad
        utan foder
        ej fodrad
        inget foder
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        kort ärm
        kortärmad
        korta ärmar
        trekvartsärm
        ärmlös
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        resår i midjan
        resår i midja
        elastisk midja
        resårmidja
        resår i linningen
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'insnitt'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        pennkjol
        rak kjol
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        utställd kjol
        a linje
        utställd
        a-linje
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: `
        cirkelkjol
        helcirkelkjol
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        plisserad kjol
        plisskjol
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: `
        originalfåll
        ej uppsydd
        ej uppsydda
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        dragkedja i sidan
        dragkedja bak
        blixtlås bak
        dragkedja i ryggen
        blixtlås i sidan
        dold dragkedja
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        slits bak
        slits i sidan
      `
    }
  ],
  uses: {
    protective: `
      varsel
      varseljacka
      flamskyddad
      flamhärdig
      med skydd
      varselväst
      sågskydd
      skyddskläder
    `,
    child: `
      barn
      flick
      pojk
      baby
      barnklänning
    `,
    'child-sleepwear': `
      barnpyjamas
      babypyjamas
      sparkdräkt
    `,
    'medical-compression': `
      stödstrumpor
      kompressionsstrumpor
    `
  },
  whose: {
    women: `
      för dam
      för damer
      för kvinnor
      damstorlek
    `,
    men: `
      för herr
      för herrar
      för män
      herrstorlek
    `,
    'women named': `
      dam
      damer
    `,
    'men named': `
      herr
      herrar
    `,
    both: `
      unisex
      dam och herr
      herr och dam
      dam herr
      herr dam
      för dam och herr
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        malhål
        malätet
        malangrepp
      `
    },
    {
      mending: ['patch'],
      phrases: `
        hål
        reva
        revor
        litet hål
        trasig
      `
    },
    {
      mending: ['clean'],
      phrases: `
        fläck
        fläckar
        missfärgning
        liten fläck
        fläckig
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        knapp saknas
        saknar en knapp
        saknad knapp
        en knapp saknas
      `
    },
    {
      mending: ['sew-shank'],
      phrases: 'lös knapp'
    },
    {
      mending: ['close-seam'],
      phrases: `
        söm har gått upp
        trasigt foder
        söm upp
        uppsprucken söm
        sömmen har gått upp
        fodret är trasigt
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        trasig dragkedja
        dragkedjan är trasig
        trasigt blixtlås
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        resåren är slapp
        uttöjd resår
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        noppor
        nopprig
        nopprigt
        noppig
      `
    },
    {
      mending: ['dye'],
      phrases: `
        urblekt
        blekt
        urtvättad
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        repor
        skavmärken
      `
    },
    {
      mending: [],
      phrases: `
        slitage
        slitet
        skada
        defekt
        dragen tråd
        sliten
        skavank
      `
    }
  ]
}

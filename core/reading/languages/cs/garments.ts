/** The garment in Czech: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        džíny
        rifle
        džínsy
        džínové kalhoty
        jeans
        riflové kalhoty
      `
    },
    {
      kind: 'trousers',
      phrases: `
        kalhoty
        legíny
        tepláky
        chinos
        manšestráky
        společenské kalhoty
        lněné kalhoty
        kožené kalhoty
        oblekové kalhoty
        manšestrové kalhoty
        kapsáče
        teplákové kalhoty
      `
    },
    {
      kind: 'shorts',
      phrases: `
        kraťasy
        šortky
        bermudy
        džínové kraťasy
      `
    },
    {
      kind: 'skirt',
      phrases: `
        sukně
        minisukně
        džínová sukně
        plisovaná sukně
        pouzdrová sukně
        midi sukně
      `
    },
    {
      kind: 'dress',
      phrases: `
        šaty
        svatební šaty
        košilové šaty
        letní šaty
        společenské šaty
        maxi šaty
        pletené šaty
        šatičky
        večerní šaty
        zavinovací šaty
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        overal
        kombinéza
        laclové kalhoty
        lacláče
        overall
      `
    },
    {
      kind: 'shirt',
      phrases: `
        košile
        halenka
        blůza
        tunika
        flanelová košile
        džínová košile
        lněná košile
        hedvábná halenka
        blůzka
        halenky
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        tričko
        triko
        top
        tílko
        polo tričko
        polokošile
        body
        korzet
        nátělník
        tílka
        tričko s dlouhým rukávem
      `
    },
    {
      kind: 'jumper',
      phrases: `
        svetr
        mikina
        kardigan
        rolák
        pulovr
        svetřík
        propínací svetr
        mikina s kapucí
        vlněný svetr
        hoodie
      `
    },
    {
      kind: 'jacket',
      phrases: `
        sako
        blejzr
        oblek
        smoking
        kostým
        dámské sako
        kostýmek
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        bunda
        džínová bunda
        kožená bunda
        křivák
        bomber
        bolero
        semišová bunda
        džíska
        riflová bunda
        větrovka
        bundička
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        kabát
        plášť
        parka
        péřovka
        péřová bunda
        zimní bunda
        trenčkot
        baloňák
        pršiplášť
        pončo
        kožich
        vlněný kabát
        zimní kabát
        kabátek
        pláštěnka
        trench coat
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        vesta
        péřová vesta
        společenská vesta
        vesta k obleku
        prošívaná vesta
      `
    },
    {
      kind: 'other',
      phrases: `
        plavky
        bikiny
        pyžamo
        noční košile
        župan
        podprsenka
        kimono
        spodní prádlo
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        s podšívkou
        podšité
        podšitá
        podšitý
        podšívka
        celopodšitý
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        bez podšívky
        nepodšité
        nepodšitá
        nepodšitý
        nemá podšívku
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        krátký rukáv
        krátké rukávy
        bez rukávů
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        guma v pase
        v pase guma
        pas do gumy
        pružný pas
        v pase do gumy
        v pase na gumu
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        pouzdrová sukně
        úzká sukně
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        áčková sukně
        áčkový střih
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        plisovaná sukně
        skládaná sukně
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        zip na boku
        zip vzadu
        zip na zádech
        skrytý zip
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        rozparek vzadu
        rozparek na boku
      `
    }
  ],
  uses: {
    protective: `
      reflexní vesta
      nehořlavé
    `,
    child: `
      dětské
      dětská
      dětský
      dívčí
      chlapecké
      pro holčičku
      pro chlapce
      kojenecké
    `,
    'child-sleepwear': 'dětské pyžamo',
    'medical-compression': 'kompresní punčochy'
  },
  whose: {
    women: `
      dámské
      dámský
      dámská
      pro ženy
    `,
    men: `
      pánské
      pánský
      pánská
      pro muže
    `,
    'women named': 'žena',
    'men named': 'muž',
    both: `
      unisex
      dámské i pánské
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        díra od molů
        dírky od molů
        moli
      `
    },
    {
      mending: ['patch'],
      phrases: `
        díra
        díry
        dírka
        dírky
        děr
        roztržené
        roztržený
        natržené
        dírek
      `
    },
    {
      mending: ['clean'],
      phrases: `
        skvrna
        skvrny
        flek
        fleky
        zašpiněné
        skvrn
        fleků
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        chybí knoflík
        chybějící knoflík
        chybí jeden knoflík
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        rozpáraný šev
        povolený šev
        rozpárané
        rozpáraná
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        rozbitý zip
        nefunkční zip
        nefunguje zip
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        žmolky
        žmolků
        žmolkování
        žmolek
      `
    },
    {
      mending: ['dye'],
      phrases: `
        vybledlé
        vyšisované
        seprané
        vybledlá
      `
    },
    {
      mending: [],
      phrases: `
        známky nošení
        vada
        vady
        zatržená nit
        opotřebení
        opotřebované
      `
    }
  ]
}

/** The garment in Finnish: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        farkut
        farkkuhousut
        farkkuja
        pillifarkut
      `
    },
    {
      kind: 'trousers',
      phrases: `
        housut
        puvunhousut
        chinot
        leggingsit
        legginsit
        pellavahousut
        nahkahousut
        vakosamettihousut
        collegehousut
        verkkarit
        suorat housut
        reisitaskuhousut
        villahousut
        trikoot
      `
    },
    {
      kind: 'shorts',
      phrases: `
        shortsit
        sortsit
        farkkushortsit
        caprit
        bermudat
      `
    },
    {
      kind: 'skirt',
      phrases: `
        hame
        minihame
        vekkihame
        farkkuhame
        kynähame
        maksihame
        kellohame
        midihame
      `
    },
    {
      kind: 'dress',
      phrases: `
        mekko
        leninki
        hääpuku
        iltapuku
        paitamekko
        kesämekko
        kietaisumekko
        neulemekko
        maksimekko
        juhlamekko
        kotelomekko
        tunikamekko
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        haalari
        jumpsuit
        housupuku
        lappuhaalarit
        haalarit
      `
    },
    {
      kind: 'shirt',
      phrases: `
        kauluspaita
        paita
        paitapusero
        pusero
        tunika
        flanellipaita
        pellavapaita
        silkkipaita
        ruutupaita
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t paita
        t-paita
        tpaita
        toppi
        pikeepaita
        pikee
        body
        trikoopaita
        lyhythihainen paita
        hihaton paita
        korsetti
      `
    },
    {
      kind: 'jumper',
      phrases: `
        neule
        villapaita
        neulepaita
        neuletakki
        huppari
        collegepaita
        college
        villatakki
        pooloneule
        cardigan
        svetari
        kerrasto
        neulepusero
      `
    },
    {
      kind: 'jacket',
      phrases: `
        bleiseri
        blazer
        puku
        puvuntakki
        pikkutakki
        smokki
        jakku
        jakkupuku
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        farkkutakki
        nahkatakki
        bomber
        rotsi
        pilottitakki
        mokkatakki
        takki lyhyt
        bolero
        tuulitakki
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        takki
        villakangastakki
        trenssi
        parka
        untuvatakki
        toppatakki
        sadetakki
        talvitakki
        poncho
        viitta
        turkki
        päällystakki
        ulsteri
        trenssitakki
        kevättakki
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        liivi
        puvunliivi
        untuvaliivi
        toppaliivi
      `
    },
    {
      kind: 'other',
      phrases: `
        bikinit
        uimapuku
        yöpaita
        pyjama
        kylpytakki
        rintaliivit
        kimono
        alusasu
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        vuorellinen
        vuoritettu
        vuorattu
        kokovuori
        vuori
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        vuoriton
        ei vuoria
        ilman vuoria
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        lyhyet hihat
        lyhythihainen
        hihaton
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        kuminauhavyötärö
        kuminauha vyötäröllä
        vyötäröllä kuminauha
        resorivyötärö
        kuminauhavyötäröllä
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: 'kynähame'
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        kellohame
        a linjainen
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        vekkihame
        vekitetty
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        vetoketju sivussa
        vetoketju takana
        piilovetoketju
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        halkio takana
        halkio sivussa
      `
    }
  ],
  uses: {
    protective: `
      heijastinliivi
      palosuojattu
    `,
    child: `
      lasten
      tyttöjen
      poikien
      vauvan
      lapsi
    `,
    'child-sleepwear': `
      lasten pyjama
      lasten yöpaita
    `,
    'medical-compression': 'tukisukat'
  },
  whose: {
    women: `
      naisten
      naisille
    `,
    men: `
      miesten
      miehille
    `,
    'women named': 'nainen',
    'men named': 'mies',
    both: `
      unisex
      naisten ja miesten
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        koinreikä
        koinreikiä
        koinsyömä
      `
    },
    {
      mending: ['patch'],
      phrases: `
        reikä
        reikiä
        repeämä
        pieni reikä
        repeytynyt
      `
    },
    {
      mending: ['clean'],
      phrases: `
        tahra
        tahroja
        läikkä
        värjäytymä
        tahrainen
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        nappi puuttuu
        puuttuu nappi
        yksi nappi puuttuu
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        sauma auki
        sauma ratkennut
        purkautunut sauma
        vuori rikki
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        vetoketju rikki
        rikkinäinen vetoketju
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        nyppyjä
        nyppyyntynyt
        nukkaantunut
        nöyhtää
        nyppyinen
      `
    },
    {
      mending: ['dye'],
      phrases: `
        haalistunut
        haalistuma
      `
    },
    {
      mending: [],
      phrases: `
        kulumaa
        käytön jälkiä
        vika
        lankajuoksu
        kulunut
        vikoja
      `
    }
  ]
}

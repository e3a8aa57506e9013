/** The garment in Polish: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeansy
        dżinsy
        spodnie jeansowe
        jeans
        dzwony jeansowe
      `
    },
    {
      kind: 'trousers',
      phrases: `
        spodnie
        spodni
        chinosy
        legginsy
        spodnie garniturowe
        dresy
        spodnie dresowe
        sztruksy
        spodnie materiałowe
        spodnie w kant
        culotte
        spodnie lniane
        spodnie wełniane
        spodnie skórzane
      `
    },
    {
      kind: 'shorts',
      phrases: `
        szorty
        krótkie spodenki
        spodenki
        bermudy
      `
    },
    {
      kind: 'skirt',
      phrases: `
        spódnica
        spódniczka
        spódnica ołówkowa
        spódnica plisowana
        mini spódniczka
        spódnica jeansowa
        spódnice
      `
    },
    {
      kind: 'dress',
      phrases: `
        sukienki
        sukienka
        suknia
        suknia ślubna
        sukienka wieczorowa
        suknia wieczorowa
        sukienka maxi
        sukienka midi
        sukienka letnia
        szmizjerka
        tunika sukienka
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        kombinezon
        ogrodniczki
        pajacyk
      `
    },
    {
      kind: 'shirt',
      phrases: `
        koszula
        bluzka
        koszula jeansowa
        tunika
        koszula flanelowa
        koszula lniana
        koszula męska
        bluzka koszulowa
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        koszulka
        top
        polo
        podkoszulek
        bokserka
        gorset
        body
        bluzka na ramiączkach
      `
    },
    {
      kind: 'jumper',
      phrases: `
        swetry
        sweter
        bluza
        kardigan
        golf sweter
        sweterek
        pulower
        bluza z kapturem
        bezrękawnik dzianinowy
        swetr
        sweter wełniany
        rozpinany sweter
      `
    },
    {
      kind: 'jacket',
      phrases: `
        marynarka
        garnitur
        żakiet
        smoking
        garsonka
        frak
        kostium
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        kurtka jeansowa
        kurtka skórzana
        katana
        ramoneska
        bomberka
        bolerko
        kurtka dżinsowa
        katana jeansowa
        kurteczka
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        prochowiec męski
        płaszcz
        kurtka
        parka
        trencz
        kurtka zimowa
        kurtka puchowa
        kożuch
        prochowiec
        futro
        płaszcz wełniany
        kurtka narciarska
        kurtka przeciwdeszczowa
        kurtka ostrzegawcza
        kurtka motocyklowa
        płaszczyk
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        kamizelka
        bezrękawnik
        kamizelka garniturowa
      `
    },
    {
      kind: 'other',
      phrases: `
        poncho
        peleryna
        szlafrok
        koszula nocna
        strój kąpielowy
        bikini
        kimono
        piżama
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        z podszewką
        na podszewce
        podszewka
        w całości na podszewce
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        bez podszewki
        brak podszewki
        nie ma podszewki
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        krótki rękaw
        krótkie rękawy
        bez rękawów
        rękaw 3 4
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        gumka w pasie
        elastyczny pas
        gumka w talii
        na gumce w pasie
        pas na gumce
        w pasie gumka
        pas z gumką
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'zaszewki'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        spódnica ołówkowa
        ołówkowa
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        rozkloszowana
        litera a
        trapezowa
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: `
        spódnica z koła
        z koła
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        spódnica plisowana
        plisowana spódnica
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'oryginalne wykończenie dołu'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        zamek z boku
        zamek z tyłu
        zapinana z boku
        suwak z tyłu
        suwak z boku
        zapinana na zamek z tyłu
        kryty zamek
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        rozcięcie z tyłu
        rozcięcie z boku
      `
    }
  ],
  uses: {
    protective: `
      odblaskowa
      ostrzegawcza
      trudnopalna
      z ochraniaczami
      kamizelka ostrzegawcza
      ochraniacze
      antyprzecięciowe
    `,
    child: `
      dziecięca
      dziecięcy
      dla dziewczynki
      dla chłopca
      niemowlęce
      dziecięce
      dla dziecka
    `,
    'child-sleepwear': `
      piżama dziecięca
      piżamka
      pajacyk
    `,
    'medical-compression': `
      pończochy uciskowe
      kompresyjne medyczne
      rajstopy uciskowe
    `
  },
  whose: {
    women: `
      damski
      damska
      damskie
      damskiej
      damskich
      damską
      dla kobiet
      dla kobiety
      dla pań
    `,
    men: `
      męski
      męska
      męskie
      męskiej
      męskich
      męską
      dla mężczyzn
      dla mężczyzny
      dla panów
    `,
    'women named': 'kobiety',
    'men named': 'mężczyźni',
    both: `
      unisex
      uniseks
      damski i męski
      męski i damski
      damska i męska
      męska i damska
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        dziurka po molach
        dziurki po molach
        mole
      `
    },
    {
      mending: ['patch'],
      phrases: `
        dziura
        dziurka
        rozdarcie
        dziurki
        dziury
        przetarcie dziura
      `
    },
    {
      mending: ['clean'],
      phrases: `
        plama
        plamy
        plamka
        plamki
        zabrudzenie
        zabrudzenia
        przebarwienie
        przebarwienia
        zażółcenia
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        brak guzika
        brakuje guzika
        brak jednego guzika
        brakuje jednego guzika
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        rozprute
        rozpruty szew
        pęknięty szew
        podarta podszewka
        rozpruta podszewka
        puścił szew
        rozpruta
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        zepsuty zamek
        zamek zepsuty
        uszkodzony zamek
        zepsuty suwak
        zacina się zamek
        zamek do wymiany
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        gumka rozciągnięta
        luźna gumka
        wyrobiona gumka
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        zmechacenia
        zmechacona
        kulki
        zmechacony
        mechacenia
        zmechacone
      `
    },
    {
      mending: ['dye'],
      phrases: `
        wyblakła
        wyblakły
        sprana
        sprane
        odbarwienie
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        otarcia
        otarcie
        zarysowania
      `
    },
    {
      mending: [],
      phrases: `
        ślady użytkowania
        ślady noszenia
        wada
        zaciągnięcie
        zaciągnięcia
        uszkodzenie
        defekt
        mankament
      `
    }
  ]
}

/** Cloth in Polish: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      bawełna
      bawełny
      bawełniana
      bawełniany
      bawełniane
    `,
    wool: `
      wełna
      wełny
      wełniany
      wełniana
      merino
      wełna dziewicza
      wełny merino
      wełniane
      wełna merino
    `,
    linen: `
      len
      lnu
      lniany
      lniana
      lniane
    `,
    silk: `
      jedwab
      jedwabiu
      jedwabna
      jedwabny
    `,
    viscose: `
      wiskoza
      wiskozy
    `,
    polyester: `
      poliester
      poliestru
      polyester
    `,
    polyamide: `
      poliamid
      nylon
      poliamidu
      nylonu
    `,
    elastane: `
      elastan
      elastanu
      spandex
      lycra
    `,
    acrylic: `
      akryl
      akrylu
    `,
    cashmere: `
      kaszmir
      kaszmiru
      kaszmirowy
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: `
      octan
      acetat
    `,
    cupro: 'cupro',
    mohair: `
      moher
      moheru
    `,
    alpaca: `
      alpaka
      alpaki
    `,
    angora: `
      angora
      angory
    `,
    hemp: 'konopie',
    polyurethane: `
      poliuretan
      poliuretanu
    `
  },
  structures: {
    woven: `
      tkanina
      denim
      sztruks
      flanela
      flanelowa
      gabardyna
    `,
    knit: `
      dzianina
      dziergany
      jersey
      dziergana
      dzianinowa
      szydełkowa
    `,
    leather: `
      skóra
      zamsz
      skórzana
      skóra naturalna
      skórzany
      skórzane
      zamszowa
    `
  },
  traits: {
    rigid: `
      nierozciągliwe
      nieelastyczne
      nie rozciągają się
      nieelastyczny
      nie rozciąga się
    `,
    denim: `
      denim
      jeansowa
      jeansowy
      dżinsowa
      jeansowe
    `,
    pile: `
      sztruks
      aksamit
      welur
      sztruksy
      sztruksowa
      aksamitna
      welurowa
    `,
    check: `
      kratka
      w kratkę
      krata
      w kratę
      szkocka krata
      pepitka
    `,
    stripe: `
      paski
      w paski
      prążki
      w prążki
      prążek
    `,
    sheer: `
      przezroczysta
      prześwitująca
      szyfon
      tiul
      organza
      prześwitujący
    `,
    slippery: `
      satyna
      satynowa
      satynowy
    `,
    beaded: `
      cekiny
      koraliki
      cekinowa
      w cekiny
    `,
    pleated: `
      plisowana
      plisa
      plisy
      zakładki
    `,
    suede: `
      zamsz
      zamszowa
    `,
    vinyl: `
      lakierowana
      eko skóra
      ekoskóra
      sztuczna skóra
      winyl
    `,
    coated: `
      woskowana
      powlekana
    `,
    silk: `
      jedwab
      jedwabna
      jedwabiu
      jedwabny
    `,
    taffeta: 'tafta'
  },
  colours: {
    black: `
      czarny
      czarna
      czarne
    `,
    white: `
      biały
      biała
      białe
    `,
    grey: `
      szary
      szara
      szare
      grafitowy
      popielaty
      grafitowa
    `,
    navy: `
      granatowy
      granatowa
      granat
      granatowe
    `,
    blue: `
      niebieski
      niebieska
      błękitny
      niebieskie
      błękitna
    `,
    teal: `
      turkusowy
      turkusowa
      morski
    `,
    green: `
      zielony
      zielona
      oliwkowy
      zielone
      oliwkowa
      butelkowa zieleń
    `,
    red: `
      czerwony
      czerwona
      czerwone
    `,
    burgundy: `
      bordowy
      bordowa
      bordo
      bordowe
    `,
    pink: `
      różowy
      różowa
      fuksja
      różowe
    `,
    purple: `
      fioletowy
      fioletowa
      liliowy
      liliowa
    `,
    orange: `
      pomarańczowy
      rudy
      pomarańczowa
      ruda
    `,
    yellow: `
      żółty
      żółta
      musztardowy
      musztardowa
    `,
    brown: `
      brązowy
      brązowa
      camel
      brązowe
    `,
    beige: `
      beżowy
      beżowa
      beżowe
    `,
    cream: `
      kremowy
      kremowa
      ecru
    `,
    gold: `
      złoty kolor
      złota
    `,
    silver: `
      srebrny
      srebrna
    `
  }
}

/** The garment in Italian: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        pantaloni jeans
        jeans a zampa
      `
    },
    {
      kind: 'trousers',
      phrases: `
        pantaloni
        pantalone
        pantaloni eleganti
        leggings
        chinos
        pantaloni della tuta
        pantaloni di velluto
        pantaloni palazzo
        pantaloni larghi
        pantaloni da tuta
        pantaloni cargo
      `
    },
    {
      kind: 'shorts',
      phrases: `
        pantaloncini
        bermuda
        shorts
        pantaloni corti
      `
    },
    {
      kind: 'skirt',
      phrases: `
        gonne
        gonna
        minigonna
        gonna a tubino
        gonna plissettata
        gonna di jeans
        gonna longuette
        gonna lunga
        gonna midi
        gonna pantalone
      `
    },
    {
      kind: 'dress',
      phrases: `
        chemisier
        abiti
        vestito
        abito
        abito da sposa
        abito da sera
        tubino
        vestitino
        abito lungo
        vestito lungo
        vestito estivo
        abito elegante
        abito cerimonia
        prendisole
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        tuta intera
        salopette
        tuta elegante
        jumpsuit
        tutina
      `
    },
    {
      kind: 'shirt',
      phrases: `
        camicie
        camicia
        camicetta
        blusa
        camicia di jeans
        casacca
        tunica
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        maglietta
        top
        canotta
        polo
        body
        corsetto
        canottiera
        bustino
        maglia a maniche corte
      `
    },
    {
      kind: 'jumper',
      phrases: `
        maglione
        pullover
        felpa
        cardigan
        golfino
        maglia
        golf
        dolcevita
        maglioncino
        felpa con cappuccio
        maglione di lana
      `
    },
    {
      kind: 'jacket',
      phrases: `
        giacche
        blazer
        giacca elegante
        completo
        smoking
        tailleur
        giacca da uomo elegante
        abito completo uomo
        giacca sartoriale
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        giacca
        giubbotto
        giacca di jeans
        giubbotto di jeans
        giacca di pelle
        chiodo
        bomber
        giubbino
        giacca di velluto
        giubbotto di pelle
        giubbino di jeans
        giacchetta
        coprispalle
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        cappotto lungo
        cappotti
        cappotto
        trench
        parka
        piumino
        impermeabile
        giacca a vento
        montgomery
        soprabito
        pelliccia
        giaccone
        cappotto di lana
        giubbotto alta visibilità
        giacca da moto
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        gilet
        panciotto
        smanicato
      `
    },
    {
      kind: 'other',
      phrases: `
        poncho
        mantella
        vestaglia
        accappatoio
        camicia da notte
        costume da bagno
        bikini
        kimono
        pigiama
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        foderato
        foderata
        con fodera
        fodera
        interamente foderato
        interamente foderata
        completamente foderato
        sfoderabile
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        sfoderato
        sfoderata
        senza fodera
        non foderato
        non foderata
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        maniche corte
        manica corta
        maniche a tre quarti
        maniche 3 4
        senza maniche
        smanicato
        smanicata
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        vita elastica
        elastico in vita
        elastico alla vita
        vita elasticizzata
        vita con elastico
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: `
        pinces
        riprese
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        gonna a tubino
        gonna dritta
        gonna longuette
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        svasata
        gonna svasata
        linea a
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: 'gonna a ruota'
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        gonna plissettata
        gonna a pieghe
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'orlo originale'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        zip laterale
        cerniera laterale
        cerniera posteriore
        zip posteriore
        zip dietro
        cerniera dietro
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        spacco posteriore
        spacco laterale
        spacco dietro
      `
    }
  ],
  uses: {
    protective: `
      alta visibilità
      ignifugo
      ignifuga
      con protezioni
      antitaglio
      catarifrangente
      protezioni omologate
    `,
    child: `
      bambino
      bambina
      neonato
      bimba
      bimbo
      neonata
    `,
    'child-sleepwear': `
      pigiama bambino
      pigiama bambina
      pigiama neonato
      tutina neonato
    `,
    'medical-compression': `
      calze a compressione
      calze contenitive
      compressione graduata
    `
  },
  whose: {
    women: `
      da donna
      per donna
      per donne
    `,
    men: `
      da uomo
      per uomo
      per uomini
    `,
    'women named': 'donna',
    'men named': 'uomo',
    both: `
      unisex
      uomo e donna
      uomo donna
      donna uomo
      da uomo e donna
      da uomo o da donna
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        buco di tarma
        buchi di tarme
        tarme
        tarmato
      `
    },
    {
      mending: ['patch'],
      phrases: `
        buco
        buchi
        strappo
        strappi
        strappato
        buchino
        bruciatura
      `
    },
    {
      mending: ['clean'],
      phrases: `
        macchia
        macchie
        macchiato
        macchiata
        alone
        aloni
        macchiolina
        ingiallito
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        manca un bottone
        bottone mancante
        mancano bottoni
        bottoni mancanti
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        scucito
        scucita
        scucitura
        fodera strappata
        orlo scucito
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        zip rotta
        cerniera rotta
        zip da sostituire
        cerniera da sostituire
        zip difettosa
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        elastico allentato
        elastico ceduto
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        pallini
        pelucchi
        pilling
      `
    },
    {
      mending: ['dye'],
      phrases: `
        sbiadito
        scolorito
        scolorita
        sbiadita
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        graffi
        graffio
      `
    },
    {
      mending: [],
      phrases: `
        difetto
        difetti
        filo tirato
        fili tirati
        segni di usura
        segni di utilizzo
        usurato
      `
    }
  ]
}

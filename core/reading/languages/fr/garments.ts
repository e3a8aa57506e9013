/** The garment in French: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jean
        jeans
        jean droit
        jean mom
        jean flare
        pantalon en jean
      `
    },
    {
      kind: 'trousers',
      phrases: `
        pantalon palazzo
        pantalon
        pantalons
        chino
        legging
        jogging
        pantalon à pinces
        pantalon de costume
        pantalon cigarette
        bas de jogging
        sarouel
        pantalon large
        bas de pyjama
        pantalon de pyjama
        pantacourt
        salopette pantalon
        corsaire
      `
    },
    {
      kind: 'shorts',
      phrases: `
        short
        shorts
        bermuda
        short en jean
      `
    },
    {
      kind: 'skirt',
      phrases: `
        jupe
        minijupe
        mini jupe
        jupe crayon
        jupe plissée
        jupe portefeuille
        jupe longue
        jupe midi
        jupe droite
        jupe en jean
        jupon
        kilt
      `
    },
    {
      kind: 'dress',
      phrases: `
        robe chemisier
        robes
        robe
        robe longue
        robe de mariée
        robe de soirée
        robe chemise
        robe pull
        robe portefeuille
        robe d été
        robe droite
        robe en jean
        robe midi
        robe tunique
        robe trapèze
        robe fourreau
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        combinaison
        salopette
        combishort
        combi pantalon
        bleu de travail
        grenouillère
        combinaison pantalon
      `
    },
    {
      kind: 'shirt',
      phrases: `
        chemises
        chemise
        chemisier
        blouse
        surchemise
        tunique
        chemise en jean
        chemisette
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        t shirt
        tshirt
        tee shirt
        haut
        top
        débardeur
        polo
        caraco
        body
        marinière
        corset
        bustier
        sous pull
      `
    },
    {
      kind: 'jumper',
      phrases: `
        pull
        gilet en laine
        pullover
        sweat
        sweatshirt
        cardigan
        gilet
        sweat à capuche
        pull col roulé
        hoodie
        polaire
        gilet long
        pull en laine
        gilet tricoté
      `
    },
    {
      kind: 'jacket',
      phrases: `
        surveste
        blazer
        veste de costume
        costume
        veste de tailleur
        tailleur
        smoking
        veste blazer
        veste tailleur
        ensemble tailleur
        veston
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        veste
        veste en jean
        blouson
        perfecto
        veste en cuir
        bomber
        teddy
        boléro
        blouson en cuir
        veste en velours
        veste courte
        veste de travail
        veste en daim
        saharienne
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        imper
        ciré
        manteau
        trench
        parka
        doudoune
        imperméable
        caban
        duffle coat
        anorak
        coupe vent
        pardessus
        manteau en laine
        veste de ski
        gilet haute visibilité
        trench coat
        manteau long
        veste imperméable
        veste de moto
        blouson moto
        blouson de moto
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        gilet sans manches
        gilet de costume
        doudoune sans manches
        veste sans manches
      `
    },
    {
      kind: 'other',
      phrases: `
        cape
        poncho
        peignoir
        kimono
        robe de chambre
        chemise de nuit
        nuisette
        maillot de bain
        bikini
        pyjama
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        doublé
        doublée
        entièrement doublé
        entièrement doublée
        doublure
        avec doublure
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        non doublé
        non doublée
        sans doublure
        pas doublé
        pas doublée
        pas de doublure
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        manches courtes
        manche courte
        manches trois quarts
        manches 3 4
        sans manches
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        taille élastique
        taille élastiquée
        élastique à la taille
        ceinture élastique
        élastiqué à la taille
        ceinture élastiquée
        taille élastiqué
      `
    },
    {
      fact: { fact: 'backSeam', value: true },
      phrases: `
        couture dos
        couture milieu dos
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'pinces'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        jupe crayon
        jupe droite
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        évasée
        jupe évasée
        trapèze
        ligne a
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: 'jupe plissée'
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'ourlet d origine'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        fermeture éclair sur le côté
        zip côté
        zip dos
        fermeture au dos
        fermeture côté
        zip sur le côté
        fermeture éclair au dos
        fermeture éclair côté
        zip au dos
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        fente dos
        fente côté
        fendue
      `
    }
  ],
  uses: {
    protective: `
      haute visibilité
      ignifugé
      ignifuge
      coques de protection
      protections homologuées
      anti coupure
      gilet de sécurité
      avec protections
    `,
    child: `
      enfant
      enfants
      fille
      garçon
      bébé
      fillette
    `,
    'child-sleepwear': `
      pyjama enfant
      pyjama bébé
      grenouillère
      pyjama fille
      pyjama garçon
      chemise de nuit fille
    `,
    'medical-compression': `
      bas de contention
      contention
      compression médicale
      chaussettes de contention
    `
  },
  whose: {
    women: `
      pour femme
      pour femmes
      pour dame
      de femme
    `,
    men: `
      pour homme
      pour hommes
      d'homme
    `,
    'women named': `
      femme
      femmes
      dame
    `,
    'men named': `
      homme
      hommes
    `,
    both: `
      mixte
      unisexe
      unisex
      homme et femme
      femme et homme
      homme ou femme
      femme ou homme
      homme femme
      femme homme
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        trou de mite
        trous de mites
        trous de mite
        mité
        mitée
      `
    },
    {
      mending: ['patch'],
      phrases: `
        trou
        trous
        accroc
        déchirure
        déchiré
        déchirée
        petit trou
        brûlure
      `
    },
    {
      mending: ['clean'],
      phrases: `
        tache
        taches
        tâche
        tâches
        tâché
        tachée
        taché
        auréole
        auréoles
        jauni
        odeur
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        bouton manquant
        manque un bouton
        il manque un bouton
        boutons manquants
        un bouton manque
      `
    },
    {
      mending: ['sew-shank'],
      phrases: `
        bouton à recoudre
        bouton décousu
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        décousu
        décousue
        couture ouverte
        doublure déchirée
        ourlet défait
        couture défaite
        à recoudre
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        fermeture cassée
        zip cassé
        fermeture éclair cassée
        fermeture à changer
        fermeture abîmée
        zip défectueux
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: 'élastique détendu'
    },
    {
      mending: ['de-pill'],
      phrases: `
        bouloches
        bouloché
        boulochée
        boulochage
      `
    },
    {
      mending: ['dye'],
      phrases: `
        décoloré
        décolorée
        délavé
        délavée
        décoloration
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        éraflure
        éraflures
      `
    },
    {
      mending: [],
      phrases: `
        défaut
        défauts
        fil tiré
        fils tirés
        traces d usure
        abîmé
        abîmée
        usure
      `
    }
  ]
}

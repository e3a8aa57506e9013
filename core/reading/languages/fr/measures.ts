/** What is measured, in French: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      poitrine
      tour de poitrine
      buste
      tour de buste
      tour poitrine
      tdp
      contour de poitrine
      contour poitrine
      contour de buste
    `,
    'chest flat': `
      aisselle à aisselle
      aisselles
      aisselle
      aisselles à aisselles
      aisselle a aisselle
      sous les bras
      sous aisselles
      largeur aisselles
      largeur sous les bras
      largeur poitrine
      largeur de poitrine
      d aisselle à aisselle
      entre aisselles
      largeur aisselle
      largeur sous aisselles
      largeur d aisselle à aisselle
      demi poitrine
      carrure aisselles
      sous bras
      largeur sous bras
      largeur buste
      sous les aisselles
      largeur aux aisselles
      de dessous de bras à dessous de bras
      largeur sous les aisselles
      aisselle aisselle
      entre les aisselles
      1 2 poitrine
      demi tour de poitrine
      d une aisselle à l autre
      sous les bras à plat
      largeur sous bras à plat
    `,
    waist: `
      taille
      tour de taille
      ceinture tour
      tour taille
      tdt
      tour de ceinture
      contour taille
      contour de taille
      tour de la taille
    `,
    'waist flat': `
      largeur taille
      largeur de taille
      demi taille
      largeur ceinture
      largeur à la taille
      demi tour de taille
      1 2 taille
      largeur au niveau de la taille
      largeur de la taille
    `,
    hip: `
      hanches
      tour de hanches
      hanche
      bassin
      tour de bassin
      tour hanches
      tour de hanche
      contour hanches
      contour de hanches
      tour des hanches
      contour de bassin
    `,
    'hip flat': `
      largeur hanches
      largeur de hanches
      largeur aux hanches
      demi hanches
      largeur hanche
      demi tour de hanches
      largeur bassin
    `,
    sweep: `
      tour de jupe bas
      ampleur bas
      tour du bas
    `,
    bottomEdge: `
      ourlet
      bas
      largeur bas
      largeur du bas
      largeur en bas
      bas largeur
      largeur ourlet
      largeur de bas
    `,
    bicep: `
      tour de bras
      largeur manche
      largeur de manche
      tour de biceps
      haut du bras
    `,
    cuff: `
      poignet
      tour de poignet
      bas de manche
      poignets
    `,
    'neck weak': 'col',
    'sleeveLength weak': `
      manches longues
      manche longue
      manches courtes
      manche courte
    `,
    waistband: 'ceinture',
    neck: `
      encolure
      tour de cou
      tour d encolure
    `,
    thigh: `
      cuisse
      tour de cuisse
      largeur cuisse
      largeur de cuisse
      cuisses
      largeur cuisses
    `,
    knee: `
      genou
      largeur genou
      genoux
      largeur au genou
    `,
    calf: `
      mollet
      tour de mollet
    `,
    legOpening: `
      bas de jambe
      ouverture bas
      largeur bas de jambe
      bas de pantalon
      ouverture de jambe
      ouverture jambe
      largeur cheville
      cheville
      bas jambe
      largeur jambe en bas
      bas des jambes
      bas de la jambe
      largeur bas de pantalon
      tour de cheville
      ouverture cuisse
      ouverture de cuisse
      ouverture jambes
      largeur bas des jambes
      bas jambes
      largeur du bas de jambe
      bas de jambes
      largeur au bas
    `,
    elbow: 'coude',
    underbust: `
      sous poitrine
      tour sous poitrine
      dessous de poitrine
    `,
    armhole: `
      emmanchure
      emmanchures
    `,
    shoulderWidth: `
      épaule à épaule
      épaules
      largeur épaules
      largeur d épaules
      carrure
      carrure épaules
      largeur des épaules
      épaule épaule
      carrure dos épaules
      d épaule à épaule
      largeur aux épaules
      épaules largeur
      largeur épaule
      largeur d épaule
      épaule a épaule
      entre les épaules
    `,
    sleeveLength: `
      manche
      manches
      longueur manche
      longueur manches
      longueur de manche
      longueur des manches
      longueur de manches
      long manche
      longueur bras
      bras
      manches longueur
      longueur de la manche
      manche longueur
    `,
    sleeveFromCentreBack: 'manche raglan',
    sleeveUnderarm: `
      manche intérieure
      longueur manche intérieure
      manche dessous
      manche sous bras
      intérieur manche
      aisselle poignet
      longueur intérieure manche
      manche intérieur
      longueur intérieure des manches
      dessous de manche
      longueur sous manche
    `,
    length: `
      longueur
      longueur totale
      long
      longue
      hauteur
      hauteur totale
      longueur dos
      long dos
      long totale
      longueur devant
      hauteur dos
      lg
      longeur
      longueur complete
      longueur complète
      longueur du dos
      longueur du col au bas
      hauteur du col au bas
      longueur depuis l épaule
      longueur devant depuis l épaule
      longueur milieu dos
      haut en bas
      de haut en bas
      longueur max
    `,
    bodyLength: `
      épaule à ourlet
      longueur robe
      longueur veste
      longueur manteau
      hauteur épaule
      longueur de robe
      col à ourlet
    `,
    skirtLength: `
      longueur jupe
      longueur de jupe
      longueur de la jupe
      hauteur jupe
    `,
    napeToWaist: `
      longueur taille dos
      nuque à taille
      épaule à taille
    `,
    backWidth: `
      carrure dos
      largeur dos
      largeur du dos
    `,
    inseam: `
      entrejambe
      entre jambe
      entre jambes
      entrejambes
      longueur entrejambe
      couture intérieure
      intérieur jambe
      longueur intérieure jambe
      longueur intérieure
      intérieur de jambe
      longueur intérieur
      longueur d entrejambe
      longueur entre jambe
      entre-jambe
      entre-jambes
      jambe intérieure
      longueur de jambe intérieure
      longueur jambe intérieure
      couture entrejambe
      intérieur de la jambe
      longueur entre jambes
      jambe intérieur
    `,
    legLength: `
      longueur jambe
      longueur de jambe
    `,
    outseam: `
      longueur extérieure
      couture extérieure
      côté extérieur
      longueur côté
      extérieur jambe
      longueur pantalon
      longueur extérieur
      longueur totale pantalon
      longueur du pantalon
      couture côté
      jambe extérieure
      longueur jambe extérieure
      extérieur de jambe
    `,
    rise: `
      montant
      fourche
      hauteur de fourche
      enfourchure
      montée
      hauteur fourche
      hauteur d entrejambe
    `,
    frontRise: `
      montant devant
      fourche devant
      enfourchure devant
      hauteur devant fourche
      montant avant
    `,
    backRise: `
      montant dos
      fourche dos
      montant arrière
      enfourchure dos
      montant derrière
    `,
    strap: `
      bretelle
      bretelles
      longueur bretelles
      longueur des bretelles
      longueur de bretelles
      longueur bretelle
    `,
    torsoLength: 'longueur torse',
    width: `
      largeur
      large
    `
  },
  letters: { p: 'chest', t: 'waist', h: 'hip', l: 'length', m: 'sleeveLength', e: 'shoulderWidth' },
  landmarks: {
    shoulder: `
      épaule
      épaules
      couture épaule
      couture d épaule
      haut de l épaule
      bretelle
    `,
    neck: `
      col
      nuque
      encolure
      haut du col
      base du col
      bas du col
      dessous du col
      milieu dos
    `,
    armpit: `
      aisselle
      aisselles
      dessous de bras
      sous bras
    `,
    waist: `
      taille
      ceinture
      haut de ceinture
    `,
    hip: 'hanche',
    crotch: `
      entrejambe
      fourche
    `,
    knee: 'genou',
    hem: `
      ourlet
      bas
      sol
      cheville
      bas de la robe
      bas du vêtement
      base
    `,
    cuff: `
      poignet
      bas de manche
      bout de manche
      fin de manche
      bout de la manche
      fin de la manche
      poignets
      bas de la manche
    `,
    elbow: 'coude',
    bust: 'poitrine',
    top: 'haut'
  },
  basis: {
    flat: `
      à plat
      a plat
      posé à plat
      vêtement à plat
      mesuré à plat
      mis à plat
      prises à plat
      largeur à plat
      non doublé
      de côté à côté
      d un côté à l autre
      d un bord à l autre
      couture à couture
      à multiplier
      d une couture à l autre
      posée à plat
    `,
    around: `
      circonférence
      tour complet
      au total
      tout autour
      tour total
      de tour
      en circonférence
      tour
    `,
    doubled: `
      x2
      x 2
      doublé
      fois 2
      fois deux
      multiplié par deux
      2x
    `,
    double: `
      à doubler
      multiplier par 2
      multiplier par deux
      à multiplier par 2
      à multiplier par deux
      doubler
    `
  },
  units: {
    in: `
      pouce
      pouces
      po
      inch
      inches
    `,
    cm: `
      cm
      centimètre
      centimètres
      cms
    `,
    mm: `
      mm
      millimètre
      millimètres
    `,
    m: `
      m
      mètre
      mètres
    `,
    ft: 'pieds'
  },
  numbers: {
    deux: 2,
    trois: 3,
    quatre: 4,
    cinq: 5,
    six: 6,
    huit: 8,
    dix: 10,
    douze: 12,
    quinze: 15,
    vingt: 20,
    trente: 30,
    quarante: 40,
    cinquante: 50
  }
}

/** What is no measure of the garment, in French: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    longueur traîne
    doublure
    longueur doublure
    col
    revers
    poche
    poches
    fente
    fermeture
    zip
    ceinture
    boutons
    bouton
    passants
    capuche
    talon
    talons
    volant
    noeud
    dentelle
    franges
    doublure hauteur
    hauteur ceinture
    hauteur de ceinture
    hauteur col
    décolleté
    profondeur décolleté
    largeur bretelles
    patte
    bord côte
    aisselle à ourlet
    longueur sous aisselle
    hauteur sous bras
    longueur aisselle bas
    traîne
    revers bas
  `,
  thing: `
    sac
    sac à main
    sacoche
    chaussures
    bottes
    bottines
    escarpins
    ordinateur
    téléphone
    chapeau
    bonnet
    casquette
    écharpe
    foulard
    tissu
    coupon
    rideau
    coussin
    valise
    semelle
    tige
    portefeuille
    voile de mariée
    voile de mariage
    patron de couture
    patron couture
    bijou
    bijoux
    bague
    collier
    boucles d oreilles
    broche
    gants
    cravate
    mannequin de couture
    métrage
    coupon de tissu
  `,
  height: `
    de haut
    mesure 1m
    stature
  `,
  model: `
    mannequin
    modèle
    je mesure
    je fais
    je suis
    elle mesure
    elle porte
    elle fait
    je porte
    ma taille
    sur moi
    mes mensurations
    mannequine
    il mesure
    il porte
    porté par
  `,
  fits: `
    convient
    convient à
    convient pour
    conviendra
    conviendrait
    idéal pour
    correspond
    correspond à
    pour une
    pour un
    irait
    ira
    peut convenir
    taille comme
    recommandé pour
    je conseille
    conseillé pour
    va jusqu à
    correspondrait
    équivaut
  `,
  parcel: `
    colis
    envoi
    paquet
    emballage
    expédition
    mondial
    carton
  `,
  elsewhere: `
    autre annonce
    annonce séparée
    vendu séparément
    vendue séparément
    vendus séparément
    à part
    annonce à part
  `,
  nothing: `
    taille haute
    taille basse
    taille unique
    mi long
    mi longue
    mi cuisse
    manches longues
    manches courtes
    manche longue
    manche courte
    sans manches
    manches 3 4
    3 4
    col roulé
    col v
    col rond
    col claudine
    longueur genou
    longueur genoux
    taille élastique
    taille élastiquée
    taille normale
    taille petit
    taille grand
    taille bien
    taille mi haute
    poche poitrine
    poches poitrine
    longtemps
    le long
    bonne taille
    taille ajustable
    ma taille habituelle
    taille empire
    ras de cou
    col montant
    épaulettes
    col chemise
    grande taille
    petite taille
    longue durée
  `,
  otherUnit: `
    boutons
    poches
    pièces
    pièce
    paire
    jours
    jour
    ans
    mois
    pour cent
    degrés
    degré
    kg
    g
    grammes
    euros
    euro
    fois
    heures
    trous
    trou
    lot
    passants
    ème
    e
    semaines
    photos
    tailles
  `,
  sizeChart: `
    guide des tailles
    guide de tailles
    tableau des tailles
    grille des tailles
  `,
  bodyChart: `
    mensurations du corps
    mesures du corps
    mesures corporelles
  `,
  cutFor: `
    pour un tour de poitrine
    pour un tour de taille
    pour un tour de hanches
    pour tour de poitrine
    pour tour de taille
    pour tour de hanches
  `
}

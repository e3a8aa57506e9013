/** The small words, and those of sizes, cloth and sale, in French. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    mesures
    mesure
    dimensions
    mensurations
    les mesures
    prises
    mesures prises
    mesures du vêtement
    mesuré
    mesurée
  `,
  position: `
    au dessus
    en dessous
    sous le
    sous la
    au-dessus
    en-dessous
    au dessous
    plus haut
    plus bas
  `,
  from: `
    depuis
    du
    de la
    de l
    à partir
    d
    des
  `,
  letDown: `
    à rallonger
    d ourlet à rallonger
    ourlet à défaire
    de rentré
    réserve ourlet
    d ourlet
    pour rallonger
    ourlet possible à rallonger
    réserve d ourlet
  `,
  letOut: `
    à relâcher
    de réserve
    pour élargir
    de réserve couture
    pour agrandir
    de réserve de couture
  `,
  seamAllowance: `
    marge de couture
    valeur de couture
  `,
  ownTape: `
    mesuré par moi
    mesurée par moi
    mesurés par moi
    mesurées par moi
    prises par moi
    mes mesures
    mes propres mesures
    j'ai mesuré
    je mesure
    mesures réelles
    mesures prises par moi
    en réalité
    réellement
  `,
  shopCopy: `
    selon le site
    d'après le site
    d'après la marque
    selon la marque
    selon le fabricant
    site de la marque
    du site
    description du site
    description de la marque
    fiche produit
    mesures du site
    mesures de la marque
  `,
  closed: `
    nouée
    noué
    attachée
    attaché
    fermée
    fermé
    boutonnée
    boutonné
    croisée
    une fois nouée
    une fois fermée
    portée fermée
  `,
  opened: `
    ouverte
    ouvert
    dépliée
    déplié
    ouverte à plat
    dénouée
    déboutonnée
    grande ouverte
  `,
  relaxed: `
    non étiré
    sans étirer
    au repos
    non étirée
    sans tirer
    non étirés
    relâché
  `,
  stretched: `
    étiré
    étirée
    extensible jusqu à
    s étire jusqu à
    en tirant
    tendu
    jusqu à étiré
    étirable jusqu à
    élastique étiré
    étirés
    en étirant
  `,
  cuffed: `
    avec revers
    retroussé
    avec ourlet retroussé
  `,
  uncuffed: `
    sans revers
    déroulé
    revers déroulé
  `,
  front: `
    devant
    avant
  `,
  back: `
    dos
    derrière
    arrière
  `,
  inner: `
    sous le bras
    sous bras
    sous les bras
    intérieur
    intérieure
    dessous
  `,
  including: `
    avec
    sans
    inclus
    incluse
    compris
    y compris
    hors
  `,
  measures: `
    mesure
    fait
    mesurent
    font
  `,
  light: `
    le
    la
    les
    l
    d
    de
    du
    des
    un
    une
    est
    sont
    env
    environ
    à peu près
    approx
    approximativement
    au
    aux
    a
    en
    dans
    sur
    pour
    et
    chaque
    total
    totale
    ce
    cette
    son
    sa
    ses
    il
    elle
    milieu
    côté
    couture
    haut
    niveau
    point
    partie
    plus
    prise
    bien
    cm environ
    sous
    ligne
    au niveau
    face
    par
  `,
  to: `
    à
    a
    jusqu à
    jusqu au
    jusqu aux
    au
    jusqu en
    vers
  `,
  between: 'entre',
  and: 'et',
  or: `
    ou
    soit
    c est à dire
  `,
  size: `
    taille
    taille étiquette
    étiquette
    taille indiquée
    indiqué
    t.
    taille affichée
    noté
    notée
    marqué
    marquée
    étiqueté
    étiquetée
    taille estimée
    taille fr
    taille s
    tailles
  `,
  region: 'fr',
  letterSize: `
    taille unique
    tu
  `,
  age: 'âge',
  years: `
    ans
    mois
  `,
  all: `
    toutes
    tous
    tout
  `,
  not: `
    pas
    aucun
    aucune
    sans
    ni
    jamais
    non
    pas de
  `,
  partLined: `
    semi doublé
    semi doublée
    demi doublé
    demi doublée
    à moitié doublé
    partiellement doublé
    partiellement doublée
    doublé à moitié
    demi doublure
  `,
  lining: `
    doublure
    doublé
    doublée
    garniture
    rembourrage
  `,
  retail: `
    neuf
    acheté
    achetée
    prix boutique
    prix neuf
    prix d origine
    frais
    port
    envoi
    livraison
    valeur
    au lieu
    prix initial
  `,
  price: `
    prix
    vends
    à vendre
    je vends
    vendu
    je la laisse
    je le laisse
    je les laisse
    laisse à
    laissé à
    laissée à
    cédé à
    cède à
    vendu à
    ferme
    prix ferme
  `,
  condition: 'état',
  conditionWord: `
    très
    bon
    bonne
    excellent
    parfait
    neuf
    comme
    impeccable
    correct
    satisfaisant
    en
    superbe
    usé
    d usage
    usage
  `,
  conditionPhrase: `
    neuf avec étiquette
    neuve avec étiquette
    très bon état
    bon état
    excellent état
    parfait état
    comme neuf
    comme neuve
    jamais porté
    jamais portée
    état neuf
    porté une fois
    portée une fois
    état impeccable
    état correct
    état satisfaisant
  `,
  shell: `
    extérieur
    tissu
    matière
    composition
    matière principale
    tissu principal
  `,
  nightwear: `
    pyjama
    chemise de nuit
    grenouillère
    nuisette
  `,
  backPockets: `
    poches arrière
    poches arrières
    poches dos
    poches de derrière
  `,
  apart: `
    écart
    d écart
    espacées
    entre
  `,
  mended: `
    réparé
    réparée
    réparés
    réparées
    raccommodé
    raccommodée
    reprisé
    reprisée
    reprisés
    recousu
    recousue
    recousus
    stoppé
  `,
  but: `
    mais
    sauf
    hormis
    excepté
  `,
  imitation: `
    faux
    simili
    effet
    façon
    imitation
    aspect
  `,
  stretch: `
    stretch
    extensible
    élasticité
    élastique
  `,
  half: 'demi'
}

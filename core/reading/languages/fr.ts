/** French, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const fr: Lexicon = {
  language: 'fr',
  endings: ['s', 'e', 'es'],
  falseFriends: 'au | sale | bra | max | maximum',
  common:
    'le | la | les | et | avec | de | du | des | est | une | un | pour | pas | très | en | au | aux | taille | longueur | largeur | épaule | épaules | manche | manches | aisselle | aisselles | poitrine | hanches | à plat | état | mesures | entrejambe | porté | jamais | fermeture | cette | ce | je | sur | robe | veste | pantalon | jupe | environ | dos',
  points: {
    chest:
      'poitrine | tour de poitrine | buste | tour de buste | tour poitrine | tdp | contour de poitrine | contour poitrine | contour de buste',
    'chest flat':
      'aisselle à aisselle | aisselles | aisselle | aisselles à aisselles | aisselle a aisselle | sous les bras | sous aisselles | largeur aisselles | largeur sous les bras | largeur poitrine | largeur de poitrine | d aisselle à aisselle | entre aisselles | largeur aisselle | largeur sous aisselles | largeur d aisselle à aisselle | demi poitrine | carrure aisselles | sous bras | largeur sous bras | largeur buste | sous les aisselles | largeur aux aisselles | de dessous de bras à dessous de bras | largeur sous les aisselles | aisselle aisselle | entre les aisselles | 1 2 poitrine | demi tour de poitrine | d une aisselle à l autre | sous les bras à plat | largeur d aisselle à aisselle | largeur sous bras à plat',
    waist:
      'taille | tour de taille | ceinture tour | tour taille | tdt | tour de ceinture | contour taille | contour de taille | tour de la taille',
    'waist flat':
      'largeur taille | largeur de taille | demi taille | largeur ceinture | largeur à la taille | demi tour de taille | 1 2 taille | largeur au niveau de la taille | largeur de la taille',
    hip: 'hanches | tour de hanches | hanche | bassin | tour de bassin | tour hanches | tour de hanche | contour hanches | contour de hanches | tour des hanches | contour de bassin',
    'hip flat':
      'largeur hanches | largeur de hanches | largeur aux hanches | demi hanches | largeur hanche | demi tour de hanches | largeur bassin',
    sweep: 'tour de jupe bas | ampleur bas | tour du bas',
    bottomEdge: 'ourlet | bas | largeur bas | largeur du bas | largeur en bas | bas largeur | largeur ourlet | largeur de bas',
    bicep: 'tour de bras | largeur manche | largeur de manche | tour de biceps | haut du bras',
    cuff: 'poignet | tour de poignet | bas de manche | poignets',
    'neck weak': 'col',
    'sleeveLength weak': 'manches longues | manche longue | manches courtes | manche courte',
    waistband: 'ceinture',
    neck: 'encolure | tour de cou | tour d encolure',
    thigh: 'cuisse | tour de cuisse | largeur cuisse | largeur de cuisse | cuisses | largeur cuisses',
    knee: 'genou | largeur genou | genoux | largeur au genou',
    calf: 'mollet | tour de mollet',
    legOpening:
      'bas de jambe | ouverture bas | largeur bas de jambe | bas de pantalon | ouverture de jambe | ouverture jambe | largeur cheville | cheville | bas jambe | largeur jambe en bas | bas des jambes | bas de la jambe | largeur bas de pantalon | tour de cheville | ouverture cuisse | ouverture de cuisse | ouverture jambes | largeur bas des jambes | bas jambes | largeur du bas de jambe | bas de jambes | largeur au bas',
    elbow: 'coude',
    underbust: 'sous poitrine | tour sous poitrine | dessous de poitrine',
    armhole: 'emmanchure | emmanchures',
    shoulderWidth:
      'épaule à épaule | épaules | largeur épaules | largeur d épaules | carrure | carrure épaules | largeur des épaules | épaule épaule | carrure dos épaules | d épaule à épaule | largeur aux épaules | épaules largeur | largeur épaule | largeur d épaule | épaule a épaule | entre les épaules',
    sleeveLength:
      'manche | manches | longueur manche | longueur manches | longueur de manche | longueur des manches | longueur de manches | long manche | longueur bras | bras | manches longueur | longueur de la manche | manche longueur',
    sleeveFromCentreBack: 'manche raglan',
    sleeveUnderarm:
      'manche intérieure | longueur manche intérieure | manche dessous | manche sous bras | intérieur manche | aisselle poignet | longueur intérieure manche | manche intérieur | longueur intérieure des manches | dessous de manche | longueur sous manche',
    length:
      'longueur | longueur totale | long | longue | hauteur | hauteur totale | longueur dos | long dos | long totale | longueur devant | hauteur dos | lg | longeur | longueur complete | longueur complète | longueur du dos | longueur du col au bas | hauteur du col au bas | longueur depuis l épaule | longueur devant depuis l épaule | longueur milieu dos | haut en bas | de haut en bas | longueur max',
    bodyLength: 'épaule à ourlet | longueur robe | longueur veste | longueur manteau | hauteur épaule | longueur de robe | col à ourlet',
    skirtLength: 'longueur jupe | longueur de jupe | longueur de la jupe | hauteur jupe',
    napeToWaist: 'longueur taille dos | nuque à taille | épaule à taille',
    backWidth: 'carrure dos | largeur dos | largeur du dos',
    inseam:
      'entrejambe | entre jambe | entre jambes | entrejambes | longueur entrejambe | couture intérieure | intérieur jambe | longueur intérieure jambe | longueur intérieure | intérieur de jambe | longueur intérieur | longueur d entrejambe | longueur entre jambe | entre-jambe | entre-jambes | jambe intérieure | longueur de jambe intérieure | longueur jambe intérieure | couture entrejambe | intérieur de la jambe | longueur entre jambes | jambe intérieur',
    legLength: 'longueur jambe | longueur de jambe',
    outseam:
      'longueur extérieure | couture extérieure | côté extérieur | longueur côté | extérieur jambe | longueur pantalon | longueur extérieur | longueur totale pantalon | longueur du pantalon | couture côté | jambe extérieure | longueur jambe extérieure | extérieur de jambe',
    rise: 'montant | fourche | hauteur de fourche | enfourchure | montée | hauteur fourche | hauteur d entrejambe',
    frontRise: 'montant devant | fourche devant | enfourchure devant | hauteur devant fourche | montant avant',
    backRise: 'montant dos | fourche dos | montant arrière | enfourchure dos | montant derrière',
    strap: 'bretelle | bretelles | longueur bretelles | longueur des bretelles | longueur de bretelles | longueur bretelle',
    torsoLength: 'longueur torse',
    width: 'largeur | large'
  },
  letters: { p: 'chest', t: 'waist', h: 'hip', l: 'length', m: 'sleeveLength', e: 'shoulderWidth' },
  landmarks: {
    shoulder: 'épaule | épaules | couture épaule | couture d épaule | haut de l épaule | bretelle',
    neck: 'col | nuque | encolure | haut du col | base du col | bas du col | dessous du col | milieu dos',
    armpit: 'aisselle | aisselles | dessous de bras | sous bras',
    waist: 'taille | ceinture | haut de ceinture',
    hip: 'hanche',
    crotch: 'entrejambe | fourche',
    knee: 'genou',
    hem: 'ourlet | bas | sol | cheville | bas de la robe | bas du vêtement | base',
    cuff: 'poignet | bas de manche | bout de manche | fin de manche | bout de la manche | fin de la manche | poignets | bas de la manche',
    elbow: 'coude',
    bust: 'poitrine',
    top: 'haut'
  },
  basis: {
    flat: 'à plat | a plat | posé à plat | vêtement à plat | mesuré à plat | mis à plat | prises à plat | largeur à plat | non doublé | de côté à côté | d un côté à l autre | d un bord à l autre | couture à couture | à multiplier | d une couture à l autre | posée à plat',
    around: 'circonférence | tour complet | au total | tout autour | tour total | de tour | en circonférence | tour',
    doubled: 'x2 | x 2 | doublé | fois 2 | fois deux | multiplié par deux | 2x',
    double: 'à doubler | multiplier par 2 | multiplier par deux | à multiplier par 2 | à multiplier par deux | doubler'
  },
  words: {
    heading:
      'mesures | mesure | dimensions | mensurations | les mesures | prises | mesures prises | mesures du vêtement | mesuré | mesurée',
    detail:
      'longueur traîne | doublure | longueur doublure | col | revers | poche | poches | fente | fermeture | zip | ceinture | boutons | bouton | passants | capuche | talon | talons | volant | noeud | dentelle | franges | doublure hauteur | hauteur ceinture | hauteur de ceinture | hauteur col | décolleté | profondeur décolleté | largeur bretelles | patte | bord côte | aisselle à ourlet | longueur sous aisselle | hauteur sous bras | longueur aisselle bas | traîne | revers bas',
    thing:
      'sac | sac à main | sacoche | chaussures | bottes | bottines | escarpins | ordinateur | téléphone | chapeau | bonnet | casquette | écharpe | foulard | tissu | coupon | rideau | coussin | valise | semelle | tige | portefeuille',
    height: 'de haut | mesure 1m | stature',
    model:
      'mannequin | modèle | je mesure | je fais | je suis | elle mesure | elle porte | elle fait | je porte | ma taille | sur moi | mes mensurations | mannequine | il mesure | il porte | porté par',
    fits: 'convient | convient à | convient pour | conviendra | conviendrait | idéal pour | correspond | correspond à | pour une | pour un | irait | ira | peut convenir | taille comme | recommandé pour | je conseille | conseillé pour | va jusqu à | correspondrait | équivaut',
    parcel: 'colis | envoi | paquet | emballage | expédition | mondial | carton',
    elsewhere: 'autre annonce | annonce séparée | vendu séparément | vendue séparément | vendus séparément | à part | annonce à part',
    position: 'au dessus | en dessous | sous le | sous la | au-dessus | en-dessous | au dessous | plus haut | plus bas',
    from: 'depuis | du | de la | de l | à partir | d | des',
    letDown:
      'à rallonger | d ourlet à rallonger | ourlet à défaire | de rentré | réserve ourlet | d ourlet | pour rallonger | ourlet possible à rallonger | réserve d ourlet',
    letOut: 'à relâcher | de réserve | pour élargir | de réserve couture | pour agrandir | de réserve de couture',
    seamAllowance: 'marge de couture | valeur de couture',
    relaxed: 'non étiré | sans étirer | au repos | non étirée | sans tirer | non étirés | relâché',
    stretched:
      'étiré | étirée | extensible jusqu à | s étire jusqu à | en tirant | tendu | jusqu à étiré | étirable jusqu à | élastique étiré | étirés | en étirant',
    cuffed: 'avec revers | retroussé | avec ourlet retroussé',
    uncuffed: 'sans revers | déroulé | revers déroulé',
    front: 'devant | avant',
    back: 'dos | derrière | arrière',
    inner: 'sous le bras | sous bras | sous les bras | intérieur | intérieure | dessous',
    including: 'avec | sans | inclus | incluse | compris | y compris | hors',
    measures: 'mesure | fait | mesurent | font',
    light:
      'le | la | les | l | d | de | du | des | un | une | est | sont | env | environ | à peu près | approx | approximativement | au | aux | a | en | dans | sur | pour | et | chaque | total | totale | ce | cette | son | sa | ses | il | elle | milieu | côté | couture | haut | niveau | point | partie | plus | prise | bien | cm environ | sous | ligne | au niveau | face | par',
    to: 'à | a | jusqu à | jusqu au | jusqu aux | au | jusqu en | vers',
    between: 'entre',
    and: 'et',
    or: 'ou | soit | c est à dire',
    size: 'taille | taille étiquette | étiquette | taille indiquée | indiqué | t. | taille affichée | noté | notée | marqué | marquée | étiqueté | étiquetée | taille estimée | taille fr | taille s | tailles',
    region: 'fr',
    letterSize: 'taille unique | tu',
    age: 'âge',
    years: 'ans | mois',
    all: 'toutes | tous | tout',
    not: 'pas | aucun | aucune | sans | ni | jamais | non | pas de',
    nothing:
      'taille haute | taille basse | taille unique | mi long | mi longue | mi cuisse | manches longues | manches courtes | manche longue | manche courte | sans manches | manches 3 4 | 3 4 | col roulé | col v | col rond | col claudine | longueur genou | longueur genoux | taille élastique | taille élastiquée | taille normale | taille petit | taille grand | taille bien | taille mi haute | poche poitrine | poches poitrine | longtemps | le long | bonne taille | taille ajustable | ma taille habituelle | taille empire | ras de cou | col montant | épaulettes | col chemise | grande taille | petite taille | longue durée',
    otherUnit:
      'boutons | poches | pièces | pièce | paire | jours | jour | ans | mois | pour cent | degrés | degré | kg | g | grammes | euros | euro | fois | heures | trous | trou | lot | passants | ème | e | semaines | photos | tailles',
    partLined:
      'semi doublé | semi doublée | demi doublé | demi doublée | à moitié doublé | partiellement doublé | partiellement doublée | doublé à moitié | demi doublure',
    lining: 'doublure | doublé | doublée | garniture | rembourrage',
    retail:
      'neuf | acheté | achetée | prix boutique | prix neuf | prix d origine | frais | port | envoi | livraison | valeur | au lieu | prix initial',
    price:
      'prix | vends | à vendre | je vends | vendu | je la laisse | je le laisse | je les laisse | laisse à | laissé à | laissée à | cédé à | cède à | vendu à | ferme | prix ferme',
    condition: 'état',
    conditionWord:
      'très | bon | bonne | excellent | parfait | neuf | comme | impeccable | correct | satisfaisant | en | superbe | usé | d usage | usage',
    conditionPhrase:
      'neuf avec étiquette | neuve avec étiquette | très bon état | bon état | excellent état | parfait état | comme neuf | comme neuve | jamais porté | jamais portée | état neuf | porté une fois | portée une fois | état impeccable | état correct | état satisfaisant',
    shell: 'extérieur | tissu | matière | composition | matière principale | tissu principal',
    nightwear: 'pyjama | chemise de nuit | grenouillère | nuisette',
    backPockets: 'poches arrière | poches arrières | poches dos | poches de derrière',
    apart: 'écart | d écart | espacées | entre',
    mended:
      'réparé | réparée | réparés | réparées | raccommodé | raccommodée | reprisé | reprisée | reprisés | recousu | recousue | recousus | stoppé',
    but: 'mais | sauf | hormis | excepté',
    imitation: 'faux | simili | effet | façon | imitation | aspect',
    stretch: 'stretch | extensible | élasticité | élastique',
    half: 'demi'
  },
  units: {
    in: 'pouce | pouces | po | inch | inches',
    cm: 'cm | centimètre | centimètres | cms',
    mm: 'mm | millimètre | millimètres',
    m: 'm | mètre | mètres',
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
  },
  kinds: [
    { kind: 'jeans', phrases: 'jean | jeans | jean droit | jean mom | jean flare | pantalon en jean' },
    {
      kind: 'trousers',
      phrases:
        'pantalon | pantalons | chino | legging | jogging | pantalon à pinces | pantalon de costume | pantalon cigarette | bas de jogging | sarouel | pantalon large | bas de pyjama | pantalon de pyjama | pantacourt | salopette pantalon | corsaire'
    },
    { kind: 'shorts', phrases: 'short | shorts | bermuda | short en jean' },
    {
      kind: 'skirt',
      phrases:
        'jupe | minijupe | mini jupe | jupe crayon | jupe plissée | jupe portefeuille | jupe longue | jupe midi | jupe droite | jupe en jean | jupon | kilt'
    },
    {
      kind: 'dress',
      phrases:
        'robe | robe longue | robe de mariée | robe de soirée | robe chemise | robe pull | robe portefeuille | robe d été | robe droite | robe en jean | chemise de nuit | nuisette | robe midi | robe tunique | robe trapèze | robe fourreau'
    },
    {
      kind: 'jumpsuit',
      phrases: 'combinaison | salopette | combishort | combi pantalon | bleu de travail | grenouillère | combinaison pantalon'
    },
    { kind: 'shirt', phrases: 'chemise | chemisier | blouse | surchemise | tunique | chemise en jean | chemisette' },
    {
      kind: 'knit-top',
      phrases: 't shirt | tshirt | tee shirt | haut | top | débardeur | polo | caraco | body | marinière | corset | bustier | sous pull'
    },
    {
      kind: 'jumper',
      phrases:
        'pull | gilet en laine | pullover | sweat | sweatshirt | cardigan | gilet | sweat à capuche | pull col roulé | hoodie | polaire | gilet long | pull en laine | gilet tricoté'
    },
    {
      kind: 'jacket',
      phrases:
        'blazer | veste de costume | costume | veste de tailleur | tailleur | smoking | veste blazer | veste tailleur | ensemble tailleur | veston',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'veste | veste en jean | blouson | perfecto | veste en cuir | bomber | teddy | boléro | blouson en cuir | veste en velours | veste courte | veste de travail | veste en daim | saharienne',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'manteau | trench | parka | doudoune | imperméable | caban | duffle coat | cape | poncho | anorak | coupe vent | peignoir | pardessus | kimono | manteau en laine | veste de ski | gilet haute visibilité | robe de chambre | trench coat | manteau long | veste imperméable | veste de moto | blouson moto | blouson de moto'
    },
    { kind: 'waistcoat', phrases: 'gilet sans manches | gilet de costume | doudoune sans manches | veste sans manches' }
  ],
  fibres: {
    cotton: 'coton | coton bio',
    wool: 'laine | laine vierge | laine mérinos | mérinos | laine d agneau | pure laine',
    linen: 'lin',
    silk: 'soie | pure soie',
    viscose: 'viscose | rayonne',
    polyester: 'polyester',
    polyamide: 'polyamide | nylon',
    elastane: 'élasthanne | elasthane | elastane | lycra | spandex',
    acrylic: 'acrylique',
    cashmere: 'cachemire',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acétate | triacétate',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaga',
    angora: 'angora',
    hemp: 'chanvre',
    polyurethane: 'polyuréthane'
  },
  structures: {
    woven: 'tissé | denim | popeline | flanelle | toile | jean | velours côtelé',
    knit: 'maille | tricot | jersey | tricoté | tricotée | crochet | grosse maille',
    leather: 'cuir | daim | cuir véritable | cuir d agneau | nubuck'
  },
  traits: {
    rigid: 'rigide | brut | non extensible | sans élasthanne | pas extensible',
    denim: 'denim | en jean | jean brut | jean',
    pile: 'velours | velours côtelé',
    check: 'carreaux | à carreaux | tartan | écossais | pied de poule | vichy | écossaise',
    stripe: 'rayé | rayée | rayures | à rayures | rayés | tennis rayures | marinière',
    sheer: 'transparent | transparente | mousseline | organza | tulle | voile transparent',
    slippery: 'satin | satinée | satiné',
    beaded: 'sequins | perles | perlé | paillettes | pailletée',
    pleated: 'plissé | plissée | plis',
    suede: 'daim | suédine',
    vinyl: 'vinyle | simili cuir | similicuir | faux cuir | verni',
    coated: 'enduit | ciré | huilé',
    silk: 'soie | pure soie',
    taffeta: 'taffetas'
  },
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: 'doublé | doublée | entièrement doublé | entièrement doublée | doublure | avec doublure'
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: 'non doublé | non doublée | sans doublure | pas doublé | pas doublée | pas de doublure'
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: 'manches courtes | manche courte | manches trois quarts | manches 3 4 | sans manches'
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases:
        'taille élastique | taille élastiquée | élastique à la taille | ceinture élastique | élastiqué à la taille | ceinture élastiquée | taille élastiqué'
    },
    { fact: { fact: 'backSeam', value: true }, phrases: 'couture dos | couture milieu dos' },
    { fact: { fact: 'darts', value: true }, phrases: 'pinces' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'jupe crayon | jupe droite' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'évasée | jupe évasée | trapèze | ligne a' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'jupe plissée' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'ourlet d origine' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases:
        'fermeture éclair sur le côté | zip côté | zip dos | fermeture au dos | fermeture côté | zip sur le côté | fermeture éclair au dos | fermeture éclair côté | zip au dos'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'fente dos | fente côté | fendue' }
  ],
  uses: {
    protective:
      'haute visibilité | ignifugé | ignifuge | coques de protection | protections homologuées | anti coupure | gilet de sécurité | avec protections',
    child: 'enfant | enfants | fille | garçon | bébé | fillette',
    'child-sleepwear': 'pyjama enfant | pyjama bébé | grenouillère | pyjama fille | pyjama garçon | chemise de nuit fille',
    'medical-compression': 'bas de contention | contention | compression médicale | chaussettes de contention'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'trou de mite | trous de mites | trous de mite | mité | mitée' },
    { mending: ['patch'], phrases: 'trou | trous | accroc | déchirure | déchiré | déchirée | petit trou | brûlure' },
    { mending: ['clean'], phrases: 'tache | taches | tâche | tâches | tâché | tachée | taché | auréole | auréoles | jauni | odeur' },
    {
      mending: ['replace-button'],
      phrases: 'bouton manquant | manque un bouton | il manque un bouton | boutons manquants | un bouton manque'
    },
    { mending: ['sew-shank'], phrases: 'bouton à recoudre | bouton décousu' },
    {
      mending: ['close-seam'],
      phrases: 'décousu | décousue | couture ouverte | doublure déchirée | ourlet défait | couture défaite | à recoudre'
    },
    {
      mending: ['replace-zip'],
      phrases: 'fermeture cassée | zip cassé | fermeture éclair cassée | fermeture à changer | fermeture abîmée | zip défectueux'
    },
    { mending: ['replace-elastic'], phrases: 'élastique détendu' },
    { mending: ['de-pill'], phrases: 'bouloches | bouloché | boulochée | boulochage' },
    { mending: ['dye'], phrases: 'décoloré | décolorée | délavé | délavée | décoloration' },
    { mending: ['polish-leather'], phrases: 'éraflure | éraflures' },
    { mending: [], phrases: 'défaut | défauts | fil tiré | fils tirés | traces d usure | abîmé | abîmée | usure' }
  ],
  colours: {
    black: 'noir | noire',
    white: 'blanc | blanche',
    grey: 'gris | grise | anthracite',
    navy: 'bleu marine | marine',
    blue: 'bleu | bleue | bleu ciel | bleu clair | bleu roi | bleu foncé',
    teal: 'bleu canard | turquoise | bleu pétrole',
    green: 'vert | verte | kaki | vert olive | vert sapin',
    red: 'rouge',
    burgundy: 'bordeaux',
    pink: 'rose | fuchsia',
    purple: 'violet | violette | mauve | lilas | prune',
    orange: 'orange | rouille',
    yellow: 'jaune | moutarde',
    brown: 'marron | brun | brune | camel | chocolat | cognac',
    beige: 'beige | taupe | sable',
    cream: 'crème | ivoire | écru',
    gold: 'doré | dorée | or',
    silver: 'argent | argenté'
  },
  currencies: { EUR: 'euro | euros | eur', CHF: 'chf | francs' }
}

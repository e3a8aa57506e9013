/** Dutch, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const nl: Lexicon = {
  language: 'nl',
  endings: ['s', 'en', 'e'],
  falseFriends: 'hem | max | maximum',
  common:
    'de | het | een | en | met | van | is | in | voor | niet | zeer | heel | maat | lengte | breedte | oksel | schouder | schouders | mouw | mouwen | borst | taille | heup | heupen | gemeten | plat | staat | maten | binnenbeen | broek | jurk | jas | rok | tot | ik | dit | deze | wijdte | omtrek | gedragen | goede | nieuw | ongeveer',
  points: {
    chest: 'borst | borstomvang | buste | borstwijdte | borstomtrek | bovenwijdte',
    'chest flat':
      'oksel tot oksel | oksel | oksels | van oksel tot oksel | oksel oksel | oksel naar oksel | onder de oksels | breedte oksels | okselbreedte | borstbreedte | oksel op oksel | breedte oksel tot oksel | van oksel naar oksel | halve borstwijdte | breedte onder oksel | breedte onder de oksels | breedte oksel | breedte borst | onder oksels | breedte onder oksels | oksel aan oksel',
    waist: 'taille | tailleomvang | tailleband | taillewijdte | tailleomtrek | broeksband | band | middel | broekband',
    'waist flat': 'taillebreedte | breedte taille | halve taille | breedte band | breedte tailleband | taille breedte',
    hip: 'heup | heupen | heupomvang | heupwijdte | heupomtrek',
    'hip flat': 'heupbreedte | breedte heup | halve heup | breedte heupen',
    sweep: 'zoomomtrek | zoomwijdte',
    bottomEdge:
      'zoom | boord onderaan | boord onder | onderboord | zoombreedte | onderkant | breedte onderkant | breedte zoom | onderkant breedte | breedte onderaan | breedte onder | onderzijde',
    bicep: 'bovenarm | mouwwijdte | breedte mouw | mouwbreedte',
    cuff: 'manchet | pols | mouwboord',
    'neck weak': 'boord | kraag',
    'sleeveLength weak': 'lange mouwen | lange mouw | korte mouwen | korte mouw',
    neck: 'halsomvang | boordmaat | boordwijdte | halswijdte',
    thigh: 'dij | dijbeen | bovenbeen | dijwijdte | breedte bovenbeen | bovenbenen | breedte dij | dijbreedte',
    knee: 'knie | kniewijdte',
    calf: 'kuit',
    legOpening:
      'pijpopening | broekspijp | enkelwijdte | beenopening | pijpbreedte | onderkant pijp | pijpwijdte | onderkant broekspijp | enkel | pijp onder | breedte pijp | breedte broekspijp | breedte pijpen | onderkant been | breedte onderkant pijp | pijp onderaan | pijp',
    elbow: 'elleboog',
    underbust: 'onderborst | onderbuste',
    armhole: 'armsgat',
    shoulderWidth:
      'schouder tot schouder | van schouder tot schouder | schouders | schouderbreedte | breedte schouders | schouder | schouder schouder | schouder naar schouder | schoudernaad tot schoudernaad | van schouder naar schouder | breedte schouder',
    sleeveLength: 'mouw | mouwen | mouwlengte | lengte mouw | lengte mouwen | armlengte | mouw lengte | lengte van de mouw',
    sleeveUnderarm:
      'binnenmouw | mouw binnenkant | onderarm mouw | binnenkant mouw | mouwlengte binnenkant | mouw onderkant | mouwlengte onderkant | onderkant mouw | mouwlengte aan de onderkant | lengte mouw binnenkant | binnenmouwlengte',
    length:
      'lengte | totale lengte | lang | ruglengte | lengte rug | lengte totaal | achterlengte | lengte achter | lengte voor | lengte achterkant | lengte voorkant',
    bodyLength: 'schouder tot zoom | lengte jurk | lengte jas | jurklengte',
    skirtLength: 'roklengte | lengte rok',
    napeToWaist: 'nek tot taille | schouder tot taille',
    backWidth: 'rugbreedte',
    inseam:
      'binnenbeen | binnenbeenlengte | binnenkant been | binnennaad | binnenlengte | lengte binnenbeen | binnenbeen lengte | binnenbeenmaat | lengte binnenkant been | binnenkant pijp | lengte binnenkant | binnen been',
    legLength: 'beenlengte',
    outseam:
      'buitenbeen | buitenlengte | buitennaad | buitenkant been | broeklengte | lengte buitenbeen | zijnaad | lengte buitenkant | buitenbeenlengte | lengte broek | lengte buitenkant been',
    rise: 'kruis | kruishoogte | kruislengte | hoogte kruis',
    frontRise: 'voorkruis | kruis voor | kruishoogte voor',
    backRise: 'achterkruis | kruis achter',
    strap: 'bandjes | schouderbandjes',
    torsoLength: 'romplengte',
    width: 'breedte | breed | wijdte'
  },
  landmarks: {
    shoulder: 'schouder | schoudernaad | bovenkant schouder | schouderbandje | schouders',
    neck: 'kraag | nek | hals | halslijn | onderkant kraag | midden rug',
    armpit: 'oksel | armsgat | oksels',
    waist: 'taille | band | tailleband',
    hip: 'heup',
    crotch: 'kruis',
    knee: 'knie',
    hem: 'zoom | onderkant | grond | enkel | onder | einde | beneden',
    cuff: 'manchet | pols | einde mouw | eind mouw | mouwboord | einde van de mouw',
    elbow: 'elleboog',
    bust: 'borst',
    top: 'boven'
  },
  basis: {
    flat: 'plat | plat gemeten | plat liggend | liggend | liggend gemeten | plat neergelegd | van zij tot zij | enkel gemeten | van naad tot naad | platliggend | plat gelegd | van kant tot kant | van links naar rechts | dwars gemeten | zijde tot zijde',
    around: 'omtrek | rondom | in de rondte | totale omtrek | helemaal rond | omvang',
    doubled: 'x2 | x 2 | maal 2 | maal twee | keer 2 | keer twee | dubbel | 2x',
    double: 'verdubbelen | te verdubbelen | keer twee doen | vermenigvuldigen met 2'
  },
  words: {
    heading: 'maten | afmetingen | opmetingen | opgemeten | gemeten | de maten | afmeting | nagemeten | opgemeten maten',
    detail:
      'sleep | voeringlengte | kraag | kraaghoogte | revers | zak | zakken | split | rits | riem | knopen | knoop | riemlussen | capuchon | hak | hakken | hakhoogte | ruche | strik | kant | franje | bandhoogte | omslag | decolleté | voering | oksel tot zoom | kraagbreedte | oksel tot onderkant',
    thing:
      'panty | maillot | tas | handtas | rugzak | schoenen | laarzen | enkellaarsjes | laptop | telefoon | hoed | muts | pet | sjaal | stof | lap stof | gordijn | kussen | koffer | zool | schacht | portemonnee',
    height: 'lichaamslengte',
    model:
      'model | paspop | etalagepop | ik ben | ik draag | zij draagt | mijn maten | ze draagt | zij is | hij is | bij mij | op mij | ze is',
    fits: 'past | past bij | geschikt voor | ideaal voor | zou passen | past tot | valt als | aanbevolen voor | voor een | kan passen | zal passen | passend voor | komt overeen met | valt als een',
    parcel: 'pakket | pakketje | verzending | doos | verpakking | brievenbuspakje',
    elsewhere: 'andere advertentie | aparte advertentie | apart te koop | los te koop',
    position: 'boven | onder | boven de | onder de | lager | hoger',
    from: 'vanaf | van | vanuit',
    letDown: 'zoom om uit te leggen | om uit te leggen | zoomtoeslag | kan uitgelegd worden | om te verlengen | zoom uit te leggen',
    letOut: 'om wijder te maken | uit te leggen in de naad | om uit te nemen',
    seamAllowance: 'naadtoeslag',
    relaxed: 'ongerekt | niet uitgerekt | ontspannen | niet gerekt | onuitgerekt',
    stretched: 'uitgerekt | gerekt | rekbaar tot | rekt tot | opgerekt | te rekken tot | uitgerekt tot | rekt uit tot',
    cuffed: 'omgeslagen | opgerold | met omslag',
    uncuffed: 'niet omgeslagen | zonder omslag | uitgerold',
    front: 'voor | voorkant | voorzijde',
    back: 'achter | achterkant | rug | achterzijde',
    inner: 'onder de arm | onder de oksel | binnenkant | binnen | binnenzijde',
    including: 'inclusief | incl | zonder | exclusief',
    measures: 'meet | meten | bedraagt',
    light:
      'de | het | een | is | zijn | ca | circa | ongeveer | plm | ong | op | aan | in | bij | met | van | en | per | elk | heeft | er | de hele | totaal | om | naar | breedste | punt | naad | kant | zij | zo n | iets | net | dit | midden | helft | gehele | ter | hoogte | over',
    to: 'tot | naar | t m | tot aan | tot de',
    between: 'tussen',
    and: 'en',
    or: 'of | oftewel | dus',
    size: 'maat | label | maatlabel | volgens label | labelmaat | maat label | op label | mt | kledingmaat | staat maat',
    region: 'nl',
    letterSize: 'one size',
    age: 'leeftijd',
    years: 'jaar | maanden',
    all: 'alle | alles',
    not: 'geen | niet | zonder | nooit | noch',
    nothing:
      'lange mouwen | korte mouwen | lange mouw | korte mouw | hoge taille | lage taille | knielang | enkellang | knielengte | ronde hals | v hals | col | borstzak | driekwart mouw | 3 4 mouw | elastische taille | hoge kraag | lange tijd | mouwloos | broekzak | hoge band | elastische band | colkraag | heuplengte | zolang | schoudervulling',
    otherUnit:
      'knopen | zakken | stuks | stuk | paar | dagen | dag | jaar | maanden | procent | graden | kg | g | gram | euro | keer | uur | gaatjes | gaten | weken | lussen | foto s',
    partLined: 'half gevoerd | gedeeltelijk gevoerd | deels gevoerd | halve voering',
    lining: 'voering | vulling | bies',
    retail: 'nieuwprijs | verzendkosten | verzending | origineel | kostte | np | gekocht voor | oorspronkelijk',
    price: 'prijs | vraagprijs | te koop | nu',
    condition: 'staat | conditie',
    conditionWord:
      'zeer | goede | goed | prima | nette | nieuwe | perfecte | nieuw | als | gebruikt | gedragen | uitstekende | in | prachtige | redelijke | mooie | keurige',
    conditionPhrase:
      'nieuw met kaartje | zo goed als nieuw | als nieuw | nooit gedragen | ongedragen | één keer gedragen | nieuw met label | in nieuwstaat | in zeer goede staat | z g a n',
    shell: 'buitenkant | stof | materiaal | samenstelling | buitenstof',
    nightwear: 'pyjama | nachthemd | slaapzak | boxpakje',
    backPockets: 'achterzakken | kontzakken | zakken achter',
    apart: 'uit elkaar | afstand | tussen',
    mended: 'gerepareerd | gerepareerde | gestopt | gestopte | hersteld | herstelde | dichtgenaaid | versteld',
    but: 'maar | behalve',
    imitation: 'kunst | nep | look | imitatie | faux',
    stretch: 'stretch | rekbaar | elastisch | rek',
    half: 'halve'
  },
  units: { in: 'inch | inches | duim', cm: 'cm | centimeter | centimeters', mm: 'mm | millimeter', m: 'm | meter', ft: 'voet' },
  numbers: {
    twee: 2,
    drie: 3,
    vier: 4,
    vijf: 5,
    zes: 6,
    acht: 8,
    tien: 10,
    twaalf: 12,
    vijftien: 15,
    twintig: 20,
    dertig: 30,
    veertig: 40,
    vijftig: 50
  },
  kinds: [
    { kind: 'jeans', phrases: 'spijkerbroek | jeans | jeansbroek | flared jeans' },
    {
      kind: 'trousers',
      phrases:
        'broek | pantalon | legging | joggingbroek | chino | nette broek | ribbroek | leren broek | pantalons | wollen broek | linnen broek | wijde broek | flared broek'
    },
    { kind: 'shorts', phrases: 'korte broek | short | bermuda | shorts | jeansshort' },
    { kind: 'skirt', phrases: 'rok | minirok | kokerrok | plooirok | spijkerrok | maxirok | rokje | midirok | jeansrok | wollen rok' },
    {
      kind: 'dress',
      phrases:
        'jurk | jurkje | trouwjurk | avondjurk | maxijurk | zomerjurk | overhemdjurk | wikkeljurk | galajurk | midi jurk | gebreide jurk | overgooier | spijkerjurk'
    },
    { kind: 'jumpsuit', phrases: 'jumpsuit | tuinbroek | overall | playsuit | boxpakje' },
    { kind: 'shirt', phrases: 'overhemd | blouse | hemd | bloes | tuniek | spijkerblouse | houthakkershemd | zijden blouse' },
    { kind: 'knit-top', phrases: 't shirt | tshirt | shirt | top | topje | polo | hemdje | longsleeve | korset | shirtje' },
    {
      kind: 'jumper',
      phrases:
        'trui | vest gebreid | sweater | hoodie | spencer | cardigan | coltrui | gebreide trui | pullover | wollen trui | gebreid vest | sweatshirt | vest | truitje'
    },
    {
      kind: 'jacket',
      phrases: 'colbert | blazer | pak | smoking | kostuum | mantelpak | driedelig pak | jasje colbert',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'jasje | spijkerjas | leren jas | leren jack | jack | bomberjack | bikerjack | spijkerjasje | jeansjack | leren jasje | suede jas',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'jas | mantel | trenchcoat | parka | regenjas | winterjas | donsjas | poncho | cape | badjas | kamerjas | wollen jas | lange jas | ski jas | skijas | bontjas | pufferjas | veiligheidsjas | motorjas | regenjack | wollen mantel'
    },
    { kind: 'waistcoat', phrases: 'gilet | bodywarmer | mouwloos vest' }
  ],
  fibres: {
    cotton: 'katoen | biokatoen',
    wool: 'wol | scheerwol | merinowol | lamswol | merino | wollen',
    linen: 'linnen | vlas',
    silk: 'zijde | zijden',
    viscose: 'viscose | rayon',
    polyester: 'polyester',
    polyamide: 'polyamide | nylon',
    elastane: 'elastaan | elastane | lycra | spandex | elasthan',
    acrylic: 'acryl | polyacryl',
    cashmere: 'kasjmier | cashmere',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetaat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'hennep',
    polyurethane: 'polyurethaan'
  },
  structures: {
    woven: 'geweven | denim | popeline | flanel | ribfluweel | ribstof',
    knit: 'gebreid | tricot | jersey | gebreide | gehaakt | grof gebreid',
    leather: 'leer | leren | suède | suede | echt leer | nappaleer'
  },
  traits: {
    rigid: 'niet rekbaar | geen stretch | zonder stretch | geen rek',
    denim: 'denim | spijkerstof | spijkerbroek | spijkerjas | spijkerrok | spijkerjasje',
    pile: 'corduroy | fluweel | ribfluweel | ribstof | velours | ribbroek',
    check: 'geruit | ruit | ruitjes | tartan | geruite | pied de poule',
    stripe: 'gestreept | streep | strepen | krijtstreep | gestreepte',
    sheer: 'doorzichtig | chiffon | tule | organza | doorschijnend',
    slippery: 'satijn | satijnen',
    beaded: 'pailletten | kralen',
    pleated: 'plissé | plooien | geplisseerd | plooirok',
    suede: 'suède | suede',
    vinyl: 'kunstleer | nepleer | lak | imitatieleer',
    coated: 'gewaxt | gecoat | waxjas',
    silk: 'zijde | zijden',
    taffeta: 'taf | tafzijde'
  },
  made: [
    { fact: { fact: 'lined', value: true }, phrases: 'gevoerd | met voering | volledig gevoerd | voering | helemaal gevoerd' },
    { fact: { fact: 'lined', value: false }, phrases: 'ongevoerd | niet gevoerd | zonder voering | geen voering' },
    { fact: { fact: 'shortSleeves', value: true }, phrases: 'korte mouwen | korte mouw | driekwart mouwen | driekwart mouw | mouwloos' },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases:
        'elastische taille | elastiek in de taille | elastische band | elastische tailleband | elastiek in taille | taille met elastiek'
    },
    { fact: { fact: 'darts', value: true }, phrases: 'figuurnaden | coupenaden' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'kokerrok | rechte rok' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'a lijn | uitlopende rok | klokrok | a-lijn' },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'cirkelrok' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'plooirok | plissérok' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'originele zoom' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: 'rits opzij | rits aan de zijkant | rits achter | rits op de rug | rits aan de achterkant | blinde rits'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'split achter | split opzij | split aan de zijkant' }
  ],
  uses: {
    protective:
      'hoge zichtbaarheid | brandwerend | veiligheidskleding | veiligheidsjas | veiligheidshesje | met protectie | zaagbroek | vlamvertragend',
    child: 'kinder | meisjes | jongens | baby | kinderen | kinderjurk',
    'child-sleepwear': 'kinderpyjama | babypyjama | boxpakje',
    'medical-compression': 'steunkousen | compressiekousen'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'mottengat | mottengaatje | mottengaatjes | mottengaten' },
    { mending: ['patch'], phrases: 'gat | gaatje | gaatjes | gaten | scheur | scheurtje | gescheurd | winkelhaak' },
    { mending: ['clean'], phrases: 'vlek | vlekken | vlekje | vlekjes | verkleuring | verkleurd | vergeeld | muf' },
    {
      mending: ['replace-button'],
      phrases: 'knoop mist | knoop ontbreekt | missende knoop | er mist een knoop | knoop kwijt | mist een knoop'
    },
    { mending: ['sew-shank'], phrases: 'losse knoop | knoop zit los' },
    { mending: ['close-seam'], phrases: 'naad los | losse naad | zoom los | voering gescheurd | naad open | loszittende naad' },
    { mending: ['replace-zip'], phrases: 'rits kapot | kapotte rits | rits stuk | rits defect' },
    { mending: ['replace-elastic'], phrases: 'elastiek uitgelubberd | elastiek is slap | elastiek versleten' },
    { mending: ['de-pill'], phrases: 'pilling | pluisjes | pluizen | gepild' },
    { mending: ['dye'], phrases: 'vervaagd | verbleekt' },
    { mending: ['polish-leather'], phrases: 'krassen | kras | schaafplek' },
    { mending: [], phrases: 'gebruikssporen | beschadiging | beschadigd | foutje | slijtage | draadje los | losse draad' }
  ],
  colours: {
    black: 'zwart | zwarte',
    white: 'wit | witte',
    grey: 'grijs | grijze | antraciet',
    navy: 'donkerblauw | marineblauw | donkerblauwe',
    blue: 'blauw | blauwe | lichtblauw | kobalt | lichtblauwe',
    teal: 'turquoise | petrol',
    green: 'groen | groene | olijfgroen | donkergroen | legergroen',
    red: 'rood | rode',
    burgundy: 'bordeaux | wijnrood',
    pink: 'roze | fuchsia',
    purple: 'paars | paarse | lila',
    orange: 'oranje | roest',
    yellow: 'geel | gele | mosterdgeel | oker',
    brown: 'bruin | bruine | cognac | donkerbruin',
    beige: 'beige | zand | camel | taupe',
    cream: 'creme | crème | ivoor | ecru',
    gold: 'goud | gouden',
    silver: 'zilver | zilveren'
  },
  currencies: { EUR: 'euro | eur' }
}

/** Swedish, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const sv: Lexicon = {
  language: 'sv',
  endings: ['en', 'n', 'et', 'ar', 'er'],
  falseFriends: 'bra | hem | max',
  common:
    'och | är | en | ett | med | av | i | på | till | från | för | inte | mycket | storlek | längd | bredd | ärm | ärmlängd | armhåla | axel | axlar | byst | bröst | midja | midjemått | höft | mått | plant | mätt | innerben | byxor | klänning | jacka | kjol | skjorta | skick | fint | stl | ca | som | det | den | har | jag | tvärs | benvidd | rygg | ytterben | kappa | tröja',
  points: {
    chest: 'byst | bröst | bystmått | bröstvidd | byst runt om | bystvidd | bröstmått | bröstomfång',
    'chest flat':
      'armhåla till armhåla | armhåla | armhålor | från armhåla till armhåla | armhåla armhåla | mellan armhålorna | bredd under ärm | under ärmarna | ärmhåla till ärmhåla | bredd armhåla till armhåla | under armarna | bystbredd | bredd mellan armhålorna | bröstbredd | bredd över bröst | ärmhål till ärmhål | ärmhålan till ärmhålan | armhålan till armhålan | bredd under armarna | halv byst | under armhålan | tvärs över bröstet | bredd armhåla | bredd bröst | bredd byst | tvärs över bysten | från ärmhål till ärmhål | bredd under ärmarna | armhål till armhål',
    waist: 'midja | midjemått | midjevidd | linning | midjan | midje | midjeomfång',
    'waist flat':
      'midjebredd | bredd midja | halv midja | midja tvärs över | midjan tvärs över | tvärs över midjan | tvärs över midja | bredd i midjan | linning tvärs över | bredd midjan',
    hip: 'höft | höfter | höftmått | stuss | höftvidd | höften | rumpa',
    'hip flat': 'höftbredd | bredd höft | höft tvärs över | tvärs över höften | bredd höfter | höften tvärs över | tvärs över höfterna',
    sweep: 'fållvidd | kjolvidd | vidd nedtill',
    bottomEdge:
      'fåll | nederkant | bredd nederkant | nedtill | bredd nertill | nertill | bredd nedtill | bredd fåll | nederkanten | bredd nere | nere',
    bicep: 'överarm | ärmvidd | ärmbredd | överarmen',
    cuff: 'manschett | handled | ärmslut vidd',
    'neck weak': 'krage',
    'sleeveLength weak': 'lång ärm | långa ärmar | kort ärm | korta ärmar',
    neck: 'halsvidd | kragvidd | halsomfång',
    thigh: 'lår | lårvidd | lårbredd | låret | lår tvärs över | bredd lår',
    knee: 'knä | knävidd | knäbredd',
    calf: 'vad | vadvidd',
    legOpening:
      'benslut | benvidd | benöppning | nederkant ben | benvidd nedtill | ben nedtill | benbredd | fotvidd | benslutet | ankel | bensluten | benvidd nertill | benvidd nere | bensluts vidd | benslut bredd | nederkant byxben',
    elbow: 'armbåge',
    underbust: 'under byst | under bysten',
    armhole: 'ärmhål',
    shoulderWidth:
      'axel till axel | axelbredd | axlar | axelsöm till axelsöm | från axel till axel | axel axel | mellan axlarna | axel | bredd axlar | axlarna | axelvidd | axelsöm axelsöm | bredd axel till axel | tvärs över axlarna | bredd över axlarna',
    sleeveLength: 'ärm | ärmlängd | ärmar | ärmens längd | ärmen | armlängd | ärmlängden | längd ärm | ärmarna',
    sleeveUnderarm:
      'innerärm | ärmlängd insida | inre ärmlängd | ärmens insida | ärm insida | ärmlängd innersöm | innerärmlängd | underärm | ärmlängd insidan | insida ärm',
    length:
      'längd | totallängd | lång | rygglängd | total längd | ryggens längd | hel längd | längd bak | längd fram | längden | hela längden | rygg längd | längd rygg | totala längden | långa',
    bodyLength: 'axel till fåll | klänningslängd | längd klänning',
    skirtLength: 'kjollängd | längd kjol',
    napeToWaist: 'nacke till midja | axel till midja',
    backWidth: 'ryggbredd',
    inseam:
      'innerben | innerbenslängd | innersöm | inre benlängd | insida ben | innerbenet | innerlängd | benlängd inner | innerbenlängd | innerbens längd | benets insida | inner ben | benlängd insida | insida benlängd | insidan ben | innersömmen | grenen till fåll | innerbenen | innerbenslängden',
    legLength: 'benlängd | längd ben | benlängden',
    outseam:
      'ytterben | ytterbenslängd | yttersöm | utsida ben | ytterlängd | byxlängd | sidolängd | ytterbenet | sidsöm | benlängd utsida | ytterbens längd | längd byxor | ytterbenlängd | benlängd ytter | ytterbenslängden | yttre benlängd',
    rise: 'gren | grenhöjd | grenmått | midjehöjd | grenlängd | grenen',
    frontRise: 'gren fram | framgren | framgren höjd | grenhöjd fram | gren framtill | främre gren',
    backRise: 'gren bak | bakgren | grenhöjd bak | bakre gren | gren baktill',
    strap: 'axelband | axelbanden',
    torsoLength: 'bållängd',
    width: 'bredd | vidd | bred | bredden'
  },
  landmarks: {
    shoulder: 'axel | axelsöm | axeln | axelband | axelsömmen | axeltopp',
    neck: 'krage | nacke | hals | halsringning | kragen | nacken',
    armpit: 'armhåla | ärmhål | ärmhåla | armhålan | armhål | ärmhålan | ärmhålet',
    waist: 'midja | linning | midjan | linningen',
    hip: 'höft | höften',
    crotch: 'gren | grenen',
    knee: 'knä | knäet',
    hem: 'fåll | nederkant | golv | ankel | slut | fållen | nederkanten | nedtill | ner | botten',
    cuff: 'manschett | handled | ärmslut | mudd | ärmslutet | muddslut | ärmens slut',
    elbow: 'armbåge',
    bust: 'byst',
    top: 'topp'
  },
  basis: {
    flat: 'plant | mätt plant | plan | tvärs över | rakt över | liggande | liggandes | liggande plant | platt | mätt liggande | söm till söm | enkel bredd | sida till sida | rakt av | utlagt | mätt platt | plant liggande | utlagd | på bredden | mätta plant | dubbelvikt | från sida till sida | från söm till söm | mätta liggande | mätt rakt över | plagget liggande',
    around: 'runt om | omkrets | runtom | runt | hela vägen runt | total omkrets | totalt | rundmått',
    doubled: 'x2 | x 2 | gånger 2 | gånger två | dubbelt | 2x | dubbla',
    double: 'dubblera | ska dubblas | multiplicera med 2 | gångra med 2 | dubbleras'
  },
  words: {
    heading: 'mått | måtten | uppmätta mått | mäter | mätt | plaggets mått | måtten är | mätta | uppmätt',
    detail:
      'krage | krag | slag | ficka | fickor | slits | dragkedja | blixtlås | skärp | bälte | knappar | knapp | hällor | huva | klack | klackhöjd | volang | rosett | spets | fransar | linningens höjd | uppslag | foder | kraghöjd | armhåla till fåll | släp | urringning | linning höjd',
    thing:
      'strumpbyxor | strumpbyxa | väska | handväska | ryggsäck | skor | stövlar | stövletter | dator | telefon | hatt | mössa | keps | halsduk | sjal | tyg | stuvbit | gardin | kudde | resväska | sula | skaft | plånbok | klackar',
    height: 'lång person | kroppslängd',
    model:
      'modell | modellen | provdocka | jag är | jag har | hon är | hon har | mina mått | han är | på mig | bär storlek | dockan | jag bär | som är',
    fits: 'passar | passar till | passar på | passar bra på | lämplig för | bäst för | rekommenderas för | passar upp till | passar någon | skulle passa | sitter som | för en | motsvarar | passar en | upp till',
    parcel: 'paket | frakt | försändelse | kartong | påse | skickas',
    elsewhere: 'annan annons | egen annons | säljs separat | separat annons',
    position: 'över | under | ovanför | nedanför | ovan | nedan',
    from: 'från | fr',
    letDown:
      'fåll att lägga ner | att lägga ut | fållmån | kan läggas ut | att släppa ner | fåll att släppa | att lägga ned | fåll att ta av | fåll att lägga ut',
    letOut: 'att släppa ut | kan släppas ut | sömsmån att släppa | att lägga ut i sidorna',
    seamAllowance: 'sömsmån',
    relaxed: 'outsträckt | ostretchad | ej utsträckt | ej stretchat | utan att sträckas | i vila | ouppsträckt | utan stretch | otänjd',
    stretched:
      'utsträckt | stretchad | sträckt | töjbar till | utdragen | kan sträckas till | uttöjd | stretchat | uttänjd | stretchar till | max utsträckt | utdraget',
    cuffed: 'uppvikt | upprullad | uppvikta | med uppslag',
    uncuffed: 'nedvikt | utrullad | ej uppvikt | utan uppslag',
    front: 'fram | framtill | framsida | framsidan',
    back: 'bak | baktill | rygg | baksida | baksidan',
    inner: 'under armen | under ärmen | insida | inner | insidan',
    including: 'inklusive | inkl | utan | exklusive',
    measures: 'mäter | är uppmätt',
    light:
      'en | ett | den | det | är | ca | cirka | ungefär | c a | på | i | av | vid | med | till | från | och | för | har | om | per | varje | totalt | hela | som | mitt | över | plus | omkring | det är | bredaste | stället | sömmen | kanten | runt ca | denna | dess | lite | ungefärlig | strax | mellersta | punkt',
    to: 'till | ner till | ned till',
    between: 'mellan',
    and: 'och | samt',
    or: 'eller | dvs | alltså',
    size: 'storlek | stl | strl | st | storleken | storlekslapp | lapp | märkt | på lappen | lappen | etikett | märkt storlek | stl.',
    region: 'se | sv',
    letterSize: 'one size',
    age: 'ålder',
    years: 'år | månader',
    all: 'alla | allt',
    not: 'inga | ingen | inte | utan | aldrig | ej | inget | varken',
    nothing:
      'lång ärm | kort ärm | långärmad | kortärmad | hög midja | låg midja | knälång | ankellång | v ringad | rund hals | bröstficka | ärmlös | trekvartsärm | 3 4 ärm | resår i midjan | polokrage | resår i midja | långa ärmar | korta ärmar | höga midjan | höftficka | golvlång | vadlång | normal midja | låg gren | axelvaddar',
    otherUnit:
      'knappar | fickor | stycken | st | styck | par | dagar | dag | år | månader | procent | grader | kg | g | gram | kr | kronor | sek | gånger | timmar | hål | veckor | delar | bilder',
    partLined: 'halvfodrad | delvis fodrad | halvfodrat | delvis fodrat',
    lining: 'foder | fyllning | fodret',
    retail: 'nypris | frakt | ordinarie | kostade | köpt för | porto | ord pris | inköpt för | fraktkostnad',
    price: 'pris | säljes | säljs | nu',
    condition: 'skick',
    conditionWord:
      'mycket | bra | gott | fint | utmärkt | nytt | nyskick | perfekt | använt | fin | toppen | som | i | väldigt | begagnat | ok | jättefint',
    conditionPhrase:
      'ny med lapp | nytt med lapp | nyskick | som ny | aldrig använd | oanvänd | mycket gott skick | i nyskick | gott skick | fint skick | använd en gång | mycket fint skick | bra skick | helt ny',
    shell: 'yttertyg | material | tyg | utsida',
    nightwear: 'pyjamas | nattlinne | sparkdräkt',
    backPockets: 'bakfickor | bakfickorna | bakfickorna bak',
    apart: 'isär | avstånd | mellan',
    mended: 'lagad | lagat | lagade | stoppad | stoppat | stoppade | ihopsydd | reparerad | reparerat',
    but: 'men | förutom',
    imitation: 'konst | fejk | imitation | look | liknande',
    stretch: 'stretch | stretchig | elastisk | stretchigt',
    half: 'halv'
  },
  units: { in: 'tum | inch | inches', cm: 'cm | centimeter', mm: 'mm | millimeter', m: 'm | meter', ft: 'fot' },
  numbers: {
    två: 2,
    tre: 3,
    fyra: 4,
    fem: 5,
    sex: 6,
    åtta: 8,
    tio: 10,
    tolv: 12,
    femton: 15,
    tjugo: 20,
    trettio: 30,
    fyrtio: 40,
    femtio: 50
  },
  kinds: [
    { kind: 'jeans', phrases: 'jeans | jeansbyxor | utsvängda jeans' },
    {
      kind: 'trousers',
      phrases:
        'byxor | byxa | kostymbyxor | chinos | leggings | mjukisbyxor | manchesterbyxor | linnebyxor | skinnbyxor | kostymbyxa | byxorna | ullbyxor | träningsbyxor'
    },
    { kind: 'shorts', phrases: 'shorts | bermudas | jeansshorts' },
    { kind: 'skirt', phrases: 'kjol | minikjol | pennkjol | plisserad kjol | jeanskjol | plisskjol | maxikjol | midikjol | ullkjol' },
    {
      kind: 'dress',
      phrases:
        'klänning | brudklänning | aftonklänning | skjortklänning | nattlinne | omlottklänning | sommarklänning | festklänning | maxiklänning | stickad klänning | balklänning'
    },
    { kind: 'jumpsuit', phrases: 'jumpsuit | overall | hängselbyxor | byxdress | sparkdräkt' },
    { kind: 'shirt', phrases: 'skjorta | blus | tunika | flanellskjorta | jeansskjorta | linneskjorta | sidenblus | overshirt' },
    { kind: 'knit-top', phrases: 't shirt | tshirt | topp | linne | piké | polotröja | korsett | t-tröja | body | pikétröja' },
    {
      kind: 'jumper',
      phrases:
        'tröja | stickad tröja | kofta | cardigan | hoodie | sweatshirt | polotröja stickad | collegetröja | pullover | ulltröja | luvtröja | jumper | slipover | stickad'
    },
    { kind: 'jacket', phrases: 'kavaj | blazer | kostym | smoking | frack | dräkt | kavajen | tweedkavaj', made: { tailored: true } },
    {
      kind: 'jacket',
      phrases: 'jacka | jeansjacka | skinnjacka | bomberjacka | bolero | mockajacka | manchesterjacka',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'kappa | rock | trenchcoat | parkas | dunjacka | regnjacka | vinterjacka | poncho | cape | morgonrock | päls | ullkappa | regnrock | skidjacka | badrock | varseljacka | mc jacka | täckjacka | duffel | överrock | vindjacka | vinterkappa | ullrock'
    },
    { kind: 'waistcoat', phrases: 'väst | kostymväst | dunväst' }
  ],
  fibres: {
    cotton: 'bomull | ekologisk bomull',
    wool: 'ull | merinoull | lammull | ren ull | ny ull | merino | ren ny ull',
    linen: 'lin | linne tyg | linnetyg',
    silk: 'siden | silke | rent siden',
    viscose: 'viskos | rayon',
    polyester: 'polyester',
    polyamide: 'polyamid | nylon',
    elastane: 'elastan | elasthan | lycra | spandex',
    acrylic: 'akryl',
    cashmere: 'kashmir | cashmere | kaschmir',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpacka | alpaca',
    angora: 'angora',
    hemp: 'hampa',
    polyurethane: 'polyuretan'
  },
  structures: {
    woven: 'vävd | denim | poplin | flanell | manchester | vävt',
    knit: 'stickad | trikå | jersey | stickat | virkad | handstickad | stickade',
    leather: 'läder | skinn | mocka | äkta skinn | äkta läder | nappa | skinnjacka | skinnbyxor'
  },
  traits: {
    rigid: 'ej stretch | ingen stretch | utan stretch | styv denim',
    denim: 'denim | jeanstyg | jeansjacka | jeanskjol | jeansskjorta',
    pile: 'manchester | sammet | velour | manchesterbyxor',
    check: 'rutig | rutigt | rutiga | tartan | hundtand',
    stripe: 'randig | randigt | kritstreck | randiga | kritstrecksrandig',
    sheer: 'genomskinlig | chiffong | tyll | organza | transparent',
    slippery: 'satin',
    beaded: 'paljetter | pärlor | paljettklänning',
    pleated: 'plisserad | plissé | plisserat',
    suede: 'mocka | mockajacka',
    vinyl: 'vinyl | konstläder | lack | skinnimitation',
    coated: 'vaxad | coated | vaxat',
    silk: 'siden | silke | sidenblus',
    taffeta: 'taft'
  },
  made: [
    { fact: { fact: 'lined', value: true }, phrases: 'fodrad | helfodrad | med foder | foder | fodrat' },
    { fact: { fact: 'lined', value: false }, phrases: 'ofodrad | utan foder | ej fodrad | inget foder' },
    { fact: { fact: 'shortSleeves', value: true }, phrases: 'kort ärm | kortärmad | korta ärmar | trekvartsärm | ärmlös' },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: 'resår i midjan | resår i midja | elastisk midja | resårmidja | resår i linningen'
    },
    { fact: { fact: 'darts', value: true }, phrases: 'insnitt' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'pennkjol | rak kjol' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'utställd kjol | a linje | utställd | a-linje' },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'cirkelkjol | helcirkelkjol' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'plisserad kjol | plisskjol' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'originalfåll | ej uppsydd | ej uppsydda' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: 'dragkedja i sidan | dragkedja bak | blixtlås bak | dragkedja i ryggen | blixtlås i sidan | dold dragkedja'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'slits bak | slits i sidan' }
  ],
  uses: {
    protective: 'varsel | varseljacka | flamskyddad | flamhärdig | med skydd | varselväst | sågskydd | skyddskläder',
    child: 'barn | flick | pojk | baby | barnklänning',
    'child-sleepwear': 'barnpyjamas | babypyjamas | sparkdräkt',
    'medical-compression': 'stödstrumpor | kompressionsstrumpor'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'malhål | malätet | malangrepp' },
    { mending: ['patch'], phrases: 'hål | reva | revor | litet hål | trasig' },
    { mending: ['clean'], phrases: 'fläck | fläckar | missfärgning | liten fläck | fläckig' },
    { mending: ['replace-button'], phrases: 'knapp saknas | saknar en knapp | saknad knapp | en knapp saknas' },
    { mending: ['sew-shank'], phrases: 'lös knapp' },
    {
      mending: ['close-seam'],
      phrases: 'söm har gått upp | trasigt foder | söm upp | uppsprucken söm | sömmen har gått upp | fodret är trasigt'
    },
    { mending: ['replace-zip'], phrases: 'trasig dragkedja | dragkedjan är trasig | trasigt blixtlås' },
    { mending: ['replace-elastic'], phrases: 'resåren är slapp | uttöjd resår' },
    { mending: ['de-pill'], phrases: 'noppor | nopprig | nopprigt | noppig' },
    { mending: ['dye'], phrases: 'urblekt | blekt | urtvättad' },
    { mending: ['polish-leather'], phrases: 'repor | skavmärken' },
    { mending: [], phrases: 'slitage | slitet | skada | defekt | dragen tråd | sliten | skavank' }
  ],
  colours: {
    black: 'svart | svarta',
    white: 'vit | vita | vitt',
    grey: 'grå | gråa | grått | mörkgrå | ljusgrå | antracit',
    navy: 'marinblå | mörkblå | marinblått',
    blue: 'blå | blåa | ljusblå | blått | kornblå',
    teal: 'turkos | petrol',
    green: 'grön | gröna | olivgrön | grönt | mörkgrön',
    red: 'röd | röda | rött',
    burgundy: 'vinröd | vinröda',
    pink: 'rosa | cerise',
    purple: 'lila | lavendel',
    orange: 'orange | roströd',
    yellow: 'gul | gula | senapsgul | gult',
    brown: 'brun | bruna | cognac | brunt | mörkbrun',
    beige: 'beige | sand | kamel',
    cream: 'creme | benvit | gräddvit | naturvit',
    gold: 'guld',
    silver: 'silver'
  },
  currencies: { SEK: 'kr | sek | kronor | :-' }
}

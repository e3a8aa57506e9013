/** German, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const de: Lexicon = {
  language: 'de',
  endings: ['n', 'en', 'e', 's'],
  falseFriends: 'im | aus | am | war | bin | max | maximum',
  common:
    'der | die | das | und | mit | von | bis | ist | im | für | nicht | eine | ein | zu | auf | sehr | größe | gr | länge | breite | weite | achsel | taille | bund | hüfte | schulter | ärmel | ärmellänge | gemessen | flach | liegend | zustand | maße | getragen | wurde | habe | ich | aus | innenbeinlänge | bundweite | einfach | hose | kleid | jacke | brustweite | schrittlänge | gesamtlänge',
  points: {
    chest: 'brust | brustumfang | brustweite | oberweite | büste | brustmaß | brustbreite gesamt | bw | ow',
    'chest flat':
      'achsel zu achsel | achsel | achseln | von achsel zu achsel | achsel bis achsel | von achsel bis achsel | unter den achseln | unter der achsel | unter den armen | brustbreite | breite unter den achseln | achselbreite | breite achseln | breite achsel | breite unter achsel | breite unter den armen | halbe brustweite | breite brust | achselweite | unterhalb der achseln | breite unterhalb der achseln | breite von achsel zu achsel | weite unter den achseln | weite unter den armen | weite achsel | unterarm zu unterarm | unter den achseln quer | achsel achsel | achsel - achsel | achsel an achsel | unter achsel | unter den ärmeln | breite achsel zu achsel | weite achsel zu achsel | brust quer | brust breite',
    'chest around': 'brustumfang gesamt | umfang brust | oberweite umfang',
    waist:
      'tw | taille | bund | bundweite | taillenweite | taillenumfang | hosenbund | taillenmaß | rockbund | bundumfang | weite bund | bundmaß | taillienweite | tallie | taile | bauchweite | bauch | bauchumfang | taillenumfang rundum | weite taille | bundweite gesamt | gürtelweite',
    'waist flat':
      'bundbreite | breite bund | taillenbreite | breite taille | halbe bundweite | bund breite | bund einfach | bund halb | taille breite | bund flach | bund quer | breite am bund | breite in der taille | taille einfach',
    'waist around': 'umfang taille | umfang bund | taillenumfang gesamt',
    hip: 'hw | hüfte | hüftweite | hüftumfang | gesäß | gesäßweite | po | hüften',
    'hip flat': 'hüftbreite | breite hüfte | halbe hüftweite | hüfte breite | breite an der hüfte | breite hüften | hüfte quer',
    'hip around': 'umfang hüfte',
    sweep: 'rocksaum | saumumfang | saumweite rock',
    bottomEdge:
      'saum | saumweite | saumbreite | breite unten | unten | weite saum | breite saum | abschluss | bündchen unten | breite am saum',
    bicep: 'oberarm | oberarmweite | ärmelweite | ärmelbreite | oberarmumfang | armweite',
    cuff: 'ärmelbündchen | handgelenk | ärmelsaum | ärmelöffnung | manschette',
    cuffEdge: 'bündchen | aufschlag',
    'neck weak': 'kragen | kragengröße',
    'sleeveLength weak': 'lange ärmel | kurze ärmel | langarm | kurzarm',
    neck: 'kragenweite | halsumfang | halsweite | kragen umfang | kw',
    thigh:
      'oberschenkel | oberschenkelweite | oberschenkelbreite | oberschenkelumfang | schenkel | beinweite oben | beinbreite oben | schenkelweite | oberschenkel breite | bein oben | schenkelbreite',
    knee: 'knie | knieweite | kniebreite',
    calf: 'wade | wadenweite',
    legOpening:
      'fußweite | beinöffnung | beinweite unten | beinabschluss | beinsaum | hosensaum | saumweite bein | beinbreite unten | fußbreite | beinweite | hosenbein unten | knöchelweite | beinende | bein unten | saum unten bein | beinweite am saum | hosenbeinweite | fussweite | fussbreite | beinöffnung unten | weite unten',
    elbow: 'ellbogen | ellenbogen',
    underbust: 'unterbrust | unterbrustumfang | unterbrustweite | unter der brust',
    armhole: 'armloch | armausschnitt | armlochtiefe',
    shoulderWidth:
      'schulterbreite | schulter | schultern | schulter zu schulter | schulter bis schulter | von schulter zu schulter | von schulter bis schulter | schulternaht zu schulternaht | schulternaht bis schulternaht | schulterweite | schulter an schulter | schulterbreit',
    sleeveLength:
      'ärmellänge | ärmel | armlänge | ärmellänge außen | arm | ärmel länge | länge ärmel | länge arm | armellange | länge der ärmel | ärmel ab schulter | ärmellänge ab schulter | ärmel ab schulternaht | armlänge außen | ärmel außen | ärmel aussen | ärmellänge aussen | ärmel ab naht',
    sleeveUnderarm:
      'innenärmel | ärmel unter dem arm | ärmellänge unter dem arm | ärmel von achsel | ärmelinnenlänge | ärmellänge innen | ärmel innen | innenarmlänge | armlänge innen | ärmelinnennaht | unterarmlänge | innenärmellänge | ärmel unterseite | ärmel innenlänge | ärmel ab achsel | ärmellänge ab achsel | arm innen | innenarm',
    length:
      'gl | länge | gesamtlänge | lang | rückenlänge | rückenlänge gesamt | gesamt länge | länge gesamt | länge hinten | länge ca | länge rücken | komplettlänge | lg | vorderlänge | länge vorne | hosenlänge | hosenlange | laenge | rückenlänge ab kragen | länge ab schulter | länge über alles | länge insgesamt | gesamte länge | hl',
    bodyLength: 'kleidlänge | jackenlänge | mantellänge | kleiderlänge',
    skirtLength: 'rocklänge',
    napeToWaist: 'nacken bis taille | rückenlänge bis taille | vordere taillenlänge | taillenlänge',
    backWidth: 'rückenbreite',
    inseam:
      'innenbeinlänge | schrittlänge | innenbein | schritt | innennaht | innenlänge | beininnenlänge | innenbeinlange | beinlänge innen | schritt länge | innere beinlänge | innenbeinnaht | innenseite bein | innensaum | beininnennaht | länge innen | innen',
    legLength: 'beinlänge | länge bein',
    outseam:
      'außenlänge | außennaht | seitenlänge | außenbeinlänge | seitennaht | länge außen | beinlänge außen | außen | äußere beinlänge | bein außen',
    rise: 'leibhöhe | schritthöhe | sitzhöhe',
    frontRise: 'leibhöhe vorne | leibhöhe vorn | vordere leibhöhe | leibhöhe vorder',
    backRise: 'leibhöhe hinten | hintere leibhöhe',
    strap: 'trägerlänge | träger länge | träger',
    torsoLength: 'torsolänge | rumpflänge',
    width: 'breite | breit | weite'
  },
  letters: { b: 'width', l: 'length', a: 'sleeveLength', s: 'shoulderWidth', t: 'waist' },
  landmarks: {
    shoulder: 'schulter | schulternaht | schulterpunkt | oberkante schulter | träger | schultern',
    neck: 'kragen | nacken | kragenansatz | hals | halsausschnitt | rückenmitte | kragennaht | halsansatz',
    armpit: 'achsel | achseln | achselhöhle | armausschnitt | unterarm',
    waist: 'taille | bund | bundoberkante | hosenbund',
    hip: 'hüfte',
    crotch: 'schritt | schrittnaht',
    knee: 'knie',
    hem: 'saum | saumende | unten | ende | unterkante | boden | bauch saum | knöchel',
    cuff: 'ärmelende | bündchen | ärmelsaum | handgelenk | manschette | ärmelabschluss',
    elbow: 'ellbogen',
    bust: 'brust',
    top: 'oben'
  },
  basis: {
    flat: 'flach | liegend | flach liegend | flach gemessen | liegend gemessen | einfach | einfach gemessen | einfache breite | einseitig | halber umfang | halb | quer | quer gemessen | glatt liegend | im liegen | flachgelegt | flach gelegt | ausgelegt | einfach liegend | auf einer seite | von seite zu seite | seite zu seite | einmal | plan liegend | hingelegt | im liegen gemessen | einfache weite | glatt gemessen',
    around:
      'umfang | rundum | rundherum | rund | gesamtumfang | ringsum | rundum gemessen | im umfang | ganzer umfang | insgesamt | komplett',
    doubled: 'x2 | x 2 | mal 2 | mal zwei | doppelt | verdoppelt | 2x | 2 mal | zweimal',
    double:
      'verdoppeln | bitte verdoppeln | mal zwei nehmen | muss verdoppelt werden | doppelt rechnen | doppelt nehmen | mal 2 nehmen | verdoppelt werden'
  },
  words: {
    heading:
      'maße | masse | abmessungen | messungen | maßangaben | masangaben | gemessen | vermessen | messung | gemessene maße | nachgemessen | artikelmaße | die maße',
    detail:
      'schleppe | schleppenlänge | futter | innenfutter | futterlänge | kragen | kragenhöhe | kragenbreite | revers | reversbreite | tasche | taschen | schlitz | gehschlitz | reißverschluss | knopf | knöpfe | gürtel | gürtelschlaufen | bundhöhe | umschlag | kapuze | saumhöhe | absatz | absatzhöhe | rückenschlitz | ausschnitt | ausschnitttiefe | schleife | rüsche | volant | futter | knopfleiste | trägerbreite | band | spitze | fransen | rippbündchen | kellerfalte | achsel bis saum | seitenlänge ab achsel',
    thing:
      'strumpfhose | strumpfhosen | strümpfe | kleiderbügel | tasche handtasche | handtasche | rucksack | schuhe | stiefel | stiefelette | laptop | handy | hut | mütze | schal | tuch | stoff | meterware | vorhang | decke | kissen | koffer | schaft | sohle | absätze | stoffrest | geldbeutel',
    height: 'groß | körpergröße | körperhöhe | größe körper',
    model:
      'model | modell | puppe | schneiderpuppe | schaufensterpuppe | ich bin | ich trage | sie trägt | meine maße | meine größe | bei mir | sie ist | er ist | an mir | trägerin',
    fits: 'passt | passt bei | passend für | passt für | geeignet für | ideal für | würde passen | passt bis | für eine | passt mir | passt jemandem | sollte passen | empfehle | empfohlen | für | fällt aus wie | dürfte passen | bis zu | trägt sich wie | entspricht',
    parcel: 'paket | päckchen | versand | verpackung | karton | warensendung | maxibrief | großbrief',
    elsewhere:
      'extra anzeige | andere anzeige | anderer anzeige | separate anzeige | eigene anzeige | separat | andere auktion | separat erhältlich',
    position: 'unter | über | unterhalb | oberhalb | entfernt | überm | unterm | weiter | kürzer als | länger als',
    from: 'ab | von | vom | von der | ab der | aus',
    letDown:
      'saumzugabe | zum auslassen am saum | zum rauslassen | saumreserve | kann ausgelassen werden | noch umgeschlagen | saum zum auslassen | zum verlängern | saum zum rauslassen | verlängerbar',
    letOut: 'zum auslassen | auslassreserve | nahtreserve | zum weiten | kann weiter gemacht werden | zum herauslassen',
    seamAllowance: 'nahtzugabe',
    relaxed: 'ungedehnt | entspannt | nicht gedehnt | ohne dehnung | im ruhezustand | ungespannt',
    stretched:
      'gedehnt | dehnbar bis | dehnbar auf | gestretcht | bis dehnbar | ausgezogen | voll gedehnt | lässt sich dehnen bis | gedehnt bis | dehnt sich bis',
    cuffed: 'umgekrempelt | hochgekrempelt | umgeschlagen | mit umschlag | gekrempelt',
    uncuffed: 'nicht umgekrempelt | ohne umschlag | ausgekrempelt | ungekrempelt | heruntergekrempelt',
    front: 'vorne | vorn | vorder | vordere',
    back: 'hinten | rücken | hintere | rückseite',
    inner: 'unter dem arm | unterm arm | unter den armen | unter der achsel | innen | innenseite | unterseite',
    including: 'inkl | inklusive | einschließlich | ohne | exkl | samt',
    measures: 'misst | messen | beträgt | gemessen | betragen',
    light:
      'der | die | das | dem | den | des | ein | eine | einer | einem | ist | sind | ca | circa | etwa | ungefähr | ungef | zirka | rund ca | an | am | im | in | beim | um | mit | von | und | je | jeweils | hat | auf | zur | zum | gut | genau | knapp | so | bei | also | nur | hier | es | sie | gesamt | oben | außen | mitte | weitesten | breitester | stelle | schmalster | punkt | seite | naht | bis zum | inkl | zusammen | länge | gemessene | beträgt',
    to: 'bis | zu | bis zum | bis zur | zum | zur | bis zu',
    between: 'zwischen',
    and: 'und | sowie',
    or: 'oder | bzw | beziehungsweise | also | entspricht',
    size: 'größe | gr | groesse | größenetikett | etikett | laut etikett | label größe | konfektionsgröße | in größe | grösse | grösen | etikettgröße | steht größe | angegeben | kleidergröße | auf dem etikett | gr. | etikett sagt | im etikett steht',
    region: 'd | ger',
    letterSize: 'einheitsgröße',
    age: 'alter | jahre alt',
    years: 'jahre | monate | jahren',
    all: 'alle | alles | sämtliche',
    not: 'kein | keine | keinen | keinerlei | ohne | nicht | nie | nirgends | weder | frei von',
    nothing:
      'knielang | knöchellang | bodenlang | wadenlang | hüftlang | taillenhoch | hohe taille | hoher bund | niedriger bund | lange ärmel | kurze ärmel | langarm | kurzarm | dreiviertelarm | 3 4 arm | 3 4 ärmel | brusttasche | hosentasche | gesäßtasche | seitentasche | gummibund | rundhals | v ausschnitt | hüfthose | low waist | high waist | lange zeit | bund mit gummizug | gummizug im bund | so lange | wie lang',
    otherUnit:
      'knöpfe | taschen | stück | paar | tage | tag | wochen | jahre | monate | prozent | grad | kg | gramm | g | stunden | teile | teilig | euro | mal | loch | löcher | gürtelschlaufen | uhr | jahr | den | liter | fach | reihen | stk | mal getragen',
    partLined:
      'halb gefüttert | halbgefüttert | teilgefüttert | teilweise gefüttert | zur hälfte gefüttert | halbfutter | teilfutter | nur die ärmel gefüttert | ärmel ungefüttert',
    lining: 'futter | innenfutter | fütterung | futterstoff | füllung | besatz | ärmelfutter',
    retail: 'neupreis | np | uvp | ehemals | gekostet | kostete | versand | porto | versandkosten | statt | ursprünglich | vb neu',
    price: 'preis | vb | festpreis | fp | verkaufe | für nur | jetzt | abzugeben für | verhandlungsbasis | möchte | hätte gern',
    condition: 'zustand',
    conditionWord:
      'sehr | gut | guter | gutem | guten | neuwertig | neuwertiger | neuwertigem | getragen | gebraucht | gebrauchter | top | toller | super | einwandfrei | einwandfreier | bester | bestem | perfekter | gepflegter | gepflegtem | neu | neuer | neuem | wie | tadellos | tadellosem | tadelloser | einwandfreiem | hervorragender | hervorragendem | absolut | getragener',
    conditionPhrase:
      'neu mit etikett | wie neu | neuwertig | nie getragen | ungetragen | kaum getragen | einmal getragen | sehr gut erhalten | gut erhalten | sehr gepflegt',
    shell: 'außen | oberstoff | obermaterial | material | außenmaterial | stoff | hauptmaterial | außenstoff',
    nightwear: 'schlafanzug | nachthemd | pyjama | strampler | schlafsack',
    backPockets: 'gesäßtaschen | gesässtaschen | potaschen | hintertaschen | hinteren taschen | gesäßtasche',
    apart: 'auseinander | abstand | zwischen',
    mended:
      'geflickt | gestopft | repariert | ausgebessert | genäht worden | zugenäht | kunstgestopft | geflicktes | gestopftes | repariertes | geflickte | gestopfte | reparierte',
    but: 'aber | außer | jedoch | bis auf',
    imitation: 'kunst | imitat | optik | look | artig',
    stretch: 'stretch | dehnbar | elastisch',
    half: 'halb'
  },
  units: { in: 'zoll | inch | inches', cm: 'cm | zentimeter | centimeter | zm', mm: 'mm | millimeter', m: 'm | meter', ft: 'fuß' },
  numbers: {
    einen: 1,
    zwei: 2,
    drei: 3,
    vier: 4,
    fünf: 5,
    sechs: 6,
    acht: 8,
    zehn: 10,
    zwölf: 12,
    fünfzehn: 15,
    zwanzig: 20,
    dreißig: 30,
    vierzig: 40,
    fünfzig: 50
  },
  kinds: [
    { kind: 'jeans', phrases: 'jeans | jeanshose | schlagjeans | bluejeans | denimhose | mom jeans | röhrenjeans' },
    {
      kind: 'trousers',
      phrases:
        'hose | hosen | stoffhose | anzughose | wollhose | leinenhose | cordhose | lederhose | chino | chinohose | jogginghose | leggings | culotte | bundfaltenhose | marlenehose | schlaghose | reithose | skihose | trainingshose | palazzohose | cargohose | pyjamahose | schlafanzughose'
    },
    {
      kind: 'shorts',
      phrases:
        'shorts | kurze hose | kurze lederhose | kurze hosen | kurze jeans | kurze jeanshose | lederhose kurz | kniebundhose kurz | bermuda | bermudas | hotpants | jeansshorts'
    },
    {
      kind: 'skirt',
      phrases:
        'rock | minirock | maxirock | midirock | bleistiftrock | tellerrock | faltenrock | wollrock | lederrock | jeansrock | plisseerock | wickelrock | kilt'
    },
    {
      kind: 'dress',
      phrases:
        'kleid | sommerkleid | abendkleid | maxikleid | midikleid | minikleid | hemdblusenkleid | etuikleid | strickkleid | wickelkleid | brautkleid | cocktailkleid | dirndl | ballkleid | blusenkleid | hemdkleid | jeanskleid | leinenkleid | trägerkleid | kostümkleid | tunika kleid | nachthemd'
    },
    { kind: 'jumpsuit', phrases: 'jumpsuit | overall | latzhose | einteiler | strampler' },
    {
      kind: 'shirt',
      phrases:
        'hemd | bluse | seidenbluse | flanellhemd | jeanshemd | oberhemd | trachtenhemd | trachtenbluse | tunika | leinenhemd | leinenbluse | holzfällerhemd | overshirt'
    },
    {
      kind: 'knit-top',
      phrases:
        'shirt | tshirt | t shirt | top | oberteil | langarmshirt | poloshirt | trägertop | unterhemd | polo | longsleeve | korsett | corsage | bustier'
    },
    {
      kind: 'jumper',
      phrases:
        'pullover | pulli | strickpullover | strickjacke | cardigan | sweatshirt | hoodie | rollkragenpullover | wollpullover | kapuzenpullover | strickpulli | norwegerpullover | kaschmirpullover | sweater | troyer | pullunder'
    },
    {
      kind: 'jacket',
      phrases:
        'sakko | blazer | anzug | anzugjacke | smoking | kostüm | hosenanzug | jackett | tweedsakko | frack | janker | trachtenjanker | kostümjacke',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'jacke | jeansjacke | lederjacke | bomberjacke | trachtenjacke | cordjacke | blouson | bikerjacke | bolero | fliegerjacke | wolljacke | samtjacke',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'mantel | wollmantel | trenchcoat | parka | daunenjacke | daunenmantel | winterjacke | wintermantel | regenjacke | regenmantel | anorak | skijacke | steppjacke | cape | poncho | pelzmantel | lodenmantel | bademantel | softshelljacke | windjacke | übergangsjacke | warnjacke | motorradjacke | fleecejacke | ledermantel | dufflecoat'
    },
    { kind: 'waistcoat', phrases: 'weste | gilet | anzugweste | steppweste | trachtenweste | daunenweste | strickweste' }
  ],
  fibres: {
    cotton: 'baumwolle | bw baumwolle | biobaumwolle',
    wool: 'wolle | schurwolle | merinowolle | schafwolle | lammwolle | merino | reine schurwolle | neue wolle',
    linen: 'leinen | flachs',
    silk: 'seide | reine seide',
    viscose: 'viskose | rayon',
    polyester: 'polyester',
    polyamide: 'polyamid | nylon',
    elastane: 'elasthan | elastan | spandex | lycra',
    acrylic: 'acryl | polyacryl | polyacrylnitril',
    cashmere: 'kaschmir | cashmere',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetat | triacetat',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaka | alpaca',
    angora: 'angora',
    hemp: 'hanf',
    polyurethane: 'polyurethan'
  },
  structures: {
    woven: 'gewebt | gewebe | denim | popeline | köper | cord | leinwand | flanell',
    knit: 'strick | strickjacke | strickpullover | strickkleid | strickpulli | strickweste | gestrickt | jersey | feinstrick | grobstrick | handgestrickt | sweatstoff | gehäkelt',
    leather:
      'leder | lederjacke | lederhose | ledermantel | lederrock | lederweste | echtleder | wildleder | lammleder | echt leder | glattleder | nappaleder | veloursleder'
  },
  traits: {
    rigid: 'rohdenim | nicht dehnbar | ohne stretch | nicht elastisch | kein stretch',
    denim: 'denim | jeansstoff | jeanshose | jeansjacke | jeansrock | jeanskleid | jeanshemd',
    pile: 'cord | samt | kord | velours | nicki | samtjacke | cordhose | cordjacke | cordrock',
    nap: 'moleskin | fleece',
    check: 'kariert | karo | karomuster | schottenkaro | hahnentritt | karierte | kariertes | karierter | tartan | glencheck',
    stripe: 'gestreift | streifen | nadelstreifen | gestreifte | gestreiftes | gestreifter | ringel | geringelt',
    'large-print': 'großes muster | großer print',
    sheer: 'durchsichtig | transparent | chiffon | organza | tüll',
    slippery: 'satin',
    beaded: 'pailletten | perlen | perlenbesatz | paillettenkleid',
    pleated: 'plissee | plissiert | faltenrock | plisseerock | plissiertes',
    suede: 'wildleder | veloursleder',
    vinyl: 'lack | kunstleder | lackleder | vinyl',
    coated: 'beschichtet | gewachst | wachsjacke',
    silk: 'seide | reine seide',
    taffeta: 'taft'
  },
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: 'gefüttert | mit futter | komplett gefüttert | innenfutter | vollständig gefüttert | ganz gefüttert'
    },
    { fact: { fact: 'lined', value: false }, phrases: 'ungefüttert | nicht gefüttert | ohne futter | kein futter' },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: 'kurzarm | kurze ärmel | kurzärmelig | kurzärmlig | dreiviertelarm | 3 4 arm | 3 4 ärmel | ärmellos | halbarm'
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases:
        'gummibund | elastischer bund | gummizug | bund mit gummizug | dehnbarer bund | gummizug im bund | bund elastisch | gummi im bund | elastischem bund'
    },
    {
      fact: { fact: 'workingCuffButtons', value: true },
      phrases: 'knöpfbare ärmel | echte knopflöcher | aufknöpfbare ärmel | durchgeknöpfte ärmel'
    },
    { fact: { fact: 'backSeam', value: true }, phrases: 'rückennaht | mittelnaht hinten | rückenmittelnaht' },
    { fact: { fact: 'darts', value: true }, phrases: 'abnäher' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'bleistiftrock | gerader rock' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'ausgestellt | a linie | ausgestellter rock | a-linie' },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'tellerrock' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'faltenrock | plisseerock' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'originalsaum | original saum | ungekürzt' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases:
        'seitlicher reißverschluss | reißverschluss hinten | reißverschluss seitlich | reißverschluss an der seite | seitenreißverschluss | reißverschluss im rücken'
    },
    { fact: { fact: 'opens', value: ['hem'] }, phrases: 'rückenschlitz | seitenschlitze | rückenschlitze' },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'gehschlitz | gehfalte' }
  ],
  uses: {
    protective:
      'warnschutz | warnjacke | warnweste | schutzkleidung | flammhemmend | flammschutz | protektoren | motorradjacke mit protektoren | schnittschutz | schnittschutzhose | feuerfest',
    child: 'kinder | mädchen | jungen | baby | kind | kleinkind | kinderkleid | kinderhose | kinderjacke',
    'child-sleepwear': 'kinderschlafanzug | kinderpyjama | babyschlafanzug | strampler',
    'medical-compression': 'kompressionsstrümpfe | kompressionsstrumpf | medizinische kompression | stützstrümpfe'
  },
  faults: [
    {
      mending: ['re-line-pocket'],
      phrases:
        'loch in der tasche | in der tasche ein loch | loch in einer tasche | löcher in den taschen | loch im taschenfutter | taschenfutter kaputt | taschenfutter gerissen'
    },
    { mending: ['darn', 'treat-pests'], phrases: 'mottenloch | mottenlöcher | mottenfraß | mottenschaden' },
    { mending: ['patch'], phrases: 'loch | löcher | löchlein | riss | risse | gerissen | brandloch' },
    {
      mending: ['clean'],
      phrases:
        'fleck | flecken | verfärbung | verfärbungen | fleckchen | schmutz | verschmutzt | verschmutzung | riecht | muffig | stockflecken | vergilbt'
    },
    {
      mending: ['replace-button'],
      phrases: 'knopf fehlt | fehlender knopf | ein knopf fehlt | knöpfe fehlen | es fehlt ein knopf | fehlt ein knopf'
    },
    {
      mending: ['sew-shank'],
      phrases: 'knopf ist locker | ein knopf ist locker | loser knopf | knopf ist lose | knopf lose | knopf locker'
    },
    {
      mending: ['close-seam'],
      phrases:
        'naht offen | offene naht | naht aufgegangen | saum offen | naht gerissen | futter gerissen | naht ist offen | saum aufgegangen | offener saum'
    },
    {
      mending: ['replace-zip'],
      phrases: 'reißverschluss defekt | reißverschluss kaputt | reißverschluss klemmt | defekter reißverschluss | kaputter reißverschluss'
    },
    { mending: ['replace-elastic'], phrases: 'gummi ausgeleiert | gummizug ausgeleiert | bund ausgeleiert' },
    { mending: ['de-pill'], phrases: 'pilling | knötchen | fusseln' },
    { mending: ['dye'], phrases: 'verblasst | ausgeblichen | verwaschen | ausgewaschen' },
    { mending: ['polish-leather'], phrases: 'abgewetzt | schrammen | kratzer' },
    { mending: [], phrases: 'gebrauchsspuren | tragespuren | mangel | mängel | fadenzieher | beschädigt | beschädigung | makel' }
  ],
  colours: {
    black: 'schwarz | schwarze | schwarzer | schwarzes',
    white: 'weiß | weisse | weiße | weißes | weißer',
    grey: 'grau | graue | grauer | graues | anthrazit | dunkelgrau | hellgrau',
    navy: 'dunkelblau | marine | marineblau | navy',
    blue: 'blau | blaue | blauer | blaues | hellblau | royalblau | indigo',
    teal: 'petrol | türkis',
    green: 'grün | grüne | grüner | grünes | olive | oliv | dunkelgrün | tannengrün | hellgrün',
    red: 'rot | rote | roter | rotes | dunkelrot',
    burgundy: 'bordeaux | weinrot',
    pink: 'rosa | pink | altrosa',
    purple: 'lila | violett | flieder',
    orange: 'orange | rostrot',
    yellow: 'gelb | senfgelb | gelbe | gelbes',
    brown: 'braun | braune | brauner | braunes | cognac | dunkelbraun | hellbraun',
    beige: 'beige | sand | taupe | camel',
    cream: 'creme | wollweiß | elfenbein',
    gold: 'gold | golden',
    silver: 'silber'
  },
  currencies: { EUR: 'euro | eur', CHF: 'franken | chf' }
}

/** Italian, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const it: Lexicon = {
  language: 'it',
  endings: [],
  falseFriends: 'max | maximum',
  common:
    'il | la | lo | gli | le | di | del | della | con | e | è | un | una | per | molto | non | taglia | lunghezza | larghezza | ascella | ascelle | spalla | spalle | manica | maniche | petto | vita | fianchi | misure | stato | cavallo | piatto | pantaloni | vestito | giacca | camicia | gonna | senza | come | circa | condizioni | interno | gamba | orlo',
  points: {
    chest:
      'petto | torace | busto | circonferenza petto | seno | giro petto | circonferenza seno | circonferenza torace | giro seno | circonferenza busto',
    'chest flat':
      'ascella ascella | ascella a ascella | da ascella a ascella | da ascella ad ascella | ascella ad ascella | larghezza ascelle | larghezza petto | ascelle | larghezza ascella | sotto le ascelle | da un ascella all altra | larghezza torace | larghezza sotto le ascelle | larghezza ascella ascella | larghezza da ascella ad ascella | mezzo petto | ampiezza petto | larghezza busto | larghezza sotto ascella | larghezza sotto ascelle | da ascella ascella | sottomanica sottomanica | larghezza seno | ascella-ascella | ampiezza ascelle',
    waist: 'vita | circonferenza vita | giro vita | girovita | punto vita',
    'waist flat': 'larghezza vita | mezza vita | ampiezza vita | larghezza in vita | larghezza punto vita | larghezza cintura',
    hip: 'fianchi | bacino | circonferenza fianchi | giro fianchi | fianco | circonferenza bacino',
    'hip flat': 'larghezza fianchi | larghezza bacino | ampiezza fianchi',
    sweep: 'circonferenza orlo | giro orlo',
    bottomEdge: 'orlo | fondo | larghezza fondo | larghezza orlo | larghezza in fondo | larghezza al fondo | fondo larghezza',
    bicep: 'larghezza manica | bicipite | circonferenza braccio | giro braccio | giromanica',
    cuff: 'polsino | polso | polsini',
    'neck weak': 'collo | colletto',
    'sleeveLength weak': 'maniche lunghe | manica lunga | maniche corte | manica corta',
    waistband: 'cintura',
    neck: 'circonferenza collo | giro collo',
    thigh: 'coscia | larghezza coscia | cosce | circonferenza coscia | larghezza cosce',
    knee: 'ginocchio | larghezza ginocchio',
    calf: 'polpaccio',
    legOpening:
      'fondo gamba | larghezza fondo gamba | apertura gamba | caviglia | orlo gamba | larghezza caviglia | fondo pantalone | larghezza gamba in fondo | fondo pantaloni | larghezza fondo pantalone | orlo pantalone | larghezza fondo gambe',
    elbow: 'gomito',
    underbust: 'sottoseno | sotto seno | circonferenza sottoseno',
    armhole: 'giro manica | scalfo',
    shoulderWidth:
      'spalla spalla | spalla a spalla | da spalla a spalla | spalle | larghezza spalle | larghezza spalla | da spalla spalla | larghezza delle spalle | da una spalla all altra | spalla | spalla-spalla | ampiezza spalle | larghezza da spalla a spalla',
    sleeveLength:
      'manica | maniche | lunghezza manica | lunghezza maniche | lungh manica | manica lunghezza | lunghezza della manica | lunghezza delle maniche | braccio | lunghezza braccio',
    sleeveUnderarm:
      'interno manica | manica interna | sottomanica | lunghezza interna manica | lunghezza manica interna | lunghezza interno manica | sotto manica',
    length:
      'lunghezza | lunghezza totale | lungo | lunga | lungh | altezza | lunghezza dietro | lunghezza schiena | lunghezza davanti | lunghezza complessiva | lung | lunghezza posteriore | lunghi',
    bodyLength:
      'spalla orlo | da spalla a orlo | lunghezza vestito | lunghezza giacca | spalla fondo | da spalla a fondo | lunghezza abito | da spalla all orlo',
    skirtLength: 'lunghezza gonna | lunghezza della gonna',
    napeToWaist: 'collo vita | spalla vita',
    backWidth: 'larghezza schiena | larghezza dorso',
    inseam:
      'interno gamba | cavallo interno gamba | lunghezza interno gamba | interno coscia lunghezza | gamba interna | lunghezza interna | cucitura interna | lunghezza gamba interna | lunghezza interna gamba | interno gambe | dal cavallo al fondo | lunghezza cavallo fondo | interno | entrogamba',
    legLength: 'lunghezza gamba | lunghezza gambe',
    outseam:
      'esterno gamba | lunghezza esterna | gamba esterna | lunghezza pantalone | cucitura esterna | lunghezza esterno gamba | lunghezza pantaloni | lunghezza gamba esterna | lunghezza esterna gamba',
    rise: 'cavallo | altezza cavallo | tiraggio | lunghezza cavallo',
    frontRise: 'cavallo davanti | cavallo anteriore | cavallo frontale',
    backRise: 'cavallo dietro | cavallo posteriore',
    strap: 'spalline | bretelle | spallina',
    torsoLength: 'lunghezza torso',
    width: 'larghezza | ampiezza | largo | larga'
  },
  letters: { l: 'length', m: 'sleeveLength', s: 'shoulderWidth' },
  landmarks: {
    shoulder: 'spalla | cucitura spalla | cucitura della spalla | spallina | spalle',
    neck: 'collo | nuca | colletto | scollo | base del collo | sotto il colletto',
    armpit: 'ascella | sottomanica | ascelle',
    waist: 'vita | cintura | girovita',
    hip: 'fianco | fianchi',
    crotch: 'cavallo',
    knee: 'ginocchio',
    hem: 'orlo | fondo | terra | caviglia | fine',
    cuff: 'polsino | polso | fine manica | fondo manica | polsini',
    elbow: 'gomito',
    bust: 'petto | seno',
    top: 'cima'
  },
  basis: {
    flat: 'in piano | piatto | a piatto | misurato in piano | steso | prese in piano | disteso | da lato a lato | da cucitura a cucitura | da un lato all altro | adagiato | stesa | appoggiato in piano | in posizione piana | da piatto | capo in piano | capo disteso | capo steso | su un piano | in orizzontale',
    around: 'circonferenza | giro | tutto intorno | intorno | circonferenza totale | in totale | di circonferenza | totale',
    doubled: 'x2 | x 2 | per due | per 2 | raddoppiato | doppio | 2x',
    double: 'da raddoppiare | moltiplicare per 2 | moltiplicare per due | da moltiplicare per 2 | raddoppiare'
  },
  words: {
    heading: 'misure | misura | dimensioni | le misure | misurazioni | misurato | misurata | misurati | prese',
    detail:
      'strascico | colletto | altezza colletto | revers | bavero | tasca | tasche | spacco | cerniera | zip | cintura | bottoni | bottone | passanti | cappuccio | tacco | tacchi | volant | fiocco | pizzo | frange | altezza cintura | risvolto | risvolti | scollatura | fodera | ascella orlo | da ascella a orlo | altezza vita cintura | fascia',
    thing:
      'borsa | borsetta | zaino | scarpe | stivali | stivaletti | portatile | telefono | cappello | berretto | sciarpa | foulard | tessuto | scampolo | tenda | cuscino | valigia | suola | gambale | portafoglio',
    height: 'di altezza | alta | alto | statura',
    model:
      'modella | modello | manichino | io sono | sono alta | sono alto | indosso | lei indossa | la modella | le mie misure | su di me | io porto | porto una',
    fits: 'veste | vesta | adatto a | adatta a | ideale per | consigliato per | consigliata per | va bene per | calza | indicato per | per una | per un | corrisponde a | vestibilità | equivale | può andare | va bene',
    parcel: 'pacco | spedizione | scatola | imballaggio | busta',
    elsewhere: 'altro annuncio | annuncio separato | venduto a parte | venduta a parte | separatamente',
    position: 'sopra | sotto | al di sopra | al di sotto | sopra il | sotto il',
    from: 'da | dal | dalla | dall | dalle',
    letDown: 'di orlo da allungare | per allungare | orlo da allungare | di orlo | da poter allungare | da allungare | di risvolto interno',
    letOut: 'da allargare | per allargare | di margine | da poter allargare',
    seamAllowance: 'margine di cucitura',
    relaxed: 'non tirato | a riposo | senza tirare | rilassato | non teso | rilassata | non tirata',
    stretched:
      'tirato | allungato | si allarga fino a | elastico fino a | esteso | tirando | teso | tirata | tesa | tirando l elastico | si estende fino a | allungabile fino a',
    cuffed: 'con risvolto | arrotolato | risvoltato',
    uncuffed: 'senza risvolto | srotolato',
    front: 'davanti | anteriore | frontale',
    back: 'dietro | posteriore | retro | schiena',
    inner: "sotto il braccio | sotto braccio | sotto l'ascella | interno | interna",
    including: 'incluso | inclusa | compreso | esclusa | compresa | escluso | senza',
    measures: 'misura | misurano',
    light:
      'il | la | lo | l | i | gli | le | di | del | della | dello | un | una | è | sono | circa | ca | approssimativamente | in | al | alla | a | ad | con | per | e | ogni | totale | suo | sua | parte | altezza | lato | cucitura | punto | da | dal | dalla | ha | si | centro | metà | all | dell | nel | nella | sul | più o meno | qui',
    to: 'a | ad | fino a | al | alla | fino al | all | fino alla | fino all',
    between: 'tra',
    and: 'e',
    or: 'o | oppure | cioè | ovvero',
    size: 'taglia | tg | tagli | etichetta | taglia etichetta | segnata | tg. | veste taglia | riporta taglia | taglia indicata | misura taglia',
    region: 'it | ita',
    letterSize: 'taglia unica',
    age: 'età',
    years: 'anni | mesi',
    all: 'tutte | tutto | tutti',
    not: 'senza | non | nessun | nessuna | né | mai | niente | nessuno',
    nothing:
      'manica lunga | manica corta | senza maniche | vita alta | vita bassa | maniche lunghe | maniche corte | girocollo | collo alto | collo a v | scollo a v | taglia unica | maniche a tre quarti | manica 3 4 | maniche 3 4 | vita elastica | al ginocchio | vita media | collo alla coreana | dolcevita | scollo tondo | a lungo | vestito lungo | abito lungo | gonna lunga | cappotto lungo | spalle scoperte | stile impero | vita regolare | vita stretta | collo tondo',
    otherUnit:
      'bottoni | tasche | pezzi | pezzo | paio | giorni | giorno | anni | mesi | per cento | gradi | kg | g | gr | grammi | euro | volte | ore | fori | buchi | foto | settimane | passanti',
    partLined: 'semifoderato | semifoderata | mezza fodera | parzialmente foderato | parzialmente foderata | foderato a metà',
    lining: 'fodera | imbottitura | bordo | rivestimento interno',
    retail: 'pagato | pagata | prezzo originale | originale | spedizione | nuovo costava | valore | acquistato a | acquistata a | listino',
    price: 'prezzo | vendo | a soli | in vendita',
    condition: 'condizioni | stato | condizione',
    conditionWord:
      'ottime | ottimo | buone | buono | perfette | perfetto | nuovo | nuova | come | eccellenti | usato | usata | in | pari | molto | discrete | ottima | eccellente | buona',
    conditionPhrase:
      'nuovo con cartellino | nuova con cartellino | ottime condizioni | buone condizioni | perfette condizioni | come nuovo | come nuova | mai usato | mai usata | mai indossato | mai indossata | ottimo stato | perfetto stato | buono stato | indossato una volta | indossata una volta | pari al nuovo | nuovo con etichetta',
    shell: 'esterno | tessuto | composizione | materiale | tessuto esterno',
    nightwear: 'pigiama | camicia da notte | tutina',
    backPockets: 'tasche posteriori | tasche dietro | tasche sul retro',
    apart: 'distanti | distanza | tra',
    mended: 'rammendato | rammendata | rammendati | riparato | riparata | riparati | ricucito | ricucita | rattoppato',
    but: 'ma | tranne | eccetto | salvo',
    imitation: 'finta | finto | effetto | simil | ecopelle tipo | sintetica | tipo',
    stretch: 'elasticizzato | elastico | elasticità | stretch | elasticizzata',
    half: 'mezzo'
  },
  units: {
    in: 'pollice | pollici | inch | inches',
    cm: 'cm | centimetro | centimetri | cm.',
    mm: 'mm | millimetro | millimetri',
    m: 'm | metro | metri | mt',
    ft: 'piedi'
  },
  numbers: {
    due: 2,
    tre: 3,
    quattro: 4,
    cinque: 5,
    sei: 6,
    otto: 8,
    dieci: 10,
    dodici: 12,
    quindici: 15,
    venti: 20,
    trenta: 30,
    quaranta: 40,
    cinquanta: 50
  },
  kinds: [
    { kind: 'jeans', phrases: 'jeans | pantaloni jeans | jeans a zampa' },
    {
      kind: 'trousers',
      phrases:
        'pantaloni | pantalone | pantaloni eleganti | leggings | chinos | pantaloni della tuta | pantaloni di velluto | pantaloni palazzo | pantaloni larghi | pantaloni da tuta | pantaloni cargo'
    },
    { kind: 'shorts', phrases: 'pantaloncini | bermuda | shorts | pantaloni corti' },
    {
      kind: 'skirt',
      phrases:
        'gonna | minigonna | gonna a tubino | gonna plissettata | gonna di jeans | gonna longuette | gonna lunga | gonna midi | gonna pantalone'
    },
    {
      kind: 'dress',
      phrases:
        'vestito | abito | abito da sposa | abito da sera | tubino | vestitino | camicia da notte | abito lungo | vestito lungo | vestito estivo | abito elegante | abito cerimonia | prendisole'
    },
    { kind: 'jumpsuit', phrases: 'tuta intera | salopette | tuta elegante | jumpsuit | tutina' },
    { kind: 'shirt', phrases: 'camicia | camicetta | blusa | camicia di jeans | casacca | tunica' },
    {
      kind: 'knit-top',
      phrases: 't shirt | tshirt | maglietta | top | canotta | polo | body | corsetto | canottiera | bustino | maglia a maniche corte'
    },
    {
      kind: 'jumper',
      phrases:
        'maglione | pullover | felpa | cardigan | golfino | maglia | golf | dolcevita | maglioncino | felpa con cappuccio | maglione di lana'
    },
    {
      kind: 'jacket',
      phrases:
        'blazer | giacca elegante | completo | smoking | tailleur | giacca da uomo elegante | abito completo uomo | giacca sartoriale',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'giacca | giubbotto | giacca di jeans | giubbotto di jeans | giacca di pelle | chiodo | bomber | giubbino | giacca di velluto | giubbotto di pelle | giubbino di jeans | giacchetta | coprispalle',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'cappotto | trench | parka | piumino | impermeabile | giacca a vento | poncho | mantella | montgomery | vestaglia | accappatoio | soprabito | pelliccia | giaccone | cappotto di lana | giubbotto alta visibilità | giacca da moto'
    },
    { kind: 'waistcoat', phrases: 'gilet | panciotto | smanicato' }
  ],
  fibres: {
    cotton: 'cotone | cotone biologico',
    wool: 'lana | lana vergine | lana merino | merino | pura lana',
    linen: 'lino',
    silk: 'seta | pura seta',
    viscose: 'viscosa | rayon',
    polyester: 'poliestere',
    polyamide: 'poliammide | poliamide | nylon',
    elastane: 'elastan | elastane | elastam | lycra | spandex',
    acrylic: 'acrilico',
    cashmere: 'cashmere | cachemire',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetato',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'canapa',
    polyurethane: 'poliuretano'
  },
  structures: {
    woven: 'tessuto a navetta | denim | popeline | flanella | velluto a coste',
    knit: 'lavorato a maglia | jersey | a maglia | uncinetto | maglia rasata',
    leather: 'pelle | cuoio | camoscio | vera pelle | nappa | scamosciata'
  },
  traits: {
    rigid: 'rigido | non elasticizzato | non elastico | rigidi | non elasticizzati',
    denim: 'denim | di jeans | jeans',
    pile: 'velluto | velluto a coste',
    check: 'quadri | a quadri | scozzese | tartan | pied de poule | quadretti | a quadretti | principe di galles',
    stripe: 'righe | a righe | gessato | gessata | rigato',
    sheer: 'trasparente | chiffon | tulle | organza',
    slippery: 'raso | satin | satinato',
    beaded: 'paillettes | perline | pailettes',
    pleated: 'plissettata | plissettato | plissé | pieghe',
    suede: 'camoscio | scamosciata | scamosciato',
    vinyl: 'vinile | ecopelle | similpelle | finta pelle | vernice',
    coated: 'cerato | cerata | spalmato',
    silk: 'seta | pura seta',
    taffeta: 'taffetà'
  },
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases:
        'foderato | foderata | con fodera | fodera | interamente foderato | interamente foderata | completamente foderato | sfoderabile'
    },
    { fact: { fact: 'lined', value: false }, phrases: 'sfoderato | sfoderata | senza fodera | non foderato | non foderata' },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: 'maniche corte | manica corta | maniche a tre quarti | maniche 3 4 | senza maniche | smanicato | smanicata'
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: 'vita elastica | elastico in vita | elastico alla vita | vita elasticizzata | vita con elastico'
    },
    { fact: { fact: 'darts', value: true }, phrases: 'pinces | riprese' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'gonna a tubino | gonna dritta | gonna longuette' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'svasata | gonna svasata | linea a' },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'gonna a ruota' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'gonna plissettata | gonna a pieghe' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'orlo originale' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: 'zip laterale | cerniera laterale | cerniera posteriore | zip posteriore | zip dietro | cerniera dietro'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'spacco posteriore | spacco laterale | spacco dietro' }
  ],
  uses: {
    protective: 'alta visibilità | ignifugo | ignifuga | con protezioni | antitaglio | catarifrangente | protezioni omologate',
    child: 'bambino | bambina | neonato | bimba | bimbo | neonata',
    'child-sleepwear': 'pigiama bambino | pigiama bambina | pigiama neonato | tutina neonato',
    'medical-compression': 'calze a compressione | calze contenitive | compressione graduata'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'buco di tarma | buchi di tarme | tarme | tarmato' },
    { mending: ['patch'], phrases: 'buco | buchi | strappo | strappi | strappato | buchino | bruciatura' },
    { mending: ['clean'], phrases: 'macchia | macchie | macchiato | macchiata | alone | aloni | macchiolina | ingiallito' },
    { mending: ['replace-button'], phrases: 'manca un bottone | bottone mancante | mancano bottoni | bottoni mancanti' },
    { mending: ['close-seam'], phrases: 'scucito | scucita | scucitura | fodera strappata | orlo scucito' },
    { mending: ['replace-zip'], phrases: 'zip rotta | cerniera rotta | zip da sostituire | cerniera da sostituire | zip difettosa' },
    { mending: ['replace-elastic'], phrases: 'elastico allentato | elastico ceduto' },
    { mending: ['de-pill'], phrases: 'pallini | pelucchi | pilling' },
    { mending: ['dye'], phrases: 'sbiadito | scolorito | scolorita | sbiadita' },
    { mending: ['polish-leather'], phrases: 'graffi | graffio' },
    { mending: [], phrases: 'difetto | difetti | filo tirato | fili tirati | segni di usura | segni di utilizzo | usurato' }
  ],
  colours: {
    black: 'nero | nera | neri | nere',
    white: 'bianco | bianca | bianchi',
    grey: 'grigio | grigia | antracite | grigi',
    navy: 'blu navy | blu notte | blu scuro | blu marino',
    blue: 'blu | azzurro | azzurra | celeste',
    teal: 'turchese | petrolio | ottanio',
    green: 'verde | verde militare | verde oliva | verdi',
    red: 'rosso | rossa | rossi',
    burgundy: 'bordeaux | bordò',
    pink: 'rosa | fucsia',
    purple: 'viola | lilla',
    orange: 'arancione | ruggine',
    yellow: 'giallo | gialla | senape',
    brown: 'marrone | cammello | cuoio marrone | testa di moro | marroni',
    beige: 'beige | sabbia | tortora',
    cream: 'panna | crema | avorio',
    gold: 'oro | dorato',
    silver: 'argento | argentato'
  },
  currencies: { EUR: 'euro | eur' }
}

/** Polish, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const pl: Lexicon = {
  language: 'pl',
  endings: [],
  falseFriends: 'max | maximum',
  common:
    'i | z | w | na | do | od | jest | nie | po | się | rozmiar | długość | szerokość | pacha | pachy | pachami | ramiona | rękaw | rękawa | talia | pas | biodra | biust | klatka | stan | wymiary | płasko | nogawka | nogawki | spodnie | sukienka | kurtka | koszula | spódnica | bardzo | dobry | pod | ok | marynarka | sweter | dł | szer | mierzone | bluzka | płaszcz | bez | obwód | wewnętrzna',
  points: {
    chest:
      'biust | klatka piersiowa | klatka | obwód klatki | obwód biustu | obwód w biuście | obwód klatki piersiowej | w biuście | obwód pod pachami | klatce piersiowej',
    'chest flat':
      'pacha pacha | od pachy do pachy | pod pachami | szerokość pod pachami | szer pod pachami | od pachy do pachy na płasko | szerokość w biuście | szerokość pach | szerokość od pachy do pachy | pachy | szerokość pacha pacha | pod pachą | szerokość klatki | pacha do pachy | szer w biuście | między pachami | szer pach | szerokość klatki piersiowej | pachami | szerokość między pachami | szerokość biustu | z pod pachy do pachy',
    waist: 'talia | pas | w talii | w pasie | obwód pasa | obwód talii | obwód w pasie | obwód w talii | talii | pasie | pasa',
    'waist flat':
      'szerokość w pasie | szerokość w talii | szer w pasie | szerokość pasa | pół pasa | szerokość talii | połowa pasa | szer pasa | szer w talii | szer talii',
    hip: 'biodra | w biodrach | obwód bioder | obwód w biodrach | bioder | biodrach | bioderka',
    'hip flat': 'szerokość w biodrach | szer w biodrach | szerokość bioder | szer bioder',
    sweep: 'obwód dołu | obwód na dole | szerokość dołu spódnicy',
    bottomEdge:
      'dół | szerokość dołu | szerokość na dole | na dole | szer na dole | szer dołu | szerokość dół | dole | u dołu | szerokość u dołu',
    bicep: 'biceps | szerokość rękawa | obwód rękawa | szer rękawa | obwód ramienia',
    cuff: 'mankiet | nadgarstek | mankietu',
    'sleeveLength weak': 'długi rękaw | krótki rękaw | długie rękawy | krótkie rękawy',
    neck: 'obwód kołnierzyka | obwód szyi | kołnierzyk',
    thigh:
      'udo | szerokość uda | w udzie | obwód uda | szerokość nogawki w udzie | uda | udzie | szer uda | szerokość w udzie | szerokość nogawki u góry | szer w udzie',
    knee: 'kolano | w kolanie | szerokość w kolanie',
    calf: 'łydka | w łydce',
    legOpening:
      'nogawka dół | szerokość nogawki | dół nogawki | szerokość nogawki na dole | szer nogawki | nogawka na dole | szerokość nogawki dół | szerokość nogawek | szerokość nogawki u dołu | szerokość dołu nogawki | szer nogawki dół | kostka | w kostce | szer nogawki na dole | szerokość na dole nogawki',
    elbow: 'łokieć',
    underbust: 'pod biustem | obwód pod biustem | szerokość pod biustem',
    armhole: 'wykrój pachy | podkrój pachy',
    shoulderWidth:
      'ramiona | szerokość ramion | od ramienia do ramienia | szerokość w ramionach | szer ramion | szer w ramionach | ramię ramię | barki | szerokość barków | w ramionach | szerokość w barkach | szerokość pleców w ramionach',
    sleeveLength: 'rękaw | długość rękawa | dł rękawa | długość rękawów | rękawy | dł rękawów | rękawa | rękaw długość | długość rękaw',
    sleeveUnderarm:
      'rękaw wewnętrzny | wewnętrzna długość rękawa | wewnętrzna rękawa | długość rękawa wewnętrzna | długość wewnętrzna rękawa',
    length:
      'długość | długość całkowita | dł | dług | całkowita długość | długość tyłu | długość przodu | dł całkowita | długosc | długość tył | długość całego | długość z tyłu | długość pleców | dł całk',
    bodyLength: 'od ramienia do dołu | długość sukienki | długość płaszcza | od ramion do dołu',
    skirtLength: 'długość spódnicy | dł spódnicy',
    napeToWaist: 'od karku do talii | od ramienia do talii',
    backWidth: 'szerokość pleców',
    inseam:
      'nogawka wewnętrzna | długość nogawki wewnętrzna | wewnętrzna długość nogawki | długość wewnętrzna | nogawka od kroku | długość od kroku | wewnętrzna nogawki | krok do dołu | długość wewnętrzna nogawki | długość nogawki od kroku | wewnętrzna długość nogawek | wewnętrzna nogawka | dł nogawki wewnętrzna | długość nogawki po wewnętrznej | dł wewnętrzna | dł nogawki od kroku | od kroku | nogawka po wewnętrznej stronie | długość nogawki wewnątrz | dł wewnętrzna nogawki | długość nogawki wewnętrznej | nogawka od krocza | nogawki od kroku',
    legLength: 'długość nogawki | długość nogawek | nogawka | dł nogawki | nogawki',
    outseam:
      'długość zewnętrzna | nogawka zewnętrzna | zewnętrzna długość nogawki | długość spodni | zewnętrzna nogawki | długość nogawki zewnętrzna | dł zewnętrzna | długość zewnętrzna nogawki | dł nogawki zewnętrzna | po zewnętrznej',
    rise: 'stan | wysokość stanu | krok | stan spodni | wysokość w kroku | wys stanu',
    'rise weak': 'wysoki stan | niski stan | średni stan',
    frontRise: 'stan przód | przedni stan | wysokość stanu z przodu | stan z przodu | stan przodem',
    backRise: 'stan tył | tylny stan | wysokość stanu z tyłu | stan z tyłu | stan tyłem',
    strap: 'ramiączka | długość ramiączek',
    torsoLength: 'długość torsu',
    width: 'szerokość | szer'
  },
  landmarks: {
    shoulder: 'ramię | ramienia | szew ramienia | ramiączko | ramion | szwu ramienia | szwu',
    neck: 'kołnierz | kołnierza | kark | karku | dekolt | kołnierzyka | szyi',
    armpit: 'pacha | pachy | pach',
    waist: 'talia | talii | pas | pasa',
    hip: 'biodro | biodra | bioder',
    crotch: 'krok | kroku | krocze | krocza',
    knee: 'kolano | kolana',
    hem: 'dół | dołu | brzeg | ziemi | kostki | końca | samego dołu | dolnego brzegu',
    cuff: 'mankiet | mankietu | nadgarstka | końca rękawa | końca mankietu',
    elbow: 'łokcia | łokieć',
    bust: 'biustu | klatki',
    top: 'góra | góry'
  },
  basis: {
    flat: 'na płasko | płasko | mierzone na płasko | na plasko | na leżąco | leżąc na płasko | mierzone płasko | leżące | od boku do boku | od szwu do szwu | szerokość na płasko | rozłożone na płasko | w połowie | na płask | mierzona na płasko | mierzony na płasko | zmierzone na płasko',
    around: 'obwód | w obwodzie | dookoła | całkowity obwód | obwodu | wokół',
    doubled: 'x2 | x 2 | razy 2 | razy dwa | podwójnie | 2x',
    double: 'pomnożyć przez 2 | pomnożyć przez dwa | do podwojenia | trzeba podwoić | podwoić | x2'
  },
  words: {
    heading: 'wymiary | pomiary | wymiar | mierzone | zmierzone | mierzona | mierzony | wymiarki',
    detail:
      'tren | kołnierz | kieszeń | kieszenie | rozcięcie | rozporek | zamek | suwak | pasek | guziki | guzik | szlufki | kaptur | obcas | falbana | kokarda | koronka | frędzle | wysokość paska | klapy | klapa | podszewka | wysokość kołnierza | szerokość paska | lamówka | wysokość obcasa | od pachy do dołu',
    thing:
      'torebka | torba | plecak | buty | kozaki | botki | szpilki | laptop | telefon | kapelusz | czapka | szalik | apaszka | tkanina | materiał w kawałku | zasłona | poduszka | walizka | podeszwa | cholewka | portfel | obcasy',
    height: 'wzrost | wzrostu',
    model:
      'modelka | model | manekin | mam wzrost | noszę | mam | jestem | modelka ma | na modelce | moje wymiary | na sobie | ona ma | noszę rozmiar | ważę | modelki',
    fits: 'pasuje na | dobra na | dobre na | na osobę | idealna na | polecam na | będzie dobra na | odpowiednia na | pasuje do | dla osoby | dla osób | będzie pasować | polecane na | dobry na | odpowiada | pasować na | na obwód',
    parcel: 'paczka | wysyłka | paczkomat | opakowanie | karton | gabaryt | paczki',
    elsewhere: 'osobna aukcja | innej aukcji | osobnej aukcji | osobnym ogłoszeniu | sprzedawana osobno | do kupienia osobno',
    position: 'nad | pod | powyżej | poniżej | ponad | wyżej | niżej',
    from: 'od | z',
    letDown:
      'zapas na podłożenie | do odpuszczenia | zapasu na dole | można wypuścić | zapasu do wypuszczenia | do przedłużenia | zapasu | podłożenia do odpuszczenia | zapasu w podłożeniu',
    letOut: 'do poszerzenia | zapasu w szwie | do wypuszczenia w szwach | zapasu w szwach | na poszerzenie',
    seamAllowance: 'zapas szwu',
    relaxed: 'bez rozciągania | nierozciągnięty | w spoczynku | nierozciągnięta | luźno | bez naciągania',
    stretched:
      'po rozciągnięciu | rozciąga się do | rozciągnięty | rozciągnięta | rozciągliwe do | do rozciągnięcia | naciągnięty | po naciągnięciu | rozciąga się',
    cuffed: 'z podwinięciem | podwinięte | podwinięta',
    uncuffed: 'bez podwinięcia | rozwinięte | rozwinięta',
    front: 'przód | z przodu | przodu',
    back: 'tył | z tyłu | tyłu',
    inner: 'pod pachą | od pachy | wewnętrzna | wewnątrz | od wewnątrz | wewnętrzny',
    including: 'razem | wraz | łącznie | bez | włącznie',
    measures: 'mierzy | ma szerokości | wynosi',
    light:
      'i | z | w | na | do | od | ok | około | jest | to | po | się | ma | przy | ca | cm około | o | długości | szerokości | każdy | razem | całość | dla | wysokości | najszerszym | miejscu | szwu | strony | linii | ze | za | mniej więcej | po około | circa | czyli | ponad około | środek | boku | strona',
    to: 'do | aż do',
    between: 'między',
    and: 'i | oraz',
    or: 'lub | czyli | albo',
    size: 'rozmiar | rozm | roz | metka | metce | na metce | rozmiar z metki | rozmiarze | rozmiaru | r | na metce rozmiar | rozmiar na metce',
    region: 'pl',
    letterSize: 'uniwersalny | uni',
    age: 'wiek',
    years: 'lat | lata | miesięcy | rok',
    all: 'wszystkie | wszystko',
    not: 'bez | brak | nie | żadnych | nigdy | ani | żadne',
    nothing:
      'wysoki stan | niski stan | długi rękaw | krótki rękaw | bez rękawów | do kolan | do kostek | okrągły dekolt | dekolt w serek | rękaw 3 4 | długie rękawy | krótkie rękawy | w pasie gumka | średni stan | stan bardzo dobry | stan idealny | stan dobry | bardzo dobry stan | idealny stan | dobry stan | stan nowy | stan jak nowy | w stanie | stan używany | stan perfekcyjny | golf | półgolf | dekolt v | stan ogólny | rękaw długi | rękaw krótki | stan db | stan bdb | długość midi | długość mini | długość maxi',
    otherUnit:
      'guziki | guzików | kieszenie | kieszeni | sztuki | sztuk | szt | para | pary | dni | dzień | lat | miesięcy | procent | stopni | kg | g | gram | zł | pln | razy | godzin | dziury | zdjęć | szlufek',
    partLined: 'częściowa podszewka | częściowo na podszewce | pół podszewki | do połowy na podszewce',
    lining: 'podszewka | podszewki | wypełnienie | ściągacze | wnętrze',
    retail:
      'nowa kosztowała | cena sklepowa | wysyłka | koszt | oryginalnie | kupiona za | kupione za | cena regularna | kosztowała | przesyłka | kosztowały',
    price: 'cena | sprzedam | za jedyne | teraz',
    condition: 'stan',
    conditionWord: 'bardzo | dobry | idealny | nowy | jak | perfekcyjny | używany | świetny | bdb | db | super | doskonały',
    conditionPhrase:
      'nowy z metką | nowa z metką | nowe z metką | bardzo dobry stan | stan bardzo dobry | stan idealny | idealny stan | jak nowy | jak nowa | jak nowe | nienoszona | nienoszone | nigdy nie noszona | nigdy nie noszone | stan bdb | dobry stan | stan dobry | założona raz | założone raz | raz założona | stan perfekcyjny',
    shell: 'materiał | skład | tkanina wierzchnia | wierzch | warstwa zewnętrzna',
    nightwear: 'piżama | koszula nocna | pajacyk | śpioszki',
    backPockets: 'tylne kieszenie | tylnych kieszeni | tylnymi kieszeniami | kieszenie z tyłu',
    apart: 'odstęp | odległość | między',
    mended: 'naprawiony | naprawiona | naprawione | zacerowany | zacerowana | zacerowane | zaszyty | zaszyta | zaszyte | załatana',
    but: 'ale | oprócz | poza',
    imitation: 'sztuczna | sztuczne | imitacja | eko | a la | typu',
    stretch: 'elastyczna | elastyczne | rozciągliwa | stretch | elastyczny | rozciągliwy',
    half: 'pół'
  },
  units: {
    in: 'cal | cala | cali | cale | calach | inch',
    cm: 'cm | centymetrów | centymetry | centymetra',
    mm: 'mm | milimetrów',
    m: 'm | metr | metry | metra',
    ft: 'stóp'
  },
  numbers: { dwa: 2, trzy: 3, cztery: 4, pięć: 5, sześć: 6 },
  kinds: [
    { kind: 'jeans', phrases: 'jeansy | dżinsy | spodnie jeansowe | jeans | dzwony jeansowe' },
    {
      kind: 'trousers',
      phrases:
        'spodnie | spodni | chinosy | legginsy | spodnie garniturowe | dresy | spodnie dresowe | sztruksy | spodnie materiałowe | spodnie w kant | culotte | spodnie lniane | spodnie wełniane | spodnie skórzane'
    },
    { kind: 'shorts', phrases: 'szorty | krótkie spodenki | spodenki | bermudy' },
    {
      kind: 'skirt',
      phrases: 'spódnica | spódniczka | spódnica ołówkowa | spódnica plisowana | mini spódniczka | spódnica jeansowa | spódnice'
    },
    {
      kind: 'dress',
      phrases:
        'sukienka | suknia | suknia ślubna | sukienka wieczorowa | koszula nocna | suknia wieczorowa | sukienka maxi | sukienka midi | sukienka letnia | szmizjerka | tunika sukienka'
    },
    { kind: 'jumpsuit', phrases: 'kombinezon | ogrodniczki | pajacyk' },
    {
      kind: 'shirt',
      phrases: 'koszula | bluzka | koszula jeansowa | tunika | koszula flanelowa | koszula lniana | koszula męska | bluzka koszulowa'
    },
    {
      kind: 'knit-top',
      phrases: 't shirt | tshirt | koszulka | top | polo | podkoszulek | bokserka | gorset | body | bluzka na ramiączkach'
    },
    {
      kind: 'jumper',
      phrases:
        'sweter | bluza | kardigan | golf sweter | sweterek | pulower | bluza z kapturem | bezrękawnik dzianinowy | swetr | sweter wełniany | rozpinany sweter'
    },
    { kind: 'jacket', phrases: 'marynarka | garnitur | żakiet | smoking | garsonka | frak | kostium', made: { tailored: true } },
    {
      kind: 'jacket',
      phrases:
        'kurtka jeansowa | kurtka skórzana | katana | ramoneska | bomberka | bolerko | kurtka dżinsowa | katana jeansowa | kurteczka',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'płaszcz | kurtka | parka | trencz | kurtka zimowa | kurtka puchowa | kożuch | prochowiec | poncho | peleryna | szlafrok | futro | płaszcz wełniany | kurtka narciarska | kurtka przeciwdeszczowa | kurtka ostrzegawcza | kurtka motocyklowa | płaszczyk'
    },
    { kind: 'waistcoat', phrases: 'kamizelka | bezrękawnik | kamizelka garniturowa' }
  ],
  fibres: {
    cotton: 'bawełna | bawełny | bawełniana | bawełniany | bawełniane',
    wool: 'wełna | wełny | wełniany | wełniana | merino | wełna dziewicza | wełny merino | wełniane | wełna merino',
    linen: 'len | lnu | lniany | lniana | lniane',
    silk: 'jedwab | jedwabiu | jedwabna | jedwabny',
    viscose: 'wiskoza | wiskozy',
    polyester: 'poliester | poliestru | polyester',
    polyamide: 'poliamid | nylon | poliamidu | nylonu',
    elastane: 'elastan | elastanu | spandex | lycra',
    acrylic: 'akryl | akrylu',
    cashmere: 'kaszmir | kaszmiru | kaszmirowy',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'octan | acetat',
    cupro: 'cupro',
    mohair: 'moher | moheru',
    alpaca: 'alpaka | alpaki',
    angora: 'angora | angory',
    hemp: 'konopie',
    polyurethane: 'poliuretan | poliuretanu'
  },
  structures: {
    woven: 'tkanina | denim | sztruks | flanela | flanelowa | gabardyna',
    knit: 'dzianina | dziergany | jersey | dziergana | dzianinowa | szydełkowa',
    leather: 'skóra | zamsz | skórzana | skóra naturalna | skórzany | skórzane | zamszowa'
  },
  traits: {
    rigid: 'nierozciągliwe | nieelastyczne | nie rozciągają się | nieelastyczny | nie rozciąga się',
    denim: 'denim | jeansowa | jeansowy | dżinsowa | jeansowe',
    pile: 'sztruks | aksamit | welur | sztruksy | sztruksowa | aksamitna | welurowa',
    check: 'kratka | w kratkę | krata | w kratę | szkocka krata | pepitka',
    stripe: 'paski | w paski | prążki | w prążki | prążek',
    sheer: 'przezroczysta | prześwitująca | szyfon | tiul | organza | prześwitujący',
    slippery: 'satyna | satynowa | satynowy',
    beaded: 'cekiny | koraliki | cekinowa | w cekiny',
    pleated: 'plisowana | plisa | plisy | zakładki',
    suede: 'zamsz | zamszowa',
    vinyl: 'lakierowana | eko skóra | ekoskóra | sztuczna skóra | winyl',
    coated: 'woskowana | powlekana',
    silk: 'jedwab | jedwabna | jedwabiu | jedwabny',
    taffeta: 'tafta'
  },
  made: [
    { fact: { fact: 'lined', value: true }, phrases: 'z podszewką | na podszewce | podszewka | w całości na podszewce' },
    { fact: { fact: 'lined', value: false }, phrases: 'bez podszewki | brak podszewki | nie ma podszewki' },
    { fact: { fact: 'shortSleeves', value: true }, phrases: 'krótki rękaw | krótkie rękawy | bez rękawów | rękaw 3 4' },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: 'gumka w pasie | elastyczny pas | gumka w talii | na gumce w pasie | pas na gumce | w pasie gumka | pas z gumką'
    },
    { fact: { fact: 'darts', value: true }, phrases: 'zaszewki' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'spódnica ołówkowa | ołówkowa' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'rozkloszowana | litera a | trapezowa' },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'spódnica z koła | z koła' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'spódnica plisowana | plisowana spódnica' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'oryginalne wykończenie dołu' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: 'zamek z boku | zamek z tyłu | zapinana z boku | suwak z tyłu | suwak z boku | zapinana na zamek z tyłu | kryty zamek'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'rozcięcie z tyłu | rozcięcie z boku' }
  ],
  uses: {
    protective: 'odblaskowa | ostrzegawcza | trudnopalna | z ochraniaczami | kamizelka ostrzegawcza | ochraniacze | antyprzecięciowe',
    child: 'dziecięca | dziecięcy | dla dziewczynki | dla chłopca | niemowlęce | dziecięce | dla dziecka',
    'child-sleepwear': 'piżama dziecięca | piżamka | pajacyk',
    'medical-compression': 'pończochy uciskowe | kompresyjne medyczne | rajstopy uciskowe'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'dziurka po molach | dziurki po molach | mole' },
    { mending: ['patch'], phrases: 'dziura | dziurka | rozdarcie | dziurki | dziury | przetarcie dziura' },
    {
      mending: ['clean'],
      phrases: 'plama | plamy | plamka | plamki | zabrudzenie | zabrudzenia | przebarwienie | przebarwienia | zażółcenia'
    },
    { mending: ['replace-button'], phrases: 'brak guzika | brakuje guzika | brak jednego guzika | brakuje jednego guzika' },
    {
      mending: ['close-seam'],
      phrases: 'rozprute | rozpruty szew | pęknięty szew | podarta podszewka | rozpruta podszewka | puścił szew | rozpruta'
    },
    {
      mending: ['replace-zip'],
      phrases: 'zepsuty zamek | zamek zepsuty | uszkodzony zamek | zepsuty suwak | zacina się zamek | zamek do wymiany'
    },
    { mending: ['replace-elastic'], phrases: 'gumka rozciągnięta | luźna gumka | wyrobiona gumka' },
    { mending: ['de-pill'], phrases: 'zmechacenia | zmechacona | kulki | zmechacony | mechacenia | zmechacone' },
    { mending: ['dye'], phrases: 'wyblakła | wyblakły | sprana | sprane | odbarwienie' },
    { mending: ['polish-leather'], phrases: 'otarcia | otarcie | zarysowania' },
    { mending: [], phrases: 'ślady użytkowania | ślady noszenia | wada | zaciągnięcie | zaciągnięcia | uszkodzenie | defekt | mankament' }
  ],
  colours: {
    black: 'czarny | czarna | czarne',
    white: 'biały | biała | białe',
    grey: 'szary | szara | szare | grafitowy | popielaty | grafitowa',
    navy: 'granatowy | granatowa | granat | granatowe',
    blue: 'niebieski | niebieska | błękitny | niebieskie | błękitna',
    teal: 'turkusowy | turkusowa | morski',
    green: 'zielony | zielona | oliwkowy | zielone | oliwkowa | butelkowa zieleń',
    red: 'czerwony | czerwona | czerwone',
    burgundy: 'bordowy | bordowa | bordo | bordowe',
    pink: 'różowy | różowa | fuksja | różowe',
    purple: 'fioletowy | fioletowa | liliowy | liliowa',
    orange: 'pomarańczowy | rudy | pomarańczowa | ruda',
    yellow: 'żółty | żółta | musztardowy | musztardowa',
    brown: 'brązowy | brązowa | camel | brązowe',
    beige: 'beżowy | beżowa | beżowe',
    cream: 'kremowy | kremowa | ecru',
    gold: 'złoty kolor | złota',
    silver: 'srebrny | srebrna'
  },
  currencies: { PLN: 'zł | pln | złotych | zl' }
}

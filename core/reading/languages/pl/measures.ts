/** What is measured, in Polish: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      biust
      klatka piersiowa
      klatka
      obwód klatki
      obwód biustu
      obwód w biuście
      obwód klatki piersiowej
      w biuście
      obwód pod pachami
      klatce piersiowej
    `,
    'chest flat': `
      pacha pacha
      od pachy do pachy
      pod pachami
      szerokość pod pachami
      szer pod pachami
      od pachy do pachy na płasko
      szerokość w biuście
      szerokość pach
      szerokość od pachy do pachy
      pachy
      szerokość pacha pacha
      pod pachą
      szerokość klatki
      pacha do pachy
      szer w biuście
      między pachami
      szer pach
      szerokość klatki piersiowej
      pachami
      szerokość między pachami
      szerokość biustu
      z pod pachy do pachy
    `,
    waist: `
      talia
      pas
      w talii
      w pasie
      obwód pasa
      obwód talii
      obwód w pasie
      obwód w talii
      talii
      pasie
      pasa
    `,
    'waist flat': `
      szerokość w pasie
      szerokość w talii
      szer w pasie
      szerokość pasa
      pół pasa
      szerokość talii
      połowa pasa
      szer pasa
      szer w talii
      szer talii
    `,
    hip: `
      biodra
      w biodrach
      obwód bioder
      obwód w biodrach
      bioder
      biodrach
      bioderka
    `,
    'hip flat': `
      szerokość w biodrach
      szer w biodrach
      szerokość bioder
      szer bioder
    `,
    sweep: `
      obwód dołu
      obwód na dole
      szerokość dołu spódnicy
    `,
    bottomEdge: `
      dół
      szerokość dołu
      szerokość na dole
      na dole
      szer na dole
      szer dołu
      szerokość dół
      dole
      u dołu
      szerokość u dołu
    `,
    bicep: `
      biceps
      szerokość rękawa
      obwód rękawa
      szer rękawa
      obwód ramienia
    `,
    cuff: `
      mankiet
      nadgarstek
      mankietu
    `,
    'sleeveLength weak': `
      długi rękaw
      rękaw długi
      rękaw krótki
      rękawy długie
      rękawy krótkie
      krótki rękaw
      długie rękawy
      krótkie rękawy
    `,
    neck: `
      obwód kołnierzyka
      obwód szyi
      kołnierzyk
    `,
    thigh: `
      udo
      szerokość uda
      w udzie
      obwód uda
      szerokość nogawki w udzie
      uda
      udzie
      szer uda
      szerokość w udzie
      szerokość nogawki u góry
      szer w udzie
    `,
    knee: `
      kolano
      w kolanie
      szerokość w kolanie
    `,
    calf: `
      łydka
      w łydce
    `,
    legOpening: `
      nogawka dół
      szerokość nogawki
      dół nogawki
      szerokość nogawki na dole
      szer nogawki
      nogawka na dole
      szerokość nogawki dół
      szerokość nogawek
      szerokość nogawki u dołu
      szerokość dołu nogawki
      szer nogawki dół
      kostka
      w kostce
      szer nogawki na dole
      szerokość na dole nogawki
    `,
    elbow: 'łokieć',
    underbust: `
      pod biustem
      obwód pod biustem
      szerokość pod biustem
    `,
    armhole: `
      wykrój pachy
      podkrój pachy
    `,
    shoulderWidth: `
      ramiona
      szerokość ramion
      od ramienia do ramienia
      szerokość w ramionach
      szer ramion
      szer w ramionach
      ramię ramię
      barki
      szerokość barków
      w ramionach
      szerokość w barkach
      szerokość pleców w ramionach
    `,
    sleeveLength: `
      rękaw
      długość rękawa
      dł rękawa
      długość rękawów
      rękawy
      dł rękawów
      rękawa
      rękaw długość
      długość rękaw
    `,
    sleeveUnderarm: `
      rękaw wewnętrzny
      wewnętrzna długość rękawa
      wewnętrzna rękawa
      długość rękawa wewnętrzna
      długość wewnętrzna rękawa
    `,
    length: `
      długość
      długość całkowita
      dł
      dług
      całkowita długość
      długość tyłu
      długość przodu
      dł całkowita
      długosc
      długość tył
      długość całego
      długość z tyłu
      długość pleców
      dł całk
    `,
    bodyLength: `
      od ramienia do dołu
      długość sukienki
      długość płaszcza
      od ramion do dołu
    `,
    skirtLength: `
      długość spódnicy
      dł spódnicy
    `,
    napeToWaist: `
      od karku do talii
      od ramienia do talii
    `,
    backWidth: 'szerokość pleców',
    inseam: `
      nogawka wewnętrzna
      długość nogawki wewnętrzna
      wewnętrzna długość nogawki
      długość wewnętrzna
      nogawka od kroku
      długość od kroku
      wewnętrzna nogawki
      krok do dołu
      długość wewnętrzna nogawki
      długość nogawki od kroku
      wewnętrzna długość nogawek
      wewnętrzna nogawka
      dł nogawki wewnętrzna
      długość nogawki po wewnętrznej
      dł wewnętrzna
      dł nogawki od kroku
      od kroku
      nogawka po wewnętrznej stronie
      długość nogawki wewnątrz
      dł wewnętrzna nogawki
      długość nogawki wewnętrznej
      nogawka od krocza
      nogawki od kroku
    `,
    legLength: `
      długość nogawki
      długość nogawek
      nogawka
      dł nogawki
      nogawki
    `,
    outseam: `
      długość zewnętrzna
      nogawka zewnętrzna
      zewnętrzna długość nogawki
      długość spodni
      zewnętrzna nogawki
      długość nogawki zewnętrzna
      dł zewnętrzna
      długość zewnętrzna nogawki
      dł nogawki zewnętrzna
      po zewnętrznej
    `,
    rise: `
      stan
      wysokość stanu
      krok
      stan spodni
      wysokość w kroku
      wys stanu
    `,
    'rise weak': `
      wysoki stan
      niski stan
      średni stan
    `,
    frontRise: `
      stan przód
      przedni stan
      wysokość stanu z przodu
      stan z przodu
      stan przodem
    `,
    backRise: `
      stan tył
      tylny stan
      wysokość stanu z tyłu
      stan z tyłu
      stan tyłem
    `,
    strap: `
      ramiączka
      długość ramiączek
    `,
    torsoLength: 'długość torsu',
    width: `
      szerokość
      szer
    `
  },
  landmarks: {
    shoulder: `
      ramię
      ramienia
      szew ramienia
      ramiączko
      ramion
      szwu ramienia
      szwu
    `,
    neck: `
      kołnierz
      kołnierza
      kark
      karku
      dekolt
      kołnierzyka
      szyi
    `,
    armpit: `
      pacha
      pachy
      pach
    `,
    waist: `
      talia
      talii
      pas
      pasa
    `,
    hip: `
      biodro
      biodra
      bioder
    `,
    crotch: `
      krok
      kroku
      krocze
      krocza
    `,
    knee: `
      kolano
      kolana
    `,
    hem: `
      dół
      dołu
      brzeg
      ziemi
      kostki
      końca
      samego dołu
      dolnego brzegu
    `,
    cuff: `
      mankiet
      mankietu
      nadgarstka
      końca rękawa
      końca mankietu
    `,
    elbow: `
      łokcia
      łokieć
    `,
    bust: `
      biustu
      klatki
    `,
    top: `
      góra
      góry
    `
  },
  basis: {
    flat: `
      na płasko
      płasko
      mierzone na płasko
      na plasko
      na leżąco
      leżąc na płasko
      mierzone płasko
      leżące
      od boku do boku
      od szwu do szwu
      szerokość na płasko
      rozłożone na płasko
      w połowie
      na płask
      mierzona na płasko
      mierzony na płasko
      zmierzone na płasko
    `,
    around: `
      obwód
      w obwodzie
      dookoła
      całkowity obwód
      obwodu
      wokół
    `,
    doubled: `
      x2
      x 2
      razy 2
      razy dwa
      podwójnie
      2x
    `,
    double: `
      pomnożyć przez 2
      pomnożyć przez dwa
      do podwojenia
      trzeba podwoić
      podwoić
      x2
    `
  },
  units: {
    in: `
      cal
      cala
      cali
      cale
      calach
      inch
    `,
    cm: `
      cm
      centymetrów
      centymetry
      centymetra
    `,
    mm: `
      mm
      milimetrów
    `,
    m: `
      m
      metr
      metry
      metra
    `,
    ft: 'stóp'
  },
  numbers: {
    dwa: 2,
    trzy: 3,
    cztery: 4,
    'pięć': 5,
    'sześć': 6
  }
}

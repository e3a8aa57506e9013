/** Words of the cut in Polish, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      niski stan
      niskim stanem
      niskim stanie
      biodrówki
    `,
    mid: `
      średni stan
      średnim stanem
      normalny stan
    `,
    high: `
      wysoki stan
      wysokim stanem
      wysokim stanie
      z wysokim stanem
    `,
    waist: 'paperbag'
  },
  leg: {
    skinny: `
      rurki
      skinny
    `,
    slim: `
      slim
      wąska nogawka
      wąskie nogawki
      zwężane nogawki
    `,
    straight: `
      prosta nogawka
      proste nogawki
      prostą nogawką
      prostymi nogawkami
      prosty krój
    `,
    tapered: `
      zwężana nogawka
      zwężana
      tapered
      cygaretki
    `,
    relaxed: `
      mom fit
      boyfriendy
      mom jeans
      luźna nogawka
    `,
    bootcut: 'bootcut',
    flared: `
      dzwony
      rozszerzane
      rozszerzana nogawka
      rozszerzanymi nogawkami
      szwedy
    `,
    wide: `
      szeroka nogawka
      szerokie nogawki
      szerokimi nogawkami
      szeroką nogawką
      szerokie spodnie
      wide leg
      kuloty
    `,
    palazzo: 'palazzo',
    legging: 'legginsy',
    jogger: `
      dresy
      joggery
    `
  },
  legLength: {
    full: 'do ziemi',
    ankle: `
      do kostek
      7 8
    `,
    cropped: `
      skrócone
      cropped
    `,
    capri: `
      rybaczki
      capri
    `,
    bermuda: 'bermudy'
  },
  silhouette: {
    pencil: `
      ołówkowa
      ołówkowy
      spódnica ołówkowa
    `,
    'a-line': `
      trapezowa
      trapezowy
      w kształcie litery a
      litera a
    `,
    flared: `
      rozkloszowana
      rozkloszowany
      kloszowana
    `,
    circle: `
      z koła
      z pełnego koła
      półkole
    `,
    pleated: `
      plisowana
      plisowany
      w plisy
      zakładki
    `,
    wrap: `
      kopertowa
      kopertowy
      zakładana
    `,
    bodycon: `
      obcisła
      bodycon
    `,
    sheath: 'dopasowana ołówkowa',
    shift: 'prosta sukienka',
    empire: `
      empire
      odcinana pod biustem
    `,
    'shirt-dress': `
      koszulowa
      szmizjerka
    `,
    strapless: `
      bez ramiączek
      gorsetowa
    `,
    gathered: `
      marszczona
      z falbanami
    `,
    dungarees: 'ogrodniczki'
  },
  dressLength: {
    mini: 'mini',
    knee: `
      do kolan
      do kolana
    `,
    midi: `
      midi
      do połowy łydki
    `,
    maxi: `
      maxi
      do ziemi
      długa do ziemi
    `,
    ankle: 'do kostek'
  },
  topLength: {
    cropped: `
      cropped
      krótka do pasa
    `,
    longline: 'wydłużony'
  },
  closeness: {
    fitted: `
      taliowany
      taliowana
      taliowane
      dopasowany
      dopasowana
    `,
    slim: 'slim fit',
    classic: `
      regular fit
      klasyczny krój
    `,
    relaxed: `
      luźny
      luźna
      luźny krój
      luźnym kroju
    `,
    oversized: `
      oversize
      oversized
    `
  },
  shoulder: {
    drop: `
      opadające ramiona
      opuszczona linia ramion
    `,
    raglan: `
      raglan
      rękaw raglanowy
      rękawy raglanowe
    `,
    dolman: `
      nietoperz
      rękawy nietoperza
      typu nietoperz
    `
  },
  sleeve: {
    sleeveless: 'bez rękawów',
    short: `
      krótki rękaw
      rękaw krótki
      krótkie rękawy
      krótkim rękawem
    `,
    'three-quarter': `
      rękaw 3/4
      rękawy 3/4
      rękawem 3/4
    `,
    long: `
      długi rękaw
      rękaw długi
      długie rękawy
      długim rękawem
      długimi rękawami
    `,
    balloon: `
      bufiaste rękawy
      bufki
      rękawy bufiaste
      bufiastymi rękawami
    `
  },
  pleats: {
    front: 'z zakładkami'
  },
  turnUps: {
    made: 'mankiety na nogawkach'
  }
}

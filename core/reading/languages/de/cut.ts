/** Words of the cut in German, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    'ultra-low': `
      extrem niedriger bund
      ultra low waist
    `,
    low: `
      niedriger bund
      niedrigem bund
      tiefer bund
      tiefem bund
      tief sitzend
      tiefsitzend
      niedrige leibhöhe
      niedriger leibhöhe
      hüftjeans
      hüfthose
      hüftig
      sitzt auf der hüfte
      low waist
      low rise
    `,
    mid: `
      mittlerer bund
      mittlere leibhöhe
      mittlerer leibhöhe
      normale leibhöhe
      mid rise
      mid waist
    `,
    high: `
      hoher bund
      hohem bund
      hoher leibhöhe
      hohe leibhöhe
      hohe taille
      hoher taille
      hoch geschnitten
      hochgeschnitten
      hochgeschnittene
      high waist
      high rise
      high waisted
    `,
    waist: `
      sitzt in der taille
      paperbag
    `
  },
  leg: {
    skinny: `
      röhrenjeans
      röhre
      röhrenhose
      hauteng
      hautenge
      skinny
    `,
    slim: `
      schmales bein
      schmalem bein
      schmale beine
      schmale hose
      slim fit
      slim
    `,
    straight: `
      gerades bein
      geradem bein
      gerade beine
      gerader schnitt
      geradem schnitt
      gerade geschnitten
      gerade hose
      straight leg
      straight
    `,
    tapered: `
      konisch
      nach unten schmaler
      zulaufend
      zulaufendes bein
      spitz zulaufend
      karottenhose
      karotte
      karottenschnitt
      tapered
    `,
    relaxed: `
      lockeres bein
      relaxed fit
      baggy
      boyfriend jeans
      mom jeans
    `,
    bootcut: `
      bootcut
      leicht ausgestellt
      leicht ausgestelltes bein
    `,
    flared: `
      schlaghose
      schlagjeans
      schlag
      mit schlag
      ausgestelltes bein
      ausgestellte beine
      ausgestellte hose
      ausgestellte jeans
      flared
    `,
    wide: `
      weites bein
      weitem bein
      weite beine
      weiten beinen
      weite hose
      weite jeans
      weit geschnitten
      weit geschnittene hose
      marlenehose
      marlene
      wide leg
      culotte
    `,
    palazzo: `
      palazzohose
      palazzo
    `,
    legging: 'leggings',
    jogger: `
      jogginghose
      jogger
    `
  },
  legLength: {
    full: `
      bodenlang
      lange beine
    `,
    ankle: `
      knöchellang
      knöchellange
      knöchelfrei
      knöchellänge
    `,
    'seven-eighths': `
      7 8 länge
      7 8 hose
      7/8 länge
      7/8
    `,
    cropped: `
      verkürzt
      verkürzte beine
      cropped
      dreiviertelhose
    `,
    capri: `
      caprihose
      capri
    `,
    bermuda: `
      bermuda
      bermudas
    `
  },
  silhouette: {
    pencil: `
      bleistiftrock
      bleistift
    `,
    'a-line': `
      a linie
      a form
      a linien
      in a linie
    `,
    flared: `
      ausgestellter rock
      ausgestellt
      schwingender rock
    `,
    circle: 'tellerrock',
    pleated: `
      faltenrock
      plisseerock
      plissee
      plissiert
      plissierter
      plissiertes
      kellerfalten
    `,
    wrap: `
      wickelrock
      wickelkleid
      wickeloptik
    `,
    bodycon: `
      figurbetont
      figurbetontes
      hautenges kleid
      bodycon
    `,
    shift: `
      hängerchen
      hängerkleid
    `,
    sheath: 'etuikleid',
    empire: 'empire',
    'shirt-dress': `
      hemdblusenkleid
      hemdkleid
      blusenkleid
    `,
    strapless: `
      trägerlos
      trägerloses
      schulterfreies kleid
    `,
    'fit-flare': 'taillierter oberteil und weiter rock',
    dungarees: 'latzhose',
    gathered: `
      gerafft
      gereiht
      stufenrock
      stufenkleid
    `
  },
  dressLength: {
    mini: `
      minirock
      minikleid
      mini
    `,
    knee: `
      knielang
      knielanges
      knielanger
    `,
    midi: `
      midirock
      midikleid
      midi
      midilang
      wadenlang
      wadenlanges
    `,
    maxi: `
      maxirock
      maxikleid
      maxi
      bodenlang
      bodenlanges
    `,
    ankle: `
      knöchellang
      knöchellanges
    `
  },
  topLength: {
    cropped: `
      bauchfrei
      cropped
      kurz geschnitten
    `,
    longline: `
      long shirt
      lang geschnitten
      longline
    `
  },
  closeness: {
    fitted: `
      tailliert
      taillierte
      taillierter
      tailliertes
      eng anliegend
      enganliegend
      körpernah
    `,
    slim: `
      slim fit
      schmal geschnitten
      schmaler schnitt
    `,
    classic: `
      regular fit
      klassischer schnitt
      normaler schnitt
    `,
    relaxed: `
      locker
      lockerer schnitt
      leger
      legerer schnitt
      comfort fit
      weiter schnitt
    `,
    oversized: `
      oversize
      oversized
      übergroß
    `
  },
  shoulder: {
    drop: `
      überschnittene schulter
      überschnittene schultern
      überschnittenen schultern
    `,
    raglan: `
      raglan
      raglanärmel
      raglanärmeln
    `,
    dolman: `
      fledermausärmel
      fledermausärmeln
    `,
    halter: 'neckholder'
  },
  sleeve: {
    sleeveless: `
      ärmellos
      ärmelloses
      ärmellose
      ohne ärmel
    `,
    short: `
      kurzarm
      kurzärmelig
      kurze ärmel
      kurzen ärmeln
      kurzärmliges
      kurzärmlig
    `,
    'three-quarter': `
      3/4 ärmel
      3/4 arm
      dreiviertelarm
      dreiviertelärmel
      3 4 arm
    `,
    long: `
      langarm
      langärmelig
      lange ärmel
      langen ärmeln
      langärmlig
    `,
    balloon: `
      ballonärmel
      puffärmel
      ballonärmeln
      puffärmeln
    `
  },
  turnUps: {
    made: `
      aufschlag
      umschlag
      mit umschlag
    `
  },
  pleats: {
    front: `
      bundfalten
      bundfaltenhose
    `
  }
}

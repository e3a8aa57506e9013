/** What is measured, in German: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      brust
      brustumfang
      brustweite
      oberweite
      büste
      brustmaß
      brustbreite gesamt
      bw
      ow
    `,
    'chest flat': `
      achsel zu achsel
      achsel
      achseln
      von achsel zu achsel
      achsel bis achsel
      von achsel bis achsel
      unter den achseln
      unter der achsel
      unter den armen
      brustbreite
      breite unter den achseln
      achselbreite
      breite achseln
      breite achsel
      breite unter achsel
      breite unter den armen
      halbe brustweite
      breite brust
      achselweite
      unterhalb der achseln
      breite unterhalb der achseln
      breite von achsel zu achsel
      weite unter den achseln
      weite unter den armen
      weite achsel
      unterarm zu unterarm
      unter den achseln quer
      achsel achsel
      achsel - achsel
      achsel an achsel
      unter achsel
      unter den ärmeln
      breite achsel zu achsel
      weite achsel zu achsel
      brust quer
      brust breite
    `,
    'chest around': `
      brustumfang gesamt
      umfang brust
      oberweite umfang
    `,
    waist: `
      tw
      taille
      bund
      bundweite
      taillenweite
      taillenumfang
      hosenbund
      taillenmaß
      rockbund
      bundumfang
      weite bund
      bundmaß
      taillienweite
      tallie
      taile
      bauchweite
      bauch
      bauchumfang
      taillenumfang rundum
      weite taille
      bundweite gesamt
      gürtelweite
    `,
    'waist flat': `
      bundbreite
      breite bund
      taillenbreite
      breite taille
      halbe bundweite
      bund breite
      bund einfach
      bund halb
      taille breite
      bund flach
      bund quer
      breite am bund
      breite in der taille
      taille einfach
    `,
    'waist around': `
      umfang taille
      umfang bund
      taillenumfang gesamt
    `,
    hip: `
      hw
      hüfte
      hüftweite
      hüftumfang
      gesäß
      gesäßweite
      po
      hüften
    `,
    'hip flat': `
      hüftbreite
      breite hüfte
      halbe hüftweite
      hüfte breite
      breite an der hüfte
      breite hüften
      hüfte quer
    `,
    'hip around': 'umfang hüfte',
    sweep: `
      rocksaum
      saumumfang
      saumweite rock
    `,
    bottomEdge: `
      saum
      saumweite
      saumbreite
      breite unten
      unten
      weite saum
      breite saum
      abschluss
      bündchen unten
      breite am saum
    `,
    bicep: `
      oberarm
      oberarmweite
      ärmelweite
      ärmelbreite
      oberarmumfang
      armweite
    `,
    cuff: `
      ärmelbündchen
      handgelenk
      ärmelsaum
      ärmelöffnung
      manschette
    `,
    cuffEdge: `
      bündchen
      aufschlag
    `,
    'neck weak': `
      kragen
      kragengröße
    `,
    'sleeveLength weak': `
      lange ärmel
      kurze ärmel
      langarm
      kurzarm
    `,
    neck: `
      kragenweite
      halsumfang
      halsweite
      kragen umfang
      kw
    `,
    thigh: `
      oberschenkel
      oberschenkelweite
      oberschenkelbreite
      oberschenkelumfang
      schenkel
      beinweite oben
      beinbreite oben
      schenkelweite
      oberschenkel breite
      bein oben
      schenkelbreite
    `,
    knee: `
      knie
      knieweite
      kniebreite
    `,
    calf: `
      wade
      wadenweite
    `,
    legOpening: `
      fußweite
      beinöffnung
      beinweite unten
      beinabschluss
      beinsaum
      hosensaum
      saumweite bein
      beinbreite unten
      fußbreite
      beinweite
      hosenbein unten
      knöchelweite
      beinende
      bein unten
      saum unten bein
      beinweite am saum
      hosenbeinweite
      fussweite
      fussbreite
      beinöffnung unten
      weite unten
    `,
    elbow: `
      ellbogen
      ellenbogen
    `,
    underbust: `
      unterbrust
      unterbrustumfang
      unterbrustweite
      unter der brust
    `,
    armhole: `
      armloch
      armausschnitt
      armlochtiefe
    `,
    shoulderWidth: `
      schulterbreite
      schulter
      schultern
      schulter zu schulter
      schulter bis schulter
      von schulter zu schulter
      von schulter bis schulter
      schulternaht zu schulternaht
      schulternaht bis schulternaht
      schulterweite
      schulter an schulter
      schulterbreit
    `,
    sleeveLength: `
      ärmellänge
      ärmel
      armlänge
      ärmellänge außen
      arm
      ärmel länge
      länge ärmel
      länge arm
      armellange
      länge der ärmel
      ärmel ab schulter
      ärmellänge ab schulter
      ärmel ab schulternaht
      armlänge außen
      ärmel außen
      ärmel aussen
      ärmellänge aussen
      ärmel ab naht
    `,
    sleeveUnderarm: `
      innenärmel
      ärmel unter dem arm
      ärmellänge unter dem arm
      ärmel von achsel
      ärmelinnenlänge
      ärmellänge innen
      ärmel innen
      innenarmlänge
      armlänge innen
      ärmelinnennaht
      unterarmlänge
      innenärmellänge
      ärmel unterseite
      ärmel innenlänge
      ärmel ab achsel
      ärmellänge ab achsel
      arm innen
      innenarm
    `,
    length: `
      gl
      länge
      gesamtlänge
      lang
      rückenlänge
      rückenlänge gesamt
      gesamt länge
      länge gesamt
      länge hinten
      länge ca
      länge rücken
      komplettlänge
      lg
      vorderlänge
      länge vorne
      hosenlänge
      hosenlange
      laenge
      rückenlänge ab kragen
      länge ab schulter
      länge über alles
      länge insgesamt
      gesamte länge
      hl
    `,
    bodyLength: `
      kleidlänge
      jackenlänge
      mantellänge
      kleiderlänge
    `,
    skirtLength: 'rocklänge',
    napeToWaist: `
      nacken bis taille
      rückenlänge bis taille
      vordere taillenlänge
      taillenlänge
    `,
    backWidth: 'rückenbreite',
    inseam: `
      innenbeinlänge
      schrittlänge
      innenbein
      schritt
      innennaht
      innenlänge
      beininnenlänge
      innenbeinlange
      beinlänge innen
      schritt länge
      innere beinlänge
      innenbeinnaht
      innenseite bein
      innensaum
      beininnennaht
      länge innen
      innen
    `,
    legLength: `
      beinlänge
      länge bein
    `,
    outseam: `
      außenlänge
      außennaht
      seitenlänge
      außenbeinlänge
      seitennaht
      länge außen
      beinlänge außen
      außen
      äußere beinlänge
      bein außen
    `,
    rise: `
      leibhöhe
      schritthöhe
      sitzhöhe
    `,
    frontRise: `
      leibhöhe vorne
      leibhöhe vorn
      vordere leibhöhe
      leibhöhe vorder
    `,
    backRise: `
      leibhöhe hinten
      hintere leibhöhe
    `,
    strap: `
      trägerlänge
      träger länge
      träger
    `,
    torsoLength: `
      torsolänge
      rumpflänge
    `,
    width: `
      breite
      breit
      weite
    `
  },
  letters: { b: 'width', l: 'length', a: 'sleeveLength', s: 'shoulderWidth', t: 'waist' },
  landmarks: {
    shoulder: `
      schulter
      schulternaht
      schulterpunkt
      oberkante schulter
      träger
      schultern
    `,
    neck: `
      kragen
      nacken
      kragenansatz
      hals
      halsausschnitt
      rückenmitte
      kragennaht
      halsansatz
    `,
    armpit: `
      achsel
      achseln
      achselhöhle
      armausschnitt
      unterarm
    `,
    waist: `
      taille
      bund
      bundoberkante
      hosenbund
    `,
    hip: 'hüfte',
    crotch: `
      schritt
      schrittnaht
    `,
    knee: 'knie',
    hem: `
      saum
      saumende
      unten
      ende
      unterkante
      boden
      bauch saum
      knöchel
    `,
    cuff: `
      ärmelende
      bündchen
      ärmelsaum
      handgelenk
      manschette
      ärmelabschluss
    `,
    elbow: 'ellbogen',
    bust: 'brust',
    top: 'oben'
  },
  basis: {
    flat: `
      flach
      liegend
      flach liegend
      flach gemessen
      liegend gemessen
      einfach
      einfach gemessen
      einfache breite
      einseitig
      halber umfang
      halb
      quer
      quer gemessen
      glatt liegend
      im liegen
      flachgelegt
      flach gelegt
      ausgelegt
      einfach liegend
      auf einer seite
      von seite zu seite
      seite zu seite
      einmal
      plan liegend
      hingelegt
      im liegen gemessen
      einfache weite
      glatt gemessen
    `,
    around: `
      umfang
      rundum
      rundherum
      rund
      gesamtumfang
      ringsum
      rundum gemessen
      im umfang
      ganzer umfang
      insgesamt
      komplett
    `,
    doubled: `
      x2
      x 2
      mal 2
      mal zwei
      doppelt
      verdoppelt
      2x
      2 mal
      zweimal
    `,
    double: `
      verdoppeln
      bitte verdoppeln
      mal zwei nehmen
      muss verdoppelt werden
      doppelt rechnen
      doppelt nehmen
      mal 2 nehmen
      verdoppelt werden
    `
  },
  units: {
    in: `
      zoll
      inch
      inches
    `,
    cm: `
      cm
      zentimeter
      centimeter
      zm
    `,
    mm: `
      mm
      millimeter
    `,
    m: `
      m
      meter
    `,
    ft: 'fuß'
  },
  numbers: {
    einen: 1,
    zwei: 2,
    drei: 3,
    vier: 4,
    'fünf': 5,
    sechs: 6,
    acht: 8,
    zehn: 10,
    'zwölf': 12,
    'fünfzehn': 15,
    zwanzig: 20,
    'dreißig': 30,
    vierzig: 40,
    'fünfzig': 50
  }
}

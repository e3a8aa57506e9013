/** What is measured, in Dutch: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      borst
      borstomvang
      buste
      borstwijdte
      borstomtrek
      bovenwijdte
    `,
    'chest flat': `
      oksel tot oksel
      oksel
      oksels
      van oksel tot oksel
      oksel oksel
      oksel naar oksel
      onder de oksels
      breedte oksels
      okselbreedte
      borstbreedte
      oksel op oksel
      breedte oksel tot oksel
      van oksel naar oksel
      halve borstwijdte
      breedte onder oksel
      breedte onder de oksels
      breedte oksel
      breedte borst
      onder oksels
      breedte onder oksels
      oksel aan oksel
    `,
    waist: `
      taille
      tailleomvang
      tailleband
      taillewijdte
      tailleomtrek
      broeksband
      band
      middel
      broekband
    `,
    'waist flat': `
      taillebreedte
      breedte taille
      halve taille
      breedte band
      breedte tailleband
      taille breedte
    `,
    hip: `
      heup
      heupen
      heupomvang
      heupwijdte
      heupomtrek
    `,
    'hip flat': `
      heupbreedte
      breedte heup
      halve heup
      breedte heupen
    `,
    sweep: `
      zoomomtrek
      zoomwijdte
    `,
    bottomEdge: `
      zoom
      boord onderaan
      boord onder
      onderboord
      zoombreedte
      onderzoom
      onderrand
      onderkant
      breedte onderkant
      breedte zoom
      onderkant breedte
      breedte onderaan
      breedte onder
      onderzijde
    `,
    bicep: `
      bovenarm
      mouwwijdte
      breedte mouw
      mouwbreedte
    `,
    cuff: `
      manchet
      pols
      mouwboord
    `,
    'neck weak': `
      boord
      kraag
    `,
    'sleeveLength weak': `
      lange mouwen
      lange mouw
      korte mouwen
      korte mouw
    `,
    neck: `
      halsomvang
      boordmaat
      boordwijdte
      halswijdte
    `,
    thigh: `
      dij
      dijbeen
      bovenbeen
      dijwijdte
      breedte bovenbeen
      bovenbenen
      breedte dij
      dijbreedte
    `,
    knee: `
      knie
      kniewijdte
    `,
    calf: 'kuit',
    legOpening: `
      pijpopening
      broekspijp
      enkelwijdte
      beenopening
      pijpbreedte
      onderkant pijp
      pijpwijdte
      onderkant broekspijp
      enkel
      pijp onder
      breedte pijp
      breedte broekspijp
      breedte pijpen
      onderkant been
      breedte onderkant pijp
      pijp onderaan
      pijp
    `,
    elbow: 'elleboog',
    underbust: `
      onderborst
      onderbuste
    `,
    armhole: 'armsgat',
    shoulderWidth: `
      schouder tot schouder
      van schouder tot schouder
      schouders
      schouderbreedte
      breedte schouders
      schouder
      schouder schouder
      schouder naar schouder
      schoudernaad tot schoudernaad
      van schouder naar schouder
      breedte schouder
    `,
    sleeveLength: `
      mouw
      mouwen
      mouwlengte
      lengte mouw
      lengte mouwen
      armlengte
      mouw lengte
      lengte van de mouw
    `,
    sleeveUnderarm: `
      binnenmouw
      mouw binnenkant
      onderarm mouw
      binnenkant mouw
      mouwlengte binnenkant
      mouw onderkant
      mouwlengte onderkant
      onderkant mouw
      mouwlengte aan de onderkant
      lengte mouw binnenkant
      binnenmouwlengte
    `,
    length: `
      lengte
      totale lengte
      lang
      ruglengte
      lengte rug
      lengte totaal
      achterlengte
      lengte achter
      lengte voor
      lengte achterkant
      lengte voorkant
    `,
    bodyLength: `
      schouder tot zoom
      lengte jurk
      lengte jas
      jurklengte
    `,
    skirtLength: `
      roklengte
      lengte rok
    `,
    napeToWaist: `
      nek tot taille
      schouder tot taille
    `,
    backWidth: 'rugbreedte',
    inseam: `
      binnenbeen
      binnenbeenlengte
      binnenkant been
      binnennaad
      binnenlengte
      lengte binnenbeen
      binnenbeen lengte
      binnenbeenmaat
      lengte binnenkant been
      binnenkant pijp
      lengte binnenkant
      binnen been
    `,
    legLength: 'beenlengte',
    outseam: `
      buitenbeen
      buitenlengte
      buitennaad
      buitenkant been
      broeklengte
      lengte buitenbeen
      zijnaad
      lengte buitenkant
      buitenbeenlengte
      lengte broek
      lengte buitenkant been
    `,
    rise: `
      kruis
      kruishoogte
      kruislengte
      hoogte kruis
    `,
    frontRise: `
      voorkruis
      kruis voor
      kruishoogte voor
    `,
    backRise: `
      achterkruis
      kruis achter
    `,
    strap: `
      bandjes
      schouderbandjes
    `,
    torsoLength: 'romplengte',
    width: `
      breedte
      breed
      wijdte
    `
  },
  landmarks: {
    shoulder: `
      schouder
      schoudernaad
      bovenkant schouder
      schouderbandje
      schouders
    `,
    neck: `
      kraag
      nek
      hals
      halslijn
      onderkant kraag
      midden rug
    `,
    armpit: `
      oksel
      armsgat
      oksels
    `,
    waist: `
      taille
      band
      tailleband
    `,
    hip: 'heup',
    crotch: 'kruis',
    knee: 'knie',
    hem: `
      zoom
      onderkant
      grond
      enkel
      onder
      einde
      beneden
    `,
    cuff: `
      manchet
      pols
      einde mouw
      eind mouw
      mouwboord
      einde van de mouw
    `,
    elbow: 'elleboog',
    bust: 'borst',
    top: 'boven'
  },
  basis: {
    flat: `
      plat
      plat gemeten
      plat liggend
      liggend
      liggend gemeten
      plat neergelegd
      van zij tot zij
      enkel gemeten
      van naad tot naad
      platliggend
      plat gelegd
      van kant tot kant
      van links naar rechts
      dwars gemeten
      zijde tot zijde
    `,
    around: `
      omtrek
      rondom
      in de rondte
      totale omtrek
      helemaal rond
      omvang
    `,
    doubled: `
      x2
      x 2
      maal 2
      maal twee
      keer 2
      keer twee
      dubbel
      2x
    `,
    double: `
      verdubbelen
      te verdubbelen
      keer twee doen
      vermenigvuldigen met 2
    `
  },
  units: {
    in: `
      inch
      inches
      duim
    `,
    cm: `
      cm
      centimeter
      centimeters
    `,
    mm: `
      mm
      millimeter
    `,
    m: `
      m
      meter
    `,
    ft: 'voet'
  },
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
  }
}

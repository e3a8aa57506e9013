/** What is measured, in Danish: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      bryst
      brystmål
      brystvidde
      overvidde
      brystomkreds
      byste
    `,
    'chest flat': `
      ærmegab til ærmegab
      fra ærmegab til ærmegab
      armhule til armhule
      fra armhule til armhule
      armhule armhule
      bredde under ærmer
      bredde under ærmerne
      under ærmerne
      under armene
      brystbredde
      bredde over bryst
      bredde bryst
      bredde over brystet
      bredde ved ærmegab
      mellem ærmegab
      ærmegab ærmegab
      halv bryst
      bredde fra armhule til armhule
      fra ærme til ærme
    `,
    waist: `
      talje
      taljemål
      liv
      livvidde
      taljevidde
      taljen
      linning
      livmål
      livet
      taljeomkreds
    `,
    'waist flat': `
      taljebredde
      bredde talje
      halv talje
      bredde i talje
      talje på tværs
      bredde i livet
      livbredde
    `,
    hip: `
      hofte
      hofter
      hoftemål
      hoftevidde
      hofteomkreds
    `,
    'hip flat': `
      hoftebredde
      bredde hofte
    `,
    sweep: `
      skørtevidde
      vidde forneden
    `,
    bottomEdge: `
      forneden
      bredde forneden
      nederst
      bund
      vidde nederst
      bredde nederst
      sømkant
    `,
    bicep: `
      overarm
      ærmevidde
      ærmebredde
    `,
    cuff: `
      manchet
      håndled
      ærmeåbning
    `,
    'neck weak': 'krave',
    neck: `
      halsvidde
      kravevidde
    `,
    'sleeveLength weak': `
      lange ærmer
      korte ærmer
    `,
    thigh: `
      lår
      lårvidde
      lårbredde
      låret
      bredde lår
    `,
    knee: `
      knæ
      knævidde
    `,
    calf: `
      læg
      lægvidde
    `,
    legOpening: `
      benvidde
      benåbning
      bukseben forneden
      benvidde forneden
      ben forneden
      fodvidde
      buksevidde forneden
      ankel
      bredde forneden ben
      benvidde nederst
      bukseben nederst
      vidde forneden ben
    `,
    elbow: 'albue',
    underbust: `
      under brystet
      under bryst
    `,
    armhole: 'ærmegab',
    shoulderWidth: `
      skulderbredde
      skulder til skulder
      fra skulder til skulder
      skuldre
      skulder
      bredde skuldre
      skuldersøm til skuldersøm
      bredde over skuldre
    `,
    sleeveLength: `
      ærmelængde
      ærme
      ærmer
      ærmets længde
      længde ærme
      ærmelængden
      armlængde
      ærmelængde fra skulder
      ærmelængde fra skuldersøm
      ærme fra skulder
    `,
    sleeveUnderarm: `
      indvendig ærmelængde
      ærmelængde indvendig
      underærme
      indersøm ærme
      ærme indvendig
    `,
    sleeveFromCentreBack: `
      ærmelængde fra nakke
      ærme fra nakke
      fra nakke til ærmekant
    `,
    length: `
      længde
      hel længde
      total længde
      totallængde
      ryglængde
      længden
      længde bag
      længde foran
      længde ryg
      hele længden
      samlet længde
    `,
    bodyLength: `
      skulder til søm
      fra skulder til søm
      fra skulder og ned
      længde fra skulder
      kjolelængde
    `,
    skirtLength: `
      nederdelslængde
      skørtelængde
    `,
    napeToWaist: 'nakke til talje',
    backWidth: 'rygbredde',
    inseam: `
      skridtlængde
      indvendig benlængde
      indersøm
      inderbenlængde
      indre benlængde
      benlængde indvendig
      inderben
      indvendigt ben
      inderside ben
      indvendig ben
      indvendig længde
      skridtlængde indvendig
      indvendig skridtlængde
    `,
    legLength: 'benlængde',
    outseam: `
      ydre benlængde
      udvendig benlængde
      udvendig længde
      ydersøm
      bukselængde
      sidelængde
      benlængde udvendig
    `,
    rise: `
      skridt
      skridthøjde
      skridtdybde
    `,
    frontRise: `
      skridt foran
      skridthøjde foran
      forskridt
    `,
    backRise: `
      skridt bag
      skridthøjde bag
      bagskridt
    `,
    strap: `
      stropper
      stroplængde
    `,
    width: `
      bredde
      vidde
      bred
    `
  },
  landmarks: {
    shoulder: `
      skulder
      skuldersøm
      skulderen
    `,
    neck: `
      krave
      nakke
      hals
      halsudskæring
    `,
    armpit: `
      armhule
      ærmegab
    `,
    waist: `
      talje
      linning
    `,
    hip: 'hofte',
    crotch: `
      skridt
      skridtet
    `,
    knee: 'knæ',
    hem: `
      søm
      sømkant
      kant
      bund
      bunden
    `,
    cuff: `
      manchet
      håndled
      ærmekant
    `,
    elbow: 'albue',
    bust: 'bryst',
    top: `
      top
      foroven
    `
  },
  basis: {
    flat: `
      fladt
      lagt fladt
      målt fladt
      fladmål
      liggende
      målt liggende
      på tværs
      fra side til side
      lagt ned
      fladt liggende
      enkelt bredde
      tværmål
    `,
    around: `
      omkreds
      hele vejen rundt
      rundt
      i omkreds
      hele vejen
      rundtmål
    `,
    doubled: `
      x2
      x 2
      ganget med to
      gange 2
      ganger 2
    `,
    double: `
      skal ganges med 2
      gang med 2
      ganges med to
    `
  },
  units: {
    in: `
      tommer
      inch
    `,
    cm: `
      cm
      centimeter
    `,
    mm: `
      mm
      millimeter
    `,
    m: `
      m
      meter
    `,
    ft: 'fod'
  },
  numbers: {
    to: 2,
    tre: 3,
    fire: 4,
    fem: 5,
    seks: 6,
    ti: 10
  }
}

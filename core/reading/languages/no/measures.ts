/** What is measured, in Norwegian: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      bryst
      brystmål
      brystvidde
      overvidde
      brystomkrets
      byste
    `,
    'chest flat': `
      armhule til armhule
      fra armhule til armhule
      armhule armhule
      bredde under ermene
      bredde under ermer
      under ermene
      under armene
      brystbredde
      bredde over bryst
      bredde bryst
      bredde over brystet
      fra ermhull til ermhull
      mellom armhulene
      halv bryst
      bredde fra armhule til armhule
      pit til pit
      fra erme til erme
    `,
    waist: `
      midje
      midjemål
      liv
      livvidde
      midjevidde
      midjen
      linning
      livmål
      livet
      midjeomkrets
    `,
    'waist flat': `
      midjebredde
      bredde midje
      halv midje
      bredde i midjen
      midje på tvers
      bredde i livet
      livbredde
      bredde liv
    `,
    hip: `
      hofte
      hofter
      hoftemål
      hoftevidde
      hofteomkrets
      rumpe
    `,
    'hip flat': `
      hoftebredde
      bredde hofte
    `,
    sweep: `
      skjørtevidde
      vidde nederst
    `,
    bottomEdge: `
      nederst
      bredde nederst
      nede
      kant nederst
      bunn
      vidde nede
    `,
    bicep: `
      overarm
      ermevidde
      ermebredde
    `,
    cuff: `
      mansjett
      håndledd
      ermeåpning
    `,
    'neck weak': 'krage',
    neck: `
      halsvidde
      kragevidde
    `,
    'sleeveLength weak': `
      lange ermer
      korte ermer
    `,
    thigh: `
      lår
      lårvidde
      lårbredde
      låret
      bredde lår
    `,
    knee: `
      kne
      knevidde
    `,
    calf: `
      legg
      leggvidde
    `,
    legOpening: `
      benvidde
      benåpning
      benvidde nederst
      benvidde nede
      bukseben nederst
      fotvidde
      ankel
      bein nederst
      benbredde nederst
    `,
    elbow: 'albue',
    underbust: `
      under brystet
      under bysten
    `,
    armhole: `
      ermhull
      ermehull
    `,
    shoulderWidth: `
      skulderbredde
      skulder til skulder
      fra skulder til skulder
      skuldre
      skulder
      bredde skuldre
      skuldersøm til skuldersøm
      bredde over skuldrene
    `,
    sleeveLength: `
      ermelengde
      erme
      ermer
      ermets lengde
      lengde erme
      ermelengden
      armlengde
      ermelengde fra skulder
      ermelengde fra skuldersøm
      erme fra skulder
      ermene
    `,
    sleeveUnderarm: `
      innvendig ermelengde
      ermelengde innside
      underarm
      innersøm erme
      erme innside
      ermelengde innvendig
    `,
    sleeveFromCentreBack: `
      ermelengde fra nakke
      erme fra nakke
      fra nakke til ermekant
    `,
    length: `
      lengde
      hel lengde
      total lengde
      totallengde
      rygglengde
      lengden
      lengde bak
      lengde foran
      lengde rygg
      hele lengden
    `,
    bodyLength: `
      skulder til kant
      fra skulder til kant
      fra skulder og ned
      lengde fra skulder
      kjolelengde
    `,
    skirtLength: 'skjørtelengde',
    napeToWaist: 'nakke til midje',
    backWidth: 'ryggbredde',
    inseam: `
      innvendig benlengde
      innersøm
      innside ben
      innerben
      indre benlengde
      benlengde innvendig
      skrittlengde
      innside bein
      innerlengde
      innvendig beinlengde
      beinlengde innside
      benlengde innside
      innerbeinlengde
      skrittlengde innvendig
    `,
    legLength: `
      benlengde
      beinlengde
    `,
    outseam: `
      utvendig benlengde
      ytterside ben
      utside ben
      yttersøm
      bukselengde
      sidelengde
      benlengde utvendig
      utvendig lengde
    `,
    rise: `
      skritt
      skritthøyde
      livhøyde
      skrittdybde
    `,
    frontRise: `
      skritt foran
      skritthøyde foran
    `,
    backRise: `
      skritt bak
      skritthøyde bak
    `,
    strap: `
      stropper
      stropplengde
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
      krage
      nakke
      hals
      halsen
    `,
    armpit: `
      armhule
      ermhull
    `,
    waist: `
      midje
      linning
      liv
    `,
    hip: 'hofte',
    crotch: `
      skritt
      skrittet
    `,
    knee: 'kne',
    hem: `
      kant
      søm
      bunn
      falden
    `,
    cuff: `
      mansjett
      håndledd
      ermekant
    `,
    elbow: 'albue',
    bust: 'bryst',
    top: 'topp'
  },
  basis: {
    flat: `
      flatt
      lagt flatt
      målt flatt
      flatmål
      liggende
      målt liggende
      på tvers
      fra side til side
      flatt liggende
      tverrmål
    `,
    around: `
      omkrets
      hele veien rundt
      rundt
      i omkrets
      rundt hele
    `,
    doubled: `
      x2
      x 2
      ganget med to
      gange 2
      ganger 2
    `,
    double: `
      ganges med 2
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
    ft: 'fot'
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

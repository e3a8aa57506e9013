/** What is measured, in Finnish: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      rinta
      povi
    `,
    'chest flat': `
      kainalosta kainaloon
      rinnanleveys
      rinnan leveys
      leveys kainalosta kainaloon
      rinnanleveys kainalosta kainaloon
      kainaloiden väli
      leveys kainaloista
      kainalon kohdalta
      leveys kainaloiden kohdalta
      leveys kainalosta
      kainaloista leveys
      kainalo kainalo
      rinta kainalosta kainaloon
      rinnan kohdalta leveys
      kainaloista
    `,
    'chest around': `
      rinnanympärys
      rinnan ympärys
      rinnanympärysmitta
    `,
    waist: `
      vyötärö
      vyötärön
      vyötäröltä
      vyötärökaitale
    `,
    'waist flat': `
      vyötärön leveys
      vyötäröleveys
      vyötärö leveys
    `,
    'waist around': `
      vyötärönympärys
      vyötärön ympärys
      vyötärönympärysmitta
    `,
    hip: `
      lantio
      lantion
      lantiolta
    `,
    'hip flat': 'lantion leveys',
    'hip around': `
      lantionympärys
      lantion ympärys
    `,
    bottomEdge: `
      helma
      helman leveys
      helmasta
      alareuna
    `,
    'sweep around': 'helman ympärys',
    bicep: 'hihan leveys',
    cuff: `
      hihansuu
      ranneke
      hihansuun leveys
      mansetti
    `,
    neck: `
      kaulanympärys
      kauluksen ympärys
    `,
    thigh: `
      reisi
      reiden leveys
      reiden
      reisileveys
      reidestä
    `,
    knee: `
      polvi
      polven leveys
    `,
    calf: 'pohje',
    legOpening: `
      lahkeensuu
      lahkeen leveys
      lahkeen suu
      lahkeensuun leveys
      lahkeen suun leveys
      lahkeen alaosa
      lahje alhaalta
      lahkeen leveys alhaalta
    `,
    elbow: 'kyynärpää',
    underbust: 'rinnan alta',
    armhole: 'kädentie',
    shoulderWidth: `
      hartialeveys
      hartiat
      olkapäästä olkapäähän
      hartioiden leveys
      olkasaumasta olkasaumaan
      hartiasaumasta hartiasaumaan
      hartioista
      hartia
      olkapäät
      hartiaväli
    `,
    sleeveLength: `
      hihan pituus
      hiha
      hihat
      hihojen pituus
      hihapituus
      hihan
      hihan pituus olkasaumasta
    `,
    sleeveUnderarm: `
      hihan sisäpituus
      hihan sisäsauma
      hihan sisämitta
      hiha kainalosta
    `,
    sleeveFromCentreBack: `
      hihan pituus niskasta
      hiha niskasta
    `,
    length: `
      pituus
      kokonaispituus
      koko pituus
      kokopituus
      pituus takaa
      selän pituus
      pituus niskasta
      takapituus
      kokonaispituus takaa
      etupituus
    `,
    bodyLength: `
      pituus olalta
      olalta helmaan
      takin pituus
      mekon pituus
      paidan pituus
      pituus hartiasta
      pituus olkasaumasta
    `,
    skirtLength: 'hameen pituus',
    backWidth: 'selän leveys',
    inseam: `
      sisäsauma
      sisälahje
      lahkeen sisäpituus
      sisälahkeen pituus
      lahkeen sisäsauma
      sisäsauman pituus
      lahkeen sisämitta
      sisäpituus
      haarasta lahkeensuuhun
      haarasta alas
    `,
    outseam: `
      ulkosauma
      lahkeen ulkopituus
      housujen pituus
      ulkosivu
      sivusauma
      ulkopituus
    `,
    legLength: `
      lahkeen pituus
      lahje
    `,
    rise: `
      haarakorkeus
      haaran korkeus
      haara
      istumakorkeus
    `,
    frontRise: `
      etuhaara
      haarakorkeus edestä
    `,
    backRise: `
      takahaara
      haarakorkeus takaa
    `,
    strap: 'olkaimen pituus',
    width: 'leveys'
  },
  landmarks: {
    shoulder: `
      olkapää
      olkasauma
    `,
    neck: 'niska',
    armpit: 'kainalo',
    waist: 'vyötärö',
    hip: 'lantio',
    crotch: 'haara',
    knee: 'polvi',
    hem: 'helma',
    cuff: `
      hihansuu
      ranne
    `,
    top: 'yläreuna'
  },
  basis: {
    flat: `
      tasossa
      tasomitta
      tasomitat
      levitettynä
      tasolla mitattuna
      puolikas
      tasaisella
      tasossa mitattuna
      pöydällä mitattuna
    `,
    around: `
      ympärys
      ympäri
      ympärysmitta
      ympäriltä
    `,
    doubled: `
      x2
      x 2
      kaksinkertaisena
    `,
    double: `
      kerro kahdella
      kerrotaan kahdella
    `
  },
  units: {
    in: `
      tuuma
      tuumaa
    `,
    cm: `
      cm
      senttiä
      senttimetriä
      sentti
    `,
    mm: `
      mm
      milliä
    `,
    m: `
      m
      metriä
    `,
    ft: 'jalkaa'
  },
  numbers: {
    kaksi: 2,
    kolme: 3,
    'neljä': 4,
    viisi: 5
  }
}

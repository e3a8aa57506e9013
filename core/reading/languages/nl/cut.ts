/** Words of the cut in Dutch, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      lage taille
      laag model
      low waist
      lage band
    `,
    mid: `
      normale taille
      middelhoge taille
      mid waist
    `,
    high: `
      hoge taille
      high waist
      hoge band
      hoog model
      high waisted
    `,
    waist: 'paperbag'
  },
  leg: {
    skinny: 'skinny',
    slim: `
      slim fit
      slim
      smalle pijp
      smalle pijpen
    `,
    straight: `
      rechte pijp
      rechte pijpen
      recht model
      straight leg
      straight
    `,
    tapered: `
      taps toelopend
      toelopende pijpen
      tapered
    `,
    relaxed: `
      mom jeans
      boyfriend
      baggy
      relaxed fit
    `,
    bootcut: `
      bootcut
      licht uitlopend
    `,
    flared: `
      flared
      flair
      wijd uitlopend
      uitlopende pijpen
      uitlopende pijp
      olifantspijpen
      soulbroek
    `,
    wide: `
      wijde pijp
      wijde pijpen
      wijde broek
      wijde jeans
      wide leg
      culotte
    `,
    palazzo: 'palazzo',
    legging: 'legging',
    jogger: `
      joggingbroek
      jogger
    `
  },
  legLength: {
    full: 'tot op de grond',
    ankle: `
      enkellang
      enkellengte
      7 8
    `,
    cropped: `
      cropped
      ingekort model
    `,
    capri: `
      driekwart broek
      capri
    `,
    bermuda: 'bermuda'
  },
  silhouette: {
    pencil: `
      kokerrok
      koker
    `,
    'a-line': `
      a lijn
      a lijn rok
    `,
    flared: `
      uitlopende rok
      zwierig
      klokkend
    `,
    circle: 'cirkelrok',
    pleated: `
      plissé
      plisse
      plooirok
      geplisseerd
      geplisseerde
    `,
    kilt: 'kilt',
    wrap: `
      wikkelrok
      wikkeljurk
      overslag
    `,
    bodycon: `
      strak jurkje
      bodycon
    `,
    sheath: 'kokerjurk',
    empire: 'empire',
    'shirt-dress': `
      overhemdjurk
      blousejurk
    `,
    strapless: `
      strapless
      zonder bandjes
    `,
    gathered: `
      gerimpeld
      stroken
    `,
    dungarees: 'tuinbroek'
  },
  dressLength: {
    mini: `
      minirok
      mini jurk
      mini
    `,
    knee: `
      knielang
      knielengte
    `,
    midi: `
      midi
      midirok
      midi jurk
      kuitlang
    `,
    maxi: `
      maxi
      maxirok
      maxijurk
      lange jurk
      lange rok
    `,
    ankle: 'enkellang'
  },
  topLength: {
    cropped: `
      cropped
      kort model
    `,
    longline: 'lang model'
  },
  closeness: {
    fitted: `
      getailleerd
      getailleerde
      aansluitend
      aansluitende
    `,
    slim: 'slim fit',
    classic: `
      regular fit
      normale pasvorm
    `,
    relaxed: `
      ruim
      ruimvallend
      ruim vallend
      losvallend
      los model
    `,
    oversized: `
      oversized
      oversize
    `
  },
  shoulder: {
    drop: `
      verlaagde schouder
      verlaagde schouders
    `,
    raglan: `
      raglan
      raglanmouw
      raglanmouwen
    `,
    dolman: `
      vleermuismouw
      vleermuismouwen
    `,
    halter: `
      halter
      halternek
    `
  },
  sleeve: {
    sleeveless: `
      mouwloos
      mouwloze
      zonder mouwen
    `,
    short: `
      korte mouw
      korte mouwen
    `,
    'three-quarter': `
      driekwart mouw
      driekwart mouwen
      3/4 mouw
      3/4 mouwen
    `,
    long: `
      lange mouw
      lange mouwen
    `,
    balloon: `
      pofmouw
      pofmouwen
      ballonmouw
      ballonmouwen
    `
  },
  pleats: {
    front: `
      bandplooien
      bandplooi
    `
  },
  turnUps: {
    made: `
      omslag
      omslagen
    `
  }
}

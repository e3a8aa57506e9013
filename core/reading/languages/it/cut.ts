/** Words of the cut in Italian, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: 'vita bassa',
    mid: `
      vita media
      vita regolare
    `,
    high: `
      vita alta
      a vita alta
    `,
    waist: 'paperbag'
  },
  leg: {
    skinny: `
      skinny
      aderenti
      attillati
    `,
    slim: `
      slim
      slim fit
      gamba stretta
    `,
    straight: `
      gamba dritta
      taglio dritto
      dritti
      gamba diritta
    `,
    tapered: `
      a sigaretta
      sigaretta
      gamba affusolata
      carrot
      a carota
    `,
    relaxed: `
      mom fit
      boyfriend
      baggy
    `,
    bootcut: `
      bootcut
      leggermente svasati
    `,
    flared: `
      a zampa
      zampa d elefante
      a zampa di elefante
      svasati
      svasato
      zampa
    `,
    wide: `
      gamba larga
      gamba ampia
      pantaloni larghi
      jeans larghi
      pantalone largo
      wide leg
    `,
    palazzo: `
      palazzo
      pantaloni palazzo
    `,
    legging: 'leggings',
    jogger: 'jogger'
  },
  legLength: {
    ankle: `
      alla caviglia
      caviglia
    `,
    cropped: `
      cropped
      accorciati
    `,
    capri: `
      alla pescatora
      capri
      pinocchietto
    `,
    bermuda: 'bermuda'
  },
  silhouette: {
    pencil: `
      gonna a tubino
      longuette
      gonna a matita
      a matita
    `,
    'a-line': `
      a trapezio
      linea a
      svasata
      gonna svasata
    `,
    circle: `
      a ruota
      gonna a ruota
    `,
    pleated: `
      plissettata
      plissettato
      plissé
      a pieghe
    `,
    wrap: `
      a portafoglio
      incrociato
      incrociata
      a vestaglia
    `,
    bodycon: `
      aderente
      fasciante
    `,
    sheath: 'tubino',
    shift: 'dritto e corto',
    empire: `
      stile impero
      impero
    `,
    'shirt-dress': `
      chemisier
      abito camicia
      vestito camicia
    `,
    strapless: 'senza spalline',
    gathered: `
      arricciata
      a balze
      balze
    `,
    dungarees: 'salopette'
  },
  dressLength: {
    mini: `
      minigonna
      mini
    `,
    knee: `
      al ginocchio
      sopra il ginocchio
    `,
    midi: `
      midi
      gonna midi
      longuette
    `,
    maxi: `
      vestito lungo
      abito lungo
      gonna lunga
      maxi
    `,
    ankle: 'alla caviglia'
  },
  topLength: {
    cropped: `
      cropped
      crop
    `,
    longline: 'maxi maglia'
  },
  closeness: {
    fitted: `
      sciancrato
      sciancrata
      aderente
      avvitato
      avvitata
    `,
    slim: 'slim fit',
    classic: `
      taglio classico
      vestibilità regolare
      regular fit
    `,
    relaxed: `
      ampio
      ampia
      vestibilità ampia
    `,
    oversized: `
      oversize
      oversized
    `
  },
  shoulder: {
    drop: `
      spalla scesa
      spalle scese
    `,
    raglan: `
      manica raglan
      maniche raglan
      raglan
    `,
    dolman: `
      manica a pipistrello
      maniche a pipistrello
      pipistrello
    `
  },
  sleeve: {
    sleeveless: `
      senza maniche
      smanicato
      smanicata
    `,
    short: `
      manica corta
      maniche corte
    `,
    'three-quarter': `
      manica 3/4
      maniche a tre quarti
      maniche 3/4
      manica a tre quarti
    `,
    long: `
      manica lunga
      maniche lunghe
    `,
    balloon: `
      maniche a palloncino
      manica a palloncino
      maniche a sbuffo
      manica a sbuffo
    `
  },
  pleats: {
    front: `
      con le pinces
      pinces
      con pinces
    `
  },
  turnUps: {
    made: `
      risvolto
      con risvolto
    `
  }
}

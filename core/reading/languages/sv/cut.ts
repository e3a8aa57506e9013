/** Words of the cut in Swedish, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      låg midja
      lågmidjade
      låg midjehöjd
      low waist
    `,
    mid: `
      normal midja
      medelhög midja
      mid waist
    `,
    high: `
      hög midja
      högmidjad
      högmidjade
      high waist
      hög i midjan
    `,
    waist: 'paperbag'
  },
  leg: {
    skinny: `
      skinny
      stuprör
      tajta
    `,
    slim: `
      slim fit
      slim
      smala ben
    `,
    straight: `
      raka ben
      rak modell
      rakt ben
      raka
      straight
    `,
    tapered: `
      avsmalnande
      avsmalnande ben
      tapered
    `,
    relaxed: `
      mom jeans
      boyfriend
      baggy
      lös passform
    `,
    bootcut: `
      bootcut
      lätt utsvängda
    `,
    flared: `
      utsvängda
      utsvängda ben
      utsvängd
      flare
    `,
    wide: `
      vida ben
      vid modell
      vida byxor
      breda ben
      wide leg
      culotte
    `,
    palazzo: 'palazzo',
    legging: 'leggings',
    jogger: `
      mjukisbyxor
      jogger
    `
  },
  legLength: {
    ankle: `
      ankellång
      ankellånga
      ankellängd
      7 8
    `,
    cropped: `
      cropped
      avklippta
    `,
    capri: `
      capri
      piratbyxor
    `,
    bermuda: 'bermuda'
  },
  silhouette: {
    pencil: 'pennkjol',
    'a-line': `
      a linje
      a linjeformad
      a formad
    `,
    flared: `
      utställd
      klockad
    `,
    circle: `
      cirkelkjol
      helcirkel
    `,
    pleated: `
      plisserad
      plisserade
      plisskjol
      veckad
    `,
    kilt: 'kilt',
    wrap: `
      omlott
      omlottklänning
    `,
    bodycon: `
      bodycon
      åtsittande klänning
    `,
    sheath: `
      fodralklänning
      fodral
    `,
    empire: `
      empire
      empireskärning
    `,
    'shirt-dress': 'skjortklänning',
    strapless: 'axelbandslös',
    gathered: `
      rynkad
      volanger
    `,
    dungarees: 'hängselbyxor'
  },
  dressLength: {
    mini: `
      minikjol
      mini
    `,
    knee: `
      knälång
      knälångt
    `,
    midi: `
      midi
      midikjol
      vadlång
    `,
    maxi: `
      maxi
      maxikjol
      maxiklänning
      golvlång
    `,
    ankle: 'ankellång'
  },
  topLength: {
    cropped: `
      cropped
      kort modell
      magtröja
    `,
    longline: 'lång modell'
  },
  closeness: {
    fitted: `
      figursydd
      figursydda
      åtsittande
      insvängd
    `,
    slim: 'slim fit',
    classic: `
      regular fit
      normal passform
    `,
    relaxed: `
      lös passform
      ledig passform
      rymlig
    `,
    oversized: `
      oversize
      oversized
    `
  },
  shoulder: {
    drop: `
      nedhasad axel
      nedhasade axlar
      drop shoulder
    `,
    raglan: `
      raglan
      raglanärm
      raglanärmar
    `,
    dolman: `
      fladdermusärm
      fladdermusärmar
    `,
    halter: 'halterneck'
  },
  sleeve: {
    sleeveless: `
      ärmlös
      utan ärmar
    `,
    short: `
      kort ärm
      kortärmad
      korta ärmar
    `,
    'three-quarter': `
      trekvartsärm
      trekvartsärmar
      3/4 ärm
    `,
    long: `
      lång ärm
      långärmad
      långa ärmar
    `,
    balloon: `
      puffärm
      puffärmar
      ballongärm
      ballongärmar
    `
  },
  pleats: {
    front: 'veck i linningen'
  },
  turnUps: {
    made: `
      uppslag
      med uppslag
    `
  }
}

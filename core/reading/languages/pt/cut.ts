/** How sellers name the cut, in Portuguese. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  legLength: {
    cropped: `
      pantacourt
      calça cropped
      macacão pantacourt
    `
  },
  rise: {
    low: `
      cintura baixa
      cós baixo
      gancho baixo
    `,
    mid: `
      cintura média
      cós médio
    `,
    high: `
      cintura alta
      cós alto
      cintura subida
    `
  },
  leg: {
    skinny: 'skinny',
    slim: `
      slim
      corte slim
    `,
    straight: `
      corte reto
      corte direito
      perna reta
      perna direita
    `,
    tapered: `
      cenoura
      afunilada
      afuniladas
    `,
    flared: `
      flare
      boca de sino
      à boca de sino
      boca larga
    `,
    wide: `
      perna larga
      wide leg
      calça pantacourt
      macacão pantacourt
      pantacourt
    `,
    palazzo: 'pantalona',
    legging: `
      legging
      leggings
    `,
    jogger: `
      jogger
      joggers
    `,
    bootcut: 'bootcut'
  },
  silhouette: {
    pencil: `
      saia lápis
      lápis
    `,
    'a-line': `
      evasê
      linha a
      em a
    `,
    gathered: `
      franzida
      franzido
    `,
    circle: 'godê',
    pleated: `
      plissada
      plissado
      pregas
    `,
    wrap: `
      envelope
      transpassado
      transpassada
      traçado
      cruzado
    `,
    'shirt-dress': `
      vestido camisa
      chemise
      vestido camiseiro
    `,
    empire: 'corte império',
    bodycon: `
      tubinho
      justo ao corpo
    `,
    flared: `
      rodada
      rodado
    `,
    shift: 'trapézio'
  },
  dressLength: {
    mini: `
      mini
      curto
      curta
      minissaia
    `,
    knee: `
      pelo joelho
      até o joelho
      até ao joelho
      na altura do joelho
    `,
    midi: `
      midi
      mídi
    `,
    maxi: `
      vestido longo
      saia longa
      vestido comprido
      saia comprida
      longo
      longa
      maxi
      até aos pés
    `
  },
  closeness: {
    fitted: `
      justo
      justa
      cintado
      cintada
      ajustado
    `,
    slim: `
      caimento slim
      slim fit
    `,
    relaxed: `
      solto
      solta
      larguinho
      larguinha
    `,
    oversized: `
      oversize
      oversized
    `
  },
  sleeve: {
    sleeveless: `
      sem mangas
      sem manga
      regata
      de alcinha
      de alças
    `,
    short: `
      manga curta
      mangas curtas
      manguinha curta
    `,
    'three-quarter': `
      manga três quartos
      manga 3/4
    `,
    long: `
      manga comprida
      mangas compridas
      manga longa
      mangas longas
    `,
    balloon: `
      manga bufante
      mangas balão
      mangas bufantes
      manga balão
    `
  },
  shoulder: {
    raglan: `
      raglan
      raglã
    `,
    drop: `
      ombro descaído
      ombros descaídos
    `
  },
  topLength: {
    cropped: 'cropped',
    longline: `
      alongado
      alongada
    `
  }
}

/** Words of the cut in Spanish, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      tiro bajo
      talle bajo
      cintura baja
    `,
    mid: `
      tiro medio
      talle medio
    `,
    high: `
      tiro alto
      talle alto
      cintura alta
    `,
    waist: 'paperbag'
  },
  leg: {
    skinny: `
      pitillo
      pitillos
      skinny
      ajustado a la pierna
    `,
    slim: `
      slim
      corte slim
      pierna estrecha
    `,
    straight: `
      pierna recta
      corte recto
      rectos
      pantalón recto
      vaquero recto
      vaqueros rectos
    `,
    tapered: `
      tapered
      pierna cónica
      corte zanahoria
    `,
    relaxed: `
      mom fit
      mom
      boyfriend
      baggy
      holgado
      holgados
    `,
    bootcut: `
      bootcut
      ligeramente acampanado
    `,
    flared: `
      acampanado
      acampanados
      acampanada
      campana
      pata de elefante
      flare
    `,
    wide: `
      pierna ancha
      pata ancha
      pantalón ancho
      pantalones anchos
      wide leg
      culotte
    `,
    palazzo: 'palazzo',
    legging: `
      leggings
      mallas
    `,
    jogger: `
      jogger
      chándal
    `
  },
  legLength: {
    full: 'hasta el suelo',
    ankle: `
      tobillero
      tobilleros
      al tobillo
    `,
    cropped: `
      cropped
      pesquero
    `,
    capri: `
      pirata
      capri
    `,
    bermuda: `
      bermuda
      bermudas
    `
  },
  silhouette: {
    pencil: `
      falda de tubo
      falda lápiz
      tubo
    `,
    'a-line': `
      línea a
      corte en a
      falda en a
      corte evasé
      evasé
    `,
    flared: `
      con vuelo
      de vuelo
    `,
    circle: `
      falda de capa
      falda circular
    `,
    pleated: `
      plisada
      plisado
      tablas
      falda de tablas
    `,
    wrap: `
      cruzado
      cruzada
      pareo
    `,
    bodycon: `
      ceñido
      ceñida
      ajustado al cuerpo
    `,
    shift: 'vestido recto',
    sheath: 'vestido tubo',
    empire: 'corte imperio',
    'shirt-dress': `
      vestido camisero
      camisero
    `,
    strapless: `
      palabra de honor
      sin tirantes
    `,
    gathered: `
      fruncida
      con volantes
    `,
    'fit-flare': 'skater',
    dungarees: 'peto'
  },
  dressLength: {
    mini: `
      minifalda
      mini
      vestido corto
    `,
    knee: `
      por la rodilla
      hasta la rodilla
      a la rodilla
    `,
    midi: 'midi',
    maxi: `
      vestido largo
      falda larga
      maxi
    `,
    ankle: 'hasta el tobillo'
  },
  topLength: {
    cropped: `
      cropped
      crop
    `,
    longline: 'largo por la cadera'
  },
  closeness: {
    fitted: `
      entallado
      entallada
      ajustado
      ajustada
    `,
    slim: `
      slim fit
      corte slim
    `,
    classic: `
      corte clásico
      corte regular
      regular fit
    `,
    relaxed: `
      holgado
      holgada
      suelto
      suelta
    `,
    oversized: `
      oversize
      oversized
      sobredimensionado
    `
  },
  shoulder: {
    drop: `
      hombro caído
      hombros caídos
    `,
    raglan: `
      manga raglán
      raglán
      manga ranglan
    `,
    dolman: `
      manga murciélago
      murciélago
    `,
    halter: `
      cuello halter
      halter
    `
  },
  sleeve: {
    sleeveless: 'sin mangas',
    short: `
      manga corta
      mangas cortas
    `,
    'three-quarter': `
      manga tres cuartos
      manga francesa
      manga 3/4
    `,
    long: `
      manga larga
      mangas largas
    `,
    balloon: `
      manga abullonada
      mangas abullonadas
      manga globo
      mangas globo
      manga farol
    `
  },
  pleats: {
    front: `
      de pinzas
      con pinzas
    `
  },
  turnUps: {
    made: 'con vuelta'
  }
}

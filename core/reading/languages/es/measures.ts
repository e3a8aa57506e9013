/** What is measured, in Spanish: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      pecho
      contorno de pecho
      busto
      contorno pecho
      contorno de busto
      contorno busto
      contorno del pecho
    `,
    'chest flat': `
      axila a axila
      axila
      de axila a axila
      sisa a sisa
      de sisa a sisa
      axilas
      ancho axila
      ancho de axila a axila
      ancho de pecho
      ancho pecho
      ancho sisa
      ancho axilas
      medio pecho
      ancho busto
      ancho de sisa a sisa
      ancho bajo axilas
      sobaco a sobaco
      ancho de axila
      ancho por axilas
      de axila axila
      axila axila
      ancho torso
      bajo el brazo
      ancho bajo el brazo
      de axila a axila mide
      ancho a la altura de la axila
      ancho a la altura del pecho
      ancho de pecho axila a axila
    `,
    waist: `
      cintura
      contorno de cintura
      cinturilla
      contorno cintura
      talle contorno
      pretina
      contorno de la cintura
    `,
    'waist flat': `
      ancho cintura
      ancho de cintura
      media cintura
      ancho cinturilla
      ancho de la cintura
      ancho de cinturilla
      cintura ancho
    `,
    hip: `
      cadera
      caderas
      contorno de cadera
      contorno cadera
      contorno de caderas
      contorno de la cadera
    `,
    'hip flat': `
      ancho cadera
      ancho de cadera
      ancho caderas
      media cadera
      ancho de caderas
    `,
    sweep: `
      contorno de bajo
      vuelo
      ancho vuelo
    `,
    bottomEdge: `
      bajo
      ancho bajo
      ancho del bajo
      dobladillo
      ruedo
      bajos
      ancho de bajo
      ancho abajo
    `,
    bicep: `
      ancho manga
      contorno de brazo
      ancho de manga
      bíceps
    `,
    cuff: `
      puño
      puños
      ancho puño
    `,
    'neck weak': 'cuello',
    'sleeveLength weak': `
      manga larga
      manga corta
      mangas largas
      mangas cortas
    `,
    neck: `
      cuello contorno
      contorno de cuello
      contorno cuello
    `,
    thigh: `
      muslo
      ancho muslo
      contorno de muslo
      muslos
      ancho de muslo
      contorno muslo
    `,
    knee: `
      rodilla
      ancho rodilla
    `,
    calf: `
      pantorrilla
      gemelo
    `,
    legOpening: `
      bajo de pierna
      ancho pierna abajo
      ancho de pierna abajo
      pierna abajo
      bajo pierna
      ancho bajo pierna
      bajo pernera
      ancho pernera
      boca pierna
      tobillo
      bajo del pantalón
      apertura pierna
      ancho tobillo
      bajo pantalón
      ancho de pernera
      boca de pierna
      ancho del bajo de la pierna
      ancho pierna
      ancho de pierna
      bajo de la pierna
      ancho bajos
      ancho de los bajos
      ancho abajo pierna
    `,
    elbow: 'codo',
    underbust: `
      bajo pecho
      contorno bajo pecho
      bajo busto
    `,
    armhole: `
      sisa
      sisas
    `,
    shoulderWidth: `
      hombro a hombro
      de hombro a hombro
      hombros
      ancho hombros
      ancho de hombros
      hombro
      ancho hombro
      de hombros
      ancho de hombro a hombro
      ancho de hombro
      espalda hombros
      hombro hombro
      ancho de espalda a los hombros
      entre hombros
      anchura de hombros
    `,
    sleeveLength: `
      manga
      mangas
      largo manga
      largo de manga
      largo mangas
      manga larga medida
      largo de mangas
      longitud manga
      largo de la manga
      longitud de manga
      largo brazo
    `,
    sleeveUnderarm: `
      manga interior
      interior manga
      largo manga interior
      interior de manga
    `,
    length: `
      largo
      largo total
      longitud
      longitud total
      alto
      largo espalda
      largo delantero
      largo trasero
      largo de espalda
      largo completo
      largo total aproximado
      larga
      largo por la espalda
      largo por espalda
      largo por detrás
      largo por delante
      largo desde el hombro
      largo desde hombro
      de largo por la espalda
      largo parte trasera
      largo de arriba abajo
    `,
    bodyLength: `
      hombro a bajo
      largo vestido
      largo chaqueta
      de hombro a bajo
      largo camisa
    `,
    skirtLength: `
      largo falda
      largo de falda
      largo de la falda
    `,
    napeToWaist: `
      talle espalda
      largo talle
      talle
    `,
    backWidth: `
      ancho espalda
      ancho de espalda
      espalda
    `,
    inseam: `
      entrepierna
      tiro interior pierna
      largo interior
      interior pierna
      pierna interior
      largo entrepierna
      largo interior pierna
      costura interior
      largo de entrepierna
      interior de pierna
      largo pierna interior
      entre pierna
    `,
    legLength: `
      largo pierna
      largo de pierna
    `,
    outseam: `
      largo exterior
      pierna exterior
      largo pantalón
      largo lateral
      costura exterior
      largo del pantalón
      exterior pierna
      lateral
    `,
    rise: `
      tiro
      altura tiro
      alto tiro
    `,
    'rise weak': `
      tiro alto
      tiro bajo
      tiro medio
    `,
    frontRise: `
      tiro delantero
      tiro frontal
      tiro delante
    `,
    backRise: `
      tiro trasero
      tiro espalda
      tiro detrás
    `,
    strap: `
      tirantes
      tirante
      largo tirante
      largo tirantes
      largo de tirantes
    `,
    torsoLength: 'largo torso',
    width: `
      ancho
      anchura
      ancha
    `
  },
  letters: { p: 'chest', l: 'length', m: 'sleeveLength' },
  landmarks: {
    shoulder: `
      hombro
      costura hombro
      costura del hombro
      tirante
      hombros
    `,
    neck: `
      cuello
      nuca
      escote
      base del cuello
    `,
    armpit: `
      axila
      sisa
      sobaco
      axilas
    `,
    waist: `
      cintura
      cinturilla
    `,
    hip: 'cadera',
    crotch: `
      entrepierna
      tiro
    `,
    knee: 'rodilla',
    hem: `
      bajo
      dobladillo
      suelo
      tobillo
      final
      abajo
      ruedo
      bajos
    `,
    cuff: `
      puño
      muñeca
      final manga
      final de la manga
      puños
    `,
    elbow: 'codo',
    bust: 'pecho',
    top: 'arriba'
  },
  basis: {
    flat: `
      en plano
      plano
      medido en plano
      extendido
      estirado en plano
      sin doblar
      de lado a lado
      de costura a costura
      en horizontal
      tomadas en plano
      de un lado a otro
      apoyado en plano
      en llano
    `,
    around: `
      contorno
      circunferencia
      alrededor
      contorno total
      en total
      de contorno
      todo alrededor
    `,
    doubled: `
      x2
      x 2
      por dos
      por 2
      doble
      2x
    `,
    double: `
      multiplicar por 2
      multiplicar por dos
      hay que doblar
      multiplicado por dos
      duplicar
    `
  },
  units: {
    in: `
      pulgada
      pulgadas
      inch
      inches
    `,
    cm: `
      cm
      cms
      centímetro
      centímetros
    `,
    mm: `
      mm
      milímetro
      milímetros
    `,
    m: `
      m
      metro
      metros
    `,
    ft: 'pies'
  },
  numbers: {
    dos: 2,
    tres: 3,
    cuatro: 4,
    cinco: 5,
    seis: 6,
    ocho: 8,
    diez: 10,
    doce: 12,
    quince: 15,
    veinte: 20,
    treinta: 30,
    cuarenta: 40,
    cincuenta: 50
  }
}

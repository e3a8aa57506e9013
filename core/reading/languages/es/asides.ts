/** What is no measure of the garment, in Spanish: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    cola
    cuello
    alto cuello
    solapa
    solapas
    bolsillo
    bolsillos
    abertura
    raja
    cremallera
    cinturón
    botones
    botón
    trabillas
    capucha
    tacón
    tacones
    volante
    lazo
    encaje
    flecos
    alto cinturilla
    vuelta
    escote profundidad
    forro
    axila a bajo
    largo lateral desde axila
  `,
  thing: `
    bolso
    bolsa
    mochila
    zapatos
    botas
    botines
    portátil
    móvil
    sombrero
    gorra
    gorro
    bufanda
    pañuelo
    tela
    retal
    cortina
    cojín
    maleta
    suela
    caña
    cartera
    velo
    velo de novia
    patrón de costura
    pendientes
    broche
    guantes
    corbata
    maniquí
    collar de perlas
    tela por metros
  `,
  height: `
    de altura
    altura
    estatura
  `,
  model: `
    modelo
    la modelo
    maniquí
    yo mido
    mido
    peso
    soy
    llevo
    ella mide
    lleva una talla
    mis medidas
    a mí
    la chica mide
    él mide
  `,
  fits: `
    sirve para
    vale para
    ideal para
    recomendado para
    recomendada para
    le queda
    queda bien
    queda a
    para una
    para un
    quedaría
    podría servir
    equivale
    corresponde
    corresponde a una
    talla como
  `,
  parcel: `
    paquete
    envío
    caja
    embalaje
    sobre
  `,
  elsewhere: `
    otro anuncio
    anuncio aparte
    se vende aparte
    vendo aparte
    por separado
    a la venta aparte
  `,
  nothing: `
    manga larga
    manga corta
    sin mangas
    manga tres cuartos
    cintura alta
    cintura baja
    cuello redondo
    cuello alto
    cuello pico
    cuello vuelto
    cuello de pico
    talle alto
    talle bajo
    tiro alto
    tiro bajo
    largo hasta la rodilla
    talla única
    cintura elástica
    cuello mao
    cuello camisero
    manga francesa
    mangas cortas
    mangas largas
    bajo precio
    a la altura
    bolsillo pecho
    vestido largo
    falda larga
    abrigo largo
    vestido corto
    hombros descubiertos
    corte imperio
  `,
  otherUnit: `
    botones
    bolsillos
    piezas
    pieza
    par
    pares
    días
    día
    años
    meses
    por ciento
    grados
    kg
    g
    gr
    gramos
    euros
    euro
    veces
    horas
    agujeros
    puestas
    usos
    fotos
    semanas
  `,
  sizeChart: `
    guía de tallas
    tabla de tallas
  `,
  bodyChart: `
    medidas corporales
    medidas del cuerpo
  `,
  cutFor: `
    para contorno de pecho
    para contorno de cintura
    para contorno de cadera
  `
}

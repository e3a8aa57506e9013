/** The small words, and those of sizes, cloth and sale, in Spanish. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    medidas
    medida
    dimensiones
    las medidas
    medición
    medido
    medidos
    tomadas
  `,
  position: `
    por encima
    por debajo
    debajo
    encima
    bajo la
    sobre la
    más arriba
    más abajo
  `,
  from: `
    desde
    del
    de la
    de
  `,
  letDown: `
    de dobladillo para sacar
    para alargar
    dobladillo para bajar
    de bajo para sacar
    para sacar bajo
    de dobladillo
    para bajar
  `,
  letOut: `
    para ensanchar
    de costura para sacar
    para sacar
    para agrandar
  `,
  seamAllowance: 'margen de costura',
  ownTape: `
    medido por mí
    medida por mí
    medidas tomadas por mí
    mis medidas de la prenda
    he medido
    yo mido
    medidas reales
    en realidad
    medido en casa
  `,
  shopCopy: `
    según la web
    según la marca
    según el fabricante
    de la web
    descripción de la marca
    descripción de la web
    medidas de la web
    medidas de la marca
    ficha del producto
  `,
  closed: `
    atado
    atada
    cerrado
    cerrada
    abrochado
    abrochada
    anudado
    anudada
    cruzado
    cruzada
  `,
  opened: `
    abierto
    abierta
    abierto del todo
    abierta del todo
    desatado
    desatada
    desabrochado
    desabrochada
    extendido
    extendida
  `,
  relaxed: `
    sin estirar
    en reposo
    relajado
    relajada
  `,
  stretched: `
    estirado
    estirada
    estirando
    cede hasta
    elástico hasta
    estira hasta
    estirándolo
    se estira hasta
    da hasta
  `,
  cuffed: `
    con vuelta
    doblado
    remangado
    con dobladillo
  `,
  uncuffed: `
    sin vuelta
    desdoblado
    sin doblar vuelta
  `,
  front: `
    delante
    delantero
    frontal
  `,
  back: `
    detrás
    trasero
    espalda
  `,
  inner: `
    bajo el brazo
    por debajo del brazo
    debajo del brazo
    interior
    por dentro
  `,
  including: `
    incluido
    incluida
    incluyendo
    sin contar
    contando
  `,
  measures: `
    mide
    miden
  `,
  light: `
    el
    la
    los
    las
    de
    del
    un
    una
    es
    son
    aprox
    aproximadamente
    unos
    unas
    en
    al
    a
    con
    por
    para
    y
    cada
    total
    su
    más
    menos
    parte
    altura
    lado
    costura
    zona
    punto
    se
    desde
    tiene
    lo
    alrededor de
    medio
    centro
    sería
    serían
    está
  `,
  to: `
    a
    hasta
    al
    hasta el
    a la
    hasta la
  `,
  between: 'entre',
  and: 'y',
  or: `
    o
    es decir
  `,
  size: `
    talla
    tallas
    t.
    etiqueta
    talla etiqueta
    según etiqueta
    pone talla
    marca
    etiquetado
    etiquetada
    tallaje
    numero
  `,
  region: `
    es
    esp
    spain
  `,
  letterSize: 'talla única',
  age: 'edad',
  years: `
    años
    meses
  `,
  all: `
    todas
    todo
    todos
  `,
  not: `
    sin
    no
    ningún
    ninguna
    ni
    nunca
    tampoco
  `,
  partLined: `
    medio forro
    medio forrado
    medio forrada
    semiforrado
    semiforrada
    parcialmente forrado
    parcialmente forrada
    forro parcial
  `,
  lining: `
    forro
    relleno
    interior forro
    ribete
  `,
  retail: `
    original
    costó
    precio original
    gastos
    envío
    nuevo costó
    pvp
    antes
    valor
  `,
  price: `
    precio
    vendo
    se vende
    por solo
    lo dejo en
    la dejo en
    los dejo en
    lo vendo por
    la vendo por
    fijo
    precio fijo
    pido
  `,
  condition: 'estado',
  conditionWord: `
    muy
    buen
    bueno
    perfecto
    excelente
    nuevo
    nueva
    como
    impecable
    usado
    usada
    en
    estupendo
    óptimo
  `,
  conditionPhrase: `
    nuevo con etiqueta
    nueva con etiqueta
    muy buen estado
    buen estado
    perfecto estado
    como nuevo
    como nueva
    sin estrenar
    a estrenar
    excelente estado
    sin usar
    puesto una vez
    usado una vez
  `,
  shell: `
    exterior
    tejido
    composición
    material
    tela exterior
  `,
  nightwear: `
    pijama
    camisón
  `,
  backPockets: `
    bolsillos traseros
    bolsillos de atrás
  `,
  apart: `
    separados
    separación
    distancia
    entre
  `,
  mended: `
    reparado
    reparada
    reparados
    zurcido
    zurcida
    zurcidos
    remendado
    remendada
    cosido
    arreglado
    arreglada
  `,
  but: `
    pero
    excepto
    salvo
  `,
  imitation: `
    falso
    imitación
    efecto
    símil
    sintético
    tipo
  `,
  stretch: `
    elástico
    elasticidad
    elástica
  `,
  half: 'medio'
}

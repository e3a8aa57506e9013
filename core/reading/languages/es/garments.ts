/** The garment in Spanish: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        vaqueros
        jeans
        tejanos
        pantalón vaquero
        vaquero
        pantalones vaqueros
      `
    },
    {
      kind: 'trousers',
      phrases: `
        pantalón
        pantalones
        pantalón de traje
        pantalón de pinzas
        mallas
        leggings
        chinos
        pantalón chino
        pantalón de pana
        pantalón de chándal
        pantalón ancho
        pantalón largo
        pantalón palazzo
      `
    },
    {
      kind: 'shorts',
      phrases: `
        pantalón corto
        bermudas
        shorts
        pantalones cortos
        bermuda
      `
    },
    {
      kind: 'skirt',
      phrases: `
        faldas
        falda
        minifalda
        falda de tubo
        falda plisada
        falda vaquera
        falda midi
        falda larga
        falda pantalón
      `
    },
    {
      kind: 'dress',
      phrases: `
        vestidos
        vestido
        vestido de novia
        vestido camisero
        vestido largo
        vestido corto
        vestido de fiesta
        vestido midi
        túnica vestido
        vestido de verano
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        mono
        peto
        mono corto
        mono largo
      `
    },
    {
      kind: 'shirt',
      phrases: `
        camisas
        camisa
        blusa
        sobrecamisa
        camisa vaquera
        túnica
        camisola
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        camiseta
        top
        polo
        body
        corsé
        camiseta de tirantes
        bustier
      `
    },
    {
      kind: 'jumper',
      phrases: `
        jersey
        suéter
        sudadera
        cárdigan
        rebeca
        chaqueta de punto
        jersey de punto
        chaleco de punto
        pulóver
        sudadera con capucha
      `
    },
    {
      kind: 'jacket',
      phrases: `
        chaquetas
        americana
        blazer
        traje
        chaqueta de traje
        esmoquin
        traje de chaqueta
        frac
        chaqueta americana
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        chaqueta
        cazadora
        chaqueta vaquera
        cazadora vaquera
        chaqueta de cuero
        chupa
        bomber
        cazadora de cuero
        cazadora de piel
        chaqueta de piel
        chaqueta de ante
        bolero
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        abrigo largo
        abrigos
        abrigo
        gabardina
        parka
        plumífero
        anorak
        chubasquero
        trenca
        plumas
        abrigo de lana
        impermeable
        abrigo de piel
        chaquetón
        chaqueta alta visibilidad
        chaqueta de moto
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        chaleco
        chaleco de traje
        chaleco acolchado
      `
    },
    {
      kind: 'other',
      phrases: `
        poncho
        capa
        bata
        albornoz
        camisón
        bañador
        bikini
        kimono
        pijama
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        forrado
        forrada
        con forro
        forro
        totalmente forrado
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        sin forro
        sin forrar
        no lleva forro
        no forrado
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        manga corta
        mangas cortas
        manga francesa
        sin mangas
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        cintura elástica
        goma en la cintura
        cinturilla elástica
        goma en cintura
        elástico en la cintura
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'pinzas'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        falda de tubo
        falda lápiz
        falda recta
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        falda evasé
        evasé
        falda de vuelo
        línea a
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        falda plisada
        falda de tablas
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: 'bajo original'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        cremallera lateral
        cremallera trasera
        cremallera en la espalda
        cremallera en el lateral
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        abertura trasera
        abertura lateral
        raja lateral
      `
    }
  ],
  uses: {
    protective: `
      alta visibilidad
      ignífugo
      ignífuga
      con protecciones
      chaleco reflectante
      anticorte
      protecciones homologadas
    `,
    child: `
      niño
      niña
      infantil
      bebé
      niños
      niñas
    `,
    'child-sleepwear': `
      pijama infantil
      pijama niño
      pijama niña
      pijama bebé
    `,
    'medical-compression': `
      medias de compresión
      compresión médica
    `
  },
  whose: {
    women: `
      de mujer
      para mujer
      para mujeres
      de señora
      para señora
    `,
    men: `
      de hombre
      para hombre
      para hombres
      de caballero
      para caballero
    `,
    'women named': `
      mujer
      señora
    `,
    'men named': `
      hombre
      caballero
    `,
    both: `
      unisex
      hombre y mujer
      mujer y hombre
      hombre o mujer
      mujer u hombre
      para hombre y mujer
      para mujer y hombre
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        agujero de polilla
        agujeros de polilla
        polilla
        apolillado
      `
    },
    {
      mending: ['patch'],
      phrases: `
        agujero
        agujeros
        roto
        rotos
        rasgado
        agujerito
        rota
        desgarro
        siete
      `
    },
    {
      mending: ['clean'],
      phrases: `
        mancha
        manchas
        manchado
        manchada
        manchita
        amarillento
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        falta un botón
        falta botón
        botón perdido
        le falta un botón
        faltan botones
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        descosido
        descosida
        costura abierta
        forro roto
        bajo descosido
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        cremallera rota
        cremallera estropeada
        cremallera no funciona
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        goma dada de sí
        goma cedida
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        bolitas
        pelotillas
        bolas
      `
    },
    {
      mending: ['dye'],
      phrases: `
        desteñido
        descolorido
        desgastado color
        desteñida
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        rozaduras
        rozadura
      `
    },
    {
      mending: [],
      phrases: `
        tara
        taras
        defecto
        defectos
        señales de uso
        enganchón
        enganchones
        signos de uso
      `
    }
  ]
}

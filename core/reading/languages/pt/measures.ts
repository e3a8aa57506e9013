/** What is measured, in Portuguese: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      peito
      busto
      contorno de peito
      contorno de busto
      contorno do peito
      contorno do busto
      contorno peito
      contorno busto
      circunferência do peito
      circunferência do busto
      tórax
      circunferência do tórax
    `,
    'chest flat': `
      axila a axila
      axila axila
      de axila a axila
      axilas
      axila à axila
      de axila à axila
      largura axilas
      largura de axila a axila
      largura axila a axila
      cava a cava
      de cava a cava
      cava à cava
      sovaco a sovaco
      de sovaco a sovaco
      largura do peito
      largura peito
      largura de peito
      largura do busto
      largura busto
      meio peito
      meio busto
      largura por baixo das axilas
      debaixo do braço
      largura abaixo das axilas
      peito axila a axila
      busto axila a axila
      largura nas axilas
      largura das axilas
      peito de axila a axila
    `,
    waist: `
      cintura
      cint
      contorno de cintura
      contorno da cintura
      contorno cintura
      cós
      circunferência da cintura
    `,
    'waist flat': `
      largura cintura
      largura da cintura
      largura de cintura
      meia cintura
      largura do cós
      largura cós
      cintura largura
    `,
    hip: `
      quadril
      quadris
      anca
      ancas
      contorno de anca
      contorno da anca
      contorno do quadril
      circunferência do quadril
      circunferência da anca
      largura das ancas total
      bumbum
    `,
    'hip flat': `
      largura quadril
      largura do quadril
      largura da anca
      largura anca
      largura das ancas
      meia anca
      meio quadril
    `,
    sweep: `
      roda
      contorno da bainha
      contorno da barra
      largura da roda
    `,
    bottomEdge: `
      barra
      bainha
      largura da barra
      largura barra
      largura da bainha
      largura bainha
      largura em baixo
      largura embaixo
      barra inferior
    `,
    bicep: `
      largura manga
      largura da manga
      contorno do braço
      bíceps
      braço largura
    `,
    cuff: `
      punho
      punhos
      largura do punho
      largura punho
      boca da manga
    `,
    'neck weak': 'gola',
    neck: `
      colarinho
      contorno do pescoço
      pescoço
      contorno da gola
      contorno do colarinho
    `,
    'sleeveLength weak': `
      manga curta
      manga comprida
      manga longa
      mangas compridas
      mangas curtas
      mangas longas
    `,
    thigh: `
      coxa
      coxas
      largura da coxa
      largura coxa
      contorno da coxa
    `,
    knee: `
      joelho
      largura joelho
      largura do joelho
    `,
    calf: `
      panturrilha
      barriga da perna
    `,
    legOpening: `
      boca
      boca da perna
      boca da calça
      boca de perna
      abertura da perna
      abertura perna
      largura da perna em baixo
      fundo da perna
      largura fundo da perna
      boca calça
      tornozelo
      largura da boca
      bainha da perna
      largura da perna na bainha
      barra da perna
      barra da calça
    `,
    legWidth: `
      largura perna
      largura da perna
    `,
    elbow: 'cotovelo',
    underbust: `
      abaixo do busto
      abaixo do peito
      sob o busto
      baixo busto
    `,
    armhole: `
      cava
      cavas
      altura da cava
      profundidade da cava
    `,
    shoulderWidth: `
      ombro a ombro
      de ombro a ombro
      ombro à ombro
      de ombro à ombro
      ombros
      ombro
      largura dos ombros
      largura de ombros
      largura ombros
      largura ombro
      largura do ombro
      entre ombros
      largura de ombro a ombro
      ombro ombro
      costas ombro a ombro
      costas de ombro a ombro
    `,
    sleeveLength: `
      manga
      mangas
      comprimento manga
      comprimento da manga
      comprimento de manga
      comprimento das mangas
      comprimento mangas
      comp manga
      comp da manga
      comp mangas
      comprimento do braço
      manga desde o ombro
      manga do ombro
    `,
    sleeveUnderarm: `
      manga interior
      manga interna
      manga por dentro
      interior da manga
      comprimento interior da manga
      comprimento interno da manga
      mangas por dentro
      manga desde a axila
      manga da axila
    `,
    sleeveFromCentreBack: `
      manga desde a gola
      manga a partir da gola
      manga desde o pescoço
      manga da gola
      da gola ao punho
      gola ao punho
      manga raglan desde a gola
    `,
    length: `
      comprimento
      comprimento total
      compr
      comp
      comp total
      altura
      altura total
      comprimento atrás
      comprimento à frente
      comprimento costas
      comprimento das costas
      comprimento nas costas
      comprimento frente
      comprimento da frente
      comprimento total atrás
      compr total
      tamanho total
      longo total
      altura da peça
      comprimento da peça
      compridas
    `,
    bodyLength: `
      ombro à barra
      do ombro à barra
      ombro a barra
      comprimento do ombro à barra
      comprimento do ombro à bainha
      do ombro à bainha
      comprimento ombro à barra
      comprimento desde o ombro
      comprimento a partir do ombro
      comprimento vestido
      comprimento do vestido
      comprimento do casaco
    `,
    skirtLength: `
      comprimento saia
      comprimento da saia
      comp saia
    `,
    napeToWaist: `
      comprimento até à cintura
      altura do corpo
      altura da cintura
    `,
    backWidth: `
      largura costas
      largura das costas
      costas
    `,
    inseam: `
      entrepernas
      entreperna
      entre pernas
      entre perna
      comprimento entrepernas
      comprimento entre pernas
      interior da perna
      interior perna
      perna interior
      perna por dentro
      comprimento interior da perna
      comprimento interior
      costura interior
      comprimento da entreperna
      comprimento interno
      comprimento interno da perna
      parte interna da perna
      perna interna
      do gancho à barra
      gancho à barra
    `,
    legLength: `
      comprimento perna
      comprimento da perna
    `,
    outseam: `
      comprimento exterior
      perna exterior
      comprimento calça
      comprimento da calça
      comprimento das calças
      lateral
      comprimento lateral
      perna por fora
      costura exterior
      lateral externa
      comprimento externo
    `,
    rise: `
      gancho
      altura do gancho
      altura gancho
      cavalo
      tiro
    `,
    frontRise: `
      gancho frente
      gancho da frente
      gancho frontal
      gancho dianteiro
      gancho à frente
    `,
    backRise: `
      gancho costas
      gancho traseiro
      gancho de trás
      gancho atrás
    `,
    'rise weak': `
      gancho alto
      gancho baixo
    `,
    strap: `
      comprimento da alça
      comprimento das alças
      comprimento alça
    `,
    torsoLength: `
      comprimento do tronco
      ombro ao gancho
    `,
    width: `
      largura
      larg
      largo
    `
  },
  letters: { b: 'chest', c: 'waist', q: 'hip' },
  landmarks: {
    shoulder: `
      ombro
      costura do ombro
      ombros
      alça
    `,
    neck: `
      gola
      pescoço
      decote
      nuca
      colarinho
      base da gola
    `,
    armpit: `
      axila
      cava
      sovaco
      axilas
    `,
    waist: `
      cintura
      cós
    `,
    hip: `
      quadril
      anca
    `,
    crotch: `
      gancho
      entrepernas
    `,
    knee: 'joelho',
    hem: `
      barra
      bainha
      fim
      baixo
      fundo
      tornozelo
      chão
    `,
    cuff: `
      punho
      pulso
      fim da manga
    `,
    elbow: 'cotovelo',
    bust: `
      peito
      busto
    `,
    top: `
      topo
      cima
    `
  },
  basis: {
    flat: `
      em plano
      plano
      na horizontal
      esticada na horizontal
      peça esticada
      peça estendida
      estendida
      peça deitada
      deitada
      sobre a mesa
      sobre superfície plana
      numa superfície plana
      superfície plana
      de um lado a outro
      de um lado ao outro
      de lado a lado
      de costura a costura
      só a frente
      sem dar a volta
      medido de um lado
      planas
      em cima da mesa
      metade
      peça plana
    `,
    around: `
      contorno
      circunferência
      à volta
      em volta
      ao redor
      volta toda
      total aberta
      contorno total
      volta completa
      de contorno
      em toda a volta
      de circunferência
    `,
    doubled: `
      x2
      x 2
      vezes dois
      vezes 2
      2x
      2 x
      dobro
    `,
    double: `
      multiplicar por 2
      multiplicar por dois
      multiplicar por duas
      duplicar
      multiplique por 2
      multiplica por 2
    `
  },
  units: {
    in: `
      polegada
      polegadas
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
    ft: 'pés'
  },
  numbers: {
    dois: 2,
    'três': 3,
    quatro: 4,
    cinco: 5,
    seis: 6,
    oito: 8,
    dez: 10,
    doze: 12,
    quinze: 15,
    vinte: 20,
    trinta: 30,
    quarenta: 40,
    cinquenta: 50
  }
}

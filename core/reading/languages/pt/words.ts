/** The small words, and those of sizes, cloth and sale, in Portuguese. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    medidas
    medida
    dimensões
    as medidas
    medidas da peça
    medições
    medido
    medida da peça
    medidas em
  `,
  position: `
    acima
    abaixo
    abaixo da
    abaixo do
    por baixo
    acima da
    acima do
    debaixo
  `,
  from: `
    desde
    a partir
    a partir do
    a partir da
    do
    da
    de
  `,
  letDown: `
    para descer
    para baixar
    de bainha para descer
    de bainha para soltar
    para soltar a bainha
    de bainha por dentro
    de barra para soltar
  `,
  letOut: `
    para alargar
    para soltar
    de folga na costura
    para abrir
  `,
  seamAllowance: `
    margem de costura
    folga de costura
  `,
  relaxed: `
    sem esticar
    em repouso
    relaxada
    relaxado
    sem puxar
    não esticado
  `,
  stretched: `
    esticado
    esticada
    esticando
    estica até
    estica a
    vai até
    chega a
    cede até
    esticar até
    puxado
    máximo
    elástico até
    esticada até
  `,
  cuffed: `
    com dobra
    dobrada
    dobrado
    arregaçada
  `,
  uncuffed: `
    sem dobra
    desdobrada
    sem dobrar
  `,
  front: `
    frente
    à frente
    da frente
    dianteiro
    dianteira
    frontal
  `,
  back: `
    atrás
    trás
    costas
    traseiro
    traseira
    de trás
  `,
  inner: `
    por dentro
    interior
    por baixo do braço
    debaixo do braço
    da axila
    parte interna
    interna
    interno
    dentro
  `,
  including: `
    incluindo
    incluído
    incluída
    sem contar
    contando
    sem incluir
    não incluindo
    sem o
    sem a
    com o
    com a
  `,
  measures: `
    mede
    medem
    tem
    com medida
  `,
  light: `
    o
    a
    os
    as
    um
    uma
    de
    da
    do
    das
    dos
    é
    são
    aprox
    aproximadamente
    cerca de
    cerca
    em
    no
    na
    nos
    nas
    ao
    à
    e
    com
    por
    para
    cada
    total
    sua
    seu
    mais
    menos
    parte
    lado
    costura
    zona
    altura
    ponto
    se
    desde
    tem
    lo
    meio
    centro
    seria
    está
    peça
    medindo
    uns
    umas
    mais ou menos
    tudo
    só
    cm cada
    comp
  `,
  to: `
    a
    até
    ao
    à
    até ao
    até à
    até a
    até o
  `,
  between: 'entre',
  and: 'e',
  or: `
    ou
    ou seja
    isto é
  `,
  size: `
    tamanho
    tamanhos
    tam
    tam.
    tm
    nº
    número
    numeração
    etiqueta
    tamanho na etiqueta
    tamanho da etiqueta
    na etiqueta
    manequim tamanho
    tam na etiqueta
    veste tamanho único
  `,
  region: `
    pt
    br
    brasil
    portugal
  `,
  letterSize: `
    tamanho único
    único
    u
    p
    pp
    g
    gg
    xg
    xgg
    eg
    g1
    g2
    g3
  `,
  age: 'idade',
  years: `
    anos
    meses
  `,
  all: `
    todas
    tudo
    todos
    toda
  `,
  not: `
    sem
    não
    n
    nenhum
    nenhuma
    nem
    nunca
    nada de
    tampouco
    zero
  `,
  partLined: `
    meio forro
    meio forrado
    meia forrada
    parcialmente forrado
    parcialmente forrada
    forro parcial
    forrado só na saia
    forrada até meio
    forro até ao joelho
    forrado na parte de cima
    forro só no corpo
  `,
  lining: `
    forro
    enchimento
    recheio
    entretela
    ribana
    punhos e barra
    forro interior
    interior forro
  `,
  retail: `
    custou
    custava
    preço original
    preço de loja
    preço na loja
    preço de venda ao público
    pvp
    antes
    valor original
    valor de loja
    original
    frete
    portes
    envio
    envios
    correio
    paguei
    comprei por
    comprado por
    comprada por
    novo custa
    nova custa
    desconto
    de r$
    custo original
    loja
  `,
  price: `
    preço
    valor
    vendo
    vendo por
    vende-se
    por apenas
    por só
    fixo
    preço fixo
    peço
    faço por
    faço a
    deixo por
    sai por
    agora
    promoção
  `,
  condition: `
    estado
    condição
    condições
    estado de conservação
  `,
  conditionWord: `
    muito
    bom
    boa
    bom estado
    ótimo
    óptimo
    ótima
    óptima
    perfeito
    perfeita
    excelente
    novo
    nova
    como
    impecável
    usado
    usada
    em
    razoável
    conservado
    conservada
    satisfatório
    seminovo
    seminova
  `,
  conditionPhrase: `
    novo com etiqueta
    nova com etiqueta
    muito bom estado
    bom estado
    ótimo estado
    óptimo estado
    perfeito estado
    excelente estado
    como novo
    como nova
    nunca usado
    nunca usada
    nunca usei
    sem uso
    usado uma vez
    usada uma vez
    usado uma única vez
    usada duas vezes
    seminovo
    seminova
    novo sem etiqueta
    nova sem etiqueta
  `,
  shell: `
    exterior
    tecido
    composição
    material
    tecido principal
    por fora
    parte de fora
    tecido exterior
  `,
  nightwear: `
    pijama
    camisola de dormir
    camisa de dormir
    camisa de noite
  `,
  backPockets: `
    bolsos traseiros
    bolsos de trás
  `,
  apart: `
    distância
    separados
    afastados
  `,
  mended: `
    reparado
    reparada
    cerzido
    cerzida
    remendado
    remendada
    cosido
    cosida
    costurado
    arranjado
    arranjada
    consertado
    consertada
    arrumado
  `,
  but: `
    mas
    exceto
    excepto
    salvo
    porém
    só que
  `,
  imitation: `
    falso
    falsa
    imitação
    efeito
    sintético
    sintética
    tipo
    símil
    fake
    eco
  `,
  stretch: `
    elasticidade
    stretch
  `,
  stretchMuch: `
    muito elástico
    muito elástica
    estica muito
    estica bastante
    bastante elástica
  `,
  stretchSome: `
    com elasticidade
    algum elastano
    estica
    tecido com elastano
    tem elasticidade
  `,
  stretchLittle: `
    pouca elasticidade
    estica pouco
    ligeiramente elástico
  `,
  half: `
    meio
    meia
  `
}

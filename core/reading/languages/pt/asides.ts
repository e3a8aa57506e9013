/** What is no measure of the garment, in Portuguese: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    gola
    gola alta
    lapela
    lapelas
    bolso
    bolsos
    abertura
    racha
    fenda
    fecho
    zíper
    fecho éclair
    cinto
    botões
    botão
    passadores
    capuz
    salto
    saltos
    folho
    babado
    babados
    laço
    renda
    franjas
    altura do cós
    altura da gola
    decote
    forro
    alça
    alças
    cauda
    altura do salto
    lateral da axila à barra
    profundidade
    fivela
    faixa
  `,
  thing: `
    corte de tecido
    retalho de tecido
    retalho
    retalhos
    tecido de fazenda
    tecido a metro
    tecido ao metro
    metros de tecido
    bolsa
    mala
    mochila
    carteira
    sapato
    sapatos
    bota
    botas
    botins
    sandália
    sandálias
    ténis
    tênis
    portátil
    telemóvel
    celular
    chapéu
    boné
    gorro
    cachecol
    lenço
    pano
    cortina
    almofada
    sola
    cano
    palmilha
    necessaire
    clutch
    sapatilhas
  `,
  height: `
    de altura
    altura
    estatura
  `,
  model: `
    modelo
    a modelo
    manequim
    eu meço
    meço
    peso
    eu tenho
    visto
    ela mede
    ela veste
    ela tem
    veste tamanho
    minhas medidas
    as minhas medidas
    em mim
    tenho 1
  `,
  fits: `
    serve para
    serve
    serve em
    serve até
    veste
    veste bem
    veste do
    ideal para
    recomendado para
    recomendada para
    fica bem
    fica bem em
    para uma
    para um
    equivale a
    equivale
    corresponde
    corresponde a
    indicado para
    indicada para
    veste como
    cabe
  `,
  parcel: `
    pacote
    embalagem
    caixa
    encomenda
  `,
  elsewhere: `
    outro anúncio
    noutro anúncio
    em outro anúncio
    à parte
    vendido à parte
    vendida à parte
    vendidos à parte
    vendo separado
    vendido separadamente
    vendida separadamente
    vende-se separadamente
    ver outros anúncios
  `,
  nothing: `
    manga comprida
    mangas compridas
    manga longa
    mangas longas
    manga curta
    mangas curtas
    sem mangas
    manga três quartos
    manga 3/4
    cintura alta
    cintura baixa
    cintura média
    cós alto
    cós baixo
    gola redonda
    gola v
    decote v
    decote em v
    tamanho único
    cintura elástica
    gancho alto
    gancho baixo
    cintura marcada
    vestido longo
    vestido comprido
    vestido curto
    saia longa
    saia comprida
    ombros de fora
    ombro a ombro decote
    um ombro só
    corte império
    pelo joelho
    até ao joelho
    até o joelho
    altura do joelho
    na altura do joelho
    abaixo do joelho
    bolso no peito
    bolso do peito
  `,
  otherUnit: `
    botões
    bolsos
    peças
    peça
    par
    pares
    dias
    dia
    anos
    meses
    por cento
    graus
    kg
    g
    gr
    gramas
    euros
    euro
    reais
    real
    vezes
    vez
    horas
    furos
    utilizações
    usos
    fotos
    semanas
    x
    lavagens
    parcelas
  `,
  sizeChart: `
    guia de tamanhos
    tabela de medidas
    tabela de tamanhos
    guia de medidas
  `,
  bodyChart: `
    medidas do corpo
    medidas corporais
  `,
  cutFor: `
    para busto
    para cintura
    para quadril
    para anca
    para peito
  `
}

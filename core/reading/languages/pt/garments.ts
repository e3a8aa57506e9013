/** The garment in Portuguese: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        calça jeans
        calças jeans
        jeans
        calças de ganga
        calça de ganga
        ganga calças
        calça mom jeans
        mom jeans
      `
    },
    {
      kind: 'trousers',
      phrases: `
        calça
        calças
        calça social
        calças de fato
        calça pantalona
        pantalona
        calça alfaiataria
        calça de alfaiataria
        leggings
        legging
        chinos
        calças chino
        calça cargo
        calças cargo
        calças de fato de treino
        calça moletom
        calça de moletom
        joggers
        jogger
        calça pantacourt
        calça flare
        calças boca de sino
        calças de bombazine
        pantacourt
        calça legging
        collants sem pé
      `
    },
    {
      kind: 'shorts',
      phrases: `
        bermuda
        bermudas
        short
        shorts
        calções
        calção
        short jeans
        bermuda jeans
        calções de ganga
        short saia
        shorts jeans
        calções de fato
      `
    },
    {
      kind: 'skirt',
      phrases: `
        saia
        minissaia
        mini saia
        saia lápis
        saia plissada
        saia de ganga
        saia jeans
        saia midi
        saia longa
        saia comprida
        saia calça
        saia envelope
      `
    },
    {
      kind: 'dress',
      phrases: `
        vestido
        vestido de noiva
        vestido longo
        vestido comprido
        vestido curto
        vestido de festa
        vestido midi
        vestido camisa
        vestido de verão
        vestido chemise
        vestidinho
        chemise vestido
        túnica vestido
        vestido de cerimónia
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        macacão
        macaquinho
        jardineira
        jardineiras
        macacão pantacourt
        macacão longo
        macacão curto
        fato macaco
        macacão jeans
        jardineira jeans
      `
    },
    {
      kind: 'shirt',
      phrases: `
        camisa
        camisas
        blusa
        blusinha
        camisa social
        camisa xadrez
        camisa jeans
        camisa de ganga
        túnica
        bata blusa
        camiseiro
        sobrecamisa
        camisa de flanela
        bluse
        blusa de seda
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        camiseta
        t-shirt
        tshirt
        camisola interior
        regata
        top
        cropped
        polo
        camisa polo
        body
        bodysuit
        corset
        blusa de alcinha
        t shirt
        camiseta regata
        baby look
        top cropped
        camisa de futebol
        camisa de time
        camisola de futebol
        baby tee
      `
    },
    {
      kind: 'jumper',
      phrases: `
        suéter
        sweater
        camisola
        camisola de malha
        camisola de lã
        pulôver
        pullover
        cardigã
        cardigan
        casaco de malha
        casaquinho de malha
        moletom
        moletom com capuz
        sweatshirt
        hoodie
        sweat
        blusa de frio
        blusa de lã
        blusa de tricô
        tricô
        blusão de moletom
        casaco de lã de malha
        camisola de gola alta
        blusão de lã
        malha
      `
    },
    {
      kind: 'jacket',
      phrases: `
        blazer
        paletó
        fato
        terno
        casaco de fato
        smoking
        casaca
        terno completo
        fato completo
        fato de homem
        tailleur
        blazer alongado
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jaqueta
        casaco de ganga
        jaqueta jeans
        jaqueta de couro
        blusão
        blusão de ganga
        blusão de couro
        bomber
        casaco bomber
        casaco de pele sintética curto
        casaco de couro
        bolero
        casaquinho
        perfecto
        colete jaqueta
        corta vento
        corta-vento
        casaco curto
        jaqueta corta vento
        casaco de cabedal
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        casaco
        sobretudo
        gabardina
        gabardine
        parka
        kispo
        impermeável
        trench coat
        trench
        casacão
        casaco comprido
        casaco de lã
        casaco de pelo
        casaco de penas
        capa de chuva
        anoraque
        anorak
        casaco de inverno
        sobretudo de lã
        jaqueta puffer
        casaco acolchoado
        poncho
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        colete
        colete de fato
        colete acolchoado
        colete puffer
        colete de alfaiataria
      `
    },
    {
      kind: 'other',
      phrases: `
        capa
        saída de praia
        biquíni
        fato de banho
        maiô
        sutiã
        lingerie
        pijama
        robe
        roupão
        kimono
        quimono
        camisa de dormir
        camisa de noite
        camisola de dormir
        cuecas
        calcinha
        meias
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        forrado
        forrada
        forrados
        com forro
        forro
        totalmente forrado
        todo forrado
        toda forrada
        totalmente forrada
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        sem forro
        não tem forro
        não forrado
        não forrada
        não é forrado
        não é forrada
        não possui forro
        s/ forro
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        manga curta
        mangas curtas
        sem mangas
        manguinha curta
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        cintura elástica
        elástico na cintura
        cintura com elástico
        cós elástico
        cós de elástico
        cós com elástico
        elástico no cós
        lastex na cintura
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: `
        pences
        pinças
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        saia lápis
        saia travada
        saia reta
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        saia evasê
        evasê
        godê
        saia rodada
        rodada
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        saia plissada
        saia de pregas
        plissada
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: `
        bainha original
        barra original
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        fecho lateral
        zíper lateral
        fecho atrás
        zíper atrás
        zíper nas costas
        fecho nas costas
        zíper invisível lateral
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        fenda lateral
        racha atrás
        racha lateral
        fenda traseira
        fenda atrás
      `
    }
  ],
  uses: {
    protective: `
      alta visibilidade
      ignífugo
      com proteções
      retrorrefletor
    `,
    child: `
      criança
      menino
      menina
      infantil
      bebé
      bebê
      meninos
      meninas
      rapaz criança
    `,
    'child-sleepwear': `
      pijama infantil
      pijama de criança
      pijama bebê
      pijama bebé
    `,
    'medical-compression': `
      meias de compressão
      compressão médica
    `
  },
  whose: {
    women: `
      de mulher
      para mulher
      para mulheres
      de senhora
      para senhora
      feminina
      feminino
      femininas
      femininos
    `,
    men: `
      de homem
      para homem
      para homens
      de cavalheiro
      masculina
      masculino
      masculinos
      masculinas
    `,
    'women named': `
      mulher
      senhora
    `,
    'men named': 'homem',
    both: `
      unissexo
      unissex
      unisex
      homem e mulher
      mulher e homem
      homem ou mulher
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        buraco de traça
        buracos de traça
        traça
        traças
        furo de traça
        furinhos de traça
      `
    },
    {
      mending: ['patch'],
      phrases: `
        buraco
        buracos
        buraquinho
        furo
        furos
        furinho
        furinhos
        rasgo
        rasgado
        rasgada
        rasgão
        rasgadinho
      `
    },
    {
      mending: ['clean'],
      phrases: `
        mancha
        manchas
        manchado
        manchada
        manchinha
        manchinhas
        amarelado
        amarelada
        nódoa
        nódoas
        sujidade
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        falta um botão
        falta botão
        faltam botões
        sem um botão
        botão em falta
        perdeu um botão
        falta 1 botão
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        descosido
        descosida
        descosturado
        descosturada
        costura aberta
        forro descosido
        forro rasgado
        bainha descosida
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        fecho avariado
        fecho estragado
        zíper quebrado
        zíper estragado
        fecho não funciona
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        elástico laço
        elástico frouxo
        elástico gasto
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        borboto
        borbotos
        bolinhas
        pilling
        bolinha
      `
    },
    {
      mending: ['dye'],
      phrases: `
        desbotado
        desbotada
        desbotou
        descolorado
        queimado de sol
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        descascado
        descascando
        ressecado
        arranhado
      `
    },
    {
      mending: [],
      phrases: `
        defeito
        defeitos
        sinais de uso
        marcas de uso
        fio puxado
        fios puxados
        detalhe
        avaria
      `
    }
  ]
}

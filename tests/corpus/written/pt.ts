/** Texts in the manner of Portuguese and Brazilian listings. */
import type { WrittenCase } from './written-case.ts'

export const portuguese: WrittenCase[] = [
  {
    id: 'pt-w01',
    class: 'plain',
    lang: 'pt',
    title: 'Vestido midi floral manga curta',
    text: 'Medidas da peça: busto 92 cm, cintura 76 cm, quadril 104 cm, comprimento 112 cm, manga 22 cm.\nForrado. 100% viscose.\nR$ 89,90 + frete',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '92 cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '76 cm', value: 76, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '104 cm', value: 104, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '112 cm', value: 112, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22 cm', value: 22, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 89.9, currency: 'BRL' },
    fibres: [['viscose', 100]],
    lined: 'full',
    cut: { dressLength: 'midi' }
  },
  {
    id: 'pt-w02',
    class: 'flat',
    lang: 'pt',
    title: 'Camisa xadrez masculina tam. G',
    text: 'Axila a axila: 56cm\nOmbro a ombro: 46cm\nComprimento: 74cm\nManga: 61cm\nMedidas com a peça esticada na horizontal\nAlgodão 100%\n35€ com portes incluídos',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 35, currency: 'EUR' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'pt-w03',
    class: 'trousers',
    lang: 'pt',
    title: 'Calça pantalona alfaiataria preta 40',
    text: 'Cintura: 37cm (de um lado a outro)\nQuadril: 52cm\nGancho: 31cm\nEntrepernas: 78cm\nBarra: 30cm\nComprimento total: 108cm\nDe R$ 220 por R$ 75',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '52cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '78cm', value: 78, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '108cm', value: 108, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 75, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-w04',
    class: 'jeans',
    lang: 'pt',
    title: 'Calças de ganga slim W31 L32',
    text: 'Cintura 40 cm, anca 50 cm, coxa 28 cm, entreperna 79 cm, bainha 17 cm (medidas em plano)\nTamanho W31 L32\n98% algodão, 2% elastano\n18 €',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40 cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '28 cm', value: 28, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79 cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '17 cm', value: 17, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 18, currency: 'EUR' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    cut: { leg: 'slim' }
  },
  {
    id: 'pt-w05',
    class: 'coat',
    lang: 'pt',
    title: 'Sobretudo de lã cinzento',
    text: 'Tamanho 42. Ombros 43 cm; peito 54 cm (axila a axila); comprimento 101 cm; mangas 62 cm.\nExterior: 70% lã, 30% poliamida. Forro: 100% poliéster.\nValor: 60 euros',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '43 cm', value: 43, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '101 cm', value: 101, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 60, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'pt-w06',
    class: 'skirt',
    lang: 'pt',
    title: 'Saia plissada longa bege',
    text: 'Cintura 34 a 44 cm (elástico)\nComprimento 85 cm\nSem forro\nNova com etiqueta, custou 49€, vendo por 15€',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34 a 44 cm', value: 39, unit: 'cm', basis: 'flat', low: 34, high: 44 },
      { point: 'skirtLength', text: '85 cm', value: 85, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 15, currency: 'EUR' },
    fibres: [],
    lined: 'none'
  },
  {
    id: 'pt-w07',
    class: 'model',
    lang: 'pt',
    title: 'Macacão pantacourt verde',
    text: 'A modelo veste 38 e tem 1,70 m de altura.\nBusto: 90cm / Cintura: 74cm / Quadril: 102cm / Comprimento: 125cm\nViscolinho (55% viscose 45% linho)',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '90cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '74cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '102cm', value: 102, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '125cm', value: 125, unit: 'cm', basis: 'length' }
    ],
    aside: ['38'],
    price: null,
    fibres: [
      ['viscose', 55],
      ['linen', 45]
    ]
  },
  {
    id: 'pt-w08',
    class: 'jumper',
    lang: 'pt',
    title: 'Camisola de malha grossa cor-de-rosa',
    text: 'Largura axilas: 50 cm\nComprimento: 58 cm\nManga desde a gola: 74 cm\n60% acrílico 40% lã\nTem algum borboto',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '74 cm', value: 74, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['acrylic', 60],
      ['wool', 40]
    ]
  },
  {
    id: 'pt-w09',
    class: 'tshirt',
    lang: 'pt',
    title: 'Camiseta estampada banda anos 90',
    text: 'Tamanho GG na etiqueta\nLargura 57, altura 75, ombro 51, manga 22 (cm)\nPequeno furo de 1 cm nas costas\nR$120',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '57', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '75', value: 75, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '51', value: 51, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22', value: 22, unit: 'cm', basis: 'length' }
    ],
    aside: ['1 cm'],
    price: { amount: 120, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-w10',
    class: 'suit',
    lang: 'pt',
    title: 'Fato completo azul marinho 50',
    text: 'Casaco: ombros 45 cm, peito 53 cm, manga 63 cm, comprimento 75 cm\nCalças: cintura 43 cm, entreperna 78 cm, gancho 27 cm\n100% lã virgem',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '45 cm', of: 'jacket', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53 cm', of: 'jacket', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '63 cm', of: 'jacket', value: 63, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '75 cm', of: 'jacket', value: 75, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '43 cm', of: 'trousers', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '78 cm', of: 'trousers', value: 78, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '27 cm', of: 'trousers', value: 27, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', 100]]
  },
  {
    id: 'pt-w11',
    class: 'around-told',
    lang: 'pt',
    title: 'Saia lápis preta',
    text: 'Circunferência da cintura: 70 cm. Circunferência da anca: 94 cm. Comprimento: 61 cm.\n65% poliéster 32% viscose 3% elastano',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '94 cm', value: 94, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '61 cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['polyester', 65],
      ['viscose', 32],
      ['elastane', 3]
    ],
    cut: { silhouette: 'pencil' }
  },
  {
    id: 'pt-w12',
    class: 'shorts',
    lang: 'pt',
    title: 'Bermuda jeans masculina 44',
    text: 'cós 44cm x 2, gancho 30cm, comprimento 56cm, boca 25cm\nBRL 45,00',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '44cm', value: 44, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '56cm', value: 56, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '25cm', value: 25, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 45, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-w13',
    class: 'blazer',
    lang: 'pt',
    title: 'Blazer feminino alongado caramelo M',
    text: 'Tam M\nBusto 100cm\nOmbro 40cm\nManga 60cm\nComprimento 78cm\nForro em bom estado, sem manchas nem furos\nFrete grátis! R$ 150',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '100cm', value: 100, unit: 'cm', basis: 'around' },
      { point: 'shoulderWidth', text: '40cm', value: 40, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '78cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150, currency: 'BRL' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'pt-w14',
    class: 'waistcoat',
    lang: 'pt',
    title: 'Colete de fato cinza',
    text: 'Peito 48 cm em plano, comprimento 58 cm\nCostas em acetato\n10€',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 10, currency: 'EUR' },
    fibres: [['acetate', null]]
  },
  {
    id: 'pt-w15',
    class: 'sentences',
    lang: 'pt',
    title: 'Blusa de seda creme',
    text: 'A blusa mede 48 cm de axila a axila e 63 cm de comprimento. A manga tem 58 cm a partir do ombro. Foi usada duas vezes, está como nova.\nPreço: 22,50 €',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 22.5, currency: 'EUR' },
    fibres: [['silk', null]]
  },
  {
    id: 'pt-w16',
    class: 'no-garment',
    lang: 'pt',
    title: 'Bolsa de couro marrom',
    text: 'Altura 25cm, largura 30cm, profundidade 12cm. Alça 90cm. R$ 180',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['25cm', '30cm'],
    price: { amount: 180, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-w17',
    class: 'postage',
    lang: 'pt',
    title: 'Casaco de ganga oversize',
    text: 'Peito 60cm, costas (ombro a ombro) 50cm, comprimento 68cm, manga 58cm. Portes 4€, preço 20€.',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '60cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '50cm', value: 50, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '68cm', value: 68, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 20, currency: 'EUR' },
    fibres: [],
    cut: { closeness: 'oversized' }
  },
  {
    id: 'pt-w18',
    class: 'leggings',
    lang: 'pt',
    title: 'Legging fitness cintura alta',
    text: 'Cintura 30cm (esticada 44cm) quadril 36cm comprimento 86cm\n88% poliamida 12% elastano',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '36cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '86cm', value: 86, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['polyamide', 88],
      ['elastane', 12]
    ],
    cut: { rise: 'high', leg: 'legging' }
  },
  {
    id: 'pt-w19',
    class: 'dash-list',
    lang: 'pt',
    title: 'Moletom com capuz cinza mescla',
    text: '- Largura do peito - 61\n- Comprimento - 70\n- Comprimento da manga - 60\nmedidas em centímetros\n80% algodão / 20% poliéster',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '61', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ]
  },
  {
    id: 'pt-w20',
    class: 'price-words',
    lang: 'pt',
    title: 'Vestido de festa longo azul royal',
    text: 'Busto 44 cm, cintura 36 cm, comprimento do ombro à barra 148 cm. Usado uma vez. Cento e vinte reais.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '44 cm', value: 44, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '148 cm', value: 148, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 120, currency: 'BRL' },
    fibres: [],
    cut: { dressLength: 'maxi' }
  },
  {
    id: 'pt-w21',
    class: 'second-garment',
    lang: 'pt',
    title: 'Camisa social branca slim 3',
    text: 'Colarinho 40, peito 54, comprimento 78, manga 65, punho 12. Tenho também uma calça preta 42 em outro anúncio por R$ 60.\nEsta camisa R$ 40',
    kind: 'shirt',
    measures: [
      { point: 'neck', text: '40', value: 40, unit: 'cm', basis: 'around' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '78', value: 78, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '65', value: 65, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '12', value: 12, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 40, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-x01',
    class: 'abbreviations',
    lang: 'pt',
    title: 'Jaqueta jeans oversized G',
    text: 'Medidas: largura 60cm compr. 65cm manga 58cm ombro 52cm\n100% algodão. Sem marcas de uso.\nR$ 95',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '60cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '65cm', value: 65, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '52cm', value: 52, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 95, currency: 'BRL' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'pt-x02',
    class: 'european',
    lang: 'pt',
    title: 'Calças chino bege homem 42',
    text: 'Cintura: 42 cm (em plano)\nComprimento: 104 cm\nPerna interior: 78 cm\nLargura em baixo: 19 cm\nPouco uso. 98% algodão, 2% elastano.\nPreço: 14 euros + portes',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '42 cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '104 cm', value: 104, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '78 cm', value: 78, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '19 cm', value: 19, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 14, currency: 'EUR' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'pt-x03',
    class: 'sweater',
    lang: 'pt',
    title: 'Suéter de tricô vintage anos 80',
    text: 'Busto: 110cm de circunferência. Comprimento: 62cm. Manga (da gola até o punho): 72cm.\nAcrílico. Tem um furinho pequeno na manga, quase não aparece.\nDe R$130 por R$90',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '110cm', value: 110, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '72cm', value: 72, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 90, currency: 'BRL' },
    fibres: [['acrylic', null]]
  },
  {
    id: 'pt-x04',
    class: 'dress',
    lang: 'pt',
    title: 'Vestido curto de alcinha preto P',
    text: 'busto 84 a 92 cm (lastex)\ncintura 66 cm\ncomprimento com alça 80 cm\nviscose 100%\n39,90',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '84 a 92 cm', value: 88, unit: 'cm', basis: 'around', low: 84, high: 92 },
      { point: 'waist', text: '66 cm', value: 66, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '80 cm', value: 80, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['viscose', 100]]
  },
  {
    id: 'pt-x05',
    class: 'kispo',
    lang: 'pt',
    title: 'Kispo penas preto L',
    text: 'Peito (axila a axila) 58cm - Comprimento 70cm - Mangas 64cm - Ombros 48cm\nExterior 100% poliamida, enchimento 80% penas 20% plumas, forro 100% poliéster\nVendo a 30€, custou 120€',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '64cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '48cm', value: 48, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 30, currency: 'EUR' },
    fibres: [['polyamide', 100]],
    lined: 'full'
  },
  {
    id: 'pt-x06',
    class: 'skirt-mini',
    lang: 'pt',
    title: 'Minissaia jeans 38',
    text: 'cintura 37cm quadril 47cm comprimento 38cm\nbotões na frente\nR$ 35,00 (frete por conta do comprador)',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '37cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '47cm', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '38cm', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 35, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-x07',
    class: 'polo',
    lang: 'pt',
    title: 'Camisa polo azul masculina M',
    text: 'Tórax 52cm / altura 71cm / ombro 44cm / manga 21cm. 1 vez usada.\nPeça em algodão piquet.',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '52cm', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '44cm', value: 44, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '21cm', value: 21, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['cotton', null]]
  },
  {
    id: 'pt-x08',
    class: 'blazer',
    lang: 'pt',
    title: 'Blazer de linho cru, forrado a meio',
    text: 'Ombros: 41. Peito: 50. Comprimento: 70. Mangas: 59. (cm)\nLinho 55% viscose 45%. Botão de substituição incluído.\n28€',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '41', value: 41, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '50', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '59', value: 59, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 28, currency: 'EUR' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ]
  },
  {
    id: 'pt-x09',
    class: 'jardineira',
    lang: 'pt',
    title: 'Jardineira jeans clara M',
    text: 'Cintura 40cm, quadril 54cm, gancho 32cm, perna interna 70cm, barra 18cm, comprimento total da alça até a barra 138cm\nAlgodão 100%\nR$ 110,00',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32cm', value: 32, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '70cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '18cm', value: 18, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '138cm', value: 138, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 110, currency: 'BRL' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'pt-x10',
    class: 'children',
    lang: 'pt',
    title: 'Vestido infantil menina 6 anos',
    text: 'Tamanho 6 anos. Comprimento 62 cm, peito 32 cm em plano. Algodão. 5€',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '62 cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '32 cm', value: 32, unit: 'cm', basis: 'flat' }
    ],
    aside: ['6'],
    price: { amount: 5, currency: 'EUR' },
    fibres: [['cotton', null]]
  },
  {
    id: 'pt-y01',
    class: 'table',
    lang: 'pt',
    title: 'Camisa linho branca M',
    text: 'Tamanho | Peito | Comprimento | Manga\nM | 55 | 74 | 60\n(medidas em cm, em plano)\n100% linho - 19€',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '55', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 19, currency: 'EUR' },
    fibres: [['linen', 100]]
  },
  {
    id: 'pt-y02',
    class: 'joint',
    lang: 'pt',
    title: 'Vestido tubinho vinho 40',
    text: 'busto/cintura/quadril: 88/72/96 cm\ncomprimento 94 cm\nzíper atrás, forrado\nR$ 70 no pix',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '88', value: 88, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72', value: 72, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '96 cm', value: 96, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '94 cm', value: 94, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 70, currency: 'BRL' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'pt-y03',
    class: 'sentences',
    lang: 'pt',
    title: 'Parka verde tropa',
    text: 'A parka tem 82 cm de comprimento, 60 cm de axila a axila e mangas de 63 cm. Forro em pelo sintético removível. Aceito 45 euros, na loja custava 129.',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '82 cm', value: 82, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '60 cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 45, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'pt-y04',
    class: 'shorts',
    lang: 'pt',
    title: 'Short alfaiataria linho 42',
    text: 'Cós: 39 cm\nQuadril: 54 cm\nGancho: 30 cm\nComprimento: 42 cm\nAbertura da perna: 32 cm\n55% linho 45% viscose. Valor: R$ 49,90 (frete à parte)',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '39 cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '54 cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30 cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '42 cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '32 cm', value: 32, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 49.9, currency: 'BRL' },
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ]
  },
  {
    id: 'pt-y05',
    class: 'rises',
    lang: 'pt',
    title: 'Calça wide leg sarja 44',
    text: 'cintura 41, quadril 57, gancho frente 33, gancho costas 42, coxa 34, entrepernas 77, barra 28. Tudo em cm, medida de um lado.\n100% algodão\n85 reais',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '41', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '57', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '33', value: 33, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '77', value: 77, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '28', value: 28, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 85, currency: 'BRL' },
    fibres: [['cotton', 100]],
    cut: { leg: 'wide' }
  },
  {
    id: 'pt-y06',
    class: 'swim',
    lang: 'pt',
    title: 'Biquíni cortininha P',
    text: 'top e calcinha, lycra. R$ 25',
    kind: 'other',
    measures: [],
    price: { amount: 25, currency: 'BRL' },
    fibres: [['elastane', null]]
  },
  {
    id: 'pt-y07',
    class: 'kimono',
    lang: 'pt',
    title: 'Kimono estampado longo',
    text: 'Tamanho único. Comprimento 120cm, largura 70cm, manga 40cm desde o ombro. Viscose. 40,00 reais',
    kind: 'other',
    measures: [
      { point: 'bodyLength', text: '120cm', value: 120, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '70cm', value: 70, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '40cm', value: 40, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 40, currency: 'BRL' },
    fibres: [['viscose', null]]
  },
  {
    id: 'pt-y08',
    class: 'no-garment',
    lang: 'pt',
    title: 'Sapatilhas pretas 38',
    text: 'Palmilha 24,5 cm. Usadas duas vezes. 10€',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['24,5 cm'],
    price: { amount: 10, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'pt-z01',
    class: 'tight',
    lang: 'pt',
    title: 'Cardigan longo preto',
    text: 'Busto 100 Comprimento 92 Manga 60 Ombro 38. Acrílico 100%. Usei 1x. 50 reais',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '100', value: 100, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '92', value: 92, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 50, currency: 'BRL' },
    fibres: [['acrylic', 100]]
  },
  {
    id: 'pt-z02',
    class: 'set',
    lang: 'pt',
    title: 'Conjunto blazer e saia preto 40',
    text: 'Blazer: ombro 38 cm, busto 92 cm, comprimento 58 cm, manga 58 cm\nSaia: cintura 70 cm, quadril 96 cm, comprimento 55 cm\nPoliéster 100%, ambos forrados\nR$ 160 o conjunto',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '38 cm', of: 'jacket', value: 38, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '92 cm', of: 'jacket', value: 92, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '58 cm', of: 'jacket', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58 cm', of: 'jacket', value: 58, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '70 cm', of: 'skirt', value: 70, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '96 cm', of: 'skirt', value: 96, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '55 cm', of: 'skirt', value: 55, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 160, currency: 'BRL' },
    fibres: [['polyester', 100]],
    lined: 'full'
  },
  {
    id: 'pt-z03',
    class: 'european-short',
    lang: 'pt',
    title: 'Casaco bombazine castanho S',
    text: 'Comp: 65\nLarg. peito: 52\nOmbros: 44\nMangas: 60\nSem forro. Algodão.\nFaço 22€',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '65', value: 65, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '44', value: 44, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 22, currency: 'EUR' },
    fibres: [['cotton', null]],
    lined: 'none'
  },
  {
    id: 'pt-z04',
    class: 'new-price',
    lang: 'pt',
    title: 'Vestido Festa Tomara que Caia',
    text: 'comprado por 400 reais, usado uma única vez numa formatura, vendo por 150 reais. Busto 88, cintura 70, comprimento (da axila até a barra) 105. Zíper nas costas.',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '88', value: 88, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '70', value: 70, unit: 'cm', basis: 'around' }
    ],
    price: { amount: 150, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-z05',
    class: 'brackets',
    lang: 'pt',
    title: 'Calção de ganga (short jeans) 36',
    text: 'cintura (já dobrada) 74 cm; anca 92 cm; tiro 28 cm; comprimento 32 cm; 8,00€',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '74 cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '92 cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '28 cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '32 cm', value: 32, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 8, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'pt-z06',
    class: 'tee',
    lang: 'pt',
    title: 'Regata canelada branca',
    text: 'largura 38cm (estica até 50) / comprimento 55cm. 95% algodão 5% elastano. R$15',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55cm', value: 55, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 15, currency: 'BRL' },
    fibres: [
      ['cotton', 95],
      ['elastane', 5]
    ]
  },
  {
    id: 'pt-z07',
    class: 'trench',
    lang: 'pt',
    title: 'Trench coat bege feminino 38',
    text: 'Largura de ombro a ombro: 40 cm. Largura das axilas: 50 cm. Manga: 59 cm. Altura: 98 cm. Composição: 65% poliéster, 35% algodão; forro 100% acetato. 45 euros.',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '40 cm', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '50 cm', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59 cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '98 cm', value: 98, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 45, currency: 'EUR' },
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ],
    lined: 'full'
  }
]

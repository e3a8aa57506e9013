/** More texts in the manner of Portuguese and Brazilian listings, by another hand. */
import type { WrittenCase } from './written-case.ts'

export const morePortuguese: WrittenCase[] = [
  {
    id: 'pt-001',
    class: 'plain',
    lang: 'pt',
    title: 'Vestido midi floral viscose brechó',
    text: 'Vestido midi estampado lindo, manguinha curta, super fresquinho 🌸\nEtiqueta M mas veste P/M\nMedidas tiradas com a peça esticada numa superfície plana:\nBusto 46cm\nCintura 38cm\nQuadril livre\nComprimento 118cm\nTecido: 100% viscose, não tem forro\nR$ 89,90 + frete (R$ 22 pra SP)',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '118cm', value: 118, unit: 'cm', basis: 'length' }
    ],
    aside: ['22'],
    price: { amount: 89.9, currency: 'BRL' },
    fibres: [['viscose', 100]],
    lined: 'none',
    cut: { dressLength: 'midi', sleeve: 'short' }
  },
  {
    id: 'pt-002',
    class: 'around-told',
    lang: 'pt',
    title: 'Calça jeans mom cintura alta 40',
    text: 'Calça jeans mom, cós alto, 5 bolsos, usada poucas vezes.\nTam 40 (confiram as medidas pq a forma é pequena!!)\ncintura: 74cm / quadril: 98cm / gancho: 30cm / entrepernas: 69cm / barra: 17cm / comp. total: 97cm\n98% algodão 2% elastano\nDe R$ 120 por R$ 59, não troco\nModelo veste 38, tem 1,68m',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '74cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98cm', value: 98, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '69cm', value: 69, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '17cm', value: 17, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '97cm', value: 97, unit: 'cm', basis: 'length' }
    ],
    aside: ['120', '1,68', '40'],
    price: { amount: 59, currency: 'BRL' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    cut: { rise: 'high' }
  },
  {
    id: 'pt-003',
    class: 'price-before-postage',
    lang: 'pt',
    title: 'Camisa de homem aos quadrados flanela',
    text: 'Camisa flanela aos quadrados, muito quentinha, ideal para usar com calças de ganga.\nTamanho na etiqueta: L\nLargura de axila a axila: 57 cm\nOmbro a ombro: 48 cm\nManga: 63 cm\nComprimento total atrás: 77,5 cm\n100% algodão\n12€ (portes 3,50€ em correio registado)\nEntrego em mão em Braga',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '57 cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '48 cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63 cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '77,5 cm', value: 77.5, unit: 'cm', basis: 'length' }
    ],
    aside: ['3,50'],
    price: { amount: 12, currency: 'EUR' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'pt-004',
    class: 'not-measures',
    lang: 'pt',
    title: 'Bolsa de couro legítimo tiracolo',
    text: 'Bolsa couro caramelo, alça regulável.\nAltura 24 cm Largura 31 cm Profundidade 9 cm\nalça 110 cm\ncombina c/ vestido, saia, jeans tudo!\nR$150,00 aceito pix',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['24 cm', '31 cm', '9 cm', '110 cm'],
    price: { amount: 150, currency: 'BRL' },
    fibres: []
  },
  {
    id: 'pt-005',
    class: 'second-garment',
    lang: 'pt',
    title: 'Terno masculino completo azul marinho 50',
    text: 'Terno usado 1x em formatura, tamanho 50, caimento slim\nPALETÓ: ombro 46 / peito 54 / manga 64 / comprimento 75\nCALÇA: cintura 42 / coxa 31 / gancho 26 / barra 18,5 / comprimento 104\n(em cm, peça deitada, sem esticar)\npoliéster 65% viscose 33% elastano 2%. Paletó forrado.\nValor 180 reais',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat', of: 'jacket' },
      { point: 'sleeveLength', text: '64', value: 64, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '75', value: 75, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '42', value: 42, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'thigh', text: '31', value: 31, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '26', value: 26, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '18,5', value: 18.5, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'outseam', text: '104', value: 104, unit: 'cm', basis: 'length', of: 'trousers' }
    ],
    aside: ['50'],
    price: { amount: 180, currency: 'BRL' },
    fibres: [
      ['polyester', 65],
      ['viscose', 33],
      ['elastane', 2]
    ],
    lined: 'full',
    cut: { closeness: 'slim' }
  },
  {
    id: 'pt-006',
    class: 'fibres-lining',
    lang: 'pt',
    title: 'Casaco comprido de lã, cinza',
    text: 'Sobretudo de senhora em lã, corte direito, bolsos laterais. Comprado há uns anos por 120€.\nMedidas (peça estendida):\n- sovaco a sovaco 54cm\n- ombros 42cm\n- manga 60cm , manga por dentro 44cm\n- comprimento 98cm\n- bainha 62cm\nExterior: 70% lã 20% poliamida 10% outras fibras. Forro: 100% viscose\nVendo por 35 €, com portes incluídos',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '44cm', value: 44, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '98cm', value: 98, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '62cm', value: 62, unit: 'cm', basis: 'flat' }
    ],
    aside: ['120'],
    price: { amount: 35, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['polyamide', 20]
    ],
    lined: 'full'
  },
  {
    id: 'pt-007',
    class: 'wrap-girths',
    lang: 'pt',
    title: 'Saia envelope longa indiana',
    text: 'saia envelope (transpassada) de amarrar, estampa lindíssimaaa\ncintura ajustável, amarra de 64 a 82cm, aberta mede 128cm\ncomprimento 92cm\nbarra 190cm total aberta\nviscose. sem forro, n é transparente\nR$45',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '64 a 82cm', value: 73, unit: 'cm', basis: 'around', low: 64, high: 82 },
      { point: 'skirtLength', text: '92cm', value: 92, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '190cm', value: 190, unit: 'cm', basis: 'around' }
    ],
    aside: ['128cm'],
    price: { amount: 45, currency: 'BRL' },
    fibres: [['viscose', null]],
    lined: 'none',
    cut: { silhouette: 'wrap', dressLength: 'maxi' }
  },
  {
    id: 'pt-008',
    class: 'relaxed-stretched',
    lang: 'pt',
    title: 'Macacão pantacourt lastex M/G',
    text: '✨ Macacão pantacourt de alcinha ✨\nbusto 38cm sem esticar / 50cm esticando\ncintura 35cm (elástico, vai até 47cm)\nquadril 58cm\ngancho 40cm\nentrepernas 48cm\nabertura da perna 36cm\ncomprimento (da frente, sem alça) 112cm\nMalha crepe, poliéster com elastano. Não acompanha o cinto\n65,00 reais no pix ou 70 no cartão',
    kind: 'jumpsuit',
    measures: [
      { point: 'chest', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '40cm', value: 40, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '48cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '36cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 65, currency: 'BRL' },
    fibres: [
      ['polyester', null],
      ['elastane', null]
    ],
    cut: { leg: 'wide', legLength: 'cropped', sleeve: 'sleeveless' }
  }
]

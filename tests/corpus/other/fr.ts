/** French. */
import { aside, type Case, type Expected, m } from '../case.ts'

const fr = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `fr: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'fr', ...expect }
})

export const french: Case[] = [
  fr('aisselle à aisselle', 'the French pit to pit', 'Pull en maille', 'Aisselle à aisselle : 48 cm, longueur : 62 cm, manche : 58 cm', {
    kind: 'jumper',
    structure: 'knit',
    measures: [m('chest', '48 cm', 'cm flat'), m('bodyLength', '62 cm', 'cm length'), m('sleeveLength', '58 cm', 'cm length')]
  }),
  fr('à plat', 'à plat over a list', 'Robe droite', 'Mesures à plat : poitrine 45 cm, taille 38 cm, hanches 50 cm, longueur 105 cm', {
    kind: 'dress',
    cut: { silhouette: 'shift' },
    measures: [
      m('chest', '45 cm', 'cm flat'),
      m('waist', '38 cm', 'cm flat'),
      m('hip', '50 cm', 'cm flat'),
      m('bodyLength', '105 cm', 'cm length')
    ]
  }),
  fr('tour de taille', 'tour is around', 'Pantalon large', 'Tour de taille 80 cm, entrejambe 74 cm, montant 28 cm', {
    kind: 'trousers',
    cut: { leg: 'wide' },
    measures: [m('waist', '80 cm', 'cm around judged'), m('inseam', '74 cm', 'cm length'), m('frontRise', '28 cm', 'cm length')]
  }),
  fr('bas de jambe', 'the leg opening', 'Jean droit', 'Entrejambe 76 cm, bas de jambe 19 cm', {
    kind: 'jeans',
    cut: { leg: 'straight' },
    traits: ['denim'],
    structure: 'woven',
    measures: [m('inseam', '76 cm', 'cm length'), m('legOpening', '19 cm', 'cm flat judged')]
  }),
  fr(
    'taille 38',
    'taille with a bare number is the size',
    'Veste',
    'Taille 38, portée deux fois.',
    {
      kind: 'jacket',
      made: { tailored: false },
      sizeLabels: ['38'],
      leftAside: [aside('size-label', '38')]
    },
    true
  ),
  fr('je mesure', 'the wearer measured', 'Jupe longue', 'Je mesure 1m68. Longueur 92 cm.', {
    kind: 'skirt',
    cut: { dressLength: 'maxi' },
    measures: [m('skirtLength', '92 cm', 'cm length')],
    leftAside: [aside('model', '1m68', 'cm', 1, 168)]
  }),
  fr('décimales', 'decimal comma', 'Chemise', 'Épaule à épaule 44,5 cm et manche 62,5 cm', {
    kind: 'shirt',
    measures: [m('shoulderWidth', '44,5 cm', 'cm length', { value: 44.5 }), m('sleeveLength', '62,5 cm', 'cm length', { value: 62.5 })]
  }),
  fr('sans accents', 'missing accents', 'Manteau en laine', 'Epaules 42 cm, longueur 101 cm, d aisselle a aisselle 54 cm', {
    kind: 'coat',
    fibres: [['wool', null]],
    measures: [m('shoulderWidth', '42 cm', 'cm length'), m('bodyLength', '101 cm', 'cm length'), m('chest', '54 cm', 'cm flat')]
  }),
  fr('étiré', 'relaxed and stretched', 'Jupe midi', 'Taille élastique : 33 cm au repos, 48 cm étiré. Longueur 75 cm.', {
    kind: 'skirt',
    cut: { dressLength: 'midi' },
    made: { elasticWaist: true, waistStretchedMm: 960 },
    measures: [m('waist', '33 cm', 'cm flat judged'), m('skirtLength', '75 cm', 'cm length')],
    leftAside: [aside('pulled-out', '48 cm', 'cm')]
  }),
  fr('composition', 'fibres and the lining', 'Blazer', 'Composition : 70% laine, 30% polyester. Doublure : 100% viscose.', {
    kind: 'jacket',
    cut: { layer: 'blazer' },
    made: { tailored: true, lined: true },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ]
  }),
  fr(
    'prix',
    'price, condition, colour',
    'Robe noire',
    'Très bon état. 35 €',
    {
      kind: 'dress',
      colour: 'black',
      condition: 'très bon état',
      price: { amount: 35, currency: 'EUR' }
    },
    true
  ),
  fr(
    'sans tache',
    'denied and admitted faults',
    'Chemisier',
    'Aucune tache. Il manque un bouton.',
    {
      kind: 'shirt',
      faults: ['Il manque un bouton'],
      mending: ['replace-button']
    },
    true
  ),
  fr("de l'épaule à l'ourlet", 'landmarks with à', 'Robe', "De l'épaule à l'ourlet : 98 cm", {
    kind: 'dress',
    measures: [m('bodyLength', '98 cm', 'cm length')]
  }),
  fr('multiplier par deux', 'a note to double', 'Jupe', 'Taille 36 cm, hanches 48 cm, longueur 60 cm (largeurs à multiplier par 2)', {
    kind: 'skirt',
    measures: [m('waist', '36 cm', 'cm flat'), m('hip', '48 cm', 'cm flat'), m('skirtLength', '60 cm', 'cm length')]
  }),
  fr(
    'talons',
    'heels are no garment',
    'Bottines',
    'Bottines en daim, talon 6 cm.',
    {
      kind: null,
      issues: [{ code: 'reading.no-garment' }],
      structure: 'leather',
      traits: ['suede'],
      leftAside: [aside('detail', '6 cm', 'cm')]
    },
    true
  ),
  fr('W30 L32', 'the l between two figures is no litre', 'Jean', 'W30 L32. Longueur intérieure 79 cm', {
    kind: 'jeans',
    traits: ['denim'],
    structure: 'woven',
    sizeLabels: ['W30 L32'],
    measures: [m('inseam', '79 cm', 'cm length')],
    leftAside: [aside('size-label', '30'), aside('size-label', '32')]
  }),
  fr(
    'carrure et aisselles',
    'a slash between a name with its figure and the next',
    'Chemise',
    'Carrure 46 cm / Aisselles 56 cm / Longueur 75 cm',
    {
      kind: 'shirt',
      measures: [m('shoulderWidth', '46 cm', 'cm length'), m('chest', '56 cm', 'cm flat'), m('bodyLength', '75 cm', 'cm length')]
    }
  ),
  fr(
    'col et manches longues',
    'a bare collar figure is the neck; long sleeves with a figure are measured; 36/38 is between two sizes',
    'Chemise en lin',
    'Col 40, poitrine 55 cm à plat. Manches longues 62 cm. Taille estimée 36/38.',
    {
      kind: 'shirt',
      cut: { sleeve: 'long' },
      fibres: [['linen', null]],
      measures: [m('neck', '40', 'cm around judged list'), m('chest', '55 cm', 'cm flat'), m('sleeveLength', '62 cm', 'cm length')],
      sizeLabels: ['36'],
      leftAside: [aside('size-label', '36')]
    }
  ),
  fr(
    'ceinture',
    'the band of trousers is their waist, the belt of a coat is not',
    'Pantalon large',
    'Ceinture : 36 cm à plat, entrejambe 70 cm',
    {
      kind: 'trousers',
      cut: { leg: 'wide' },
      measures: [m('waist', '36 cm', 'cm flat'), m('inseam', '70 cm', 'cm length')]
    }
  ),
  fr(
    'ceinture de manteau',
    'a belt’s length is no waist',
    'Manteau',
    'Poitrine 52 cm à plat, ceinture : 110 cm',
    {
      kind: 'coat',
      measures: [m('chest', '52 cm', 'cm flat')],
      leftAside: [aside('detail', '110 cm', 'cm')]
    },
    true
  ),
  fr(
    'depuis l’aisselle',
    'a length from the armpit is no length of the whole',
    'Robe bustier',
    'Tour de poitrine 84 cm, longueur depuis l’aisselle 90 cm',
    {
      kind: 'dress',
      cut: { silhouette: 'strapless' },
      measures: [m('chest', '84 cm', 'cm around judged')],
      leftAside: [aside('detail', '90 cm', 'cm')]
    },
    true
  ),
  {
    name: 'fr: sous le bras',
    teaches: 'une deuxième longueur de manche sans nom; un prix en toutes lettres',
    listing: { title: 'Chemise', text: 'Aisselle à aisselle 52 cm, longueur dos 74, manche 61, sous le bras 46. Quinze euros.' },
    expect: {
      kind: 'shirt',
      language: 'fr',
      measures: [
        m('chest', '52 cm', 'cm flat'),
        m('bodyLength', '74', 'cm length list'),
        m('sleeveLength', '61', 'cm length list'),
        m('sleeveUnderarm', '46', 'cm length list')
      ],
      price: { amount: 15, currency: 'EUR' }
    }
  },
  fr('doublure de polyester', 'de quoi est la doublure : pas le tissu', 'Veste en laine', 'Doublure de polyester. Longueur totale 68 cm.', {
    kind: 'jacket',
    fibres: [['wool', null]],
    made: { tailored: false, lined: true },
    measures: [m('bodyLength', '68 cm', 'cm length')]
  })
]

/** Whole letters of sellers in German, French and Spanish, invented, with all that stands in them. */
import { aside, type Case, m } from '../case.ts'

export const lettersAbroad: Case[] = [
  {
    name: 'de: letter Jeans W30 L32 gerader Schnitt, Mittelblau',
    teaches: 'size pair in the title, back rise without its own name, thigh flat by plausibility',
    listing: {
      title: 'Jeans W30 L32 gerader Schnitt, Mittelblau',
      text: 'Hab sie mal gekürzt darum hier die echten Masse: Bundweite einfach gemessen 39,5 cm, Innenbeinlänge 74 cm, Leibhöhe vorne 27 cm hinten 36 cm, Oberschenkel 29 cm, Fußweite 19,5 cm. Kleiner Farbfleck am rechten Bein, sonst top. 99% Baumwolle 1% Elasthan. Bei 40 Grad gewaschen. 22 Euro VB, Nichtraucherhaushalt'
    },
    expect: {
      kind: 'jeans',
      cut: { leg: 'straight' },
      measures: [
        m('waist', '39,5 cm', 'cm flat', { value: 39.5 }),
        m('inseam', '74 cm', 'cm length'),
        m('frontRise', '27 cm', 'cm length'),
        m('backRise', '36 cm', 'cm length'),
        m('thigh', '29 cm', 'cm flat judged'),
        m('legOpening', '19,5 cm', 'cm flat judged', { value: 19.5 })
      ],
      fibres: [
        ['cotton', 99],
        ['elastane', 1]
      ],
      language: 'de',
      price: { amount: 22, currency: 'EUR' },
      sizeLabels: ['W30 L32']
    }
  },
  {
    name: 'de: letter Plisseerock Midi altrosa Gummibund',
    teaches: 'relaxed against stretched, waistband height, length without a unit',
    listing: {
      title: 'Plisseerock Midi altrosa Gummibund',
      text: 'Bund entspannt 33 cm, gedehnt bis 47 cm, jeweils flach hingelegt. Länge 76 inkl Bund (Bund selbst 4 cm hoch). Passt von 36 bis 42. 100 % Polyester, Falten halten auch nach der 30° Wäsche. Ein kleiner Fadenzieher hinten. 9,50€'
    },
    expect: {
      cut: { silhouette: 'pleated', dressLength: 'midi' },
      kind: 'skirt',
      measures: [m('waist', '33 cm', 'cm flat judged'), m('skirtLength', '76', 'cm length list')],
      fibres: [['polyester', 100]],
      traits: ['pleated'],
      made: { 'skirtShape': 'pleated', 'elasticWaist': true, waistStretchedMm: 940 },
      language: 'de',
      colour: 'pink',
      price: { amount: 9.5, currency: 'EUR' },
      faults: ['Ein kleiner Fadenzieher hinten'],
      leftAside: [aside('pulled-out', '47 cm', 'cm'), aside('detail', '4 cm', 'cm')]
    }
  },
  {
    name: 'de: letter Kurze Lederhose Herren braun Gr. 50',
    teaches: 'waist around, leg flat by plausibility, lacing allowance',
    listing: {
      title: 'Kurze Lederhose Herren braun Gr. 50',
      text: 'Bundumfang 90 cm (hinten geschnürt, geht ca. 5 cm weiter), Schrittlänge 17 cm, Beinweite 32 cm, Gesamtlänge 50. Speckig wie es sich gehört. Wildbockleder. 30€ nur Abholung'
    },
    expect: {
      kind: 'shorts',
      whose: 'men',
      measures: [
        m('waist', '90 cm', 'cm around judged'),
        m('inseam', '17 cm', 'cm length'),
        m('legOpening', '32 cm', 'cm flat judged'),
        m('outseam', '50', 'cm length list')
      ],
      structure: 'leather',
      language: 'de',
      colour: 'brown',
      price: { amount: 30, currency: 'EUR' },
      sizeLabels: ['50'],
      leftAside: [aside('detail', '5 cm', 'cm')]
    }
  },
  {
    name: 'de: letter Lederjacke Bikerjacke schwarz echtes Leder, Damen',
    teaches: 'figures inside running sentences, details',
    listing: {
      title: 'Lederjacke Bikerjacke schwarz echtes Leder, Damen',
      text: 'Hallo, ich trenne mich von meiner Lederjacke. Ich bin 1,72 und trage sonst eine 38, sie sitzt bei mir eng, mit dickem Pulli geht sie nicht zu. Von Schulter zu Schulter sind es 39 cm, unter den Armen quer 46 cm, die Ärmel ab Schulter messen 62 cm und hinten von Kragenansatz bis Saum komme ich auf 54 cm. Kragen ist 7 cm hoch, die Reissverschlüsse an den Ärmeln 15 cm lang. Futter Viskose, rechts in der Tasche ein Loch. Preis 85 € inkl. Versand, PayPal Freunde.'
    },
    expect: {
      kind: 'jacket',
      whose: 'women',
      measures: [
        m('shoulderWidth', '39 cm', 'cm length'),
        m('chest', '46 cm', 'cm flat'),
        m('sleeveLength', '62 cm', 'cm length'),
        m('bodyLength', '54 cm', 'cm length')
      ],
      structure: 'leather',
      made: { 'tailored': false },
      language: 'de',
      colour: 'black',
      mending: ['re-line-pocket'],
      price: { amount: 85, currency: 'EUR' },
      faults: ['Futter Viskose, rechts in der Tasche ein Loch'],
      leftAside: [aside('detail', '7 cm', 'cm'), aside('detail', '15 cm', 'cm')]
    }
  },
  {
    name: 'fr: letter Jean brut coupe droite W29',
    teaches: "tour (around) and à plat mixed, missing accents, seller's body",
    listing: {
      title: 'Jean brut coupe droite W29',
      text: "Tour de taille 76cm, tour de hanches 98cm, entrejambe 72cm (ourlet refait), hauteur de fourche 27cm, largeur bas de jambe 18 cm a plat. Longueur exterieure 98cm. Coton 100%. 13 oz environ. Jamais porté. Je fais 1m65 pour 58 kg et il m'est trop grand. 17 euros"
    },
    expect: {
      kind: 'jeans',
      cut: { leg: 'straight' },
      measures: [
        m('waist', '76cm', 'cm around judged'),
        m('hip', '98cm', 'cm around judged'),
        m('inseam', '72cm', 'cm length'),
        m('frontRise', '27cm', 'cm length'),
        m('legOpening', '18 cm', 'cm flat'),
        m('outseam', '98cm', 'cm length', { nth: 2 })
      ],
      fibres: [['cotton', 100]],
      traits: ['denim', 'rigid'],
      structure: 'woven',
      language: 'fr',
      condition: 'jamais porté',
      price: { amount: 17, currency: 'EUR' },
      sizeLabels: ['W29'],
      leftAside: [aside('model', '1m65', 'cm', 1, 165)]
    }
  },
  {
    name: 'fr: letter Manteau droit en laine bleu marine, doublé, T.42',
    teaches: 'carrure beside épaules, lapel, vent and fault lengths',
    listing: {
      title: 'Manteau droit en laine bleu marine, doublé, T.42',
      text: "Bonjour, je vends ce manteau car je n'ai plus l'utilité. Carrure dos 40 cm, largeur d'épaules 43 cm, largeur sous les bras 54 cm, longueur manche 61 cm, hauteur totale dos 101 cm, le bas fait 62 cm de large. Revers de col 9 cm. La fente dos est de 25 cm. Composition : 75 % laine, 20% polyamide, 5% cachemire. Doublure décousue sur 3 cm en bas. 90 € remise en main propre possible métro ligne 12."
    },
    expect: {
      kind: 'coat',
      measures: [
        m('backWidth', '40 cm', 'cm length'),
        m('shoulderWidth', '43 cm', 'cm length'),
        m('chest', '54 cm', 'cm flat'),
        m('sleeveLength', '61 cm', 'cm length'),
        m('bodyLength', '101 cm', 'cm length'),
        m('hem', '62 cm', 'cm flat judged')
      ],
      fibres: [
        ['wool', 75],
        ['polyamide', 20],
        ['cashmere', 5]
      ],
      made: { 'lined': true },
      language: 'fr',
      colour: 'navy',
      mending: ['close-seam'],
      price: { amount: 90, currency: 'EUR' },
      sizeLabels: ['42'],
      faults: ['Doublure décousue sur 3 cm en bas'],
      leftAside: [aside('detail', '9 cm', 'cm'), aside('detail', '25 cm', 'cm'), aside('detail', '3 cm', 'cm', 2)]
    }
  },
  {
    name: 'fr: letter pull mohair rose poudré T unique',
    teaches: 'short, sleeve from the armpit, unit at the end',
    listing: {
      title: 'pull mohair rose poudré T unique',
      text: "Aisselles 50, lg 58, manche 46 depuis l'aisselle. en cm. bouloche un peu. 8e"
    },
    expect: {
      kind: 'jumper',
      measures: [m('chest', '50', 'cm flat list'), m('bodyLength', '58', 'cm length list'), m('sleeveUnderarm', '46', 'cm length list')],
      fibres: [['mohair', null]],
      language: 'fr',
      colour: 'pink',
      mending: ['de-pill'],
      price: { amount: 8, currency: 'EUR' },
      faults: ['bouloche un peu']
    }
  },
  {
    name: 'fr: letter Combinaison pantalon fluide noire 38/40',
    teaches: 'joint label without separators between the names, adjustable strap as a range',
    listing: {
      title: 'Combinaison pantalon fluide noire 38/40',
      text: "Portée une fois au nouvel an. Mesures prises à plat, à doubler pour poitrine taille et hanches : 46 / 38 / 52 cm. Longueur d'épaule à entrejambe 76 cm, jambe intérieure 74 cm, bas de jambe 29 cm. Bretelles réglables de 30 à 38 cm. Viscose. Talons de 8 cm sur la photo, je fais 1m70. 19€"
    },
    expect: {
      kind: 'jumpsuit',
      measures: [
        m('chest', '46', 'cm flat list'),
        m('waist', '38', 'cm flat list'),
        m('hip', '52 cm', 'cm flat'),
        m('torsoLength', '76 cm', 'cm length'),
        m('inseam', '74 cm', 'cm length'),
        m('legOpening', '29 cm', 'cm flat'),
        m('strap', '30 à 38 cm', 'cm length', { value: 34, low: 30, high: 38 })
      ],
      fibres: [['viscose', null]],
      language: 'fr',
      colour: 'black',
      condition: 'portée une fois',
      price: { amount: 19, currency: 'EUR' },
      leftAside: [aside('detail', '8 cm', 'cm', 2), aside('model', '1m70', 'cm', 1, 170)]
    }
  },
  {
    name: 'fr: letter Gilet de costume homme sans manches gris chiné T48',
    teaches: '"à plat" said though the tours are around; front height beside back length',
    listing: {
      title: 'Gilet de costume homme sans manches gris chiné T48',
      text: 'Mesures à plat: tour de poitrine 98 cm, tour de taille 90 cm, hauteur devant 62cm, dos 54cm (du col au bas). Martingale réglable derrière. Laine et doublure acétate. Il manque un bouton en bas. Etait vendu avec la veste (partie). 15 euros'
    },
    expect: {
      kind: 'waistcoat',
      whose: 'men',
      measures: [m('chest', '98 cm', 'cm around judged'), m('waist', '90 cm', 'cm around judged'), m('bodyLength', '54cm', 'cm length')],
      fibres: [['wool', null]],
      made: { 'lined': true },
      language: 'fr',
      colour: 'grey',
      mending: ['replace-button'],
      price: { amount: 15, currency: 'EUR' },
      sizeLabels: ['48'],
      faults: ['Il manque un bouton en bas'],
      leftAside: [aside('detail', '62cm', 'cm')],
      issues: [
        {
          code: 'reading.basis-doubt',
          about: '98 cm',
          readings: [
            ['chest', 980],
            ['chest', 1960]
          ]
        },
        {
          code: 'reading.basis-doubt',
          about: '90 cm',
          readings: [
            ['waist', 900],
            ['waist', 1800]
          ]
        }
      ]
    }
  },
  {
    name: 'fr: letter short lin ecru femme 42',
    teaches: 'relaxed against stretched, accents missing, unit dropped midway, flat by plausibility only',
    listing: {
      title: 'short lin ecru femme 42',
      text: 'Elastique taille 37cm au repos, 50 etire. hanche 54cm. fourche 31. entrejambe 9,5. ouverture cuisse 33. Lin melangé (52% lin 48% coton). une petite tache de creme solaire. 6€ lavé a 40'
    },
    expect: {
      kind: 'shorts',
      whose: 'women',
      measures: [
        m('waist', '37cm', 'cm flat judged'),
        m('hip', '54cm', 'cm flat judged'),
        m('frontRise', '31', 'cm length list'),
        m('inseam', '9,5', 'cm length list', { value: 9.5 }),
        m('legOpening', '33', 'cm flat judged list')
      ],
      fibres: [
        ['linen', 52],
        ['cotton', 48]
      ],
      language: 'fr',
      colour: 'cream',
      mending: ['clean'],
      price: { amount: 6, currency: 'EUR' },
      faults: ['une petite tache de creme solaire']
    }
  },
  {
    name: 'es: letter Abrigo de paño camel, lana, forrado',
    teaches: "running sentence, belt length, position figure, seller's height",
    listing: {
      title: 'Abrigo de paño camel, lana, forrado',
      text: 'Hola!! vendo abrigo de paño comprado hace 5 años por 160 €. Está como nuevo salvo que le falta un boton de repuesto y el forro tiene un enganchón. De axila a axila mide 55 cm, de hombro a hombro 44, las mangas 59 y de largo por la espalda 95,5 cm. Cinturón de 140 cm incluido. Mido 1,60 y me llega unos 10 cm por debajo de la rodilla. 80% lana 20% poliamida. Precio 50€, no hago cambios.'
    },
    expect: {
      kind: 'coat',
      measures: [
        m('chest', '55 cm', 'cm flat'),
        m('shoulderWidth', '44', 'cm length list'),
        m('sleeveLength', '59', 'cm length list'),
        m('bodyLength', '95,5 cm', 'cm length', { value: 95.5 })
      ],
      fibres: [
        ['wool', 80],
        ['polyamide', 20]
      ],
      made: { 'lined': true },
      language: 'es',
      colour: 'brown',
      condition: 'como nuevo',
      mending: ['replace-button'],
      price: { amount: 50, currency: 'EUR' },
      faults: ['Está como nuevo salvo que le falta un boton de repuesto y el forro tiene un enganchón'],
      leftAside: [aside('detail', '140 cm', 'cm'), aside('model', '10 cm', 'cm')]
    }
  },
  {
    name: 'es: letter jersey punto grueso verde botella unisex',
    teaches: 'bare "ancho", inner sleeve, no punctuation',
    listing: {
      title: 'jersey punto grueso verde botella unisex',
      text: 'ancho 56 largo 64 manga 50 (por dentro) puño 8,5 todo en cm y sin estirar. mezcla acrilico/lana 60/40. pelotillas en los costados. 10€'
    },
    expect: {
      kind: 'jumper',
      measures: [
        m('chest', '56', 'cm flat judged list'),
        m('bodyLength', '64', 'cm length list'),
        m('sleeveUnderarm', '50', 'cm length list'),
        m('cuff', '8,5', 'cm flat judged list', { value: 8.5 })
      ],
      fibres: [
        ['acrylic', 60],
        ['wool', 40]
      ],
      structure: 'knit',
      language: 'es',
      colour: 'green',
      mending: ['de-pill'],
      price: { amount: 10, currency: 'EUR' },
      faults: ['pelotillas en los costados']
    }
  },
  {
    name: 'es: letter Camisa hombre cuello mao lino beige T/L',
    teaches: 'rolled-up sleeve beside the full one, around and flat mixed, armhole',
    listing: {
      title: 'Camisa hombre cuello mao lino beige T/L',
      text: 'Cuello 43. Pecho 116 contorno. Hombros 47. Manga desde el hombro 63, remangada 45. Largo espalda 77. Sisa 26 en plano. Medidas en cm aproximadas. 100% lino, se plancha a 200 grados jeje. Descosido pequeño en la sisa derecha. 9 € o 2 camisas por 15'
    },
    expect: {
      kind: 'shirt',
      whose: 'men',
      measures: [
        m('neck', '43', 'cm around judged guessed'),
        m('chest', '116', 'cm around guessed'),
        m('shoulderWidth', '47', 'cm length guessed'),
        m('sleeveLength', '63', 'cm length guessed'),
        m('bodyLength', '77', 'cm length guessed'),
        m('armhole', '26', 'cm flat guessed')
      ],
      fibres: [['linen', 100]],
      language: 'es',
      colour: 'beige',
      mending: ['close-seam'],
      price: { amount: 9, currency: 'EUR' },
      sizeLabels: ['L'],
      faults: ['Descosido pequeño en la sisa derecha'],
      issues: [{ code: 'reading.unit-judged', about: '43' }]
    }
  }
]

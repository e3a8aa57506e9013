/** Listings in German, French, Spanish, Italian, Dutch, Polish and Swedish, as private sellers write them. */
import type { WrittenCase } from './written-case.ts'

export const sevenLanguages: WrittenCase[] = [
  {
    id: 'de-001',
    class: 'glued',
    lang: 'de',
    title: 'Alte Lodenjacke Herren Gr. 52 mit Hirschhornknöpfen',
    text: 'Gut erhaltene Jacke vom Opa, nur die Knöpfe wurden mal nachgenäht.\nAchsel zu Achsel57cm(geknöpft)Schulter47cmÄrmel ab Schulternaht63cmRückenlänge ohne Kragen74cm\nObermaterial 100% Schurwolle,Futter 100% Viskose,ganz gefüttert\nVB 35€ + Versand 5,49€ Tierfreier NR-Haushalt, Privatverkauf keine Rücknahme',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '74cm', value: 74, unit: 'cm', basis: 'length' }
    ],
    aside: ['52', '5,49'],
    price: { amount: 35, currency: 'EUR' },
    fibres: [['wool', 100]],
    lined: 'full'
  },
  {
    id: 'de-002',
    class: 'pairs',
    lang: 'de',
    title: 'Weite Marlenehose Viskose, hoher Bund',
    text: 'sehr schöne Hose, nur 2x getragen, passt toll zu Bluse oder Blazer 😍\nBundweite einfach gemessen 36 cm, gedehnt 44 cm (hinten Gummi)\nLeibhöhe vorne 33 cm / hinten 41 cm\nSchrittlänge 78 cm\nSeitenlänge mit Bund 110 cm\nBeinweite am Saum 31 cm\n95% Viskose, 5% Elasthan\nNeupreis 79,95 jetzt 22 Euro inkl. Versand',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '36 cm', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '33 cm', value: 33, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '41 cm', value: 41, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '78 cm', value: 78, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '110 cm', value: 110, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '31 cm', value: 31, unit: 'cm', basis: 'flat' }
    ],
    aside: ['79,95'],
    price: { amount: 22, currency: 'EUR' },
    fibres: [
      ['viscose', 95],
      ['elastane', 5]
    ],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'de-003',
    class: 'two-language',
    lang: 'de',
    title: 'Dirndlkleid midi / traditional dress Gr. 38',
    text: 'Dirndl aus Baumwolle, Rock in Falten, Reißverschluss vorn, Mieder gefüttert. Bluse und Schürze auf dem Bild gehören NICHT dazu.\nBrustumfang 88 cm, Taillenumfang 72 cm, Rocklänge ab Taille 65 cm, Gesamtlänge ab Schulter 106 cm.\nEN: cotton dirndl dress, pleated, bodice lined. Bust 34.5", waist 28", overall length 41.5" from the shoulder. Apron not included. Ships worldwide.\n39 €',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '88 cm', value: 88, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72 cm', value: 72, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '106 cm', value: 106, unit: 'cm', basis: 'length' }
    ],
    aside: ['38'],
    price: { amount: 39, currency: 'EUR' },
    fibres: [],
    lined: 'half',
    cut: { dressLength: 'midi', silhouette: 'pleated' }
  },
  {
    id: 'fr-001',
    class: 'doubled-again',
    lang: 'fr',
    title: 'Jupe crayon en laine taille haute',
    text: 'Largeur taille à plat : 35 cm (soit 70 cm de tour de taille)\nLargeur hanches à plat : 48 cm (soit 96)\nLongueur : 66 cm\nComposition : 80% laine 20% polyamide, doublure 100% acétate\nentièrement doublée, fente dos, zip dos. Étiquette 40 mais taille comme un petit 38.\nPrix 16€, frais de port 4,60€ en sus',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '35 cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '48 cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '66 cm', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['40', '38', '4,60'],
    price: { amount: 16, currency: 'EUR' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full',
    cut: { silhouette: 'pencil', rise: 'high' }
  },
  {
    id: 'fr-002',
    class: 'sleeve-odd',
    lang: 'fr',
    title: 'Imper homme beige manches raglan',
    text: "• aisselle à aisselle 61cm\n• manche depuis le col 80cm (raglan donc pas d'épaule)\n• manche sous le bras 47cm\n• largeur poignet 16cm\n• longueur dos sous col 112cm\n67% polyester 33% coton. doublure amovible laine. ceinture présente, une tache claire près de la poche droite, voir photo 6\nje demande 30 euros, à débattre. remise en main propre Lyon",
    kind: 'coat',
    measures: [
      { point: 'chest', text: '61cm', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '80cm', value: 80, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '47cm', value: 47, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '16cm', value: 16, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 30, currency: 'EUR' },
    fibres: [
      ['polyester', 67],
      ['cotton', 33]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'fr-003',
    class: 'retail-beside-own-tape',
    lang: 'fr',
    title: 'Robe portefeuille fleurie neuve étiquette T.38',
    text: 'Guide des tailles du site : 38 = poitrine 88, taille 70, bassin 96. Le mannequin mesure 1m77 et porte du 36.\nMesurée par moi une fois nouée : tour de poitrine 92 cm (ouverte à plat 138 cm), tour de taille 74 cm, longueur 124 cm, manche courte 24 cm.\n100% viscose, non doublée\nAchetée 65€, vendue 28€',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '92 cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '74 cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '124 cm', value: 124, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '24 cm', nth: 2, value: 24, unit: 'cm', basis: 'length' }
    ],
    aside: ['88', '70', '96', '1m77', '36', '65'],
    price: { amount: 28, currency: 'EUR' },
    fibres: [['viscose', 100]],
    lined: 'none',
    cut: { silhouette: 'wrap', sleeve: 'short' }
  },
  {
    id: 'es-001',
    class: 'noun-beside',
    lang: 'es',
    title: 'Blusa satinada verde botella, queda genial con vaqueros',
    text: 'La he usado solo una vez en una boda, combina con falda o con pantalón de traje.\nPecho de axila a axila 51 cm\nHombro a hombro 39 cm\nManga larga 59 cm (desde el hombro)\nLargo total 64 cm\n97% poliéster 3% elastano\nLa talla pone M. 9€ envío aparte',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '51 cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '39 cm', value: 39, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '59 cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '64 cm', value: 64, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 9, currency: 'EUR' },
    fibres: [
      ['polyester', 97],
      ['elastane', 3]
    ],
    cut: { sleeve: 'long' }
  },
  {
    id: 'es-002',
    class: 'unnamed-order',
    lang: 'es',
    title: 'Vaquero recto tiro alto 90s azul lavado',
    text: 'Medidas en plano: cintura 37 x tiro 30 x entrepierna 74 x bajo 20\ncadera 50 muslo 29\nEtiqueta W30 L32. 100% algodón sin elastano. NO es pitillo ni campana, es recto.\nPrecio 25 euros, si te llevas dos prendas 40',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '37', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '74', value: 74, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '20', value: 20, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '50', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '29', value: 29, unit: 'cm', basis: 'flat' }
    ],
    aside: ['32', '40'],
    price: { amount: 25, currency: 'EUR' },
    fibres: [['cotton', 100]],
    cut: { leg: 'straight', rise: 'high' }
  },
  {
    id: 'es-003',
    class: 'fibres-lining',
    lang: 'es',
    title: 'Abrigo de paño camel largo oversize',
    text: 'Exterior: 70% lana, 25% poliamida, 5% cachemira. Forro: 100% viscosa. Hombreras: 100% poliéster.\nForrado entero. Contorno de pecho: 124 cm. Largo espalda: 115 cm. Manga: 56 cm (hombro caído). Bolsillo descosido por dentro.\nAntes 180 €, lo dejo en 55 €',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '124 cm', value: 124, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '115 cm', value: 115, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '56 cm', value: 56, unit: 'cm', basis: 'length' }
    ],
    aside: ['180'],
    price: { amount: 55, currency: 'EUR' },
    fibres: [
      ['wool', 70],
      ['polyamide', 25],
      ['cashmere', 5]
    ],
    lined: 'full',
    cut: { closeness: 'oversized', shoulder: 'drop' }
  },
  {
    id: 'it-001',
    class: 'split-decimal',
    lang: 'it',
    title: 'Camicia uomo oxford azzurra taglia 41',
    text: 'Misure prese in piano:\nascella-ascella 55, 5 cm\nspalle 46 cm\nmanica dalla spalla 64, 5 cm\nlunghezza dietro senza colletto 78 cm\ncolletto chiuso 41 cm\nPuro cotone 100%. Vestibilità regolare. Piccola macchia sul polsino sinistro.\n€ 14,00 spedizione piego libri 3, 90',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '55, 5 cm', value: 55.5, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46 cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '64, 5 cm', value: 64.5, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '78 cm', value: 78, unit: 'cm', basis: 'length' },
      { point: 'neck', text: '41 cm', value: 41, unit: 'cm', basis: 'around' }
    ],
    aside: ['3, 90'],
    price: { amount: 14, currency: 'EUR' },
    fibres: [['cotton', 100]],
    cut: { closeness: 'classic' }
  },
  {
    id: 'it-002',
    class: 'second-garment',
    lang: 'it',
    title: 'Completo giacca e pantalone gessato 50 drop 6',
    text: 'Completo sartoriale anni 80, lana 100%, giacca foderata a metà.\nGIACCA spalle 46 torace (da ascella ad ascella) 54 manica 62 lunghezza dal collo 75\nPANTALONE vita 42 cavallo davanti 29 interno gamba 77 fondo 22 con risvolto di 4\nmisure in cm, capo disteso\n80 euro trattabili, non divido il completo',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat', of: 'jacket' },
      { point: 'sleeveLength', text: '62', value: 62, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '75', value: 75, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '42', value: 42, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '29', value: 29, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '77', value: 77, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'legOpening', text: '22', value: 22, unit: 'cm', basis: 'flat', of: 'trousers' }
    ],
    aside: ['4'],
    price: { amount: 80, currency: 'EUR' },
    fibres: [['wool', 100]],
    lined: 'half'
  },
  {
    id: 'it-003',
    class: 'two-language',
    lang: 'it',
    title: 'Abito a portafoglio seta stampa foulard / silk wrap dress',
    text: 'Seno allacciato 90 cm, vita allacciata 70 cm - aperto in piano vita 118 cm. Lunghezza dalla spalla 102 cm. Maniche tre quarti 42 cm.\n100% seta, sfoderato\n~~~\nTied bust 35.5 in, tied waist 27.5 in, length 40 in. 100% silk, unlined. Three quarter sleeves.\nPrezzo 48€ / price 48 EUR + shipping 9',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90 cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '70 cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '102 cm', value: 102, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '42 cm', value: 42, unit: 'cm', basis: 'length' }
    ],
    aside: ['9'],
    price: { amount: 48, currency: 'EUR' },
    fibres: [['silk', 100]],
    lined: 'none',
    cut: { silhouette: 'wrap', sleeve: 'three-quarter' }
  },
  {
    id: 'nl-001',
    class: 'plain',
    lang: 'nl',
    title: 'Wijde jeans lichtblauw, high waist, NIET skinny',
    text: 'plat gemeten:\ntaille 37 cm\nheup 51 cm\nkruishoogte 31 cm\nbinnenbeen 76 cm\npijpwijdte onder 26 cm\nlengte totaal 105 cm\n99% katoen 1% elastaan, knoopsluiting. Maat 29 op label\n15 euro excl. verzendkosten (4,25 per pakket)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '37 cm', value: 37, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '51 cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31 cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '76 cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '26 cm', value: 26, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '105 cm', value: 105, unit: 'cm', basis: 'length' }
    ],
    aside: ['29', '4,25'],
    price: { amount: 15, currency: 'EUR' },
    fibres: [
      ['cotton', 99],
      ['elastane', 1]
    ],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'nl-002',
    class: 'laid-flat-over-a-round-figure',
    lang: 'nl',
    title: 'Jaren 50 zomerjurk met cirkelrok',
    text: 'Maten plat opgemeten: borst 90 cm, taille 68 cm, heup vrij, lengte vanaf schouder 108 cm, onderzoom 340 cm\nMouwloos, zijrits van metaal, lijfje gevoerd. Katoen.\nStaat leuk met een vestje erover!! € 42,50',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90 cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '68 cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '108 cm', value: 108, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '340 cm', value: 340, unit: 'cm', basis: 'around' }
    ],
    price: { amount: 42.5, currency: 'EUR' },
    fibres: [],
    lined: 'half',
    cut: { silhouette: 'circle', sleeve: 'sleeveless' }
  },
  {
    id: 'nl-003',
    class: 'figure-first',
    lang: 'nl',
    title: 'Noorse trui grijs/wit handgebreid',
    text: '54 oksel tot oksel, 66 lang, 48 mouw vanaf oksel, 80 mouw vanaf midden hals, 44 boord onderaan (cm)\ntinnen knoopjes bij hals, wol, niet voor gevoelige huid haha\nvraagprijs 27,- bieden mag vanaf 20',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'sleeveUnderarm', text: '48', value: 48, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '80', value: 80, unit: 'cm', basis: 'length' },
      { point: 'hem', text: '44', value: 44, unit: 'cm', basis: 'flat' }
    ],
    aside: ['20'],
    price: { amount: 27, currency: 'EUR' },
    fibres: []
  },
  {
    id: 'pl-001',
    class: 'doubled-again',
    lang: 'pl',
    title: 'Sukienka retro w groszki rozkloszowana midi',
    text: 'Wymiary mierzone na płasko:\nszerokość pod pachami 44 cm x2\nw pasie 35 cm x2\nbiodra luźne\ndługość całkowita 112 cm\nrękaw krótki 21 cm\nskład: 65% poliester 35% wiskoza, bez podszewki\nCena 59 zł + wysyłka 12,99 zł. Nie wymieniam się',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '44 cm', value: 44, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '35 cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '112 cm', value: 112, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '21 cm', value: 21, unit: 'cm', basis: 'length' }
    ],
    aside: ['12,99'],
    price: { amount: 59, currency: 'PLN' },
    fibres: [
      ['polyester', 65],
      ['viscose', 35]
    ],
    lined: 'none',
    cut: { silhouette: 'flared', dressLength: 'midi', sleeve: 'short' }
  },
  {
    id: 'pl-002',
    class: 'pairs',
    lang: 'pl',
    title: 'Spodnie dresowe joggery męskie L',
    text: 'pas 38 cm luźno - rozciągnięty 52 cm\nstan przód 30 cm tył 38 cm\nnogawka wewnątrz 72 cm\nudo 33 cm\nna dole ściągacz 11 cm\n80% bawełna 20% poliester ocieplane\nwzrost modela 184. było 120 zł teraz 35zł 🔥',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30', value: 30, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '38', nth: 2, value: 38, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '72', value: 72, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '33', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '11', value: 11, unit: 'cm', basis: 'flat' }
    ],
    aside: ['184', '120'],
    price: { amount: 35, currency: 'PLN' },
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ],
    cut: { leg: 'jogger' }
  },
  {
    id: 'pl-003',
    class: 'not-measures',
    lang: 'pl',
    title: 'Materiał flauszowy na płaszcz + wykrój 38-44',
    text: 'Kupon 2,5 m, szerokość 150 cm, wełna 60% poliester 40%. Wykrój: biust 88-104, talia 70-86. Wystarczy na płaszcz albo spódnicę i żakiet. 90 zł za całość',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['2,5 m', '150 cm', '88-104', '70-86'],
    price: { amount: 90, currency: 'PLN' },
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ]
  },
  {
    id: 'sv-001',
    class: 'emoji-lines',
    lang: 'sv',
    title: 'Plisserad kjol 70-tal senapsgul',
    text: '📏 midja 34-40 cm resår, mätt plant\n📏 längd 74 cm\n📏 fåll 85 cm\n🧵 100% polyester, ofodrad\n💛 fint skick, snygg till stickat eller kavaj\n💰 120 kr + frakt 59 kr',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34-40 cm', value: 37, unit: 'cm', basis: 'flat', low: 34, high: 40 },
      { point: 'skirtLength', text: '74 cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '85 cm', value: 85, unit: 'cm', basis: 'flat' }
    ],
    aside: ['59'],
    price: { amount: 120, currency: 'SEK' },
    fibres: [['polyester', 100]],
    lined: 'none',
    cut: { silhouette: 'pleated' }
  },
  {
    id: 'sv-002',
    class: 'back-width',
    lang: 'sv',
    title: 'Duffel marinblå herr stl 50',
    text: 'Axelbredd 48 cm, ryggbredd mellan ärmsömmarna 44 cm, bröstvidd plant (armhåla till armhåla) 60 cm, ärm från axelsöm 64 cm, rygglängd 95 cm utan huva.\nUll 80 % polyamid 20 %. Rutigt foder i livet, ej i ärmarna. En knapp lagad.\nUtropspris 200 kr, köp nu 450 kr, nypris runt 2500',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '48 cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'backWidth', text: '44 cm', value: 44, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '60 cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '64 cm', value: 64, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '95 cm', value: 95, unit: 'cm', basis: 'length' }
    ],
    aside: ['200', '2500', '50'],
    price: { amount: 450, currency: 'SEK' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'half'
  }
]

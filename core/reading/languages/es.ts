/** Spanish, as private sellers write it. */
import type { Lexicon } from './lexicon.ts'

export const es: Lexicon = {
  language: 'es',
  endings: ['s', 'es'],
  falseFriends: 'max | maximum',
  common:
    'el | la | los | las | de | del | con | y | en | es | una | un | para | por | muy | no | talla | largo | ancho | axila | sisa | hombro | hombros | manga | pecho | cintura | cadera | medidas | estado | tiro | entrepierna | plano | pantalón | vestido | chaqueta | camisa | falda | está | sin | como | más | mide | contorno | bajo',
  points: {
    chest: 'pecho | contorno de pecho | busto | contorno pecho | contorno de busto | contorno busto | contorno del pecho',
    'chest flat':
      'axila a axila | axila | de axila a axila | sisa a sisa | de sisa a sisa | axilas | ancho axila | ancho de axila a axila | ancho de pecho | ancho pecho | ancho sisa | ancho axilas | medio pecho | ancho busto | ancho de sisa a sisa | ancho bajo axilas | sobaco a sobaco | ancho de axila | ancho por axilas | de axila axila | axila axila | ancho torso | bajo el brazo | ancho bajo el brazo | de axila a axila mide | ancho a la altura de la axila | ancho a la altura del pecho | ancho de pecho axila a axila',
    waist: 'cintura | contorno de cintura | cinturilla | contorno cintura | talle contorno | pretina | contorno de la cintura',
    'waist flat':
      'ancho cintura | ancho de cintura | media cintura | ancho cinturilla | ancho de la cintura | ancho de cinturilla | cintura ancho',
    hip: 'cadera | caderas | contorno de cadera | contorno cadera | contorno de caderas | contorno de la cadera',
    'hip flat': 'ancho cadera | ancho de cadera | ancho caderas | media cadera | ancho de caderas',
    sweep: 'contorno de bajo | vuelo | ancho vuelo',
    bottomEdge: 'bajo | ancho bajo | ancho del bajo | dobladillo | ruedo | bajos | ancho de bajo | ancho abajo',
    bicep: 'ancho manga | contorno de brazo | ancho de manga | bíceps',
    cuff: 'puño | puños | ancho puño',
    'neck weak': 'cuello',
    'sleeveLength weak': 'manga larga | manga corta | mangas largas | mangas cortas',
    neck: 'cuello contorno | contorno de cuello | contorno cuello',
    thigh: 'muslo | ancho muslo | contorno de muslo | muslos | ancho de muslo | contorno muslo',
    knee: 'rodilla | ancho rodilla',
    calf: 'pantorrilla | gemelo',
    legOpening:
      'bajo de pierna | ancho pierna abajo | ancho de pierna abajo | pierna abajo | bajo pierna | ancho bajo pierna | bajo pernera | ancho pernera | boca pierna | tobillo | bajo del pantalón | apertura pierna | ancho tobillo | bajo pantalón | ancho de pernera | boca de pierna | ancho del bajo de la pierna | ancho pierna | ancho de pierna | bajo de la pierna | ancho bajos | ancho de los bajos | ancho abajo pierna',
    elbow: 'codo',
    underbust: 'bajo pecho | contorno bajo pecho | bajo busto',
    armhole: 'sisa | sisas',
    shoulderWidth:
      'hombro a hombro | de hombro a hombro | hombros | ancho hombros | ancho de hombros | hombro | ancho hombro | de hombros | ancho de hombro a hombro | ancho de hombro | espalda hombros | hombro hombro | ancho de espalda a los hombros | entre hombros | anchura de hombros',
    sleeveLength:
      'manga | mangas | largo manga | largo de manga | largo mangas | manga larga medida | largo de mangas | longitud manga | largo de la manga | longitud de manga | largo brazo',
    sleeveUnderarm: 'manga interior | interior manga | largo manga interior | interior de manga',
    length:
      'largo | largo total | longitud | longitud total | alto | largo espalda | largo delantero | largo trasero | largo de espalda | largo completo | largo total aproximado | larga | largo por la espalda | largo por espalda | largo por detrás | largo por delante | largo desde el hombro | largo desde hombro | de largo por la espalda | largo parte trasera | largo de arriba abajo',
    bodyLength: 'hombro a bajo | largo vestido | largo chaqueta | de hombro a bajo | largo camisa',
    skirtLength: 'largo falda | largo de falda | largo de la falda',
    napeToWaist: 'talle espalda | largo talle | talle',
    backWidth: 'ancho espalda | ancho de espalda | espalda',
    inseam:
      'entrepierna | tiro interior pierna | largo interior | interior pierna | pierna interior | largo entrepierna | largo interior pierna | costura interior | largo de entrepierna | interior de pierna | largo pierna interior | entre pierna',
    legLength: 'largo pierna | largo de pierna',
    outseam:
      'largo exterior | pierna exterior | largo pantalón | largo lateral | costura exterior | largo del pantalón | exterior pierna | lateral',
    rise: 'tiro | altura tiro | alto tiro',
    'rise weak': 'tiro alto | tiro bajo | tiro medio',
    frontRise: 'tiro delantero | tiro frontal | tiro delante',
    backRise: 'tiro trasero | tiro espalda | tiro detrás',
    strap: 'tirantes | tirante | largo tirante | largo tirantes | largo de tirantes',
    torsoLength: 'largo torso',
    width: 'ancho | anchura | ancha'
  },
  letters: { p: 'chest', l: 'length', m: 'sleeveLength' },
  landmarks: {
    shoulder: 'hombro | costura hombro | costura del hombro | tirante | hombros',
    neck: 'cuello | nuca | escote | base del cuello',
    armpit: 'axila | sisa | sobaco | axilas',
    waist: 'cintura | cinturilla',
    hip: 'cadera',
    crotch: 'entrepierna | tiro',
    knee: 'rodilla',
    hem: 'bajo | dobladillo | suelo | tobillo | final | abajo | ruedo | bajos',
    cuff: 'puño | muñeca | final manga | final de la manga | puños',
    elbow: 'codo',
    bust: 'pecho',
    top: 'arriba'
  },
  basis: {
    flat: 'en plano | plano | medido en plano | extendido | estirado en plano | sin doblar | de lado a lado | de costura a costura | en horizontal | tomadas en plano | de un lado a otro | apoyado en plano | en llano',
    around: 'contorno | circunferencia | alrededor | contorno total | en total | de contorno | todo alrededor',
    doubled: 'x2 | x 2 | por dos | por 2 | doble | 2x',
    double: 'multiplicar por 2 | multiplicar por dos | hay que doblar | multiplicado por dos | duplicar'
  },
  words: {
    heading: 'medidas | medida | dimensiones | las medidas | medición | medido | medidos | tomadas',
    detail:
      'cola | cuello | alto cuello | solapa | solapas | bolsillo | bolsillos | abertura | raja | cremallera | cinturón | botones | botón | trabillas | capucha | tacón | tacones | volante | lazo | encaje | flecos | alto cinturilla | vuelta | escote profundidad | forro | axila a bajo | largo lateral desde axila',
    thing:
      'bolso | bolsa | mochila | zapatos | botas | botines | portátil | móvil | sombrero | gorra | gorro | bufanda | pañuelo | tela | retal | cortina | cojín | maleta | suela | caña | cartera',
    height: 'de altura | altura | estatura',
    model:
      'modelo | la modelo | maniquí | yo mido | mido | peso | soy | llevo | ella mide | lleva una talla | mis medidas | a mí | la chica mide | él mide',
    fits: 'sirve para | vale para | ideal para | recomendado para | recomendada para | le queda | queda bien | queda a | para una | para un | quedaría | podría servir | equivale | corresponde | corresponde a una | talla como',
    parcel: 'paquete | envío | caja | embalaje | sobre',
    elsewhere: 'otro anuncio | anuncio aparte | se vende aparte | vendo aparte | por separado | a la venta aparte',
    position: 'por encima | por debajo | debajo | encima | bajo la | sobre la | más arriba | más abajo',
    from: 'desde | del | de la | de',
    letDown:
      'de dobladillo para sacar | para alargar | dobladillo para bajar | de bajo para sacar | para sacar bajo | de dobladillo | para bajar',
    letOut: 'para ensanchar | de costura para sacar | para sacar | para agrandar',
    seamAllowance: 'margen de costura',
    relaxed: 'sin estirar | en reposo | relajado | relajada',
    stretched: 'estirado | estirada | estirando | cede hasta | elástico hasta | estira hasta | estirándolo | se estira hasta | da hasta',
    cuffed: 'con vuelta | doblado | remangado | con dobladillo',
    uncuffed: 'sin vuelta | desdoblado | sin doblar vuelta',
    front: 'delante | delantero | frontal',
    back: 'detrás | trasero | espalda',
    inner: 'bajo el brazo | por debajo del brazo | debajo del brazo | interior | por dentro',
    including: 'incluido | incluida | incluyendo | sin contar | contando',
    measures: 'mide | miden',
    light:
      'el | la | los | las | de | del | un | una | es | son | aprox | aproximadamente | unos | unas | en | al | a | con | por | para | y | cada | total | su | más | menos | parte | altura | lado | costura | zona | punto | se | desde | tiene | lo | alrededor de | medio | centro | sería | serían | está',
    to: 'a | hasta | al | hasta el | a la | hasta la',
    between: 'entre',
    and: 'y',
    or: 'o | es decir',
    size: 'talla | tallas | t. | etiqueta | talla etiqueta | según etiqueta | pone talla | marca | etiquetado | etiquetada | tallaje | numero',
    region: 'es | esp | spain',
    letterSize: 'talla única',
    age: 'edad',
    years: 'años | meses',
    all: 'todas | todo | todos',
    not: 'sin | no | ningún | ninguna | ni | nunca | tampoco',
    nothing:
      'manga larga | manga corta | sin mangas | manga tres cuartos | cintura alta | cintura baja | cuello redondo | cuello alto | cuello pico | cuello vuelto | cuello de pico | talle alto | talle bajo | tiro alto | tiro bajo | largo hasta la rodilla | talla única | cintura elástica | cuello mao | cuello camisero | manga francesa | mangas cortas | mangas largas | bajo precio | a la altura | bolsillo pecho | vestido largo | falda larga | abrigo largo | vestido corto | hombros descubiertos | corte imperio',
    otherUnit:
      'botones | bolsillos | piezas | pieza | par | pares | días | día | años | meses | por ciento | grados | kg | g | gr | gramos | euros | euro | veces | horas | agujeros | puestas | usos | fotos | semanas',
    partLined:
      'medio forro | medio forrado | medio forrada | semiforrado | semiforrada | parcialmente forrado | parcialmente forrada | forro parcial',
    lining: 'forro | relleno | interior forro | ribete',
    retail: 'original | costó | precio original | gastos | envío | nuevo costó | pvp | antes | valor',
    price:
      'precio | vendo | se vende | por solo | lo dejo en | la dejo en | los dejo en | lo vendo por | la vendo por | fijo | precio fijo | pido',
    condition: 'estado',
    conditionWord: 'muy | buen | bueno | perfecto | excelente | nuevo | nueva | como | impecable | usado | usada | en | estupendo | óptimo',
    conditionPhrase:
      'nuevo con etiqueta | nueva con etiqueta | muy buen estado | buen estado | perfecto estado | como nuevo | como nueva | sin estrenar | a estrenar | excelente estado | sin usar | puesto una vez | usado una vez',
    shell: 'exterior | tejido | composición | material | tela exterior',
    nightwear: 'pijama | camisón',
    backPockets: 'bolsillos traseros | bolsillos de atrás',
    apart: 'separados | separación | distancia | entre',
    mended: 'reparado | reparada | reparados | zurcido | zurcida | zurcidos | remendado | remendada | cosido | arreglado | arreglada',
    but: 'pero | excepto | salvo',
    imitation: 'falso | imitación | efecto | símil | sintético | tipo',
    stretch: 'elástico | elasticidad | elástica',
    half: 'medio'
  },
  units: {
    in: 'pulgada | pulgadas | inch | inches',
    cm: 'cm | cms | centímetro | centímetros',
    mm: 'mm | milímetro | milímetros',
    m: 'm | metro | metros',
    ft: 'pies'
  },
  numbers: {
    dos: 2,
    tres: 3,
    cuatro: 4,
    cinco: 5,
    seis: 6,
    ocho: 8,
    diez: 10,
    doce: 12,
    quince: 15,
    veinte: 20,
    treinta: 30,
    cuarenta: 40,
    cincuenta: 50
  },
  kinds: [
    { kind: 'jeans', phrases: 'vaqueros | jeans | tejanos | pantalón vaquero | vaquero | pantalones vaqueros' },
    {
      kind: 'trousers',
      phrases:
        'pantalón | pantalones | pantalón de traje | pantalón de pinzas | mallas | leggings | chinos | pantalón chino | pantalón de pana | pantalón de chándal | pantalón ancho | pantalón largo | pantalón palazzo'
    },
    { kind: 'shorts', phrases: 'pantalón corto | bermudas | shorts | pantalones cortos | bermuda' },
    {
      kind: 'skirt',
      phrases: 'falda | minifalda | falda de tubo | falda plisada | falda vaquera | falda midi | falda larga | falda pantalón'
    },
    {
      kind: 'dress',
      phrases:
        'vestido | vestido de novia | vestido camisero | vestido largo | vestido corto | vestido de fiesta | vestido midi | camisón | túnica vestido | vestido de verano'
    },
    { kind: 'jumpsuit', phrases: 'mono | peto | mono corto | mono largo' },
    { kind: 'shirt', phrases: 'camisa | blusa | sobrecamisa | camisa vaquera | túnica | camisola' },
    { kind: 'knit-top', phrases: 'camiseta | top | polo | body | corsé | camiseta de tirantes | bustier' },
    {
      kind: 'jumper',
      phrases:
        'jersey | suéter | sudadera | cárdigan | rebeca | chaqueta de punto | jersey de punto | chaleco de punto | pulóver | sudadera con capucha'
    },
    {
      kind: 'jacket',
      phrases: 'americana | blazer | traje | chaqueta de traje | esmoquin | traje de chaqueta | frac | chaqueta americana',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'chaqueta | cazadora | chaqueta vaquera | cazadora vaquera | chaqueta de cuero | chupa | bomber | cazadora de cuero | cazadora de piel | chaqueta de piel | chaqueta de ante | bolero',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'abrigo | gabardina | parka | plumífero | anorak | chubasquero | poncho | capa | bata | trenca | plumas | abrigo de lana | impermeable | abrigo de piel | chaquetón | albornoz | chaqueta alta visibilidad | chaqueta de moto'
    },
    { kind: 'waistcoat', phrases: 'chaleco | chaleco de traje | chaleco acolchado' }
  ],
  fibres: {
    cotton: 'algodón',
    wool: 'lana | lana virgen | lana merino | merino',
    linen: 'lino',
    silk: 'seda | seda natural',
    viscose: 'viscosa | rayón',
    polyester: 'poliéster | poliester',
    polyamide: 'poliamida | nailon | nylon',
    elastane: 'elastano | spandex | licra | lycra',
    acrylic: 'acrílico',
    cashmere: 'cachemir | cachemira | cashmere',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetato',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'cáñamo',
    polyurethane: 'poliuretano'
  },
  structures: {
    woven: 'tejido plano | denim | pana | popelín | franela | loneta',
    knit: 'punto | tricotado | punto grueso | de punto | ganchillo',
    leather: 'cuero | piel | ante | piel auténtica | cuero auténtico | napa'
  },
  traits: {
    rigid: 'rígido | no elástico | sin elasticidad | no elásticos | rígidos',
    denim: 'denim | vaquera | vaquero | vaqueros | tejanos',
    pile: 'pana | terciopelo',
    check: 'cuadros | a cuadros | tartán | pata de gallo | vichy | de cuadros',
    stripe: 'rayas | a rayas | de rayas | raya diplomática',
    sheer: 'transparente | gasa | tul | organza',
    slippery: 'satén | satinado | satinada | raso',
    beaded: 'lentejuelas | pedrería | abalorios',
    pleated: 'plisada | plisado | tablas',
    suede: 'ante | antelina',
    vinyl: 'vinilo | polipiel | cuero sintético | charol',
    coated: 'encerado | encerada',
    silk: 'seda | seda natural',
    taffeta: 'tafetán'
  },
  made: [
    { fact: { fact: 'lined', value: true }, phrases: 'forrado | forrada | con forro | forro | totalmente forrado' },
    { fact: { fact: 'lined', value: false }, phrases: 'sin forro | sin forrar | no lleva forro | no forrado' },
    { fact: { fact: 'shortSleeves', value: true }, phrases: 'manga corta | mangas cortas | manga francesa | sin mangas' },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: 'cintura elástica | goma en la cintura | cinturilla elástica | goma en cintura | elástico en la cintura'
    },
    { fact: { fact: 'darts', value: true }, phrases: 'pinzas' },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'falda de tubo | falda lápiz | falda recta' },
    { fact: { fact: 'skirtShape', value: 'flared' }, phrases: 'falda evasé | evasé | falda de vuelo | línea a' },
    { fact: { fact: 'skirtShape', value: 'pleated' }, phrases: 'falda plisada | falda de tablas' },
    { fact: { fact: 'hemKind', value: 'original-edge' }, phrases: 'bajo original' },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: 'cremallera lateral | cremallera trasera | cremallera en la espalda | cremallera en el lateral'
    },
    { fact: { fact: 'opens', value: ['sweep'] }, phrases: 'abertura trasera | abertura lateral | raja lateral' }
  ],
  uses: {
    protective: 'alta visibilidad | ignífugo | ignífuga | con protecciones | chaleco reflectante | anticorte | protecciones homologadas',
    child: 'niño | niña | infantil | bebé | niños | niñas',
    'child-sleepwear': 'pijama infantil | pijama niño | pijama niña | pijama bebé',
    'medical-compression': 'medias de compresión | compresión médica'
  },
  faults: [
    { mending: ['darn', 'treat-pests'], phrases: 'agujero de polilla | agujeros de polilla | polilla | apolillado' },
    { mending: ['patch'], phrases: 'agujero | agujeros | roto | rotos | rasgado | agujerito | rota | desgarro | siete' },
    { mending: ['clean'], phrases: 'mancha | manchas | manchado | manchada | manchita | amarillento' },
    { mending: ['replace-button'], phrases: 'falta un botón | falta botón | botón perdido | le falta un botón | faltan botones' },
    { mending: ['close-seam'], phrases: 'descosido | descosida | costura abierta | forro roto | bajo descosido' },
    { mending: ['replace-zip'], phrases: 'cremallera rota | cremallera estropeada | cremallera no funciona' },
    { mending: ['replace-elastic'], phrases: 'goma dada de sí | goma cedida' },
    { mending: ['de-pill'], phrases: 'bolitas | pelotillas | bolas' },
    { mending: ['dye'], phrases: 'desteñido | descolorido | desgastado color | desteñida' },
    { mending: ['polish-leather'], phrases: 'rozaduras | rozadura' },
    { mending: [], phrases: 'tara | taras | defecto | defectos | señales de uso | enganchón | enganchones | signos de uso' }
  ],
  colours: {
    black: 'negro | negra',
    white: 'blanco | blanca',
    grey: 'gris',
    navy: 'azul marino | marino',
    blue: 'azul | celeste | azul claro | azul oscuro',
    teal: 'turquesa | petróleo',
    green: 'verde | caqui | verde oliva',
    red: 'rojo | roja',
    burgundy: 'burdeos | granate',
    pink: 'rosa | fucsia',
    purple: 'morado | morada | lila | violeta',
    orange: 'naranja | teja',
    yellow: 'amarillo | amarilla | mostaza',
    brown: 'marrón | camel | chocolate',
    beige: 'beige | arena',
    cream: 'crema | crudo | marfil',
    gold: 'dorado | dorada',
    silver: 'plateado | plateada'
  },
  currencies: { EUR: 'euro | euros | eur' }
}

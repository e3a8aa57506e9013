/** German: what the reader of listings found doubtful, and what to do about it. */
export const reading: Record<string, string> = {
  'reading.no-name': '„{stated}“ sagt nicht, was gemessen ist. Ordne es zu oder leg es beiseite.',
  'reading.no-unit':
    '„{stated}“ ({point|point}) hat keine Einheit: Als Zoll wären es {inches|length}, als Zentimeter {centimetres|length}. ' +
    'Wähl eine; bis dahin zählt es nicht.',
  'reading.unit-judged':
    '„{stated}“ hat keine Einheit; gerechnet wird mit {unit|unit-word}, denn sonst könnte es niemand tragen. Stimmt das nicht, ändere die Einheit.',
  'reading.divided-by-zero': '„{stated}“ ({point|point}) teilt durch null. Tipp ein, was gemeint war.',
  'reading.unclear-number': '„{stated}“ ({point|point}) könnten mehrere Zahlen sein. Tipp die ein, die gemeint war.',
  'reading.negative': '„{stated}“ ({point|point}) liegt unter null. Tipp die Zahl ohne Minus ein oder leg sie beiseite.',
  'reading.too-large':
    '„{stated}“ ({point|point}) ist mehr, als ein Kleidungsstück haben kann: {mm|length}. Prüf die Einheit oder tipp die Zahl neu ein.',
  'reading.too-small':
    '„{stated}“ ({point|point}) ist weniger, als ein Kleidungsstück haben kann: {mm|length}. Prüf die Einheit oder tipp die Zahl neu ein.',
  'reading.contradiction':
    '{point|point}: zweimal angegeben, mit {first|length} und {second|length}. Die erste Angabe zählt; frag nach oder wähl die andere.',
  'reading.basis-doubt':
    '„{stated}“ ({point|point}) ist als {basis|basis-word} gelesen, rundum {mm|length}; es könnten auch {other|length} rundum sein. ' +
    'Wähl, was gemeint ist.',
  'reading.units-disagree':
    '„{stated}“ ({point|point}) und die Zahl daneben stimmen nicht überein: {first|length} und {second|length}. Die erste zählt; ' +
    'wähl die andere, wenn sie stimmt.',
  'reading.no-garment': 'Das sieht nicht nach einem Kleidungsstück aus, darum ist nichts gemessen. Ist es doch eines, wähl die Art.',
  'reading.no-single-listing':
    'Das sieht nach einer Seite mit vielen Angeboten aus, nicht nach einem einzelnen. Öffne das Angebot, das du meinst, und lies das.',
  'reading.several-garments':
    'Das Angebot gibt Maße für {n} Stücke an. Gezählt wird: {kind|kind}. Wähl eine andere Art, um die anderen zu nehmen.',
  'reading.several-sizes': 'Der Text gibt Maße für mehrere Größen an: {sizes}. Wähl die angebotene; bis dahin zählt keine davon.',
  'reading.size-chart': 'Größe {size} ist gemacht für {body|chart-body} {low|figure} bis {high|length}.',
  'reading.size-chart.one': 'Größe {size} ist gemacht für {body|chart-body} {low|length}.',
  'reading.size-chart.nameless': 'Gemacht für {body|chart-body} {low|figure} bis {high|length}.',
  'reading.size-chart.nameless-one': 'Gemacht für {body|chart-body} {low|length}.',
  'reading.size-for-sale': 'angebotene Größe',
  'reading.size-open': 'nicht gewählt',
  'reading.percent-sum': 'Die Fasern ergeben zusammen {sum|percent}, nicht 100 %. Sieh auf dem Etikett nach.',
  'reading.structured-broken':
    'Ein Teil der verborgenen Daten der Seite war nicht lesbar und blieb weg. Vergleich Preis und Namen mit der Seite.',
  'reading.markup': 'In Titel oder Text stand Seitencode; er blieb weg. Prüf, ob nichts fehlt.',
  'reading.long-text':
    'Der Text ist sehr lang ({thousands} Tausend Zeichen). Markier den Teil über dieses Stück und lies nur den; so kommt kein anderes dazwischen.',
  'reading.other-currency': 'Der Preis steht in {theirs} da, nicht in {own}, und zählt darum nicht. Tipp ihn in {own} ein.',

  'chart-body.bustGirth': 'einen Brustumfang von',
  'chart-body.underbustGirth': 'einen Unterbrustumfang von',
  'chart-body.waistGirth': 'einen Taillenumfang von',
  'chart-body.hipGirth': 'einen Hüftumfang von',
  'chart-body.stature': 'eine Körpergröße von',
  'chart-body.insideLegLength': 'eine Innenbeinlänge von',

  'unit-word.in': 'Zoll',
  'unit-word.cm': 'Zentimetern',
  'unit-word.mm': 'Millimetern',
  'basis-word.flat': 'flach gemessen',
  'basis-word.around': 'rundum gemessen'
}

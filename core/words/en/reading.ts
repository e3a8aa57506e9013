/** English: what the reader of listings found doubtful, and what to do about it. */
export const reading: Record<string, string> = {
  'reading.no-name': '“{stated}” does not say what it measures. Say what it is, or set it aside.',
  'reading.no-unit':
    '“{stated}” for the {point|point} has no unit: as inches it would be {inches|length}, as centimetres ' +
    '{centimetres|length}. Choose one; until then it is not counted.',
  'reading.unit-judged':
    '“{stated}” has no unit; {unit|unit-word} were taken, as nobody could wear it otherwise. Change the unit if that is wrong.',
  'reading.divided-by-zero': '“{stated}” for the {point|point} divides by zero. Type the figure that was meant.',
  'reading.unclear-number': '“{stated}” for the {point|point} could be several numbers. Type the one that was meant.',
  'reading.negative': '“{stated}” for the {point|point} is below zero. Type the figure without its minus, or set it aside.',
  'reading.too-large':
    '“{stated}” for the {point|point} would be {mm|length}, longer than a garment can have. Check the unit or type the figure again.',
  'reading.too-small':
    '“{stated}” for the {point|point} would be {mm|length}, less than a garment can have. Check the unit or type the figure again.',
  'reading.contradiction':
    'The {point|point} is given twice: {first|length} and {second|length}. The first is used; ask the seller, or choose the other.',
  'reading.basis-doubt':
    '“{stated}” for the {point|point} was read as {basis|basis-word}, {mm|length} around; it could also be {other|length} ' +
    'around. Choose the one that is meant.',
  'reading.units-disagree':
    '“{stated}” for the {point|point} and the figure beside it don’t agree: {first|length} and {second|length}. The first ' +
    'is used; choose the other if that is right.',
  'reading.no-garment': 'This does not look like a garment, so nothing was measured. If it is one, choose its kind.',
  'reading.no-single-listing':
    'This looks like a page of many things for sale, not like one listing. Open the listing that you mean and read that.',
  'reading.several-garments':
    'The listing measures {n} garments. The figures of the {kind|kind} are used; choose another kind to use the others.',
  'reading.several-sizes':
    'The text gives figures for several sizes: {sizes}. Choose the one for sale; until then none of them is counted.',
  'reading.size-chart': 'Size {size} is cut for {body|chart-body} {low|figure} to {high|length}.',
  'reading.size-chart.one': 'Size {size} is cut for {body|chart-body} {low|length}.',
  'reading.size-chart.nameless': 'It is cut for {body|chart-body} {low|figure} to {high|length}.',
  'reading.size-chart.nameless-one': 'It is cut for {body|chart-body} {low|length}.',
  'reading.size-for-sale': 'Size for sale',
  'reading.size-open': 'Not chosen',
  'reading.percent-sum': 'The fibres add up to {sum|percent}, not 100 %. Check the label.',
  'reading.structured-broken': 'A part of the page’s hidden data could not be read and was skipped. Compare price and name with the page.',
  'reading.markup': 'The title or text had page code in it, which was skipped. Check that nothing is missing.',
  'reading.long-text':
    'The text is very long ({thousands} thousand characters). Select the part about this garment and read that, to be sure that no other garment is in it.',
  'reading.other-currency': 'The price is in {theirs}, not in {own}, so it is left out. Type it in {own}.',

  'chart-body.bustGirth': 'a bust or chest of',
  'chart-body.underbustGirth': 'an underbust of',
  'chart-body.waistGirth': 'a waist of',
  'chart-body.hipGirth': 'hips of',
  'chart-body.stature': 'a height of',
  'chart-body.insideLegLength': 'an inside leg of',

  'unit-word.in': 'inches',
  'unit-word.cm': 'centimetres',
  'unit-word.mm': 'millimetres',
  'basis-word.flat': 'laid flat',
  'basis-word.around': 'all the way around'
}

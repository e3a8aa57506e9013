/** Texts that are not yet read as a careful buyer reads them, each with its reason. */
export const NOT_YET: { id: string; because: string }[] = [
  { id: 'ja-k05', because: 'a word for tops of any sort is taken for one in passing, and the skirt of the set leads' },
  { id: 'ja-009', because: 'the sleeve of a kimono is told by how deep it hangs, and is taken for how long it is' },
  { id: 'ko-003', because: 'the bottom edge of a coat is its hem in the model of garments, and a sweep in the text' },
  { id: 'pt-006', because: 'the bottom edge of a coat is its hem in the model of garments, and a sweep in the text' },
  { id: 'ja-x12', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'da-w04', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'no-w04', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'pt-z03', because: 'a casaco is a jacket or a coat, and only how long it is tells which' },
  { id: 'pt-z04', because: 'a length told in brackets as from the armpit to the hem is taken for the whole length' },
  { id: 'en-b04', because: 'a bare sum on the last line is no price without its sign, and a wrapped cardigan has no silhouette' },
  { id: 'en-b16', because: '“ins” for the inside leg is taken for inches' },
  { id: 'en-b17', because: '“3-snap cuffs”: the number of snaps is taken for the cuff' },
  { id: 'en-b21', because: '“32cm to 50cm” of an elastic waist is taken for a range, not for relaxed and pulled out' },
  { id: 'en-b33', because: '“36 in cash”: a bare sum, its currency told in a bracket further on' },
  { id: 'en-b38', because: 'the shoulder that opens a row, behind a sentence about the filling, is not linked' },
  { id: 'de-001', because: 'names written onto their figures in one run are linked one too far' },
  {
    id: 'de-003',
    because: 'the skirt of a dress measured from the waist is taken as its skirt length; a dirndl is gathered, though this one is pleated'
  },
  { id: 'fr-001', because: 'a high waist is a facet of trousers only, and not read on a skirt' },
  { id: 'fr-002', because: 'a back length “sous col” is not linked' },
  { id: 'fr-003', because: 'the hip of a size guide at the head of the text is taken for the garment’s' },
  { id: 'it-001', because: 'a decimal comma with a space behind it is read as two figures' },
  { id: 'it-003', because: 'a text in two languages gives its figures twice, and the inches are taken' },
  { id: 'nl-002', because: 'the edge of a circle skirt is given around under a note that all is flat' },
  { id: 'pl-001', because: '“rękaw krótki 21 cm”: the word between the sleeve and its figure is not stepped over' },
  { id: 'pl-002', because: 'a waist relaxed and pulled out, parted by a dash, is read as the second figure' }
]

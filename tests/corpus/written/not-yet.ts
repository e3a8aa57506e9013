/** Texts that are not yet read as a careful buyer reads them, each with its reason. */
export const NOT_YET: { id: string; because: string }[] = [
  { id: 'en-b04', because: 'a bare sum on the last line is no price without its sign, and a wrapped cardigan has no silhouette' },
  { id: 'en-b16', because: '“ins” for the inside leg is taken for inches' },
  { id: 'en-b21', because: '“32cm to 50cm” of an elastic waist is taken for a range, not for relaxed and pulled out' },
  { id: 'en-b33', because: '“36 in cash”: a bare sum, its currency told in a bracket further on' },
  {
    id: 'de-003',
    because: 'the skirt of a dress measured from the waist is taken as its skirt length; a dirndl is gathered, though this one is pleated'
  },
  { id: 'fr-001', because: 'a high waist is a facet of trousers only, and not read on a skirt' },
  { id: 'en-a05', because: 'half a lining of one piece and the flare of another are told of no garment yet; the figures are right' },
  { id: 'en-a07', because: 'a co-ord is taken for the last piece it names; the figures of both pieces are right' },
  { id: 'en-a09', because: '“loose thru the leg” is no word of the cut yet; the pair that was measured is read right' },
  { id: 'en-a19', because: 'lambswool behind a lining of chiffon is taken for the lining’s; the figures are right' },
  { id: 'en-a26', because: '“the two turn ups shown” names no state, so that the cuffed length is not kept beside the long one' },
  { id: 'en-a27', because: 'a three-quarter sleeve told as 3/4 behind its figure is no word of the cut; the figures are right' },
  { id: 'en-a28', because: '“fits 26-32” of a tied wrap is advice to the reader; the open waist alone is left then' },
  { id: 'en-a29', because: 'what is no garment of the list has a hem and no sweep here; a yukata is taken for a coat' },
  { id: 'en-a44', because: 'the low rise in a skirt’s title is no facet of a skirt yet; the figures are right' },
  { id: 'en-a45', because: 'a sum behind a sign of money in a picture is not read; the figures are right' },
  { id: 'en-a53', because: 'a dress form is taken for what hangs on it, and its sizes for measures' },
  { id: 'en-a57', because: 'a three-quarter sleeve told as 3/4 in brackets is no word of the cut; the figures are right' },
  { id: 'en-a60', because: 'thin straps alone do not tell that there are no sleeves; the figures are right' },
  { id: 'fig-cd-026', because: '“41 outside” has a name that says little, and takes no bare figure from before it' },
  { id: 'ja-009', because: 'the sleeve of a kimono is told by how deep it hangs, and is taken for how long it is' },
  { id: 'ja-x12', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'da-w04', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'no-w04', because: 'a lining is taken as there only by the words that say so, not by what it is made of' },
  { id: 'pt-z03', because: 'a casaco is a jacket or a coat, and only how long it is tells which' },
  { id: 'pt-z04', because: 'a length told in brackets as from the armpit to the hem is taken for the whole length' }
]

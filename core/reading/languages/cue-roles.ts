/**
 * Cues: single words that tip one rule of the reader, by what they tell it. They are asked for by role (see text/cues.ts),
 * never written into a rule; unlike phrases they make no term, so they don't change what a text is cut into.
 * A role that a language does not name is silent in it.
 */
import type { Phrases } from './phrases.ts'

export type CueRole =
  // text and figures
  /** a dot behind it ends no sentence: approx., ca. */
  | 'shortForm'
  /** the name of a garment that begins so is of no such cloth: “faux leather jacket” */
  | 'imitated'
  /** “pagato 190”: what somebody gave for it */
  | 'paid'
  /** short names that stand glued to their figures: w32, ptp20 */
  | 'shorthand'
  /** before a number like 1985: a year, a code */
  | 'beforeYear'
  /** “2 in the back”: behind it “in” is no unit */
  | 'afterPreposition'
  /** “30 and a half”: joins a number and its part */
  | 'joinsPart'
  /** “a half”: one of the part that follows */
  | 'onePart'
  /** inches, where they are told in words */
  | 'inch'
  /** “no. 12”: a code */
  | 'numbered'
  /** and, in numbers told in words */
  | 'and'
  /** “an inch and a half” */
  | 'half'
  /** “half an inch” */
  | 'article'
  /** “a couple of inches” */
  | 'couple'
  /** “bottom of the sleeve”, “a couple of inches” */
  | 'of'
  /** the article before a name */
  | 'the'
  /** how words for inches begin, behind a figure */
  | 'inchBegins'
  /** short words for inches, behind a figure */
  | 'inchShort'
  // names
  /** “rise with waistband”, “skirt with leather straps”: what follows is beside it */
  | 'with'
  /** with, in a language in which the same word says of what a thing is */
  | 'withOrOf'
  /** “collar not included”: a name that only tells what is counted in */
  | 'counted'
  /** “when buttoned”: how a garment was while it was measured */
  | 'closed'
  /** “tour de la poitrine”: from, but of as well */
  | 'whose'
  /** in a name: taken across */
  | 'width'
  /** “elastic at the waist”: a detail that is the edge itself */
  | 'ofTheEdge'
  /** “lace at hem”: a detail and where it is */
  | 'at'
  /** steps over to the place: “from under the arm” */
  | 'under'
  /** the edge or the side of the neck, from which no sleeve that is kept is measured */
  | 'neck'
  /** where a sleeve is measured from the neck */
  | 'middleOfBack'
  /** “from the shoulder”, “from top shoulder” */
  | 'theTop'
  /** names of a letter or two that stand in runs: W: 16" H: 20" */
  | 'letterName'
  /** “Drop 24"” on a kilt: its length */
  | 'drop'
  /** “from shoulder 21"” */
  | 'from'
  /** “when buttoned” */
  | 'when'
  /** “M long | 32”: a size that heads a row */
  | 'longSize'
  // links
  /** “44 cm de cintura”: the waist of 44 */
  | 'ofMeasure'
  /** is, are, measures: a name with its own verb waits for the figure behind it */
  | 'verb'
  /** “27 at the back”: from a figure to the name behind it */
  | 'leadsToName'
  /** 35/26/free: a girth that nothing bounds, in a row of figures */
  | 'unbounded'
  /** “20" long”: a name that only says along what a figure ran */
  | 'howItRan'
  /** “leg hem 26" wide” */
  | 'wide'
  /** “11" across at the opening” */
  | 'across'
  /** long, deep, tall */
  | 'along'
  /** “Kragen 7 cm hoch”: how high something stands */
  | 'upright'
  /** “actual 33"”: a figure that was taken, beside one that a label tells */
  | 'actually'
  /** “measures closer to 28” */
  | 'nearer'
  /** “the same at the waist”: a figure told again without being written */
  | 'same'
  /** behind “same”, before the second name */
  | 'sameAt'
  /** “fits 28-29" waist”: right before a figure */
  | 'fitsFigure'
  /** “a 20 cm de la axila”: a place, no measure */
  | 'atDistance'
  /** “I’m giving you …”: the last word of what names the speaker */
  | 'iAm'
  /** “I’m wearing”: what a body does that is told about */
  | 'posing'
  /** the band of a waist, or of the bottom of a jacket */
  | 'waistband'
  /** “I measure …”: what a seller does */
  | 'measureVerb'
  /** “bust 40" max”: behind a figure, that it is the most */
  | 'limit'
  /** “my measurements”: the last word of what heads a list, of a body or of the garment */
  | 'measurements'
  /** “but I measure 4.75"” */
  | 'butFirst'
  /** “oversized on me” */
  | 'me'
  /** “oversized on me” */
  | 'on'
  /** “long on me at 61 cm” */
  | 'atFigure'
  /** “I would say a 10-12” */
  | 'say'
  /** “has balloon sleeves”: the sentence speaks of what has them */
  | 'has'
  /** “11" wide at the opening” */
  | 'opening'
  /** “I’m giving you what it is”: how a verb of doing ends */
  | 'doingEnds'
  // figures and their words
  /** says flat or around only beside a figure, never for a list */
  | 'besideFigureOnly'
  /** “arm 7" across”: a width of what has a length otherwise */
  | 'girthOrWidth'
  /** a side told inside a name: front */
  | 'frontInName'
  /** a side told inside a name: back */
  | 'backInName'
  /** “stretches to 21”: said of the figure to come */
  | 'leadsOn'
  /** said of a figure that was doubled already */
  | 'doubled'
  /** “waist is taken around” */
  | 'taken'
  // garment and cloth
  /** behind it a title speaks of something beside the garment */
  | 'besideGarment'
  /** スカートにも: the same, behind the name of what stands beside */
  | 'besideGarmentBehind'
  /** names of kinds that a text uses in passing: top button, knit, a suit’s name */
  | 'kindInPassing'
  /** “tunic top”: right behind a garment’s name it names nothing new */
  | 'vagueKind'
  /** “goes with any skirt” */
  | 'anyGarment'
  /** “matching jacket”: beside what it matches */
  | 'goesWith'
  /** “like a jacket”, “as a dress” */
  | 'likeGarment'
  /** “for sale: a coat”, “for women”: behind “for”, what follows is for sale all the same */
  | 'sale'
  /** “jacket style”, “coat weight”: behind a garment’s name, not the garment */
  | 'notItself'
  /** things that prose names in passing: a ring, a frame, a belt */
  | 'thingInPassing'
  /** “this skirt”, “selling a skirt” */
  | 'thisOne'
  /** “category: skirts” */
  | 'itemHead'
  /** traits that are words of prose too; they count only beside what they describe */
  | 'traitInProse'
  /** right before a cloth: only looks like it */
  | 'imitating'
  /** “no give”: what a cloth has none of */
  | 'elasticity'
  /** the sign of a share, in words */
  | 'percent'
  /** “95 per cent”: where that sign is two words */
  | 'perCentFirst'
  | 'perCentSecond'
  /** “underskirt: 100 % polyester”: another part than its outer cloth */
  | 'otherPart'
  /** “lining: none” */
  | 'noneOfIt'
  /** “not flared, just a straight leg”: what is so instead of what was denied */
  | 'justSo'
  /** “lining viscose”: the part itself */
  | 'liningName'
  /** “lined in silk”, “Futter aus Viskose” */
  | 'ofCloth'
  /** “faded black tee”: how it is meant to look */
  | 'paleLook'
  /** “hole inside one pocket” */
  | 'inside'
  /** “hole near the pocket” */
  | 'beside'
  /** the bag of a pocket */
  | 'pocket'
  /** the lining of a pocket */
  | 'pocketLining'
  /** “easily mended”, “muss geflickt werden”: not seen to yet */
  | 'notYet'
  /** “pure wool”: all of it */
  | 'pure'
  /** “wool and silk”, “poly x cotton”: in a run of fibres */
  | 'betweenFibres'
  /** “feels like pure wool”: no share */
  | 'feelsLike'
  /** between fibres and their shares: “wool blend 55/45” */
  | 'besideShares'
  /** the hem, where cloth to spare lies */
  | 'hem'
  /** the depth of a hem, in one word */
  | 'hemDepth'
  /** “hem is 2" deep” */
  | 'deep'
  /** back, seat: with a seam, the back seam */
  | 'ofTheBack'
  /** seam, centre: with the back, the back seam */
  | 'seamOrCentre'
  /** the back seam, in one word */
  | 'backSeam'
  /** “to let out” tells how much wider it gets, “left in the seam” how much cloth there is */
  | 'toLetOut'
  /** beginnings and parts of words: “fully lined”, “helfodrad” */
  | 'allOfIt'
  /** legs of denim are jeans */
  | 'denim'
  // price
  /** behind it “+ 3.40” is postage, no cloth to spare */
  | 'money'
  /** “£5 more”: behind a sum, on top of what is asked */
  | 'extra'
  /** “zzgl. 5 €”: before a sum, on top of what is asked */
  | 'onTop'
  /** “NWT $128”: what it was to cost when new */
  | 'whenNew'
  /** “frais de port en sus” */
  | 'postageApart'
  /** “spedizione esclusa” */
  | 'excluded'
  /** “fees are silly, so £26 here” */
  | 'hence'
  /** “paid £165, accept £40”, “lo lascio a 50 €” */
  | 'letsGo'
  /** “£45 posted”: the postage is in the price */
  | 'postPaid'
  /** postage, shipping */
  | 'postage'
  /** beside postage: it is in the price */
  | 'postIncluded'
  /** dollars of a country that the page tells */
  | 'dollars'
  /** letters that a text has only where its ¥ are Chinese */
  | 'chinese'
  /** “Preis 20”: a bare number behind it is money */
  | 'priceName'
  /** “was 60, now 45”: a bare number behind it is money, where a currency is told */
  | 'priceNow'
  /** “my other jacket is £60”: the sum is of another item */
  | 'anotherItem'
  /** “20 VB”: a bare number before it is money */
  | 'haggled'
  /** “weighs five pounds” */
  | 'weight'
  /** in the name of a page’s property: no measure of the garment */
  | 'otherProperty'
  /** “cost: £29” asks it, “cost £90” was paid */
  | 'costs'
  /** “a hundred and ten pounds” */
  | 'hundred'
  /** “a hundred” */
  | 'oneHundred'
  /** “AU size 12”: whose size it is tells whose dollars */
  | 'sizeWord'
  // sizes
  /** “size small (also have medium)”: what a title offers besides */
  | 'also'
  /** “mens medium shirt”: before a size in letters */
  | 'forWhom'
  /** “label says 30"”: a size even with a unit */
  | 'tag'
  /** “they measure 33 x 30.5”: a pair that was taken */
  | 'measuresPair'
  /** behind W and L: then they are measures in a list */
  | 'furtherName'
  /** “size 34 waist”, “waist 34 L 32” */
  | 'waistOfSize'
  /** “Mサイズ”, “11号”: behind a size */
  | 'sizeBehind'
  // whose sizes
  /** “men’s department”, “menswear inspired”: what is possessed is no garment */
  | 'besideWhose'
  /** “la veste de ma femme”: whose wardrobe it was in */
  | 'ofSomebody'
  /** Damenhose: how a garment’s name begins that is cut for women */
  | 'womensBegins'
  /** Herrenhose, and for men */
  | 'mensBegins'
  /** “veste pour femme”: between a garment and whose it is */
  | 'forOne'
  /** “collar size 16”: only men’s shirts are sized by it */
  | 'collarSize'

/** The words of a role, one a line. */
export type Cues = Partial<Record<CueRole, Phrases>>

/** Words that stand for an amount, by where they are read; numbers before a unit are `numbers` (see lexicon.ts). */
export type AmountRole =
  /** “an inch”, “two inches” of cloth to spare */
  | 'inches'
  /** “three quarters”: how many of the part that follows */
  | 'parts'
  /** “a quarter”: how much of the whole */
  | 'part'
  /** “First one is …. Second is …” */
  | 'place'
  /** “3千円”, “4만원”: how many of what stands before it */
  | 'multiple'
  /** “fourteen pounds fifty”: a sum in words */
  | 'sum'
  /** what people call the notes */
  | 'note'

export type Amounts = Partial<Record<AmountRole, Record<string, number>>>

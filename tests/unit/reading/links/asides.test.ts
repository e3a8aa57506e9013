/** Figures about something else. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { asidesOf } from '../../../../core/reading/links/asides.ts'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const aside = (words: string, figure: string, names: [string, PointName][] = [], language = 'en') => {
  const text = textOf(words, language)
  const one = figureAt(text, figure)
  const labels = names.map(([name, point]) => nameAt(text, name, [point])).sort((a, b) => a.from - b.from)
  return asidesOf(text, labels, [one]).get(one) ?? null
}

describe('of a label, where verbs stand last', () => {
  test.each([
    ['首回り39の表記です', '39', 'fits-advice'],
    ['(身長170)表記', '170', 'fits-advice'],
    ['着丈70 Mサイズ', '70', null],
    ['表記は38、着丈70です', '70', null]
  ])('%s: %s', (words, figure, because) => expect(aside(words, figure, [], 'ja')).toBe(because))
})

describe('of the model', () => {
  test('a figure that opens the sentence and is glued to the person, in Japanese', () => {
    expect(aside('楽ちん。160cmの私でくるぶしが見えます', '160cm', [], 'ja')).toBe('model')
    expect(aside('着丈70cm。160cmの私で見えます', '70cm', [['着丈', 'length']], 'ja')).toBeNull()
  })
  test('in her sentence', () => expect(aside('Model is 34" bust.', '34"', [['bust', 'chest']])).toBe('model'))
  test('until something only a garment has is named', () => {
    expect(aside('Model wears S. Inseam 30"', '30"', [['Inseam', 'inseam']])).toBeNull()
  })
  test('on the lines of a list that it heads, to the next blank line', () => {
    expect(aside('Model:\nwaist 26"', '26"')).toBe('model')
    expect(aside('Model:\nwaist 26"\n\nwaist 30"', '30"')).toBeNull()
  })
  test('a height is somebody’s', () => expect(aside('170 cm tall', '170 cm')).toBe('model'))
  test('130 cm and less is no height of a grown person', () => expect(aside('120 cm tall', '120 cm')).toBeNull())
})

describe('of who it fits', () => {
  test('to the end of the advice', () => {
    expect(aside('Would fit a 34" bust.', '34"')).toBe('fits-advice')
    expect(aside('Would fit a small. Measures 34" across', '34"')).toBeNull()
  })
})

test('of a parcel', () => expect(aside('Parcel 30 cm wide.', '30 cm')).toBe('parcel'))

describe('of a place on the garment', () => {
  test('13" from the crotch is where something was measured', () => expect(aside('taken 13" from the crotch', '13"')).toBe('detail'))
  test('1" below the armhole is a place, the figure of a name right before it is none', () => {
    expect(aside('1" below the armhole', '1"')).toBe('detail')
    expect(aside('chest 20" below', '20"', [['chest', 'chest']])).toBeNull()
  })
  test('a small figure in a sentence about a fault is the fault’s', () => {
    expect(aside('A stain of 1" on the front', '1"')).toBe('detail')
    expect(aside('A stain of 1" on the front', '1"', [])).toBe('detail')
    expect(aside('Stained, length 28"', '28"', [['length', 'length']])).toBeNull()
  })
})

test('of another listing: its whole sentence', () => {
  expect(aside('See my other listings for a 40" coat.', '40"')).toBe('detail')
})
test('how far back pockets lie apart, as told before', () => {
  const text = textOf('back pockets 5" apart')
  const one = figureAt(text, '5"')
  expect(asidesOf(text, [], [one], one).get(one)).toBe('detail')
})

describe('what a seller measured', () => {
  test('a list of names that only a garment has is no body', () => {
    expect(aside('My measurements for this: pit to pit 20", length 26"', '26"')).toBeNull()
    expect(aside('I measure: chest 20", length 24"', '20"')).toBeNull()
  })
  test('a list of a body is', () => expect(aside('My measurements: bust 34", waist 26"', '34"')).toBe('model'))
  test('a word of advice behind its figure leads on to no other', () => expect(aside('bust 40" max, waist 32"', '32"')).toBeNull())
})

/** Each figure of a text, with why it stands aside. */
const asidesIn = (words: string, language: string) => {
  const text = textOf(words, language)
  const quantities = quantitiesOf(text)
  const asides = asidesOf(text, labelsOf(text, quantities), quantities)
  return quantities.map((one) => `${one.value} ${asides.get(one) ?? '-'}`).join(', ')
}

describe('the model’s, until the garment is measured again', () => {
  test.each([
    ['en', 'Model is 34" bust. Waist 26"', '34 model, 26 model'],
    ['en', 'Model is 34" bust. Length 28"', '34 model, 28 -'],
    ['en', 'Model is 34" bust. Pit to pit 20"', '34 model, 20 -'],
    ['en', 'Model is 34" bust. Measures 28"', '34 model, 28 -'],
    ['en', 'Model is 34" bust. The dress is 28"', '34 model, 28 -'],
    ['en', 'Model is 34" bust. Waist laid flat 13"', '34 model, 13 -'],
    ['en', 'Model is 34" bust\nLength 28"', '34 model, 28 -'],
    ['en', 'Model:\nbust 34"\nlength 28"', '34 model, 28 model'],
    ['en', 'Model:\nbust 34"\n\nbust 36"', '34 model, 36 -'],
    ['en', 'Model:\nbust 34"\nMeasurements:\nbust 36"', '34 model, 36 -'],
    ['en', 'Model 34":\nbust 36"', '34 model, 36 -'],
    ['en', '[Model]\nbust 34"', '34 model'],
    ['en', 'Model\nbust 34"', '34 model']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('of whoever sells it, or what they did', () => {
  test.each([
    ['en', 'My measurements: bust 34", waist 26"', '34 model, 26 model'],
    ['en', 'My measurements: height 170 cm, bust 34", pit to pit 20"', '170 model, 34 model, 20 -'],
    ['en', 'I measure 34" bust', '34 model'],
    ['en', 'I measure 20"', '20 model'],
    ['en', 'I measure 19"', '19 -'],
    ['en', 'but I measure 4.75"', '4.75 -'],
    ['en', 'I measure with it zipped, 34"', '34 -'],
    ['en', 'I\'m giving you 20"', '20 -'],
    ['en', 'I\'m wearing 20"', '20 model'],
    ['en', "I'm 170 cm", '170 model'],
    ['en', 'It is oversized on me, 34". Length 28"', '34 model, 28 -'],
    ['en', 'long on me at 61 cm', '61 -'],
    ['en', 'long on me, 61 cm', '61 model']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('somebody’s height', () => {
  test.each([
    ['en', '131 cm tall', '131 model'],
    ['en', '130 cm tall', '130 -'],
    ['en', '170 cm long', '170 -'],
    ['en', '170 tall', '170 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('whom it would fit', () => {
  test.each([
    ['en', 'fits 28-29" waist', '28.5 fits-advice'],
    ['en', 'fits up to 28" waist', '28 fits-advice'],
    ['en', 'Would fit a 34" bust, waist 28"', '34 fits-advice, 28 fits-advice'],
    ['en', 'Would fit a 34" bust, length 28"', '34 fits-advice, 28 -'],
    ['en', 'Would fit a 34" bust, measures 28"', '34 fits-advice, 28 -'],
    ['en', 'Would fit a 34" bust, pit to pit 18"', '34 fits-advice, 18 -'],
    ['en', 'Would fit a 34" bust, waist flat 18"', '34 fits-advice, 18 -'],
    ['en', 'Would fit: bust 34", length 28"', '34 fits-advice, 28 fits-advice'],
    ['en', 'Would fit:\nbust 34"\nwaist 28"\n\nlength 28"', '34 fits-advice, 28 fits-advice, 28 -'],
    ['en', 'Would fit a small: bust 34"', '34 -'],
    ['en', 'I would say a 10-12: bust 34"', '11 fits-advice, 34 -'],
    ['en', 'Would fit a bust: 34"', '34 fits-advice'],
    ['en', 'Would fit a small. Bust 34"', '34 -'],
    ['en', '(would fit 34" bust) chest 36"', '34 fits-advice, 36 -'],
    ['en', 'bust 40 max, waist 32"', '40 -, 32 -'],
    ['en', 'bust 40 cm max, waist 32"', '40 -, 32 -'],
    ['en', 'bust max 40", waist 32"', '40 fits-advice, 32 fits-advice']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('a place on the garment', () => {
  test.each([
    ['en', 'taken 13" from the crotch', '13 detail'],
    ['en', 'taken 13 from the crotch', '13 -'],
    ['en', 'inseam 13" from the crotch', '13 -'],
    ['en', 'taken 13" from the table', '13 -'],
    ['en', 'taken 13" from the crotch to hem', '13 -'],
    ['en', 'thigh (1" below crotch): 12"', '1 detail, 12 -'],
    ['es', 'a 20 cm de la axila', '20 detail'],
    ['es', '44 cm de cintura', '44 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('a fault, where it is small', () => {
  test.each([
    ['en', 'A stain of 4" on the front', '4 -'],
    ['en', 'A stain of 3.9" on the front', '3.9 detail'],
    ['en', 'A stain of 1 on the front', '1 -'],
    ['en', 'A stain. The cuff is 1" wide', '1 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('another listing: its sentence, in brackets its line', () => {
  test.each([
    ['en', 'See my other listings for a 40" coat. Chest 38"', '40 detail, 38 -'],
    ['en', 'chest 38" (see my other listings) length 28"\nwaist 30"', '38 detail, 28 detail, 30 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('what a size stands for, where it is measured too', () => {
  test.each([
    ['en', 'size 16 pattern (bust 34"), bust 36"', '16 -, 34 fits-advice, 36 -'],
    ['en', 'size 16 pattern (bust 34"), waist 36"', '16 -, 34 -, 36 -'],
    ['en', 'size 16 pattern (bust 34")', '16 -, 34 -'],
    ['en', 'pattern (bust 34"), bust 36"', '34 -, 36 -'],
    ['en', 'size 16 pattern bust 34", bust 36"', '16 -, 34 -, 36 -'],
    ['en', 'size 16, bust 34", bust 36"', '16 -, 34 -, 36 -'],
    ['en', 'size 16 pattern (length 34"), length 36"', '16 -, 34 -, 36 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('where verbs stand last', () => {
  test.each([
    ['ja', '首回り39 裄丈82の表記です', '39 fits-advice, 82 fits-advice'],
    ['ja', '首回り39、裄丈82', '39 -, 82 -'],
    ['ja', '楽ちん 160cmの私でくるぶしが見えます', '160 -'],
    ['ja', '着丈160cm、私でくるぶしが見えます', '160 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('a list of the seller’s that names what only a garment has is the garment’s', () => {
  test.each([
    ['en', 'My measurements: waist 30", length 26"', '30 -, 26 -'],
    ['en', 'My measurements: waist 30", skirt length 26"', '30 -, 26 -'],
    ['en', 'My measurements: bust 36", body length 26"', '36 -, 26 -'],
    ['en', 'My measurements: waist 30", hem 20"', '30 -, 20 -'],
    ['en', 'My measurements: bust 36", bottom edge 40"', '36 -, 40 -'],
    ['en', 'My measurements: waist 30", sweep 60"', '30 -, 60 -'],
    ['en', 'My measurements: waist 30", leg opening 14"', '30 -, 14 -'],
    ['en', 'My measurements: waist 30", rise 11"', '30 -, 11 -'],
    ['en', 'My measurements: waist 30", front rise 11"', '30 -, 11 -'],
    ['en', 'My measurements: waist 30", back rise 14"', '30 -, 14 -'],
    ['en', 'My measurements: bust 36", cuff 8"', '36 -, 8 -'],
    ['en', 'My measurements: bust 36", sleeve cuff 8"', '36 -, 8 -'],
    ['en', 'My measurements: bust 36", width 20"', '36 -, 20 -'],
    // far behind it is another list
    [
      'en',
      'My measurements: bust 34", waist 26", hips 36", I usually wear a size S or XS and this is a little loose on me in the shoulders and arms. Length 26"',
      '34 model, 26 model, 36 model, 26 -'
    ],
    // a leg and a body both have an inside length
    ['en', 'My measurements: waist 30", inseam 31"', '30 model, 31 model'],
    // what is named below a blank line says nothing of them
    ['en', 'My measurements: bust 34".\n\nLength 26"', '34 model, 26 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('one stretch after another, each with its end', () => {
  test.each([
    ['en', '5\'8" tall, waist 30"', '68 model, 30 -'],
    ['en', 'Model is 5\'8". Length 28". Would fit a 34" bust.', '68 model, 28 -, 34 fits-advice'],
    ['en', 'Would fit a 34" bust. Length 28". Parcel 30 cm wide.', '34 fits-advice, 28 -, 30 parcel'],
    ['en', 'Would fit a 34" bust, as our model shows, length 28"', '34 fits-advice, 28 -'],
    ['en', 'chest 36" (lovely) would fit a 34" bust', '36 -, 34 fits-advice'],
    ['en', 'This would fit a 34" bust, waist 28" (stretchy) and 36" hips', '34 fits-advice, 28 fits-advice, 36 fits-advice'],
    ['en', 'Lovely, it would fit a 34" bust (I think) and 28" waist', '34 fits-advice, 28 fits-advice'],
    ['en', 'chest 36" (would fit a 34" bust', '36 -, 34 fits-advice'],
    ['en', 'Skirt (the model has a 26" waist) length 28"', '26 model, 28 -'],
    ['en', 'Model (34" bust)\nbust 36"', '34 model, 36 -'],
    ['en', '[Model] 34" bust\nbust 36"', '34 model, 36 -'],
    ['en', 'Model wears a size 10, measurements: bust 36"', '10 model, 36 -'],
    ['en', 'Model is 175 cm, bust 86 cm, measurements: bust 92 cm', '175 model, 86 model, 92 -'],
    ['en', 'The model’s measurements are 34" bust', '34 model'],
    ['en', 'Model:\nbust 34"\n170 cm\nShirt measurements:\nbust 36"', '34 model, 170 model, 36 -'],
    ['en', 'Best for a 26" waist, inseam 30"', '26 fits-advice, 30 -'],
    ['en', 'Best for a 26" waist, hips 36", inseam 30"', '26 fits-advice, 36 fits-advice, 30 -'],
    ['en', 'It runs small: bust 34"', '34 -'],
    ['en', 'I’m posting a 20" belt', '20 -'],
    ['en', 'I’m wearing heels of 4"', '4 model'],
    ['en', 'The parcel is 30 cm wide and 40 cm long. Sleeve 60 cm', '30 parcel, 40 parcel, 60 -'],
    ['ja', '首回り39の表記です。着丈70', '39 fits-advice, 70 -'],
    ['ja', '私は160cmです。着丈70cm', '160 model, 70 -'],
    ['ja', '70cm 私は普段Mです', '70 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('a place, a fault, a pattern’s size', () => {
  test.each([
    ['en', 'mark 7 inches below the waist', '7 detail'],
    ['en', 'slit starts 9" below the knee', '9 detail'],
    ['en', 'pocket 9" below the waist', '9 detail'],
    ['en', 'taken 2" up from the hem', '2 detail'],
    ['en', 'waist 30" below the bust', '30 -'],
    ['en', 'Stain 2 cm wide, chest 90 cm', '2 detail, 90 -'],
    ['en', 'Hole of 5 mm. Cuff 9 cm', '5 detail, 9 -'],
    ['en', 'size 10 (waist 28"), waist 30"', '10 -, 28 fits-advice, 30 -'],
    ['en', 'size 10 (a waist 28"), waist 30"', '10 -, 28 fits-advice, 30 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('as sellers tell of people, parcels and places', () => {
  test.each([
    ['en', 'Fits a size 10, 34" bust and 28" waist. Measures 36" across the bust', '10 fits-advice, 34 fits-advice, 28 fits-advice, 36 -'],
    ['en', 'I would say it fits a 34" bust', '34 fits-advice'],
    ['en', 'I\'d say best for a 34" bust', '34 fits-advice'],
    ['en', 'Would suit someone 5\'4" or under, waist 28"', '64 model, 28 fits-advice'],
    ['en', 'Our model is 5\'9" and wears a size 8', '69 model, 8 model'],
    ['en', 'Our model is 5\'9" with a 25" waist and 35" hips', '69 model, 25 model, 35 model'],
    ['en', 'Mannequin is 34" bust', '34 model'],
    ['en', 'I am 5\'4" and 130 lbs, it hits me at the knee. Length 38"', '64 model, 38 -'],
    ['en', 'I\'m a 34" bust and it fits well', '34 model'],
    ['en', 'It was too small on me (36" bust)', '36 model'],
    ['en', 'Box 40 x 30 x 10 cm. Chest 50 cm', '40 parcel, 30 parcel, 10 parcel, 50 -'],
    ['en', 'Sold separately: skirt, waist 28". Jacket chest 36"', '28 detail, 36 -'],
    ['en', 'chest 36" (skirt sold separately, waist 28")', '36 detail, 28 detail'],
    ['en', 'small hole 1/2" from hem', '0.5 detail'],
    ['en', 'Two inch slit at the side, length 40"', '2 -, 40 -'],
    ['en', 'thigh (taken 1" below the crotch) 12"', '1 detail, 12 -'],
    ['en', 'knee, 13" down from the crotch, 9"', '13 detail, 9 -'],
    ['en', 'hips measured 8" below the waist: 40"', '8 -, 40 -'],
    ['en', 'hips (8 inches below waist) 40"', '8 -, 40 -'],
    ['en', '7" from the top of the waistband the hips are 40"', '7 detail, 40 -'],
    ['en', 'A tear of 9 cm at the back', '9 detail'],
    ['en', 'A tear of 11 cm at the back', '11 -'],
    ['fr', 'Taille mannequin 1m75, longueur 100 cm', '175 model, 100 -'],
    ['de', 'Das Model ist 175 cm groß. Länge 100 cm', '175 model, 100 -'],
    ['es', 'La modelo mide 1,75 m. Largo 100 cm', '175 model, 100 -'],
    ['it', 'La modella è alta 175 cm. Lunghezza 100 cm', '175 model, 100 -'],
    // only a garment has a length or lies flat: a model told in the same sentence has no more to say
    ['en', 'Model is 5\'9", length 40"', '69 model, 40 -'],
    ['en', 'Model is 5\'9", pit to pit 18", length 40"', '69 model, 18 -, 40 -'],
    ['en', 'Model is 5\'9", bust 34", waist 25"', '69 model, 34 model, 25 model'],
    ['en', 'Model wears the 30" length', '30 model']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

describe('a word of fit with no body told', () => {
  test.each([
    // what follows is the garment’s
    ['en', 'Fits true to size, bust 36", waist 28"', '36 -, 28 -'],
    ['en', 'It fits true to size: bust 36"', '36 -'],
    ['en', 'True to size, bust 36"', '36 -'],
    ['en', 'Runs small, bust 36"', '36 -'],
    ['en', 'Fits like a glove. Bust 36"', '36 -'],
    // a colon or a dash leads on to whom it fits
    ['en', 'Fits: 34-36" bust. Length 40"', '35 fits-advice, 40 -'],
    ['en', 'Fits - 34" bust', '34 fits-advice'],
    ['en', 'Fits approx 34" bust', '34 fits-advice'],
    ['en', 'To fit: bust 34"', '34 fits-advice'],
    ['en', 'Would fit: 34" bust', '34 fits-advice'],
    ['en', 'Well it fits. - 34" bust', '34 -']
  ])('%s %j: %s', (language, words, expected) => expect(asidesIn(words, language)).toBe(expected))
})

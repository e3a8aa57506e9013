/** A decimal point or comma with a space behind it. */
import { expect, test } from 'vitest'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { textOf } from '../given.ts'

const values = (words: string) =>
  quantitiesOf(textOf(words))
    .map(({ value }) => value)
    .join(' ')

test.each([
  ['waist 17. 5 inches', '17.5'],
  ['waist 17. 5"', '17.5'],
  ['waist 17. 25 in', '17.25'],
  ['waist 17. 75 in', '17.75'],
  ['waist 17. 50 in', '17.5'],
  ['waist 42, 5 cm', '42.5'],
  ['waist 17. 5', '17.5'],
  ['waist 17. 5, hip 20', '17.5 20'],
  ['waist 17. 5\nhip 20', '17.5 20'],
  ['(waist 17. 5)', '17.5'],
  ['waist 17. 5 / hip 20', '17.5 20'],
  // tenths are of centimetres alone, and no part has other figures
  ['waist 42. 3 cm', '42.3'],
  ['waist 17. 3 in', '17 3'],
  ['waist 17. 3"', '17 3'],
  ['waist 42. 33 cm', '42 33'],
  ['waist 17. 3', '17 3'],
  ['waist 42. 0 cm', '42 0'],
  ['waist 17. 5 mm', '17 5'],
  // of seven on: less is a list
  ['cuff 7. 5"', '7.5'],
  ['cuff 6. 5"', '6 5'],
  // another sign, no space, a list
  ['waist 17: 5"', '17 5'],
  ['waist 17 5"', '17 5'],
  ['30, 36, 5 cm', '30 36 5'],
  ['30. 36. 5 cm', '30 36.5'],
  ['waist 36, 5, 8', '36 5 8'],
  ['waist 36, 5; 8', '36 5 8'],
  ['waist 36, 5 ; 8', '36.5 8'],
  ['waist 29. 50/50', '29 50 50'],
  ['waist 29. 50 / 50', '29.5 50'],
  // what may be counted follows
  ['waist 17. 5 of them', '17 5'],
  ['waist 17. 5 - lovely', '17 5'],
  // a whole with its own fraction
  ['waist 17½. 5 in', '17.5 5'],
  // another figure with its own name
  ['waist 27, 5 cm pocket', '27 5'],
  ['waist 27, 5" hip', '27.5'],
  ['waist 17. 255 in', '17 255'],
  ['waist 17. 15 in', '17 15'],
  ['30. 36, 5 cm', '30 36.5'],
  ['waist 27, 5 cm hole', '27 5'],
  ['waist 27, 5 cm to let out', '27 5'],
  ['waist 27, 5 cm hip', '27.5'],
  ['waist 27. 5 cm pocket', '27.5'],
  ['waist 27, 5" hip', '27.5'],
  ['waist 17. 255 in', '17 255'],
  ['waist 17. 15 in', '17 15'],
  ['30. 36, 5 cm', '30 36.5']
])('%j: %s', (words, expected) => expect(values(words)).toBe(expected))

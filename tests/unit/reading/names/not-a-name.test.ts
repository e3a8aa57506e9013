/** Names that name no figure. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('counted in or left out', () => {
  test.each([
    ['en', 'w/o hood, length 28"', ['length: length']],
    ['en', 'collar included, chest 40"', ['chest: chest']],
    ['en', 'collar not included, chest 40"', ['chest: chest']],
    ['en', 'collar lovely, chest 40"', ['neck: collar', 'chest: chest']],
    ['en', 'collar not lovely, chest 40"', ['neck: collar', 'chest: chest']],
    ['en', 'rise with waistband 11"', ['rise: rise']],
    ['en', 'rise and waistband 11"', ['rise+waist: rise and waistband']],
    ['en', 'chest with waistband 11"', ['chest: chest', 'waist: waistband']],
    ['en', 'length with collar 30"', ['length: length']],
    ['en', 'outseam with waistband 40"', ['outseam: outseam']],
    ['en', 'inseam with cuffs 30"', ['inseam: inseam']],
    ['en', 'front rise with waistband 11"', ['frontRise: front rise']],
    ['en', 'back rise with waistband 15"', ['backRise: back rise']],
    ['en', 'skirt length with waistband 25"', ['skirtLength: skirt length']],
    ['en', 'length with lace 25"', ['length: length']],
    ['en', 'w/a collar, length 28"', ['neck: collar', 'length: length']],
    ['en', 'wo collar, length 28"', ['neck: collar', 'length: length']],
    ['en', 'wxo collar, length 28"', ['neck: collar', 'length: length']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('what was closed while a length was taken', () => {
  test.each([
    ['en', 'Sleeve with cuff zip closed 24.5"', ['sleeveLength: Sleeve']],
    ['en', 'Sleeve and cuff zip closed 24.5"', ['sleeveLength: Sleeve', 'detail: cuff zip']],
    ['en', 'chest with cuff zip closed 24.5"', ['chest: chest', 'detail: zip']],
    ['en', 'length with the zip closed 25"', ['length: length']],
    ['en', 'length zip closed 25"', ['length: length', 'detail: zip']],
    ['en', 'length with, zip closed 25"', ['length: length', 'detail: zip']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('behind a figure, and with none of its own', () => {
  test.each([
    ['en', '43" with collar', []],
    ['en', '43 with collar', []],
    ['en', '43 cm with collar', []],
    ['en', '43" with the collar', []],
    ['en', '43" with the two collars', []],
    ['en', '43" with collar 15"', ['neck: collar']],
    ['en', '43" with collar: 15"', ['neck: collar']],
    ['en', 'lovely with collar', ['neck: collar']],
    ['en', '43" collar', ['neck: collar']],
    ['en', '43" with zip', []],
    ['en', '43" with the the collar', []],
    ['en', '43" with the the the collar', ['neck: collar']],
    ['en', '43" with lovely collar', ['neck: collar']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('in brackets, behind a figure of its own, where it was measured', () => {
  test.each([
    ['en', 'Chest across (1" below armhole): 22"', ['chest flat: Chest across']],
    ['en', 'Chest across (1" below the armhole): 22"', ['chest flat: Chest across']],
    ['en', 'Chest across 1" below armhole: 22"', ['chest flat: Chest across', 'armhole: armhole']],
    ['en', '(lovely) 1" below armhole: 22"', ['armhole: armhole']],
    ['de', 'Unterbrust (Gummizug, ungedehnt) 74 cm', ['underbust: Unterbrust']],
    ['en', 'Chest (1" below the the armhole): 22"', ['chest: Chest']],
    ['en', 'Chest (1" below the the the armhole): 22"', ['chest: Chest', 'armhole: armhole']],
    ['en', 'Chest (lovely) across 1" below armhole: 22"', ['chest: Chest', 'armhole: armhole']],
    ['en', 'Chest (1"\nbelow armhole): 22"', ['chest: Chest', 'armhole: armhole']],
    ['en', 'underbust (elastic waist) 30"', ['underbust: underbust']],
    ['en', 'lovely (elastic waist) 30"', ['waist: elastic waist']],
    ['en', 'underbust elastic waist 30"', ['underbust: underbust', 'waist: elastic waist']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('how the name before was taken', () => {
  test.each([['en', 'The collar is 14" round when buttoned', ['neck: collar']]])('%s: %j', (language, words, expected) =>
    expect(namesIn(words, language)).toEqual(expected)
  )
})

describe('the size that heads a row', () => {
  test.each([
    ['en', 'M long | 32 | 34', []],
    ['en', 'lovely\nM long | 32 | 34', []],
    ['en', 'the M long | 32 | 34', ['length: long']],
    ['en', 'X long | 32 | 34', ['length: long']],
    ['en', 'M long, 32 | 34', ['length: long']],
    ['en', 'collar is 14". Waist when buttoned 30"', ['neck: collar', 'waist: Waist']],
    ['en', 'collar is 14", waist buttoned 30"', ['neck: collar', 'waist: waist']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

/** Cloth that is there to be let down or out: of which point it is, and how much of it stays in a hem or a seam. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../../core/reading/read-listing.ts'

/** Every allowance with its tenths of a millimetre, then what the hem and the seams have. */
const told = (title: string, text: string, language?: string): string[] => {
  const { allowances, made } = readListing({ title, text, ...(language === undefined ? {} : { language }) })
  const rounded = (mm: unknown) => Math.round(Number(mm) * 10) / 10
  return [
    ...allowances.map(({ point, mm }) => `${point} ${rounded(mm)}`),
    ...(made.hemDepthMm === undefined ? [] : [`hem ${rounded(made.hemDepthMm)}`]),
    ...(made.outletMm === undefined ? [] : [`outlet ${rounded(made.outletMm)}`]),
    ...(made.seamAllowanceMm === undefined ? [] : [`seam ${rounded(made.seamAllowanceMm)}`])
  ]
}
const rows = (given: [string, string, string[], string?][]) =>
  test.each(given)('%s: %j', (title, text, expected, language) => expect(told(title, text, language)).toEqual(expected))

describe('what is let out of a hem makes a garment longer, and what is let out elsewhere no waist wider', () => {
  rows([
    ['Wool skirt', '3" to let out in the hem', ['skirtLength 76.2', 'hem 76.2']],
    ['Wool skirt', 'hem has 3" to let out', ['skirtLength 76.2', 'hem 76.2']],
    ['Wool trousers', '2" to let out at the hem', ['inseam 50.8', 'hem 50.8']],
    // the hem is of another part of the sentence
    ['Wool skirt', '1" to let out, hem 3" deep', ['waist 25.4', 'hem 76.2']],
    ['Wool skirt', 'lovely pleats from waist to hem, 1" to let out', ['waist 25.4']],
    ['Wool trousers', '1" to let out at the knee', ['knee 25.4']],
    ['Wool trousers', '1" to let out at the thigh', ['thigh 25.4']],
    ['Wool jacket', '1" to let out at the shoulders', []],
    ['Wool jacket', '1" to let out at the cuff', []],
    ['Wool jacket', '1" to let out at the elbow', []]
  ])
})

describe('what is let down is of the length in its sentence, else of what is let down on this kind', () => {
  rows([
    ['Wool trousers', 'waist 34", inseam 30", 2" to let down', ['inseam 50.8', 'hem 50.8']],
    ['Wool trousers', 'outseam 40", 2" to let down', ['outseam 50.8', 'hem 50.8']],
    ['Wool trousers', '2" to let down', ['inseam 50.8', 'hem 50.8']],
    ['Wool skirt', 'waist 28". 2" to let down', ['skirtLength 50.8', 'hem 50.8']],
    // a waist is no length, and a length of another sentence is not meant
    ['Wool coat', 'chest 40", 2" to let down', ['bodyLength 50.8']],
    ['Wool coat', 'sleeve 24", 2" to let down', ['sleeveLength 50.8']],
    ['Wool coat', 'sleeve 24". 2" to let down', ['bodyLength 50.8']],
    ['Wool dress', '2" to let down', ['bodyLength 50.8']],
    ['Wool dress', 'hem has 2" to let down', ['bodyLength 50.8', 'hem 50.8']],
    ['Wool dress', 'sleeve 24", 2" to let down', ['sleeveLength 50.8']],
    ['Wool jumpsuit', '2" to let down', ['bodyLength 50.8']],
    ['Wool jumper', '2" to let down', ['bodyLength 50.8']],
    ['Wool waistcoat', '2" to let down', ['bodyLength 50.8']],
    // of a jacket or a shirt it is the sleeves, but where the hem is named
    ['Wool jacket', '2" to let down', ['sleeveLength 50.8']],
    ['Linen shirt', '2" to let down', ['sleeveLength 50.8']],
    ['Wool jacket', 'hem has 2" to let down', ['bodyLength 50.8', 'hem 50.8']],
    ['Linen shirt', '2" to let down at the hem', ['bodyLength 50.8', 'hem 50.8']],
    ['Wool jacket', 'body 28", 2" to let down', ['bodyLength 50.8']],
    // in its own unit
    ['Wool skirt', '4 cm hem allowance', ['skirtLength 40', 'hem 40']],
    // the first that is told is the depth of the hem
    ['Wool skirt', '2" left in the hem, 3" hem allowance', ['skirtLength 50.8', 'skirtLength 76.2', 'hem 50.8']],
    ['Lovely thing', '2" to let down', ['bodyLength 50.8']]
  ])
})

describe('what is let out is of the girth that is named behind, or of the one in its sentence', () => {
  rows([
    ['Wool trousers', '1" to let out', ['waist 25.4']],
    ['Wool trousers', '1" to let out at the hips', ['hip 25.4']],
    ['Wool trousers', 'waist 34" with 1" to let out at the hips', ['hip 25.4']],
    ['Wool trousers', 'inseam 30", 1" to let out', ['waist 25.4']],
    ['Wool trousers', 'thigh 12", 1" to let out', ['thigh 25.4']],
    ['Wool trousers', 'thigh 12". 1" to let out', ['waist 25.4']],
    ['Wool dress', 'hip 38", 1" to let out', ['hip 25.4']],
    ['Wool dress', 'hip 38". 1" to let out', ['waist 25.4']],
    ['Wool dress', '1" to let out. Hips 38"', ['waist 25.4']],
    ['Wool dress', '1" to let out, hips 38"', ['waist 25.4']],
    ['Wool jumpsuit', '1" to let out', ['waist 25.4']],
    ['Wool jacket', '1" to let out', ['chest 25.4']],
    ['Wool jacket', '1" to let out at the waist', ['waist 25.4']],
    ['Wool dress', '1" to let out in the bust', ['chest 25.4']],
    ['Wool waistcoat', '1" to let out', ['chest 25.4']],
    ['Lovely thing', '1" to let out', ['waist 25.4']]
  ])
})

describe('cloth in the back seam', () => {
  rows([
    // half of it on each side, and 3/8" stays in the seam
    ['Wool trousers', 'centre back seam has 1" to let out', ['waist 25.4', 'outlet 22.2']],
    ['Wool trousers', 'CB: 1" to let out', ['waist 25.4', 'outlet 22.2']],
    // on each side
    ['Wool trousers', 'an inch left in the back seam', ['waist 25.4', 'outlet 25.4']],
    ['Wool trousers', '1" left in the seat seam', ['waist 25.4', 'outlet 25.4']],
    ['Wool trousers', '1" seam allowance in the centre back', ['outlet 25.4']],
    ['Wool trousers', '1" seam allowance in the seat seam', ['outlet 25.4']],
    // neither a seam nor a back alone is it, nor a back of another sentence
    ['Wool trousers', 'centre seam has 1" left in the seams', ['waist 25.4']],
    ['Wool trousers', '1" to let out at the back', ['waist 25.4']],
    ['Wool trousers', 'the back pocket is fine. 1" left in the seams', ['waist 25.4']],
    ['Wool trousers', '1" left in the side seams. Back pockets', ['waist 25.4']],
    // five words away at the most
    ['Wool trousers', 'back seam, hardly ever worn at all, 1" to let out', ['waist 25.4']],
    ['Wool trousers', '1" seam allowance in the side seams', ['seam 25.4']],
    ['Wool trousers', 'seam allowance 1"', ['seam 25.4']],
    ['Wool trousers', 'seam allowance 1", later 2" seam allowance', ['seam 25.4']],
    ['Wool trousers', '2 cm seam allowance', ['seam 20']],
    ['Wool trousers', 'seam allowance 2', []],
    ['Hose aus Wolle', 'an der Rückennaht 2 cm zum Auslassen', ['waist 20', 'outlet 19.5'], 'de']
  ])
})

describe('a plus before a figure is cloth of the name before it', () => {
  rows([
    ['Wool trousers', 'inseam 30" (+2")', ['inseam 50.8']],
    ['Wool trousers', 'inseam 30" +2', ['inseam 50.8']],
    ['Wool trousers', 'inseam 76 cm + 4 cm', ['inseam 40']],
    ['Wool trousers', 'inseam 30" (+2"), waist 34" (+1")', ['inseam 50.8', 'waist 25.4']],
    ['Wool trousers', 'inseam 30"\nlovely (+2")', []],
    ['Wool trousers', '(+2") and inseam 30"', []],
    // a foot of it is something else
    ['Wool trousers', 'inseam 30" (+11")', ['inseam 279.4']],
    ['Wool trousers', 'inseam 30" (+12")', []],
    ['Wool trousers', 'inseam 30", plus 2"', []],
    // postage
    ['Wool trousers', 'inseam 30" for £16 + 3', []],
    ['Wool trousers', 'inseam 30" for £16.50 + 3.40', []],
    ['Wool trousers', 'inseam 30" for 12€ + 2,25', []],
    ['Wool trousers', 'inseam 30" for 16 pounds + 3', []]
  ])
})

describe('how deep a hem is', () => {
  rows([
    ['Wool skirt', 'a deep hem of 3"', ['hem 76.2']],
    ['Wool skirt', 'hem is 2" deep', ['hem 50.8']],
    ['Wool skirt', 'hem depth 2"', ['hem 50.8']],
    ['Wool skirt', 'a deep hem of 5"', ['hem 127']],
    ['Wool skirt', 'a deep hem of 6"', []],
    // a deeper fold is no hem, and a pocket is none either
    ['Wool skirt', 'hem is 6" deep', []],
    ['Wool skirt', 'pocket 2" deep', []],
    ['Wool skirt', 'pocket depth 2"', []],
    ['Wool skirt', 'pocket flap depth 2"', []],
    ['Wool skirt', 'a deep hem of 3", 2" to let down', ['skirtLength 50.8', 'hem 76.2']],
    ['Hose aus Wolle', 'Saumhöhe 4 cm', ['hem 40'], 'de']
  ])
})

describe('of a set, what hems and seams have is told of the piece the text is about', () => {
  rows([
    [
      'Wool suit',
      'Jacket: sleeve 24", 1" seam allowance\nTrousers: waist 34", 2" left in the centre back, 2" to let down, a deep hem of 2"',
      ['waist 50.8', 'inseam 50.8', 'seam 25.4']
    ],
    ['Wool suit', 'Jacket: chest 40", 1" to let out\nTrousers: waist 34", 2" to let out', ['chest 25.4', 'waist 50.8']],
    // a hem that is told by its depth alone
    ['Wool suit', 'Jacket: chest 40"\nTrousers: waist 34", hem 2" deep', []],
    ['Wool suit', 'Jacket: chest 40", hem 2" deep\nTrousers: waist 34"', ['hem 50.8']],
    ['Wool trousers', 'waist 34", hem 2" deep', ['hem 50.8']]
  ])
})

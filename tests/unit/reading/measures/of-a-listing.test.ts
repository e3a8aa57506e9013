/** Whole lines of a listing: which point each figure is of, and whether flat or around. */
import { describe, expect, test } from 'vitest'
import { readListing } from '../../../../core/reading/read-listing.ts'

/** Each measure: its point, the figure as it stands in the text, flat or around where it is a girth. */
const measured = (title: string, text: string) =>
  readListing({ title, text })
    .measures.map(({ point, stated, basis }) => `${point} ${stated.value}${basis === 'length' ? '' : ` ${basis}`}`)
    .join(', ')

describe('as a careful buyer reads it', () => {
  test.each([
    ['Jeans', 'Waist 15" flat, 38" stretched all round', 'waist 15 flat'],
    // “with” counts in what has no figure of its own
    ['Wool coat', '28" long with sleeves 24". Chest 40"', 'bodyLength 28, sleeveLength 24, chest 40 around'],
    ['Wool coat', '28" long with 24" sleeves, chest 40"', 'bodyLength 28, sleeveLength 24, chest 40 around'],
    ['Wool coat', 'Length 28" with sleeves of 24", chest 40"', 'bodyLength 28, sleeveLength 24, chest 40 around'],
    ['Shirt', 'Length 31" with collar, chest 42"', 'bodyLength 31, chest 42 around'],
    ['Trousers', 'Rise with waistband 11", waist 16" flat', 'frontRise 11, waist 16 flat'],
    ['Jacket', 'Sleeve (inside seam) 19", chest 21" flat', 'sleeveUnderarm 19, chest 21 flat'],
    ['Jacket', 'Sleeve, inside seam 19", chest 21" flat', 'sleeveUnderarm 19, chest 21 flat'],
    ['Jacket', 'Sleeve (outside seam) 25", chest 21" flat', 'sleeveLength 25, chest 21 flat'],
    // how much stands on the other side of the stitching is no leg
    ['Trousers', '2 in seam allowance. Waist 16" flat', 'waist 16 flat'],
    ['Trousers', '30 in seam. Waist 16" flat', 'inseam 30, waist 16 flat'],
    // the parcel’s part of a sentence ends where a measure of the garment is named
    ['Skirt', 'Sent in a 30 cm parcel; waist 70 cm, length 100 cm', 'waist 70 around, skirtLength 100'],
    ['Skirt', 'Parcel of 30 x 20 x 10 cm, waist 70 cm', 'waist 70 around'],
    ['Skirt', 'Shipped in a box, length 40 cm, width 30 cm', ''],
    ['Skirt', 'Waist 28" relaxed, stretches to 36"', 'waist 28 around'],
    ['Skirt', 'Elastic waist 24" to 40", length 26"', 'waist 24 around, skirtLength 26'],
    ['Trousers', 'Inseam 27" cuffed, 30" uncuffed', 'inseam 30'],
    ['Trousers', 'Inseam 30" uncuffed, 27" cuffed', 'inseam 30'],
    ['Trousers', 'Inseam 27" as cuffed (30" uncuffed)', 'inseam 27'],
    ['Wrap dress', 'Waist 40" laid open, 28" tied', 'waist 28 around'],
    ['Wrap dress', 'Waist 40" laid open', 'waist 40 around'],
    ['Shirt', 'Sleeve 25" from the shoulder, 18" underarm', 'sleeveLength 25, sleeveUnderarm 18'],
    ['Shirt', 'Underarm sleeve 18"', 'sleeveUnderarm 18'],
    ['Shirt', 'Sleeve 34"', 'sleeveFromCentreBack 34'],
    ['Shirt', 'Arm 7" across, chest 21" across', 'bicep 7 flat, chest 21 flat'],
    ['Jeans', 'Leg 9" across at the hem, waist 16" flat', 'legOpening 9 flat, waist 16 flat'],
    ['Jeans', 'Rise 11" front, 15" back', 'frontRise 11, backRise 15'],
    ['Jeans', 'Front rise 11", back rise 15"', 'frontRise 11, backRise 15'],
    ['Jeans', 'Rise: front 11", back 15"', 'frontRise 11, backRise 15'],
    ['Jeans', 'Waist 32" (measures 34")', 'waist 34 around'],
    ['Jeans', 'Waist 16" flat (32" all around)', 'waist 16 flat'],
    ['Jeans', 'W 16 H 20 R 11 L 31 inches', 'waist 16 flat, hip 20 flat, frontRise 11, inseam 31'],
    ['Jacket', 'Shoulders 17", back 28"', 'shoulderWidth 17, bodyLength 28'],
    ['Jacket', 'Shoulders 17", back 18"', 'shoulderWidth 17, backWidth 18'],
    ['Dress', 'Measurements laid flat: bust 18", waist 14", hips 20"', 'chest 18 flat, waist 14 flat, hip 20 flat'],
    ['Dress', 'Bust 18", waist 14", hips 20". All measured flat.', 'chest 18 flat, waist 14 flat, hip 20 flat'],
    ['Dress', 'Bust 18", waist 14", please double', 'chest 18 flat, waist 14 flat'],
    ['Dress', 'All measurements taken flat and doubled: bust 36", waist 28"', 'chest 36 around, waist 28 around'],
    ['Dress', 'Bust 36" (doubled), waist 28"', 'chest 36 around, waist 28 around'],
    ['Dress', 'Half bust 18", half waist 14"', 'chest 18 flat, waist 14 flat'],
    ['Skirt', 'Hem 60" wide, waist 28"', 'sweep 60 around, waist 28 around'],
    ['Trousers', 'Thigh 12" wide, waist 32"', 'thigh 12 flat, waist 32 around'],
    ['Trousers', 'Thigh is measured flat. Waist 32", thigh 12"', 'waist 32 around, thigh 12 flat'],
    ['Trousers', 'Waist 80 cm around, hips 50 cm flat', 'waist 80 around, hip 50 flat'],
    ['Trousers', 'Waist 40 cm across the top, inside leg 78 cm', 'waist 40 flat, inseam 78'],
    ['Coat', 'Chest 22" pit to pit, 44" around', 'chest 22 flat'],
    ['Coat', 'Length 40" with collar, 38" without', 'bodyLength 40'],
    ['Shirt', 'Neck 16", chest 44", sleeve 34"', 'neck 16 around, chest 44 around, sleeveFromCentreBack 34'],
    ['Skirt', 'Waist (relaxed) 26", (stretched) 34", length 25"', 'waist 26 around, skirtLength 25'],
    ['Top', 'B 18 L 25 S 15 inches', 'chest 18 flat, bodyLength 25, shoulderWidth 15'],
    ['Dress', 'W 14 inches flat, B 17 inches flat', 'waist 14 flat, chest 17 flat'],
    ['Shorts', 'Leg 9", waist 32"', 'inseam 9, waist 32 around'],
    ['Trousers', 'Leg 9", waist 32"', 'legOpening 9 flat, waist 32 around'],
    ['Jumper', 'Sleeve opening 4", sleeve 24"', 'cuff 4 flat, sleeveLength 24'],
    ['Jumper', 'Armhole 9", sleeve 24"', 'armhole 9 flat, sleeveLength 24'],
    ['Jumper', 'Inner arm 18", outer arm 24"', 'sleeveUnderarm 18, sleeveLength 24'],
    ['Coat', 'Waist 20"; flat front. Chest 44"', 'waist 20 flat, chest 44 around'],
    ['Trousers', 'Measured flat:\nWaist 16"\nThigh 12"\n\nMeasured around:\nHips 40"', 'waist 16 flat, thigh 12 flat, hip 40 around'],
    // what the seller's own tape says counts before what a shop says
    ['Coat', 'The website says bust 96 cm, but my tape says 100 cm', 'chest 100 around'],
    ['Coat', 'The website says bust 96 cm, my tape measure reads 100 cm', 'chest 100 around'],
    ['Coat', 'The website says bust 96 cm, but I make it 100 cm', 'chest 100 around']
  ])('%s, %j: %s', (title, text, expected) => expect(measured(title, text)).toBe(expected))
})

describe('how it lay, for one figure or for a whole list', () => {
  test.each([
    ['Dress', 'Measurements (laid flat):\nBust 18"\nWaist 14"', 'chest 18 flat, waist 14 flat'],
    ['Dress', 'Bust 18"\nWaist 14"\n\nLaid flat', 'chest 18 flat, waist 14 flat'],
    ['Dress', 'Waist 20" flat, hips 40"', 'waist 20 flat, hip 40 around'],
    ['Trousers', 'Waist 36 cm; measured across', 'waist 36 flat'],
    ['Dress', 'bust/waist/hips 36/28/38 inches', 'chest 36 around, waist 28 around, hip 38 around'],
    ['Dress', 'Bust, waist and hips: 36, 28 and 38 inches', 'chest 36 around, waist 28 around, hip 38 around'],
    ['Dress', '36/28/38 inches (bust/waist/hips)', 'chest 36 around, waist 28 around, hip 38 around'],
    ['Top', '20 x 27 inches (width x length)', 'chest 20 flat, bodyLength 27'],
    ['Top', 'Pit to pit/length: 20/27 inches', 'chest 20 flat, bodyLength 27'],
    ['Jeans', 'Waist 16" (32")', 'waist 16 flat'],
    ['Jeans', 'Waist 16" x 2', 'waist 16 flat'],
    ['Jeans', 'Waist 32" doubled', 'waist 32 around'],
    ['Jeans', 'Waist across 16", thigh across 12"', 'waist 16 flat, thigh 12 flat'],
    ['Jeans', 'Rise | front 11" | back 15"', 'frontRise 11, backRise 15'],
    ['Jeans', 'Rise (front) | 11"\nRise (back) | 15"', 'frontRise 11, backRise 15'],
    ['Jeans', '11" front rise, 15" back rise, 31" inseam', 'frontRise 11, backRise 15, inseam 31'],
    ['Shirt', 'Back length 30", front length 28"', 'bodyLength 30'],
    ['Shirt', 'Length 30" (back), 28" (front)', 'bodyLength 30'],
    ['Skirt', 'Waist: relaxed 26" - stretched 34"', 'waist 26 around'],
    ['Skirt', 'Waist 26" unstretched - 34" stretched', 'waist 26 around'],
    ['Skirt', 'Waist 26", stretched 34"', 'waist 26 around'],
    ['Skirt', 'Waist stretched 34", relaxed 26"', 'waist 26 around'],
    ['Skirt', 'Waist 13" flat unstretched, 17" flat stretched', 'waist 13 flat'],
    ['Wrap skirt', 'Waist tied 28", length 30"', 'waist 28 around, skirtLength 30'],
    ['Shirt', 'Sleeves are long on me at 61 cm', 'sleeveLength 61'],
    ['Shirt', 'Chest 104 cm buttoned', 'chest 104 around'],
    ['Coat', 'Pit to pit 22 inches buttoned up, shoulders 18', 'chest 22 flat, shoulderWidth 18'],
    ['Coat', 'Chest 44" all the way around when buttoned', 'chest 44 around'],
    ['Coat', '44" around the chest, 19" across the shoulders', 'chest 44 around, shoulderWidth 19'],
    ['Trousers', 'Hems are 8" across, knee 9" across', 'legOpening 8 flat, knee 9 flat'],
    ['Trousers', 'Leg opening 16" circumference', 'legOpening 16 around'],
    ['Dress', 'All measurements are taken flat. Bust 18". Length 40".', 'chest 18 flat, bodyLength 40'],
    ['Dress', 'Please note all measurements are of the garment laid flat and not doubled: bust 18"', 'chest 18 flat'],
    ['Dress', 'Double where needed: bust 18", waist 14"', 'chest 18 flat, waist 14 flat'],
    ['Dress', 'Bust (x2) 18", waist (x2) 14"', 'chest 18 flat, waist 14 flat'],
    ['Dress', 'Circumference measurements: bust 36", waist 28"', 'chest 36 around, waist 28 around'],
    ['Dress', 'Bust 18" flat; 36" total', 'chest 18 flat']
  ])('%s, %j: %s', (title, text, expected) => expect(measured(title, text)).toBe(expected))
})

describe('in other languages', () => {
  test.each([
    ['Kleid', 'Brustweite 45 cm, Taille 38 cm, Länge 100 cm (einfach gemessen)', 'chest 45 flat, waist 38 flat, bodyLength 100'],
    ['Hose', 'Bundweite 40 cm, Innenbeinlänge 78 cm, Fußweite 20 cm', 'waist 40 flat, inseam 78, legOpening 20 flat'],
    ['Robe', 'Aisselle à aisselle 45 cm, taille 38 cm à plat, longueur 100 cm', 'chest 45 flat, waist 38 flat, bodyLength 100'],
    ['Pantalon', 'Tour de taille 80 cm, entrejambe 78 cm', 'waist 80 around, inseam 78'],
    ['Vestido', 'Pecho 45 cm, cintura 38 cm (en plano), largo 100 cm', 'chest 45 flat, waist 38 flat, bodyLength 100'],
    [
      'Camicia',
      'Spalle 45 cm, petto 52 cm, manica 62 cm, lunghezza 75 cm',
      'shoulderWidth 45, chest 52 flat, sleeveLength 62, bodyLength 75'
    ],
    ['Jurk', 'Borst 45 cm, taille 38 cm, lengte 100 cm (plat gemeten)', 'chest 45 flat, waist 38 flat, bodyLength 100'],
    ['Skjorta', 'Axelbredd 45 cm, bröstvidd 52 cm, ärmlängd 62 cm', 'shoulderWidth 45, chest 52 flat, sleeveLength 62'],
    ['Bluse', 'Overarm 18 cm, ærmelængde 60 cm, brystvidde 50 cm', 'bicep 18 flat, sleeveLength 60, chest 50 flat'],
    ['シャツ', '肩幅45 身幅52 袖丈60 着丈70', 'shoulderWidth 45, chest 52 flat, sleeveLength 60, bodyLength 70'],
    ['셔츠', '어깨 45 가슴단면 52 소매 60 총장 70', 'shoulderWidth 45, chest 52 flat, sleeveLength 60, bodyLength 70']
  ])('%s, %j: %s', (title, text, expected) => expect(measured(title, text)).toBe(expected))
})

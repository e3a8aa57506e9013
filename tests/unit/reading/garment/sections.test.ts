/** Several garments in one text: which of them a figure is of. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { garmentsOf } from '../../../../core/reading/garment/sections.ts'
import { figureAt, textOf } from '../given.ts'

const of = (kind: GarmentKind, words: string, ...figures: string[]) => {
  const text = textOf(words)
  const { garmentAt } = garmentsOf(text, kind)
  return figures.map((figure) => garmentAt(figureAt(text, figure).from).of)
}

describe('a second garment', () => {
  test.each<[GarmentKind, string, (GarmentKind | null)[]]>([
    ['jacket', 'Jacket: chest 40". Trousers: waist 34"', ['jacket', 'trousers']],
    ['jacket', 'The jacket is 40" in the chest. The skirt is 34" long.', ['jacket', 'skirt']],
    ['jacket', 'Chest 40". Matching trousers waist 34"', ['jacket', 'trousers']],
    ['jacket', 'Chest 40"\nVest:\nchest 34"', ['jacket', 'waistcoat']],
    ['jacket', 'Jacket chest 40", trousers waist 34"', ['jacket', 'trousers']],
    ['jacket', 'Jacket 40R - chest 40"\nTrousers W34 L32 - waist 34"', ['jacket', 'trousers']]
  ])('of a %s: %s', (kind, words, expected) => expect(of(kind, words, '40"', '34"')).toEqual(expected))
  test('the skirt of a dress is none', () =>
    expect(of('dress', 'Dress: bust 40". The skirt is 34" long.', '40"', '34"')).toEqual([null, null]))
  test('one that is only spoken of is none', () =>
    expect(of('jacket', 'Chest 40", goes with any trousers, length 34"', '40"', '34"')).toEqual([null, null]))
})

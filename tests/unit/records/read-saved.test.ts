/** What was saved, read: a kind that the person sets right where the reader saw no garment. */
import { expect, test } from 'vitest'
import { readSaved } from '../../../core/records/read-saved.ts'

const saved = (kind?: 'trousers') => ({
  text: 'Leather bag. Waist 40 cm flat, inside leg 76 cm.',
  title: 'The Handbag',
  structured: [],
  address: '',
  answers: [],
  corrections: kind === undefined ? [] : [{ kind }]
})

test('what is taken for no garment is measured once its kind is chosen', () => {
  const { reading } = readSaved(saved(), 'cm')
  expect(reading.garment.kind).toBeNull()
  expect(reading.issues.map(({ code }) => code)).toContain('reading.no-garment')
  expect(reading.measures).toEqual([])
  const chosen = readSaved(saved('trousers'), 'cm').reading
  expect(chosen.measures.map(({ point }) => point)).toEqual(['waist', 'inseam'])
  expect(chosen.issues.map(({ code }) => code)).not.toContain('reading.no-garment')
})

test('a garment that is one stays as it was read, whatever kind is chosen', () => {
  // an inside leg is read of a shirt too, where the text says so: the text is not read anew for the kind that is chosen
  const shirt = { ...saved(), text: 'Cotton shirt. Chest 52 cm flat, length 74 cm.', title: 'Cotton shirt' }
  const asRead = readSaved(shirt, 'cm').reading
  expect(asRead.measures.map(({ point }) => point)).toEqual(['chest', 'bodyLength'])
  expect(readSaved({ ...shirt, corrections: [{ kind: 'trousers' }] }, 'cm').reading).toEqual(asRead)
})

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

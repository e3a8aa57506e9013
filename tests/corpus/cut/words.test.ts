import { describe, expect, it } from 'vitest'
import { readListing } from '../../../core/reading/read-listing.ts'
import { wordsCases } from './words.ts'

describe('the cut in words', () => {
  it.each(wordsCases.map((one) => [`${one.title} / ${one.text}`, one] as const))('%s', (_, { title, text, kind, cut }) => {
    const reading = readListing({ title, text })
    const told = Object.fromEntries(Object.entries(reading.cut).map(([facet, { value }]) => [facet, value]))
    expect({ kind: reading.garment.kind, cut: told }).toEqual({ kind, cut })
    for (const read of Object.values(reading.cut)) expect(read).toMatchObject({ from: 'told' })
  })
  it('a word in the title is surer than one in the text', () => {
    const inTitle = readListing({ title: 'Bootcut jeans', text: 'waist 40 cm' }).cut.leg?.sureness ?? 0
    const inText = readListing({ title: 'Jeans', text: 'bootcut, waist 40 cm' }).cut.leg?.sureness ?? 0
    expect(inTitle).toBeGreaterThan(inText)
    expect(inText).toBeGreaterThan(0.5)
  })
  it('as many have nothing to read as a third of all', () => {
    expect(wordsCases.filter(({ cut }) => Object.keys(cut).length === 0).length * 4).toBeGreaterThan(wordsCases.length)
  })
})

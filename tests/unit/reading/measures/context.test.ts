/** Words around a figure that change what it says. */
import { describe, expect, test } from 'vitest'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { basisOfList, listBasis, wordsOf } from '../../../../core/reading/measures/context.ts'
import { figureAt, linkOf, nameAt, textOf } from '../given.ts'

const around = (words: string, name: string, figure: string, point: PointName = 'waist') => {
  const text = textOf(words)
  const link = linkOf(nameAt(text, name, [point]), figureAt(text, figure))
  const read = wordsOf(text, [link]).words.get(link)
  return { evidence: read?.evidence, qualifiers: [...(read?.qualifiers ?? [])].sort(), across: read?.across }
}

describe('flat and around', () => {
  test.each([
    ['waist 15" flat', ['word-flat']],
    ['waist 15" across', ['word-flat']],
    ['waist 30" around', ['word-around']],
    ['waist 15", laid flat', ['word-flat']],
    ['waist 15" x2', ['doubled']],
    ['flat: waist 15"', []],
    ['waist 15"', []]
  ])('%s', (words, evidence) => expect(around(words, 'waist', words.includes('30"') ? '30"' : '15"').evidence).toEqual(evidence))
  test('“doubled” leaves open whether it is done: it is no evidence', () => {
    expect(around('waist 30" doubled', 'waist', '30"').evidence).toEqual([])
  })
  test('a word past the end of its sentence or past another name is not its own', () => {
    expect(around('waist 15". Flat front', 'waist', '15"').evidence).toEqual([])
    expect(around('waist 15" hips 20" flat', 'waist', '15"').evidence).toEqual([])
  })
  test('its double beside it, and what the name itself says', () => {
    const text = textOf('waist 15"')
    const label = nameAt(text, 'waist', ['waist'], { basis: 'around' })
    const link = linkOf(label, figureAt(text, '15"', { doubling: 'flat' }))
    expect(wordsOf(text, [link]).words.get(link)?.evidence).toEqual(['doubled', 'name-around'])
  })
  test('wide: of a small girth it is flat, of a waist it may be all around', () => {
    expect(around('thigh 12" wide', 'thigh', '12"', 'thigh')).toMatchObject({ evidence: ['word-flat'], across: true })
    expect(around('skirt 60" wide', 'skirt', '60"', 'sweep')).toMatchObject({ evidence: [], across: true })
  })
})

describe('states and sides', () => {
  test.each([
    ['waist 30" relaxed', ['relaxed']],
    ['waist 38" stretched', ['stretched']],
    ['waist stretches to 38"', ['stretched']],
    ['waist (back) | 17"', ['back']],
    ['front waist 17"', ['front']]
  ])('%s', (words, qualifiers) => {
    const figure = /\d+"/.exec(words)?.[0] ?? ''
    expect(around(words, 'waist', figure).qualifiers).toEqual(qualifiers)
  })
  test('“(stretches to 21)” is said of the figure to come', () => {
    expect(around('waist 15" (stretches to 21)', 'waist', '15"').qualifiers).toEqual([])
  })
  test('the first figure tells whether words stand before or behind theirs', () => {
    const text = textOf('rise 11" front, 15" back')
    const label = nameAt(text, 'rise', ['rise'])
    const links = [linkOf(label, figureAt(text, '11"')), linkOf(label, figureAt(text, '15"'), { again: true })]
    const { words } = wordsOf(text, links)
    expect(links.map((link) => [...(words.get(link)?.qualifiers ?? [])])).toEqual([['front'], ['back']])
    const before = textOf('waist relaxed 28", stretched 36"')
    const name = nameAt(before, 'waist', ['waist'])
    const two = [linkOf(name, figureAt(before, '28"')), linkOf(name, figureAt(before, '36"'), { again: true })]
    const read = wordsOf(before, two)
    expect(two.map((link) => [...(read.words.get(link)?.qualifiers ?? [])])).toEqual([['relaxed'], ['stretched']])
  })
  test('a second figure after a word of measuring was measured', () => {
    const text = textOf('waist 32" (measures 33")')
    const label = nameAt(text, 'waist', ['waist'])
    const second = linkOf(label, figureAt(text, '33"'), { again: true })
    expect([...(wordsOf(text, [second]).words.get(second)?.qualifiers ?? [])]).toEqual(['measured'])
  })
})

describe('what is said of a whole list', () => {
  const list = (words: string) => listBasis(textOf(words), () => false)
  test('in its heading or in a note under it', () => {
    expect(list('Measurements (laid flat)\nchest 20').at.map(({ basis }) => basis)).toEqual(['flat'])
    expect(list('chest 20\nAll measured flat').at.map(({ basis }) => basis)).toEqual(['flat'])
    expect(list('Double the chest').at.map(({ basis }) => basis)).toEqual(['flat'])
  })
  test('“taken flat and doubled”: whole girths', () => {
    expect(list('All measurements taken flat and doubled').at.map(({ basis }) => basis)).toEqual(['around'])
  })
  test('a word that belongs to one figure says nothing of the list', () => {
    const text = textOf('Measurements flat')
    expect(listBasis(text, () => true)).toEqual({ at: [], of: new Map() })
  })
  test('a sentence of its own about one name', () => {
    expect([...list('chest 20\nThigh is measured flat.').of]).toEqual([['thigh', 'flat']])
    expect(list('Thigh is measured flat 12"').of.size).toBe(0)
  })
  test('a note on the name leads, then the heading before, then the note behind', () => {
    const told = {
      at: [
        { token: 5, basis: 'flat' as const },
        { token: 20, basis: 'around' as const }
      ],
      of: new Map([['thigh', 'around'] as const])
    }
    expect(basisOfList(told, 10, 'thigh')).toBe('around')
    expect(basisOfList(told, 10, 'waist')).toBe('flat')
    expect(basisOfList(told, 25, 'waist')).toBe('around')
    expect(basisOfList(told, 1, 'waist')).toBe('flat')
    expect(basisOfList({ at: [], of: new Map() }, 1, 'waist')).toBeNull()
  })
})

describe('how it lay', () => {
  test('open and tied', () => {
    expect(around('waist 40" open', 'waist', '40"').qualifiers).toEqual(['opened'])
    expect(around('waist 28" tied', 'waist', '28"').qualifiers).toEqual(['closed'])
    expect(around('laid open the waist is 54"', 'waist', '54"').qualifiers).toEqual(['opened'])
  })
  test('a state right before the next figure is its own', () => {
    expect(around('waist 26" relaxed - stretched 36"', 'waist', '26"').qualifiers).toEqual(['relaxed'])
  })
})

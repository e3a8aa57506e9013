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

describe('where the words of a figure end', () => {
  /** What is said of the waist's figure. */
  const said = (words: string) => around(words, 'waist', '15"')
  test.each<[string, string[]]>([
    // in brackets, behind a dash, small words stepped over
    ['waist 15" (flat)', ['word-flat']],
    ['waist 15" - flat', ['word-flat']],
    ['waist 15" or so when laid flat', ['word-flat']],
    ['waist 15" wobbly flat', []],
    // a mark that begins another part
    ['waist 15"; flat', []],
    ['waist 15" | flat', []],
    ['waist 15" • flat', []],
    ['waist 15" * flat', []],
    ['waist 15" / flat', []],
    ['waist 15"\nflat', []],
    // behind a comma only where nothing but the word is there
    ['waist 15", flat.', ['word-flat']],
    ['waist 15", flat)', ['word-flat']],
    ['waist 15", flat seams', []],
    ['waist 15", lovely flat', []],
    // before the figure a comma ends it
    ['waist laid flat 15"', ['word-flat']],
    ['waist laid flat, and 15"', []],
    ['waist laid flat - approx 15"', ['word-flat']],
    ['waist laid flat (approx) 15"', ['word-flat']],
    // a name, a detail, a heading and all are others'
    ['waist 15" lining flat', []],
    ['waist 15" measurements flat', []],
    ['waist 15" everything flat', []],
    ['waist 15" 20 flat', []]
  ])('%s', (words, evidence) => expect(said(words).evidence).toEqual(evidence))
  test.each<[string, string[]]>([
    // a single word right before the name
    ['half knee 15"', ['word-flat']],
    ['flat knee 15"', ['word-flat']],
    ['flat and knee 15"', []],
    ['flat: knee 15"', []],
    // a phrase there heads the list
    ['laid flat knee 15"', []]
  ])('%s', (words, evidence) => expect(around(words, 'knee', '15"', 'knee').evidence).toEqual(evidence))
  test.each<[string, string[]]>([
    // a side beside the name, before the bar that parts the columns
    ['waist (back) | 15"', ['back']],
    ['waist, back | 15"', ['back']],
    ['waist, back | front 15"', ['back', 'front']],
    ['waist back | 15"', []],
    ['waist (relaxed) | 15"', []],
    // how it lay, told before the name, small words stepped over
    ['laid open the waist is 15"', ['opened']],
    ['laid open at the waist 15"', ['opened']],
    ['laid open in a big waist 15"', []],
    // a state and a dash: the next has its own
    ['waist relaxed - 15"', ['relaxed']],
    ['waist 15" relaxed - stretched 21"', ['relaxed']],
    ['waist 15" relaxed - stretched', ['relaxed', 'stretched']],
    // in brackets, of the figure to come
    ['waist 15" (stretched 21)', []],
    ['waist 15" stretched 21', ['stretched']],
    ['waist 15" stretches to 21', []],
    // where its front is measured
    ['waist 15" (front point)', ['front']]
  ])('%s', (words, qualifiers) => expect(said(words).qualifiers).toEqual(qualifiers))
})

describe('across', () => {
  test.each<[string, string, PointName, string[], boolean]>([
    ['sleeve 7" across', '7"', 'sleeveLength', ['word-flat'], true],
    ['sleeve 7" around', '7"', 'sleeveLength', ['word-around'], true],
    ['sleeve 7" flat', '7"', 'sleeveLength', ['word-flat'], false],
    ['sleeve 7" long', '7"', 'sleeveLength', [], false],
    ['sleeve 7" wide', '7"', 'sleeveLength', [], true],
    // of a small girth a width is taken across, but not where it is told around
    ['sleeve 7" wide', '7"', 'cuff', ['word-flat'], true],
    ['sleeve around 7" wide', '7"', 'cuff', ['word-around'], true],
    ['sleeve 7" wide', '7"', 'hem', [], true]
  ])('%s', (words, figure, point, evidence, across) => {
    expect(around(words, 'sleeve', figure, point)).toMatchObject({ evidence, across })
  })
})

describe('a second figure', () => {
  /** What is said of each of two figures of one name. */
  const both = (words: string, name: string, first: string, second: string) => {
    const text = textOf(words)
    const label = nameAt(text, name, ['width'])
    const links = [linkOf(label, figureAt(text, first)), linkOf(label, figureAt(text, second), { again: true })]
    const { words: read } = wordsOf(text, links)
    return links.map((link) => [...(read.get(link)?.qualifiers ?? [])].join(' '))
  }
  test.each<[string, string, string]>([
    // a side right before it is its own
    ['width 11" front, back 15"', 'front', 'back'],
    ['width front 11", back 15"', 'front', 'back'],
    ['width 11" front, 15" back', 'front', 'back'],
    ['width 11", back 15"', '', 'back'],
    // a state on each side of the dash: each figure has its own
    ['width 11" relaxed - stretched 15"', 'relaxed', 'stretched']
  ])('%s', (words, first, second) => {
    expect(both(words, 'width', '11"', '15"')).toEqual([first, second])
  })
  test('a side in the name is of the first alone', () => {
    expect(both('front rise 11", 15"', 'front rise', '11"', '15"')).toEqual(['front', ''])
  })
})

describe('what heads a list and what does not', () => {
  const list = (words: string) => {
    const { at, of } = listBasis(textOf(words), () => false)
    return [...at.map(({ basis }) => basis), ...[...of].map(([name, basis]) => `${name} ${basis}`)]
  }
  test.each<[string, string[]]>([
    // a line of its own, of five words at the most and no figure
    ['Laid flat\nchest 20', ['flat']],
    ['Laid flat on my table\nchest 20', ['flat']],
    ['Laid flat on my own table\nchest 20', []],
    ['Laid flat 20\nchest 20', []],
    // a word that only stands beside figures heads nothing alone, but does in a heading
    ['Across\nchest 20', []],
    ['Measurements across\nchest 20', ['flat']],
    ['Around the world\nchest 20', []],
    // another sentence's word of measuring is no help
    ['Measurements below. Lies across my bed', []],
    // done: whole girths, whatever was flat before; to be done: half ones
    ['Measurements doubled', ['around']],
    ['Measurements x2', ['flat']],
    ['Measurements laid flat and doubled', ['around']],
    ['Measurements laid flat. Measurements doubled', ['flat', 'around']],
    ['Lovely and doubled', []],
    ['Double the waist', ['flat']],
    // a note on one name, with no figure behind it
    ['Thigh is measured flat.', ['thigh flat']],
    ['Waist taken around.', ['waist around']],
    ['Waist is taken around.', ['waist around']],
    ['Waist taken flat.', ['waist flat']],
    ['Measurements of waist taken around.', ['around']],
    ['Thigh and waist measured flat.', ['flat']],
    ['Thigh measured flat 12', []]
  ])('%s', (words, expected) => expect(list(words)).toEqual(expected))
})

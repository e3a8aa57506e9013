/** What the words of a text mean: lengths that two landmarks make, phrases as they are spelt elsewhere, terms by their roles. */
import { describe, expect, test } from 'vitest'
import { type Node, phraseTrieOf } from '../../../../core/reading/text/phrase-trie.ts'
import { endAt, endsOf, meaning, means, meansAny, type Term, termAt, termsAs } from '../../../../core/reading/text/terms.ts'
import { readText } from '../../../../core/reading/text/text.ts'

/** The points that are named, and details. */
const named = (words: string, language = 'en') =>
  readText(words, language)
    .terms.list.flatMap((term) => {
      const point = meaning(term, 'point')
      if (point) return [`${point.point}${point.basis ? ` ${point.basis}` : ''}`]
      return means(term, 'detail') ? ['detail'] : []
    })
    .join(', ')

describe('from one landmark to another, small words between', () => {
  test.each([
    ['from one shoulder to the other shoulder', 'shoulderWidth'],
    ['neck down to the hem', 'bodyLength'],
    ['top to the hem', 'length'],
    ['neck down to the cuff', 'sleeveFromCentreBack'],
    ['armpit down to the cuff', 'sleeveUnderarm'],
    ['neck down to the waist', 'napeToWaist'],
    ['crotch down to the hem', 'inseam'],
    ['from the hem up to the crotch', 'inseam'],
    ['crotch down to the cuff', 'inseam'],
    ['neck down to the crotch', 'torsoLength'],
    ['armpit down to the hem', 'detail'],
    // what is a length by itself is where another one starts
    ['shoulder down to the cuff 24"', 'sleeveLength'],
    ['shoulder down to the waist 16"', 'napeToWaist'],
    ['shoulder down to the crotch 30"', 'torsoLength'],
    ['waist down to the crotch 12"', 'frontRise'],
    ['waist down to the cuff 40"', 'outseam'],
    ['waist down to hem 26"', 'skirtLength'],
    ['collar down to the cuff 30"', 'sleeveFromCentreBack'],
    ['shoulder down 40"', 'bodyLength'],
    ['waist down 26"', 'skirtLength'],
    ['nape down 40"', 'bodyLength'],
    // names of edges are ends too
    ['crotch to leg opening', 'inseam'],
    ['shoulder to sweep', 'bodyLength'],
    ['shoulder to end of cuff', 'sleeveLength'],
    ['shoulder to bottom of the sleeve', 'sleeveLength'],
    ['sleeve to cuff', 'sleeveLength, cuffEdge'],
    // two words that mean nothing may stand behind “to”, and no more
    ['shoulder to the longest part of the hem', 'bodyLength'],
    ['shoulder to gizmo wobble hem', 'bodyLength'],
    ['shoulder to gizmo wobble gadget hem', 'shoulderWidth, bottomEdge'],
    ['shoulder gizmo to hem', 'shoulderWidth, bottomEdge'],
    ['shoulder, to the hem', 'shoulderWidth, bottomEdge'],
    // a hyphen: glued, or with the figure behind both
    ['collar-hem', 'bodyLength'],
    ['collar - hem 25"', 'bodyLength'],
    ['collar - hem: 25"', 'bodyLength'],
    ['collar - hem', 'neck, bottomEdge'],
    ['collar, hem 25"', 'neck, bottomEdge']
  ])('%s: %s', (words, expected) => expect(named(words)).toBe(expected))
  test('its ends are known, and a name of an edge is one', () => {
    const [length, , hem] = readText('crotch down to the hem, waist, hem', 'en').terms.list
    expect(endsOf(length)).toEqual(['crotch', 'hem'])
    expect([endsOf(hem), endsOf(undefined)]).toEqual([null, null])
    expect([endAt(hem), endAt(undefined)]).toEqual(['hem', undefined])
  })
})

describe('as people spell them', () => {
  test.each([
    ['de', 'Ärmellänge 60', 'sleeveLength'],
    ['de', 'Aermellaenge 60', 'sleeveLength'],
    ['de', 'Armellange 60', 'sleeveLength'],
    ['de', 'Hüfte 50', 'hip'],
    ['de', 'Huefte 50', 'hip'],
    ['de', 'Hufte 50', 'hip'],
    ['da', 'Ærmelængde 60', 'sleeveLength'],
    ['da', 'Aermelaengde 60', 'sleeveLength'],
    ['sv', 'Ärmlängd 60', 'sleeveLength'],
    ['sv', 'Armlangd 60', 'sleeveLength'],
    ['en', 'waists 30', 'waist'],
    ['en', 'waistes 30', '']
  ])('%s %s: %s', (language, words, expected) => expect(named(words, language)).toBe(expected))
})

describe('terms by their roles', () => {
  const { tokens, terms } = readText('Waist 30 cm, gizmo hips, back pockets; the cm mark', 'en')
  const at = (word: string): Term | undefined =>
    termAt(
      terms,
      tokens.findIndex(({ text }) => text === word)
    )
  test('one role, or any of several, wherever in the list it stands', () => {
    const waist = at('waist')
    expect(means(waist, 'point')).toBe(true)
    expect(means(waist, 'unit')).toBe(false)
    expect(means(waist, 'unit', 'point')).toBe(true)
    expect(means(waist, 'unit', 'model', 'point')).toBe(true)
    expect(means(waist, 'unit', 'model', 'fits', 'point')).toBe(true)
    expect(means(waist, 'unit', 'model', 'fits', 'cutFor', 'point')).toBe(true)
    expect(means(waist, 'unit', 'model', 'fits', 'cutFor', 'parcel', 'point')).toBe(true)
    expect(means(waist, 'unit', 'model', 'fits', 'cutFor', 'parcel', 'size')).toBe(false)
    expect([meansAny(waist, ['unit', 'point']), meansAny(waist, ['unit']), meansAny(waist, [])]).toEqual([true, false, false])
    expect([means(undefined, 'point'), meansAny(undefined, ['point']), meaning(undefined, 'point')]).toEqual([false, false, undefined])
  })
  test('a word that means nothing has no term', () => expect(at('gizmo')).toBeUndefined())
  test('in the order of the text, each once', () => {
    const words = (list: readonly Term[]) => list.map(({ from }) => tokens[from]?.text)
    expect(words(termsAs(terms, 'unit'))).toEqual(['cm', 'cm'])
    expect(words(termsAs(terms, 'unit', 'point'))).toEqual(words(terms.list.filter((term) => means(term, 'unit', 'point'))))
    expect(words(termsAs(terms, 'otherUnit', 'detail')).filter((word) => word === 'back')).toHaveLength(1)
    expect(termsAs(terms, 'parcel')).toEqual([])
    expect(words(termsAs(terms, 'parcel', 'unit'))).toEqual(['cm', 'cm'])
  })
})

describe('two languages beside each other', () => {
  test.each([
    // what sellers write in English stands in any language, but for words that mean something else there
    ['de', 'pit to pit 50, Länge 70', 'chest flat, length'],
    ['en', 'hem 40', 'bottomEdge'],
    ['nl', 'hem 40', ''],
    ['sv', 'hem 40', ''],
    // a name of the language itself leads over the same word in English
    ['en', 'overarm 40', 'sleeveLength'],
    ['da', 'overarm 40', 'bicep'],
    ['no', 'overarm 40', 'bicep']
  ])('%s %s: %s', (language, words, expected) => expect(named(words, language)).toBe(expected))
})

describe('what a phrase means', () => {
  /** All that each term says of a garment. */
  const said = (words: string, language = 'en') =>
    readText(words, language).terms.list.map(({ meaning: { senses } }) =>
      senses.flatMap((sense) => {
        if (sense.role === 'kind') return sense.kind
        if (sense.role === 'fibre') return sense.fibre
        if (sense.role === 'trait') return sense.trait
        if (sense.role === 'structure') return sense.structure
        return sense.role === 'point' ? sense.point : []
      })
    )
  test.each([
    // the words of a garment’s name tell each for itself too, but not those of what it only looks like
    ['denim jacket', [['jacket', 'woven', 'denim']]],
    ['leather jacket', [['jacket', 'leather']]],
    ['faux leather jacket', [['vinyl'], ['jacket']]],
    // an elastic waist is still the waist
    ['elastic waist', [['waist']]]
  ])('%s: %j', (words, expected) => {
    expect(said(words)).toEqual(expected)
    // the second time as the first
    expect(said(`${words}, ${words}`)).toEqual([...expected, ...expected])
  })
  test('pockets at the back are told apart, and are pockets like others', () => {
    const [term] = readText('back pockets', 'en').terms.list
    expect([means(term, 'backPockets'), means(term, 'detail'), means(term, 'otherUnit')]).toEqual([true, true, true])
  })
  test.each(['en', 'de', 'da', 'ja'])('no phrase says one thing twice: %s', (language) => {
    const { from, everyWord } = phraseTrieOf(language)
    let phrases = 0
    const walk = ({ next, meaning: its }: Node): string[] => {
      phrases += its ? 1 : 0
      const told = (its?.senses ?? []).map((sense) => JSON.stringify({ ...sense, rank: 0 }))
      return [...told.filter((one, at) => told.indexOf(one) !== at), ...[...next.values()].flatMap(walk)]
    }
    const twice = [...everyWord(() => true)].flatMap((word) => {
      const root = from(word)?.root
      return root ? walk(root) : []
    })
    expect(phrases).toBeGreaterThan(3000)
    expect(twice).toEqual([])
  })
})

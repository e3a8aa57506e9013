/** What the words of a listing say of its kind, each piece with its weight. */
import { describe, expect, test } from 'vitest'
import { type Because, MOST, REPEATED, WEIGHT } from '../../../../core/reading/garment/kind-evidence.ts'
import { kindWords } from '../../../../core/reading/garment/kind-words.ts'
import type { Candidate } from '../../../../core/reading/garment/nouns.ts'
import { textOf } from '../given.ts'

interface Listing {
  title?: string
  text?: string
  name?: string
  category?: string
  path?: string
  language?: string
}
const said = ({ title, text = '', name, category, path, language = 'en' }: Listing) =>
  kindWords(
    title === undefined ? null : textOf(title, language),
    textOf(text, language),
    { name: name ?? null, category: category ?? null, path: path ?? null },
    language
  )
type Piece = [Candidate, number]
const pieces = (listing: Listing, ...because: Because[]): Piece[] =>
  said(listing)
    .evidence.filter((one) => because.includes(one.because))
    .map((one): Piece => [one.for, Number(one.weight.toFixed(6))])
const rounded = (expected: Piece[]): Piece[] => expected.map(([kind, weight]): Piece => [kind, Number(weight.toFixed(6))])

const { head, thing, passingHead, name: named, modifier, later, furtherOn } = WEIGHT.title
/** The share of a word that may also name another kind. */
const OR = 0.6

describe('a title: its head, what stands beside it, what comes in a later part', () => {
  test.each<[string, Piece[]]>([
    ['Wool jacket with matching skirt', [['jacket', head]]],
    // each mark parts, a hyphen only where it stands off
    [
      'Wool jacket, skirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket (skirt)',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket - skirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket / skirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket and skirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket or skirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket\nskirt',
      [
        ['jacket', head],
        ['skirt', later]
      ]
    ],
    [
      'Wool jacket-skirt',
      [
        ['skirt', head],
        ['jacket', modifier]
      ]
    ],
    [
      'Wool jacket skirt',
      [
        ['skirt', head],
        ['jacket', modifier]
      ]
    ],
    // from three further parts on it is a list of words to be found by
    [
      'Wool jacket, skirt, dress',
      [
        ['jacket', head],
        ['skirt', later],
        ['dress', later]
      ]
    ],
    [
      'Wool jacket, skirt, dress, shorts',
      [
        ['jacket', head],
        ['skirt', furtherOn],
        ['dress', furtherOn],
        ['shorts', furtherOn]
      ]
    ],
    // a word that may name either
    [
      'Vest',
      [
        ['waistcoat', passingHead],
        ['knit-top', passingHead * OR]
      ]
    ],
    [
      'Waxed coat',
      [
        ['coat', head],
        ['jacket', head * OR]
      ]
    ],
    ['Leather handbag', [['thing', thing]]],
    [
      'Leather bag skirt',
      [
        ['skirt', head],
        ['thing', modifier]
      ]
    ],
    // a name that holds a garment's word
    [
      'Pinafore Lane - waxed coat',
      [
        ['coat', head],
        ['jacket', head * OR],
        ['dress', named]
      ]
    ],
    ['Pinafore Lane', [['dress', head]]],
    // what stands beside heads a title only where nothing else could
    ['With wool coat', [['coat', WEIGHT.title.beside]]],
    ['Lovely brown old gift with wool coat', []],
    ['Lovely', []]
  ])('%j', (title, expected) => expect(pieces({ title }, 'title')).toEqual(rounded(expected)))
  test('in French the head of a compound stands first', () => {
    expect(pieces({ title: 'Jean et pull', language: 'fr' }, 'title')).toEqual([
      ['jeans', head],
      ['jumper', later]
    ])
  })
})

describe('a text without a title: what it opens with is told like one', () => {
  const { opening, head: mention, fielded, tag } = WEIGHT.text
  const [, second, third, fourth] = REPEATED
  const FIRST = 1.5
  const POINTED_AT = 1.6
  test.each<[string, Piece[]]>([
    [
      'A skirt',
      [
        ['skirt', head * opening],
        ['skirt', mention * FIRST]
      ]
    ],
    [
      'This skirt',
      [
        ['skirt', head * opening],
        ['skirt', mention * FIRST * POINTED_AT]
      ]
    ],
    // “category:” and “item:” tell it like a field of a form
    [
      'Item: skirt',
      [
        ['skirt', head * opening],
        ['skirt', fielded * FIRST]
      ]
    ],
    [
      'Skirt. Skirt',
      [
        ['skirt', head * opening],
        ['skirt', FIRST + second]
      ]
    ],
    [
      'Skirt. Skirt. Skirt. Skirt',
      [
        ['skirt', head * opening],
        ['skirt', FIRST + second + third + fourth]
      ]
    ],
    [
      'A skirt. #dress',
      [
        ['skirt', head * opening],
        ['skirt', FIRST],
        ['dress', tag]
      ]
    ],
    [
      'A skirt. A dress',
      [
        ['skirt', head * opening],
        ['skirt', FIRST],
        ['dress', mention]
      ]
    ],
    [
      'A skirt and dress',
      [
        ['skirt', head * opening],
        ['dress', later * opening],
        ['skirt', FIRST],
        ['dress', mention]
      ]
    ],
    // a sentence that names three kinds is a list of them, and four say even less
    [
      'A skirt, jeans and dress',
      [
        ['skirt', FIRST / 3],
        ['jeans', mention / 3],
        ['dress', mention / 3]
      ]
    ],
    [
      'A skirt, jeans, trousers and dress',
      [
        ['skirt', (FIRST * 0.3) / 4],
        ['jeans', (mention * 0.3) / 4],
        ['trousers', (mention * 0.3) / 4],
        ['dress', (mention * 0.3) / 4]
      ]
    ],
    [
      'A skirt. Shorts',
      [
        ['skirt', head * opening],
        ['skirt', FIRST],
        ['shorts', mention / 2]
      ]
    ],
    // nor does a thing in passing open it
    [
      'Watch the length. A skirt',
      [
        ['skirt', head * opening],
        ['thing', (FIRST * WEIGHT.text.thing) / 2],
        ['skirt', mention]
      ]
    ],
    [
      'A handbag. A skirt',
      [
        ['thing', thing * opening],
        ['thing', FIRST * WEIGHT.text.thing],
        ['skirt', mention]
      ]
    ],
    ['Worn with a jacket', []],
    ['Lovely', []]
  ])('%j', (text, expected) => expect(pieces({ text }, 'title', 'text')).toEqual(rounded(expected)))
  test('a title that names it leaves the text its mentions', () => {
    expect(pieces({ title: 'Wool dress', text: 'A skirt' }, 'text')).toEqual([['skirt', FIRST]])
    expect(pieces({ title: 'Lovely', text: 'A skirt' }, 'text')).toEqual(
      rounded([
        ['skirt', head * opening],
        ['skirt', FIRST]
      ])
    )
  })
})

describe('a page: what its data call it, its category, the end of its address', () => {
  const { name, category, address } = WEIGHT.page
  test.each<[Listing, Piece[]]>([
    [{ name: 'Wool dress' }, [['dress', head * name]]],
    [{ category: 'Clothing > Dresses' }, [['dress', category]]],
    // the same part twice, or in both, counts once
    [{ category: 'Dresses > Dresses' }, [['dress', category]]],
    [{ category: 'dresses', path: '/dresses/rust' }, [['dress', category]]],
    [
      { category: 'Dresses|Skirts' },
      [
        ['dress', category],
        ['skirt', category]
      ]
    ],
    [{ path: 'https://skirts.example/womens/dresses/rust-88?id=skirt' }, [['dress', address]]],
    [{ path: 'https://x.example/dresses/rust#skirt' }, [['dress', address]]],
    [{ path: '/womens_dresses/rust' }, [['dress', address]]],
    [{ path: '/a/dresses/b/c/d/e/f' }, [['dress', address]]],
    // six parts from its end are looked at
    [{ path: '/dresses/a/b/c/d/e/f' }, []],
    [{ path: '/dresses-and-skirts/rust' }, []],
    [
      { category: 'Vests' },
      [
        ['waistcoat', category],
        ['knit-top', category * OR]
      ]
    ]
  ])('%j', (listing, expected) => expect(pieces(listing, 'page')).toEqual(rounded(expected)))
})

describe('how it is made, and what style it is', () => {
  const { construction, style } = WEIGHT
  const jacket = (text: string, title?: string) =>
    pieces({ text, ...(title === undefined ? {} : { title }) }, 'construction').find(([kind]) => kind === 'jacket')?.[1]
  test('each group once, again for half, and all together no more than so much', () => {
    expect(jacket('side vents')).toBe(construction)
    expect(jacket('no side vents')).toBeUndefined()
    expect(jacket('side vents. Side vents')).toBe(construction * 1.5)
    expect(jacket('side vents. Side vents. Side vents')).toBe(construction * 1.5)
    expect(jacket('side vents', 'Side vents')).toBe(construction * 1.5)
    expect(jacket('side vents, notch lapels. Side vents, notch lapels')).toBe(MOST.construction)
  })
  test('a style by itself names its kind, in a title more surely; beside a noun it says of what sort that is', () => {
    expect(pieces({ title: 'Sheath' }, 'style')).toEqual([['dress', style.title]])
    expect(pieces({ text: 'a sheath, darted' }, 'style')).toEqual([['dress', style.text]])
    expect(pieces({ title: 'Sheath', text: 'a sheath, darted' }, 'style')).toEqual([['dress', style.title]])
    expect(pieces({ title: 'Sheath dress' }, 'style')).toEqual([])
    expect(pieces({ title: 'Dress sheath' }, 'style')).toEqual([])
  })
  test('cloth tells a kind only where something names it', () => {
    expect(pieces({ title: 'Blouse', text: 'satin' }, 'cloth')).toEqual([['shirt', WEIGHT.cloth.telling]])
    expect(pieces({ text: 'satin' }, 'cloth')).toEqual([])
    expect(pieces({ title: 'Jeans', text: 'satin' }, 'cloth')).toEqual([])
  })
})

describe('a facet of the cut that only some kinds have', () => {
  const { title: inTitle, text: inText } = WEIGHT.cut
  const legs = (weight: number): Piece[] => [
    ['trousers', weight],
    ['jeans', weight],
    ['shorts', weight],
    ['jumpsuit', weight]
  ]
  test.each<[Listing, Piece[]]>([
    [{ text: 'high rise' }, legs(inText)],
    [{ title: 'High rise' }, legs(inTitle)],
    // once, as its title tells it
    [{ title: 'High rise', text: 'high rise' }, legs(inTitle)],
    [{ text: 'no high rise' }, []],
    [{ text: 'worn with a high rise skirt' }, []]
  ])('%j', (listing, expected) => expect(pieces(listing, 'cut')).toEqual(expected))
})

test('denim told early, in the title or in the text, is of the garment', () => {
  expect(said({ title: 'Denim dress' }).denim).toBe(true)
  expect(said({ title: 'Lovely', text: 'Selvedge denim' }).denim).toBe(true)
  expect(said({ title: 'Wool dress', text: 'Lovely' }).denim).toBe(false)
  expect(said({ text: `${'word '.repeat(59)}denim` }).denim).toBe(true)
  expect(said({ text: `${'word '.repeat(60)}denim` }).denim).toBe(false)
})

test('what the word of a kind tells beside it is kept of the first that tells it, and of none that stands beside', () => {
  expect(said({ title: 'Wool suit jacket', text: 'A jacket' }).made.get('jacket')).toEqual({ tailored: true })
  expect(said({ title: 'Pinafore Lane' }).made.has('dress')).toBe(true)
  expect(said({ title: 'With wool coat' }).made.has('coat')).toBe(false)
  expect(said({ title: 'Wool skirt', text: 'goes with a suit jacket' }).made.has('jacket')).toBe(false)
})

test('the sums add what was said of each', () => {
  const { sums, evidence } = said({ title: 'Wool dress', text: 'A dress, a skirt', category: 'Dresses' })
  const total = evidence.filter((one) => one.for === 'dress').reduce((sum, { weight }) => sum + weight, 0)
  expect(sums.sums[sums.of.indexOf('dress')]).toBeCloseTo(total, 9)
  expect([...new Set(evidence.map((one) => one.for))]).toEqual(sums.of)
})

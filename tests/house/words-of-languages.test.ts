/** The words of sellers stand in core/reading/languages, a phrase a line; the rules of the reader ask for them by role. */
import { expect, test } from 'vitest'
import type { Lexicon } from '../../core/reading/languages/lexicon.ts'
import { phrasesIn } from '../../core/reading/languages/phrases.ts'
import { LEXICONS } from '../../core/reading/text/lexicons.ts'
import { wordsOf } from '../../core/reading/text/phrase-trie.ts'
import { looseWords } from './loose-words.ts'
import { type SourceFile, sourcesIn, walk } from './project.ts'

/** Words that a rule may hold, since no language has them as its own: codes, standards, what the reader itself writes. */
const LANGUAGE_FREE: { file: string; words: string; because: string }[] = [
  {
    file: 'core/reading/facts/price.ts',
    words: 'au aud ca cad nz nzd us usd sg hk zh',
    because: 'codes of countries, currencies and languages (ISO 3166, 4217, 639)'
  },
  { file: 'core/reading/facts/posted-in.ts', words: 'AU Aus US UK EU EUR IT FR DE JP', because: 'countries as labels shorten them' },
  { file: 'core/reading/facts/whose.ts', words: 'UK US AU NZ', because: 'countries as labels shorten them' },
  { file: 'core/reading/measures/figures.ts', words: 'stretched', because: 'the name of a qualifier, no word of a text' },
  { file: 'core/reading/page-data/more-text.ts', words: 'Size To fit', because: 'how schema-measures.ts itself begins its lines' },
  {
    file: 'core/reading/page-data/offers.ts',
    words: 'soldout outofstock discontinued listprice strikethroughprice msrp srp wearable sizesystem',
    because: 'names of schema.org'
  },
  {
    file: 'core/reading/page-data/products.ts',
    words: 'product individualproduct productmodel productgroup someproducts https www',
    because: 'names of schema.org, parts of addresses'
  },
  {
    file: 'core/reading/page-data/schema-measures.ts',
    words: 'https schema wearable body measurement type',
    because: 'names of schema.org, parts of addresses'
  },
  {
    file: 'core/reading/page-data/structured.ts',
    words: 'br li div tr dd dt new used refurbished damaged condition https schema',
    because: 'names of HTML and of schema.org, parts of addresses'
  },
  { file: 'core/reading/sizes/label-evidence.ts', words: 'us xl XL reg long short', because: 'sizes as labels print them everywhere' },
  { file: 'core/reading/sizes/size-labels.ts', words: 'it de us int au', because: 'codes of the regions of sizes' },
  {
    file: 'core/reading/sizes/size-words.ts',
    words: 'xl xs small medium large xlarge xxlarge xsmall os osfa regular long short tall petite reg one size extra',
    because: 'the table of sizes as labels print them everywhere'
  },
  { file: 'core/reading/text/normalise.ts', words: 'br li ul ol div tr table section dt dd dl', because: 'names of HTML' }
]

const allowedIn = (path: string): Set<string> =>
  new Set(LANGUAGE_FREE.flatMap(({ file, words }) => (file === path ? words.split(' ') : [])))

const rules = sourcesIn('core/reading').filter(({ path }) => !path.startsWith('core/reading/languages/'))

/** What is wrong with a file of rules, by place, and what to do. */
function faultsOf(file: SourceFile): string[] {
  const allowed = allowedIn(file.path)
  const by = new Map<string, Set<string>>()
  for (const { at, word } of looseWords(file)) if (!allowed.has(word)) by.set(at, (by.get(at) ?? new Set()).add(word))
  return [...by].map(
    ([at, words]) =>
      `${at} holds ${[...words].join(', ')}: give the words a role in core/reading/languages (cue-roles.ts, then cues.ts of each ` +
      "language) and ask for it with cue('role'), or for a role of phrases with means(term, 'role')."
  )
}

test('no rule of the reader holds words of a language', () => {
  expect(rules.length).toBeGreaterThan(60)
  expect(rules.flatMap(faultsOf)).toEqual([])
})

test('every word that is let through still stands where it is', () => {
  const gone = LANGUAGE_FREE.flatMap(({ file, words }) => {
    const found = new Set(rules.filter(({ path }) => path === file).flatMap((one) => looseWords(one).map(({ word }) => word)))
    return words.split(' ').flatMap((word) => (found.has(word) ? [] : [`${file} no longer holds ${word}: take it off the list.`]))
  })
  expect(gone).toEqual([])
})

test.each([
  ['a regular expression', 'const WITH = /\\b(with|mit)\\b/', 'with, mit'],
  ['a regular expression that is made', "const WITH = new RegExp('^(?:with|mit)$')", 'with, mit'],
  ['a template of one', `const WITH = new RegExp(\`^(?:with|\${more})$\`)`, 'with'],
  ['a comparison', "const at = tokens[at]?.text === 'with'", 'with'],
  ['a comparison by name', "const next = tokens[at]?.text ?? ''; const at = 'with' !== next", 'with'],
  ['a choice', "switch (token.text) { case 'with': break }", 'with'],
  ['a set', "const WITH = new Set(['with', 'mit']); const at = WITH.has(token.text)", 'with, mit'],
  ['a list', "const at = ['with', 'mit'].includes(word)", 'with, mit'],
  ['a map', "const WITH = new Map([['with', 1], ['mit', 2]]); const at = WITH.get(tokens[at]?.text ?? '')", 'with, mit'],
  ['a table', 'const WITH = { with: 1, mit: 2 }; const at = WITH[token.text]', 'with, mit'],
  ['words in one string', "const WITH = 'with mit avec'.split(' ')", 'with, mit, avec']
])('words in %s would be seen', (_, text, words) => {
  const faults = faultsOf({ path: 'core/reading/links/x.ts', text })
  expect(faults).toHaveLength(1)
  expect(faults[0]).toContain(`core/reading/links/x.ts:1 holds ${words}: give the words a role`)
})

test('signs, units, kinds of tokens, ids of points and roles are no words of a text', () => {
  const text = `
    const SIGN = /^[:=x-]$|\\bcm\\b|\\p{Letter}|\\u00a0|(?<whole>\\d+)/
    const IDS = new Set(['waist', 'hip'])
    const named = IDS.has(label.points[0]) && token.kind === 'digits' && means(term, 'light', 'from') && token.text === 'x'`
  expect(looseWords({ path: 'core/reading/links/x.ts', text })).toEqual([])
})

/** Every list of phrases of a language, by where it stands. */
function listsOf({ language, common, falseFriends, points, landmarks, basis, words, units, kinds, made, faults, ...rest }: Lexicon) {
  const { fibres, structures, traits, uses, whose, colours, currencies, cues } = rest
  const records = { points, landmarks, basis, words, units, fibres, structures, traits, uses, whose, colours, currencies, cues }
  return [
    { where: `${language} common`, list: common },
    { where: `${language} falseFriends`, list: falseFriends },
    ...Object.entries(records).flatMap(([name, record]) =>
      Object.entries(record).map(([key, list]) => ({ where: `${language} ${name}.${key}`, list }))
    ),
    ...kinds.map(({ kind, phrases }) => ({ where: `${language} kinds ${kind}`, list: phrases })),
    ...made.map(({ fact, phrases }) => ({ where: `${language} made ${fact.fact}`, list: phrases })),
    ...faults.map(({ mending, phrases }) => ({ where: `${language} faults ${mending.join(' ')}`, list: phrases }))
  ]
}
const lists = LEXICONS.flatMap(listsOf)

test('each phrase has a line of its own, once', () => {
  expect(lists.length).toBeGreaterThan(1000)
  const wrong = lists.flatMap(({ where, list }) => {
    const phrases = phrasesIn(list)
    const twice = phrases.filter((phrase, index) => phrases.indexOf(phrase) !== index)
    const joined = phrases.filter((phrase) => /[|;,]/.test(phrase))
    return [
      ...twice.map((phrase) => `${where} holds “${phrase}” twice: take one out.`),
      ...joined.map((phrase) => `${where} holds “${phrase}”: give each phrase a line.`)
    ]
  })
  expect(wrong).toEqual([])
})

test('a cue is one word', () => {
  const longer = LEXICONS.flatMap(({ language, cues }) =>
    Object.entries(cues).flatMap(([role, list]) =>
      phrasesIn(list)
        .filter((word) => wordsOf(word).length !== 1)
        .map((word) => `${language} cues.${role} holds “${word}”: a cue is one word; a phrase belongs into words (WordRole).`)
    )
  )
  expect(longer).toEqual([])
})

/** Roles by the name of their type, as cue-roles.ts lists them. */
function rolesOf(type: string): string[] {
  const [file] = sourcesIn('core/reading/languages').filter(({ path }) => path.endsWith('/cue-roles.ts'))
  const roles: string[] = []
  if (file === undefined) return roles
  walk(file, (node) => {
    if (node.type !== 'TSTypeAliasDeclaration' || !file.text.slice(node.start, node.end).startsWith(`type ${type} =`)) return
    for (const [, role] of file.text.slice(node.start, node.end).matchAll(/\| '(\w+)'/g)) if (role !== undefined) roles.push(role)
  })
  return roles
}

test('every role is asked for by a rule, and has words in a language', () => {
  const asked = new Set(rules.flatMap(({ text }) => [...text.matchAll(/'(\w+)'/g)].map(([, name]) => name)))
  const cues = rolesOf('CueRole')
  const amounts = rolesOf('AmountRole')
  expect(cues.length).toBeGreaterThan(100)
  expect(amounts.length).toBeGreaterThan(4)
  const spoken = new Set(LEXICONS.flatMap((one) => [...Object.keys(one.cues), ...Object.keys(one.amounts ?? {})]))
  expect([...cues, ...amounts].filter((role) => !asked.has(role)).map((role) => `${role}: no rule asks for it, take it out.`)).toEqual([])
  expect([...cues, ...amounts].filter((role) => !spoken.has(role)).map((role) => `${role}: no language has words for it.`)).toEqual([])
})

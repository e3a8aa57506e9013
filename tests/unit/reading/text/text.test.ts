/** Words, what they mean, and how they are laid out. */
import { describe, expect, test } from 'vitest'
import { phrasesIn } from '../../../../core/reading/languages/phrases.ts'
import { layoutOf } from '../../../../core/reading/text/layout.ts'
import { LEXICONS } from '../../../../core/reading/text/lexicons.ts'
import { normalise } from '../../../../core/reading/text/normalise.ts'
import { phraseTrieOf } from '../../../../core/reading/text/phrase-trie.ts'
import { cutsOf, runWordsOf } from '../../../../core/reading/text/runs.ts'
import { meaning, termAt, termsOf } from '../../../../core/reading/text/terms.ts'
import { isDenied, readText } from '../../../../core/reading/text/text.ts'
import { tokensOf } from '../../../../core/reading/text/tokens.ts'
import { vocabularyOf } from '../../../../core/reading/text/vocabulary.ts'

describe('normalise', () => {
  test.each([
    // the sign stays apart from the letters about it (tokens.ts)
    ['30” ✕ 40″', '30" × 40"'],
    ['Ärmel – Länge', 'armel - lange'],
    ['WAIST', 'waist'],
    ['30½', '30½'],
    ['５２ｃｍ：肩', '52cm:肩'],
    ['バスト が', 'バスト が'],
    ['총장', '총장'],
    ['㎝', '㎝'],
    ['66〜86', '66~86'],
    ['肩幅ー45', '肩幅-45'],
    ['コート', 'コート'],
    ['【実寸】', '[実寸]'],
    ['ﾊﾞｽﾄ', 'バ\0スト'],
    ['か\u3099', 'が\0'],
    ['\u1112\u1161\u11ab', '한\0\0'],
    ['ｶｰﾃﾞ', 'カーデ\0']
  ])('%s becomes %s', (text, plain) => expect(normalise(text).text).toBe(plain))
  test.each([
    'İstanbul',
    '𝗪𝗮𝗶𝘀𝘁 30',
    'e\u0301te\u0301',
    '👗 dress',
    '\ud800 lone',
    'Straße',
    '&quot;&frac12;',
    '<br>a<script>b</script>c',
    'ﬁt',
    'ﾊﾞｽﾄ９２㎝（約）',
    '\u1112\u1161\u11ab글',
    'ﾞﾟー゛'
  ])('keeps the length of %j', (text) => expect(normalise(text).text).toHaveLength(text.length))
  test('bold letters are letters', () => expect(normalise('𝗪𝗮𝗶𝘀𝘁').text.replaceAll('\u0000', '')).toBe('waist'))
  test('a script is blanked, its neighbours stay', () => {
    const { text, markup } = normalise('a<script>waist 30</script>b')
    expect(markup).toBe(true)
    expect(text).not.toContain('waist')
    expect(text[0]).toBe('a')
    expect(text.at(-1)).toBe('b')
  })
  test('a script that never closes is left as text', () => expect(normalise('<script>waist 30').text).toContain('waist'))
})

describe('tokens', () => {
  test('letters, digits and marks part, with places', () => {
    const tokens = tokensOf('w32 l 30½"')
    expect(tokens.map(({ text }) => text)).toEqual(['w', '32', 'l', '30', '½', '"'])
    expect(tokens.map(({ start, end }) => 'w32 l 30½"'.slice(start, end))).toEqual(['w', '32', 'l', '30', '½', '"'])
    expect(tokens.map(({ spaced }) => spaced)).toEqual([true, false, true, true, false, false])
  })
})

describe('runs of letters without spaces', () => {
  const words = (text: string, language: string) => readText(text, language).tokens.map((token) => token.text)
  test.each([
    ['ja', '肩幅45身幅52', ['肩幅', '45', '身幅', '52']],
    ['ja', '身幅約52cm', ['身幅', '約', '52', 'cm']],
    ['ja', '着丈は70', ['着丈', 'は', '70']],
    ['ja', 'Mサイズ', ['m', 'サイズ']],
    // no colour in an adjective, no wool in a name
    ['ja', '面黒々', ['面黒々']],
    ['ja', 'チェスターコート', ['チェスター', 'コート']],
    ['ko', '가슴단면58소매60', ['가슴', '단면', '58', '소매', '60']],
    ['ko', '어깨는 40', ['어깨', '는', '40']],
    ['ko', '만오천원', ['만', '오', '천', '원']],
    // a syllable that is cotton by itself is none inside a word of nobody's
    ['ko', '쿠면투', ['쿠면투']],
    ['en', '肩幅45身幅52', ['肩幅', '45', '身幅', '52']],
    ['en', '着丈袖丈', ['着丈袖丈']]
  ])('%s: %s', (language, text, expected) => expect(words(text, language)).toEqual(expected))
  test.each(LEXICONS.filter(({ unspaced }) => unspaced))(
    '$language: every name and every cue is found, with and without its spaces',
    (lexicon) => {
      const { language, points, landmarks, basis, kinds, fibres, faults, cues } = lexicon
      const lists = [points, landmarks, basis, fibres].flatMap((record) => Object.values(record))
      const phrases = [...lists, ...[...kinds, ...faults].map(({ phrases }) => phrases)].flatMap(phrasesIn)
      const whole = (written: string) => {
        const { tokens, terms } = readText(written, language)
        return termAt(terms, 0)?.to === tokens.length
      }
      expect(phrases.length).toBeGreaterThan(500)
      expect(phrases.flatMap((phrase) => [phrase, phrase.replaceAll(' ', '')]).filter((written) => !whole(written))).toEqual([])
      const single = Object.values(cues).flatMap(phrasesIn)
      expect(single.filter((word) => readText(word, language).tokens.length !== 1)).toEqual([])
    }
  )
  test('each part has its own place, fillers and all', () => {
    const text = 'ﾊﾞｽﾄは約９２㎝、 가슴단면52'
    for (const language of ['ja', 'ko'])
      for (const { start, end, text: word } of readText(text, language).tokens)
        expect(normalise(text.slice(start, end)).text.replaceAll('\0', '').replace('、', ',')).toBe(word)
  })
  test('of all ways to cut the one with the fewest and longest words is taken', () => {
    const runs = runWordsOf(['着', '着丈', '丈', '袖', '丈袖', '袖口'], new Map([['長袖口', ['長', '袖口']]]))
    expect(cutsOf('着丈袖口', runs)).toEqual([0, 2])
    expect(cutsOf('着丈長袖口', runs)).toEqual([0, 2, 3])
    expect(cutsOf('ムムム着丈ムムム', runs)).toEqual([0, 3, 5])
  })
  test('what is not there is told behind it', () => {
    const denied = (text: string, language: string) => {
      const read = readText(text, language)
      return (read.terms.by.get('fault') ?? []).map((term) => isDenied(read, term))
    }
    expect(denied('シミ、汚れ、穴などはありません', 'ja')).toEqual([true, true, true])
    expect(denied('穴はありませんが、シミがあります', 'ja')).toEqual([true, false])
    expect(denied('구멍 없고 얼룩 있어요', 'ko')).toEqual([true, false])
    expect(denied('오염이나 구멍은 없습니다', 'ko')).toEqual([true, true])
  })
})

describe('terms', () => {
  const points = (text: string) =>
    termsOf(tokensOf(normalise(text).text), phraseTrieOf('en')).list.flatMap((term) => {
      const point = meaning(term, 'point')
      return point ? [`${point.point}${point.basis ? ` ${point.basis}` : ''}`] : []
    })
  test.each([
    ['pit to pit', ['chest flat']],
    ['pit-to-pit', ['chest flat']],
    ['P2P', ['chest flat']],
    ['shoulder seam to cuff', ['sleeveLength']],
    ['collar to hem', ['bodyLength']],
    ['crotch to the bottom of the leg', ['inseam']],
    ['armpit-armpit', ['chest flat']],
    ['knee length', []],
    ['waist width', ['waist flat']]
  ])('%s', (text, expected) => expect(points(text)).toEqual(expected))
  test('a hyphen between two words of a phrase is stepped over', () => {
    const kindIn = (words: string) => meaning(termsOf(tokensOf(words), phraseTrieOf('en')).by.get('kind')?.[0], 'kind')?.kind
    expect(kindIn('t-shirt')).toBe('knit-top')
    expect(kindIn('t - shirt')).toBe('shirt')
  })
  test('two landmarks that make no point of ours are a detail', () => {
    const [term] = termsOf(tokensOf('armpit to hem'), phraseTrieOf('en')).list
    expect(meaning(term, 'detail')).toBeDefined()
  })
})

describe('every word of the trade', () => {
  test('is in the vocabulary, a last word with the endings that it may take too; those that only tell a kind are not', () => {
    const { all, has, names, units } = vocabularyOf(phraseTrieOf('en'))
    const [english] = LEXICONS
    const phrases = Object.values(english?.points ?? {}).flatMap(phrasesIn)
    const plain = phrases.filter((phrase) => /^[a-z]+(?: [a-z]+)+$/.test(phrase))
    expect(plain.length).toBeGreaterThan(100)
    for (const phrase of plain) {
      const words = phrase.split(' ')
      const last = words.at(-1) ?? ''
      for (const word of last.length < 3 || last.endsWith('s') ? words : [...words, `${last}s`]) {
        expect(all().has(word), `${phrase}: ${word}`).toBe(true)
        expect(names.has(word), `${phrase}: ${word}`).toBe(true)
      }
    }
    expect([has('waist'), has('qxz')]).toEqual([true, false])
    expect(['cm', 'inches', 'mm', 'kg', 's'].map((unit) => units.has(unit))).toEqual([true, true, true, false, false])
  })
})

describe('layout', () => {
  test('a dot after a short form ends no sentence', () => {
    const tokens = tokensOf('the waist is approx. 30 cm. the next is not told at all')
    const { sentence } = layoutOf(tokens)
    expect(sentence[5]).toBe(sentence[0])
    expect(sentence.at(-1)).toBe((sentence[0] as number) + 1)
  })
})

describe('denial', () => {
  const denied = (text: string, word: string) => {
    const read = readText(text, 'en')
    const term = read.terms.list.find(({ from }) => read.tokens[from]?.text === word)
    if (!term) throw new Error(`"${word}" is no term`)
    return isDenied(read, term)
  }
  test.each([
    ['no holes or stains', 'stains', true],
    ['no holes, stains or tears', 'tears', true],
    ['not silk', 'silk', true],
    ['no label, feels like viscose', 'viscose', false],
    ['no stains but a hole', 'hole', false],
    ['nothing wrong. A hole', 'hole', false],
    ['No stains. A hole', 'hole', false]
  ])('%s: %s %s', (text, word, expected) => expect(denied(text, word)).toBe(expected))
})

describe('phrases that stand apart from the terms', () => {
  const phrasesIn = (text: string, name: 'cuts' | 'whose' | 'signs') => {
    const read = readText(text, 'en')
    return read.phrases[name].map(({ from, to }) =>
      read.tokens
        .slice(from, to)
        .map((token) => token.text)
        .join(' ')
    )
  }
  test('are found beside the names they stand on, the longest at each place, none within another', () => {
    expect(phrasesIn('High rise bootcut jeans', 'cuts')).toEqual(['high rise', 'bootcut'])
    expect(phrasesIn('A womens coat', 'whose')).toEqual(['womens'])
    expect(phrasesIn('Notch lapels, zip fly', 'signs')).toEqual(['notch lapels', 'zip fly'])
  })
  test('a text without any has none', () => {
    for (const name of ['cuts', 'whose', 'signs'] as const) expect(phrasesIn('Chest 52 cm, length 70 cm', name)).toEqual([])
  })
})

/** A text made plain: signs that mean one thing become one sign, each in its place. Code points by the names of the Unicode Standard. */
import { describe, expect, it } from 'vitest'
import { FILLER, normalise } from '../../../../core/reading/text/normalise.ts'

const plain = (text: string): string => normalise(text).text
const code = (sign: string): string => `U+${sign.codePointAt(0)?.toString(16).padStart(4, '0')}`
const each = (signs: string): [string, string][] => [...signs].map((sign) => [code(sign), sign])

describe('signs that mean the same', () => {
  // left and right double quotation marks, low and reversed ones, double prime, ditto, double acute, modifier double prime, full width, guillemets
  it.each(each('“”„‟″〃˝ʺ＂«»'))('%s is a double quote', (_, sign) => expect(plain(`chest 20${sign} flat`)).toBe('chest 20" flat'))
  // single quotation marks, prime, modifier letters, grave and acute accents, full width
  it.each(each('’‘‚‛′ʹʼ`´＇'))('%s is a single quote', (_, sign) => expect(plain(`5${sign} 6`)).toBe("5' 6"))
  // hyphen, non-breaking hyphen, figure dash, en dash, em dash, horizontal bar, minus
  it.each(each('‐‑‒–—―−'))('%s is a hyphen', (_, sign) => expect(plain(`40${sign}42`)).toBe('40-42'))
  it.each(each('✕✖⨯'))('%s is a times sign', (_, sign) => expect(plain(`30${sign}40`)).toBe('30×40'))
  // fraction slash, division slash
  it.each(each('⁄∕'))('%s is a slash', (_, sign) => expect(plain(`1${sign}2`)).toBe('1/2'))
  // line and paragraph separators, carriage return, vertical tab, form feed
  it.each(each('\u2028\u2029\r\v\f'))('%s breaks a line', (_, sign) => expect(plain(`waist${sign}40`)).toBe('waist\n40'))
  it.each(each('\t\u00a0\u2009\u202f'))('%s is a space', (_, sign) => expect(plain(`waist${sign}40`)).toBe('waist 40'))
  it.each(each('º˚'))('%s is a degree', (_, sign) => expect(plain(`30${sign}`)).toBe('30°'))
  it.each([
    ['æ', 'a'],
    ['Œ', 'o'],
    ['ø', 'o'],
    ['Ł', 'l'],
    ['đ', 'd'],
    ['ß', 's'],
    ['ı', 'i'],
    ['é', 'e'],
    ['Ü', 'u'],
    ['ñ', 'n'],
    ['å', 'a']
  ])('the letter %s is folded to %s', (letter, folded) => expect(plain(letter)).toBe(folded))
  // soft hyphen, zero-width space, non-joiner, joiner, word joiner, byte order mark, variation selector
  it.each(each('\u00ad\u200b\u200c\u200d\u2060\ufeff\ufe0f'))('%s is nothing', (_, sign) =>
    expect(plain(`wai${sign}st`)).toBe(`wai${FILLER}st`)
  )
  it('fractions are kept, and the sign for a number', () => expect(plain('17½ ⅜ № 5')).toBe('17½ ⅜ № 5'))
  it('wave dashes, middle dots and the marks of Chinese and Japanese', () => {
    expect(plain('40〜42')).toBe('40~42')
    expect(plain('40〰42')).toBe('40~42')
    expect(plain('着丈・身幅･肩幅')).toBe('着丈·身幅·肩幅')
    expect(plain('着丈 60｡身幅 50､')).toBe('着丈 60。身幅 50、')
  })
  it.each([...'「『【〔〈《｢'])('%s opens a bracket', (sign) => expect(plain(`${sign}肩幅`)).toBe('[肩幅'))
  it.each([...'」』】〕〉》｣'])('%s closes one', (sign) => expect(plain(`肩幅${sign}`)).toBe('肩幅]'))
})

describe('entities', () => {
  it.each([
    ['&quot;', '"'],
    ['&ldquo;', '"'],
    ['&rdquo;', '"'],
    ['&Prime;', '"'],
    ['&apos;', "'"],
    ['&lsquo;', "'"],
    ['&rsquo;', "'"],
    ['&prime;', "'"],
    ['&amp;', '&'],
    ['&nbsp;', ' '],
    ['&lt;', '<'],
    ['&gt;', '>'],
    ['&frac12;', '½'],
    ['&frac14;', '¼'],
    ['&frac34;', '¾'],
    ['&times;', 'x'],
    ['&ndash;', '-'],
    ['&mdash;', '-'],
    ['&minus;', '-'],
    ['&bull;', '•'],
    ['&middot;', '·'],
    ['&deg;', '°'],
    ['&pound;', '£'],
    ['&euro;', '€'],
    ['&#34;', '"'],
    ['&#x22;', '"'],
    ['&#X22;', '"'],
    ['&NBSP;', ' ']
  ])('%s is %s, at its place', (entity, sign) => {
    expect(plain(`a${entity}b`)).toBe(`a${sign.padEnd(entity.length, FILLER)}b`)
  })
  it.each(['&nosuch;', '&', 'M&S', '&;', '&#0;', '&#xd800;'])('%s stays as it is', (text) => expect(plain(text)).toBe(text.toLowerCase()))
})

describe('tags', () => {
  it.each(['br', 'p', 'li', 'ul', 'ol', 'div', 'tr', 'table', 'h1', 'h6', 'section', 'dt', 'dd', 'dl'])('<%s> breaks the line', (tag) => {
    const { text, markup } = normalise(`a<${tag}>b`)
    expect(text).toBe(`a${'\n'.padEnd(tag.length + 2, FILLER)}b`)
    expect(markup).toBe(true)
  })
  it.each(['b', 'span', 'td', 'a href="x"'])('<%s> is a space', (tag) =>
    expect(plain(`a<${tag}>b`)).toBe(`a${' '.padEnd(tag.length + 2, FILLER)}b`)
  )
  it('what is no tag stays: 34 < 36 > 32', () => expect(normalise('34 < 36 > 32')).toEqual({ text: '34 < 36 > 32', markup: false }))
  it('a script and a style are not read, an open one is', () => {
    expect(plain('a<script>waist 40</script>b').replaceAll(FILLER, '')).toBe('a\nb')
    expect(plain('a<STYLE>hip 50</STYLE >b').replaceAll(FILLER, '')).toBe('a\nb')
    expect(plain('a<script>waist 40').replaceAll(FILLER, '')).toBe('a waist 40')
  })
})

describe('as long as it was given', () => {
  it.each(['İstanbul 40 cm', '𝗪𝗮𝗶𝘀𝘁 40', 'ﾊﾞｽﾄ 90', '👖 waist 40', 'ﬁt 40', '½”'])('%s', (text) =>
    expect(plain(text)).toHaveLength(text.length)
  )
  it('letters of other styles are their plain ones', () => {
    expect(plain('𝗪𝗮𝗶𝘀𝘁').replaceAll(FILLER, '')).toBe('waist')
    expect(plain('３４')).toBe('34')
    expect(plain('ﾊﾞｽﾄ').replaceAll(FILLER, '')).toBe('バスト')
  })
  it('columns that tabs part are parted, a single tab is a space', () => {
    expect(plain('size\twaist\thip')).toBe('size|waist|hip')
    expect(plain('waist\t40')).toBe('waist 40')
  })
})

// @vitest-environment happy-dom
import { beforeEach, describe, expect, test } from 'vitest'
import { markedItems, metaBlock } from '../../../entrypoints/capture/marked-items.ts'
import { moneyFrom, ownAddress, pageImages, pagePrice, pageTitle, structuredBlocks } from '../../../entrypoints/capture/page-facts.ts'
import { pageFound } from '../../../entrypoints/capture/page-found.ts'
import { pageText, WALK_BOUND } from '../../../entrypoints/capture/page-text.ts'
import { readPage } from '../../../entrypoints/capture/read-page.ts'

const FILLER = '<p>Worn twice, kept in a cedar press, and posted within two days of the sale in plain paper.</p>'.repeat(3)
const FILLED = 'Worn twice, kept in a cedar press, and posted within two days of the sale in plain paper.\n'.repeat(3).trim()

/** The body of the test's own page; a listing is written as its page would hold it. */
const page = (body: string, head = ''): Document => {
  document.head.innerHTML = head
  document.body.innerHTML = body
  return document
}
beforeEach(() => {
  page('')
})

describe('the text of a page', () => {
  test('blocks, list items and line breaks end a line; words stay apart', () => {
    expect(pageText(page('<h1>Flannels</h1><p>Waist <b>16</b> in<br>flat</p><ul><li>Hip 20 in</li><li>Thigh 12½ in</li></ul>')).text).toBe(
      'Flannels\nWaist 16 in\nflat\nHip 20 in\nThigh 12½ in'
    )
  })

  test('cells of a row are set apart by a tab, rows by a line', () => {
    expect(pageText(page('<table><tr><th>Waist</th><td>80 cm</td></tr><tr><th>Hip</th><td>102 cm</td></tr></table>')).text).toBe(
      'Waist\t80 cm\nHip\t102 cm'
    )
  })

  test('a term and its figure stay on one line', () => {
    expect(pageText(page('<dl><dt>Waist</dt><dd>80 cm</dd><dt>Inside leg</dt><dd>78 cm</dd></dl>')).text).toBe(
      'Waist\t80 cm\nInside leg\t78 cm'
    )
  })

  test('a label and a figure in a row of boxes stay on one line, long boxes do not', () => {
    const row = '<div style="display:flex"><div>Chest</div><div>52 cm</div></div>'
    const long = `<div style="display:flex"><div>${'word '.repeat(12)}</div><div>${'other '.repeat(12)}</div></div>`
    expect(pageText(page(row + row.replace('Chest', 'Length'))).text).toBe('Chest\t52 cm\nLength\t52 cm')
    expect(pageText(page(long)).text.split('\n')).toHaveLength(2)
  })

  test('line breaks inside preformatted text are kept, others are not', () => {
    expect(pageText(page('<pre>Waist 80\nHip 102</pre><p>one\ntwo</p>')).text).toBe('Waist 80\nHip 102\none two')
    expect(pageText(page('<div style="white-space:pre-line">Waist 80\nHip 102</div>')).text).toBe('Waist 80\nHip 102')
  })

  test('navigation, scripts, buttons, footers and what is hidden are left out; a closed part that opens is not', () => {
    const text = pageText(
      page(
        '<nav>Shop all</nav><div role="search">Find</div><p>Waist 80 cm</p><script>var waist = 1</script><style>p{}</style><button>Buy</button>' +
          '<p hidden>secret 1</p><p style="display:none">secret 2</p><p style="visibility:hidden">secret 3</p><p aria-hidden="true">secret 4</p>' +
          '<details><summary>Measurements</summary><p>Hip 102 cm</p></details><footer>Contact</footer>'
      )
    ).text
    expect(text).toBe('Waist 80 cm\nMeasurements\nHip 102 cm')
  })

  test('what a tab or a closed button of the listing opens is read, what a menu opens is not', () => {
    const text = pageText(
      page(
        '<button role="tab" aria-controls="about">About</button><button role="tab" aria-controls="sizes">Sizes</button>' +
          '<section id="about" role="tabpanel"><p>Wool</p></section><section id="sizes" role="tabpanel" hidden><p>Waist 80 cm</p></section>' +
          '<h3><button aria-expanded="false" aria-controls="care">Care</button></h3><div id="care" style="display:none">Hip 102 cm</div>' +
          '<button aria-expanded="false" aria-haspopup="true" aria-controls="menu">Menu</button><div id="menu" hidden>Shoes</div>' +
          '<nav><button aria-expanded="false" aria-controls="more">More</button></nav><div id="more" hidden>Hats</div><div id="other" hidden>Secret</div>'
      )
    ).text
    expect(text).toBe('Wool\nWaist 80 cm\nHip 102 cm')
  })

  test('main is taken when it holds enough, else the whole body', () => {
    expect(pageText(page(`<p>Sign in</p><main>${FILLER}</main>`)).text).toBe(FILLED)
    expect(pageText(page('<main>Loading</main><div>Waist 80 cm, hip 102 cm</div>')).text).toBe('Loading\nWaist 80 cm, hip 102 cm')
  })

  test('without main the longest article is taken', () => {
    expect(pageText(page(`<article>Another listing</article><article>${FILLER}</article>`)).text).toBe(FILLED)
  })

  test('markup that is written as text stays text', () => {
    expect(pageText(page('<p>&lt;img src=x onerror="window.bad=1"&gt; 80 cm</p>')).text).toBe('<img src=x onerror="window.bad=1"> 80 cm')
    expect('bad' in window).toBe(false)
  })

  test('a page of five megabytes is walked up to the bound, and says that it is longer', () => {
    const found = pageText(page(`<main>${'<p>Waist 80 cm, hip 102 cm, a very long listing.</p>'.repeat(12_000)}</main>`))
    expect(found.text.length).toBeGreaterThan(WALK_BOUND * 0.9)
    expect(found.text.length).toBeLessThan(WALK_BOUND * 1.1)
    expect(found.fullLength).toBeGreaterThan(500_000)
  })

  test('an open shadow tree is read in place of what it covers', () => {
    const doc = page('<x-facts><span slot="figure">80 cm</span></x-facts>')
    const host = doc.querySelector('x-facts')
    if (host === null) throw new Error('no host')
    host.attachShadow({ mode: 'open' }).innerHTML = '<p>Waist <slot name="figure"></slot></p>'
    expect(pageText(doc).text).toBe('Waist 80 cm')
  })

  test('an empty page gives nothing', () => {
    expect(pageText(page(''))).toEqual({ text: '', fullLength: 0 })
  })
})

describe('what a page says of itself', () => {
  test('the title is the heading the window names, else the window title', () => {
    const doc = page('<h1>Rail and Peg</h1><h1>Charcoal flannel  trousers</h1>', '<title>Charcoal flannel trousers | Rail and Peg</title>')
    expect(pageTitle(doc)).toBe('Charcoal flannel trousers')
    expect(pageTitle(page('<h1>Something else</h1>', '<title>Flannels, 32</title>'))).toBe('Flannels, 32')
    expect(pageTitle(page('<h1>Flannels</h1>', ''))).toBe('Flannels')
    expect(pageTitle(page('', '<title>&lt;script&gt;alert(1)&lt;/script&gt;</title>'))).toBe('<script>alert(1)</script>')
  })

  test("its own address counts on the same host only; else the bar's, without the fragment", () => {
    const bar = 'https://www.rail-and-peg.example/item/4?ref=front#photos'
    const own = (href: string) => ownAddress(page('', `<link rel="canonical" href="${href}">`), bar)
    expect(own('https://rail-and-peg.example/item/4')).toBe('https://rail-and-peg.example/item/4')
    expect(own('/item/4')).toBe('https://www.rail-and-peg.example/item/4')
    expect(own('https://elsewhere.example/item/4')).toBe('https://www.rail-and-peg.example/item/4?ref=front')
    expect(own('javascript:alert(1)')).toBe('https://www.rail-and-peg.example/item/4?ref=front')
    expect(ownAddress(page(''), 'https://a.example/#/item/4')).toBe('https://a.example/#/item/4')
  })

  test('structured blocks come raw, broken ones too; empty and giant ones do not', () => {
    const block = (text: string) => `<script type="application/ld+json">${text}</script>`
    expect(structuredBlocks(page('', block('{"name":"x"}') + block(' ') + block('{broken') + block(`"${'x'.repeat(200_000)}"`)))).toEqual([
      '{"name":"x"}',
      '{broken'
    ])
  })

  test('marked-up items come as blocks of their own, each property where it belongs', () => {
    const item = `<div itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Kilt</h1>
      <div itemprop="description">Wool.<br>Waist 71 cm</div><link itemprop="itemCondition" href="https://schema.org/UsedCondition">
      <div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><meta itemprop="price" content="35"><span itemprop="priceCurrency">EUR</span></div>
      <span itemprop="color">red</span><span itemprop="color">green</span></div>
      <div itemscope itemtype="https://schema.org/Organization"><span itemprop="name">Rail</span></div>`
    expect(markedItems(page(item)).map((block) => JSON.parse(block))).toEqual([
      {
        '@type': 'https://schema.org/Product',
        name: 'Kilt',
        description: 'Wool.\nWaist 71 cm',
        itemCondition: 'https://schema.org/UsedCondition',
        offers: { '@type': 'https://schema.org/Offer', price: '35', priceCurrency: 'EUR' },
        color: ['red', 'green']
      }
    ])
    expect(markedItems(page('<p itemprop="name">Kilt</p>'))).toEqual([])
  })

  test('a property may be called as something that every object has', () => {
    const names = Object.getOwnPropertyNames(Object.prototype)
    const spans = names.map((name) => `<span itemprop="${name}">of ${name}</span>`).join('')
    const [block = ''] = markedItems(
      page(`<div itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Kilt</h1>${spans}</div>`)
    )
    expect(Object.entries(JSON.parse(block)).filter(([name]) => !/^@|^name$/.test(name))).toEqual(names.map((name) => [name, `of ${name}`]))
  })

  test('meta properties of a product come as one block', () => {
    const meta = (property: string, content: string) => `<meta property="${property}" content="${content}">`
    const head = meta('og:title', 'Kilt') + meta('product:price:amount', '35') + meta('og:site_name', 'Rail') + meta('product:color', '')
    expect(metaBlock(page('', head)).map((block) => JSON.parse(block))).toEqual([
      { meta: { 'og:title': 'Kilt', 'product:price:amount': '35' } }
    ])
    expect(metaBlock(page('', meta('viewport', 'width=1')))).toEqual([])
  })

  test('the price comes from the price fields, and only a plain one', () => {
    const meta = (property: string, content: string) => `<meta property="${property}" content="${content}">`
    expect(pagePrice(page('', meta('product:price:amount', '29.90') + meta('product:price:currency', 'gbp')))).toEqual({
      amount: 29.9,
      currency: 'GBP'
    })
    expect(pagePrice(page('', meta('og:price:amount', '1.299,00') + meta('og:price:currency', '€')))).toEqual({
      amount: 1299,
      currency: ''
    })
    const item =
      '<div itemscope><span itemprop="price" content="18">£18</span><meta itemprop="priceCurrency" content="GBP"></div><div ' +
      'itemscope><span itemprop="price">99</span></div>'
    expect(pagePrice(page(item))).toEqual({ amount: 18, currency: 'GBP' })
    expect(pagePrice(page('', meta('product:price:amount', 'ask')))).toBeNull()
    expect(pagePrice(page('<p>£30</p>'))).toBeNull()
  })

  test.each([
    ['29.90', 29.9],
    ['29,90', 29.9],
    ['£1,299.00', 1299],
    ['1 299,5 kr', 1299.5],
    ['1.299', 1299],
    ['45', 45],
    ['0', 0]
  ])('money %s is %d', (text, amount) => {
    expect(moneyFrom(text)).toBe(amount)
  })
  test.each(['', 'free', '-', '.', '12345678901234567890'])('no money in "%s"', (text) => {
    expect(moneyFrom(text)).toBeNull()
  })

  test('image addresses: the shown one and the large ones, never a small or a written-in one', () => {
    const doc = page(
      '<main><img src="https://img.example/a.jpg" width="600"><img src="https://img.example/icon.png" width="20"><img ' +
        'src="data:image/png;base64,AA" width="600"></main>',
      '<meta property="og:image" content="https://img.example/shown.jpg">'
    )
    expect(pageImages(doc)).toEqual(['https://img.example/shown.jpg', 'https://img.example/a.jpg'])
  })
})

test('all of it together is plain JSON of the expected shape', () => {
  const found = readPage(page(`<main><h1>Flannels</h1>${FILLER}</main>`, '<title>Flannels</title>'))
  expect(JSON.parse(JSON.stringify(found))).toEqual(found)
  expect(pageFound.safeParse(found).success).toBe(true)
  expect(found).toMatchObject({ title: 'Flannels', selection: '', frames: { count: 0, largestShare: 0 } })
})

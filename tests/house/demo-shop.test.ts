/** The demo shop's pages are what they claim to be: text is text, structured data is whole, and every garment can be reached. */
import { expect, test } from 'vitest'
import { GARMENTS } from '../demo-shop/garments.mjs'
import { shopAnswers } from '../demo-shop/shop.mjs'

const pageAt = (path: string): string => String(shopAnswers(path, 1)?.body ?? '')

test('a dozen garments and more, each once, each teaching something of its own', () => {
  expect(GARMENTS.length).toBeGreaterThanOrEqual(12)
  for (const field of ['slug', 'teaches'] as const) expect(new Set(GARMENTS.map((one) => one[field])).size).toBe(GARMENTS.length)
  for (const { slug } of GARMENTS) {
    expect(pageAt('/')).toContain(`/item/${slug}.html`)
    expect(pageAt(`/item/${slug}.html`)).toContain('<html lang="en">')
  }
})

test.each(GARMENTS.filter((one) => one.structured !== 'none' && one.structured !== 'broken').map((one) => [one.slug, one] as const))(
  '%s carries its name, price and text as structured data',
  (slug, garment) => {
    const [, block = ''] = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(pageAt(`/item/${slug}.html`)) ?? []
    const data = JSON.parse(block)
    const product = '@graph' in data ? data['@graph'][1] : data
    expect(product).toMatchObject({ '@type': 'Product', name: garment.title, offers: { price: garment.price, priceCurrency: 'GBP' } })
    for (const line of garment.lines) expect(product.description).toContain(line)
  }
)

test('markup in a title is shown, not obeyed', () => {
  const page = pageAt('/item/markup-in-the-title.html')
  expect(page).toContain('&lt;img src=x')
  expect(page).not.toContain('<img')
  expect(page.match(/<script/g)).toEqual(['<script'])
})

test('one page is empty, one has its text in a frame of another origin, one is a PDF, and a stranger is not found', () => {
  expect(pageAt('/item/empty-page.html')).toMatch(/<body><\/body>/)
  expect(pageAt('/item/text-in-a-frame.html')).toContain(
    '<iframe title="Description" src="http://localhost:1/framed/text-in-a-frame.html">'
  )
  expect(pageAt('/item/text-in-a-frame.html')).not.toContain('15 3/4')
  expect(pageAt('/framed/text-in-a-frame.html')).toContain('15 3/4')
  expect(pageAt('/size-guide.pdf')).toMatch(/^%PDF-1\.4/)
  expect(shopAnswers('/item/nothing.html', 1)).toBeNull()
})

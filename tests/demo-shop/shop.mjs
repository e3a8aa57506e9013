/** The demo shop "Rail and Peg": invented listings as plain pages, each an ordinary way in which a shop writes its pages. */
import { drawing } from './drawings.mjs'
import { GARMENTS } from './garments.mjs'
import { pdfPage } from './pdf.mjs'

/** @typedef {import('./garments.mjs').Garment} Garment */

const SHOP = 'Rail and Peg'
const HTML = 'text/html; charset=utf-8'
/** The pages run no script; a frame of the other name is let in for the one that shows it. */
const POLICY =
  "default-src 'none'; style-src 'self'; img-src 'self' data:; frame-src http://localhost:*; base-uri 'none'; form-action 'none'"
const HEADERS = { 'Content-Security-Policy': POLICY }

const CSS = `body{font:16px/1.5 Georgia,serif;max-width:62rem;margin:0 auto;padding:1rem;color:#222;background:#fff}
header,footer{display:flex;gap:2rem;align-items:baseline;border-bottom:1px solid #ccc;padding-bottom:.5rem;flex-wrap:wrap}
footer{border:0;border-top:1px solid #ccc;margin-top:3rem;font-size:.85rem}
main{display:grid;grid-template-columns:minmax(0,260px) 1fr;gap:2rem;margin-top:1rem}
.rail{display:grid;grid-template-columns:repeat(auto-fill,minmax(12rem,1fr));gap:1.5rem;padding:0;list-style:none}
.rail svg{width:100%;height:auto}.price{font-size:1.3rem}iframe{border:1px solid #ccc;width:100%;height:32rem}
@media(max-width:40rem){main{grid-template-columns:1fr}}`

/** @type {Record<string, string>} */
const ENTITIES = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** @param {string} text */
const plain = (text) => text.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign)

/** @type {import('../../entrypoints/companion/serve.mjs').Answers} */
export function shopAnswers(path, port) {
  if (path === '/') return { type: HTML, body: front(), headers: HEADERS }
  if (path === '/shop.css') return { type: 'text/css; charset=utf-8', body: CSS }
  if (path === '/size-guide.pdf') return { type: 'application/pdf', body: pdfPage('Waist 16 in flat, hip 21 in flat.') }
  const [, folder, file] = /^\/(item|framed)\/([a-z-]+)\.html$/.exec(path) ?? []
  const garment = GARMENTS.find((one) => one.slug === file)
  if (garment === undefined) return null
  if (folder === 'framed') return { type: HTML, body: framed(garment), headers: { 'Cross-Origin-Resource-Policy': 'cross-origin' } }
  return {
    type: HTML,
    body: garment.title === '' ? '<!doctype html><html lang="en"><body></body></html>' : listing(garment, port),
    headers: HEADERS
  }
}

/**
 * @param {string} title
 * @param {string} head
 * @param {string} body
 */
const page = (title, head, body) => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${plain(title)}</title><link rel="stylesheet" href="/shop.css">${head}</head>
<body><header><a href="/">${SHOP}</a><nav><a href="/">Everything on the rail</a> <a href="/size-guide.pdf">Size guide</a></nav></header>
${body}
<footer><p>${SHOP} is invented, and so is all it sells. Parcels 30 x 40 x 5 cm, sent within 2 days.</p></footer></body></html>`

const front = () =>
  page(
    SHOP,
    '',
    `<h1>On the rail</h1><ul class="rail">${GARMENTS.map(
      (one) =>
        `<li><a href="/item/${one.slug}.html">${drawing(one.drawing, one.colour)}${plain(one.title || 'An empty page')}</a>` +
        `${one.price === '' ? '' : `<br>£${one.price}`}</li>`
    ).join('')}</ul>`
  )

/**
 * @param {Garment} garment
 * @param {number} port
 */
function listing(garment, port) {
  const inFrame = garment.slug === 'text-in-a-frame'
  const text = inFrame
    ? `<iframe title="Description" src="http://localhost:${port}/framed/${garment.slug}.html"></iframe>`
    : description(garment)
  return page(
    `${garment.title} | ${SHOP}`,
    `<link rel="canonical" href="http://127.0.0.1:${port}/item/${garment.slug}.html">
<meta property="og:title" content="${plain(garment.title)}">
<meta property="product:price:amount" content="${garment.price}"><meta property="product:price:currency" content="GBP">
<meta property="og:image" content="/pictures/${garment.slug}.jpg">${structured(garment)}`,
    `<main><div>${drawing(garment.drawing, garment.colour)}</div><article><h1>${plain(garment.title)}</h1>
<p class="price">£${garment.price}${garment.postage === undefined ? '' : ` <small>+ £${garment.postage} postage</small>`}</p>
${text}
<p>Sold by ${plain(garment.seller)}</p></article></main>`
  )
}

/** @param {Garment} garment */
const description = (garment) =>
  `<div class="description">${garment.lines.map((line) => `<p>${plain(line)}</p>`).join('\n')}${
    garment.list === undefined ? '' : `<ul>${garment.list.map((line) => `<li>${plain(line)}</li>`).join('')}</ul>`
  }${garment.note === undefined ? '' : `<p>${plain(garment.note)}</p>`}</div>`

/** @param {Garment} garment */
const framed = (garment) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Description</title></head><body>${description(garment)}</body></html>`

/** @param {Garment} garment */
function structured(garment) {
  if (garment.structured === 'none') return ''
  if (garment.structured === 'broken') return '<script type="application/ld+json">{"@type":"Product","name":"cut off</script>'
  const product = {
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: garment.title,
    description: [...garment.lines, ...(garment.list ?? []), garment.note ?? ''].join('\n').trim(),
    offers: { '@type': 'Offer', price: garment.price, priceCurrency: garment.currency ?? 'GBP', availability: 'https://schema.org/InStock' }
  }
  const data =
    garment.structured === 'graph' ? { '@context': 'https://schema.org', '@graph': [{ '@type': 'WebPage', name: SHOP }, product] } : product
  return `<script type="application/ld+json">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script>`
}

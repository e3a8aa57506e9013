/**
 * A listing's text and structured data, read: text → terms → quantities → names and figures → measures, and what else is told.
 * Never throws, whatever the text; time grows with its length. All places are in `listing.text` as given, and go on into `added`.
 */
import { once } from '../once.ts'
import { clothOn, clothSaid, wrongSum } from './facts/cloth.ts'
import { faultsOf } from './facts/faults.ts'
import { colourOf, conditionOf, madeOf, useOf } from './facts/make-use-condition.ts'
import { currencyOf, priceOf } from './facts/price.ts'
import { isManyListings } from './facts/single-listing.ts'
import { whoseOf } from './facts/whose.ts'
import { cutOf } from './garment/cut.ts'
import { issue } from './issues.ts'
import { moreText } from './page-data/more-text.ts'
import { type StructuredRead, structuredOf } from './page-data/structured.ts'
import { readFigures } from './read-figures.ts'
import type { ListingText, Reading } from './reading.ts'
import { sizeLabelsIn } from './sizes/size-labels-in.ts'
import { languageOf } from './text/language.ts'
import { readText, readTokens, tokenise } from './text/text.ts'

// what a caller needs to go on from a reading stands beside it
export { garmentFrom } from './request/garment-from.ts'
export { labelEvidence } from './sizes/label-evidence.ts'

/** Longer than any listing; it is read all the same. */
const LONG = 100_000

export function readListing(listing: ListingText): Reading {
  const structured = structuredOf(listing.structured, listing.title, listing.address)
  const first = readWith(listing, structured)
  const added = moreText(listing, structured, first, (text) => readWith({ ...listing, text }, structured))
  return added === '' ? first : { ...readWith({ ...listing, text: listing.text + added }, structured), added }
}

function readWith(listing: ListingText, structured: StructuredRead): Reading {
  const words = listing.units ?? 'cm'
  const name = listing.title || (structured.name ?? '')
  const titleTokens = name === '' ? null : tokenise(name)
  const textTokens = tokenise(listing.text)
  const language = languageOf(titleTokens ? [titleTokens.tokens, textTokens.tokens] : [textTokens.tokens], listing.language)
  const title = titleTokens && readTokens(titleTokens, language)
  const text = readTokens(textTokens, language)
  const page = { name: structured.name === name ? null : structured.name, category: structured.category, path: listing.address ?? null }
  const texts = title ? [title, text] : [text]
  const ofCloth = once(() => clothSaid(texts))
  const read = readFigures(text, title, { listing, language, page, cloth: ofCloth })
  // where the page's data prices one product, or the kind came with the text, it is of one
  const many = structured.price === null && listing.kind === undefined && isManyListings(text, read.measures.length)
  const kind = many ? null : read.kind.kind
  const { material } = structured
  const cloth = clothOn(material === null ? ofCloth() : clothSaid([...texts, readText(material, language)]), kind)
  const faults = faultsOf(texts, kind)
  const sizeLabels = read.sizeLabels.length > 0 || structured.size === null ? read.sizeLabels : sizeLabelsIn(structured.size)
  const use = useOf(texts, title, sizeLabels)
  const issues = [...read.issues]
  if (many) issues.push(issue('reading.no-single-listing', {}, {}, words))
  else if (read.kind.thing) issues.push(issue('reading.no-garment', {}, {}, words))
  const sum = wrongSum(cloth.fibres)
  if (sum !== null) issues.push(issue('reading.percent-sum', { sum }, {}, words))
  if (structured.broken) issues.push(issue('reading.structured-broken', {}, {}, words))
  if (text.markup || title?.markup) issues.push(issue('reading.markup', {}, {}, words))
  if (listing.text.length > LONG) issues.push(issue('reading.long-text', { thousands: Math.round(listing.text.length / 1000) }, {}, words))
  return {
    garment: { kind, sureness: many ? 0 : read.kind.sureness },
    measures: read.measures,
    ...(read.seconds ? { seconds: read.seconds } : {}),
    cloth,
    made: Object.assign({}, read.kind.made, madeOf(texts, kind), read.made),
    cut: cutOf(texts, title, kind),
    use,
    whose: whoseOf({ texts, title, kind, use, sizeLabels, named: structured.whose, language }),
    language,
    colour: structuredColour(structured, language) ?? colourOf(texts),
    condition: structured.condition ?? conditionOf(texts),
    mending: faults.mending,
    price: priceIn(structured, listing.language ?? '') ?? priceOf(texts, listing.language ?? language),
    sizeLabels,
    sizeChart: read.sizeChart,
    faults: faults.faults,
    allowances: read.allowances,
    leftAside: read.leftAside,
    issues
  }
}

function structuredColour({ colour }: StructuredRead, language: string): string | null {
  if (colour === null) return null
  return colourOf([readText(colour, language)]) ?? colour.toLowerCase()
}

function priceIn({ price }: StructuredRead, locale: string): Reading['price'] {
  return price && { amount: price.amount, currency: price.currency ?? currencyOf('$', locale) }
}

/** Where a seller posts to, in English: it tells whose dollars a price is in. Where a thing was made does not. */
import { everyPairOf, type Phrases } from '../phrases.ts'

const AUSTRALIA: Phrases = `
  aus
  aust
  australia
`
const NEW_ZEALAND: Phrases = `
  nz
  new zealand
`
const CANADA: Phrases = 'canada'

const WITHIN: Phrases = `
  within
  across
  throughout
  anywhere in
`
const POSTED_TO: Phrases = `
  around
  post to
  post in
  posted to
  posted in
  shipping in
  shipping to
  shipped in
  postage to
  postage in
`
/** Australia wide, Australia post; written as one too. */
const WIDE: Phrases = `
  wide
  post
`
const asOne = (phrases: Phrases): Phrases => phrases.replaceAll(' ', '')

export const postedIn: Record<string, Phrases> = {
  AU: `
    ${everyPairOf(WITHIN, AUSTRALIA)}
    ${everyPairOf(POSTED_TO, AUSTRALIA)}
    ${everyPairOf(WITHIN, 'oz')}
    ${everyPairOf(POSTED_TO, 'oz')}
    ${everyPairOf(AUSTRALIA, WIDE)}
    ${asOne(everyPairOf(AUSTRALIA, WIDE))}
  `,
  NZ: `
    ${everyPairOf(WITHIN, NEW_ZEALAND)}
    ${everyPairOf(NEW_ZEALAND, WIDE)}
    ${asOne(everyPairOf('nz', WIDE))}
  `,
  CA: `
    ${everyPairOf(POSTED_TO, CANADA)}
    ${everyPairOf(WITHIN, CANADA)}
    ${everyPairOf(CANADA, WIDE)}
    ${asOne(everyPairOf(CANADA, WIDE))}
  `
}

/** English, as private sellers on both sides of the Atlantic write it. */
import { asides } from './en/asides.ts'
import { cloth } from './en/cloth.ts'
import { amounts, cues } from './en/cues.ts'
import { cut } from './en/cut.ts'
import { garments } from './en/garments.ts'
import { kindSigns } from './en/kind-signs.ts'
import { measures } from './en/measures.ts'
import { postedIn } from './en/posted-in.ts'
import { words } from './en/words.ts'
import type { Lexicon } from './lexicon.ts'

export const en: Lexicon = {
  language: 'en',
  cut,
  endings: ['s'],
  common: `
    the
    and
    with
    of
    is
    in
    to
    this
    it
    for
    on
    has
    are
    from
    very
    size
    length
    waist
    chest
    sleeve
    laid
    flat
    approx
    condition
    measurements
    inches
    hips
    hem
    shoulder
    wear
    fits
    please
    bust
    inseam
    pit
  `,
  currencies: {
    GBP: `
      gbp
      pounds
      quid
      pound
      pounds sterling
      tenner
      fiver
    `,
    EUR: `
      eur
      euro
      euros
    `,
    USD: `
      usd
      dollars
      bucks
      dollar
      us dollars
    `,
    AUD: `
      aud
      aussie dollars
      australian dollars
      dollars australian
      dollars aud
      aud dollars
    `,
    CAD: `
      cad
      cad dollars
      canadian
      canadian dollars
      dollars canadian
      dollars cad
    `,
    NZD: 'nzd',
    CHF: 'chf',
    SEK: 'sek',
    PLN: 'pln',
    DKK: 'dkk',
    NOK: 'nok',
    JPY: `
      jpy
      yen
    `
  },
  ...measures,
  words: { ...asides, ...words },
  ...garments,
  signs: kindSigns,
  ...cloth,
  cues,
  amounts,
  postedIn
}

/** How fast the reader is, and that its time grows with the text and no faster. Compare ratios: single times depend on the machine. */
import { bench, describe } from 'vitest'
import { readListing } from '../../core/reading/read-listing.ts'

/** About 1,000 characters of an ordinary listing. */
const LISTING = `This wool coat from the 1970s has a wide collar and two patch pockets. It is fully lined and in very good used condition,
with no holes or stains. Zip works.

Measurements (laid flat):
Pit to pit: 21 1/2"
Waist: 19"
Sleeve (shoulder to cuff): 24"
Underarm sleeve: 17.5"
Length, nape to hem: 42" / 107 cm
Shoulders: 17"
Hem: 26"

Size label says 14 but please go by the measurements. I am 5'6" with a 36" bust and it is roomy on me. 80% wool, 20% nylon.
Would suit up to a 40" bust. Price £45, postage £5, sent in a parcel of 40 x 30 x 10 cm within 2-3 days. `
const thousand = LISTING.repeat(2).slice(0, 1000)
const times = (count: number) => LISTING.repeat(Math.ceil((count * 1000) / LISTING.length)).slice(0, count * 1000)
const hundred = times(100)
const fiveThousand = times(5000)

describe('reading a listing', () => {
  bench('1,000 characters', () => {
    readListing({ title: 'Wool coat', text: thousand })
  })
  bench('100,000 characters', () => {
    readListing({ title: 'Wool coat', text: hundred })
  })
  bench(
    '5,000,000 characters',
    () => {
      readListing({ title: 'Wool coat', text: fiveThousand })
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 }
  )
})

/** How sellers name the cut, in Norwegian. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      lavt liv
      lav midje
    `,
    high: `
      høyt liv
      høy midje
    `
  },
  leg: {
    wide: `
      vide
      vide ben
      vid
    `,
    straight: `
      rette ben
      straight
    `,
    skinny: 'skinny',
    slim: `
      slim
      slim fit
    `,
    flared: `
      sleng
      slengbukse
    `
  },
  dressLength: {
    mini: 'mini',
    midi: 'midi',
    maxi: `
      maxi
      gulvlang
    `,
    knee: 'knelang'
  },
  sleeve: {
    sleeveless: `
      ermeløs
      uten ermer
    `,
    short: `
      korte ermer
      kortermet
    `,
    long: `
      lange ermer
      langermet
    `
  },
  closeness: {
    oversized: `
      oversize
      oversized
    `,
    relaxed: `
      løs
      løstsittende
    `,
    fitted: 'tettsittende'
  },
  silhouette: {
    pleated: 'plissert',
    'a-line': `
      a form
      a fasong
    `,
    wrap: 'omslag'
  }
}

/** How sellers name the cut, in Danish. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      lav talje
      lavtaljet
    `,
    high: `
      høj talje
      højtaljet
    `
  },
  leg: {
    wide: `
      vide
      vide ben
    `,
    straight: `
      lige ben
      straight
    `,
    skinny: 'skinny',
    slim: `
      slim
      slim fit
    `,
    flared: `
      svaj
      trompetbukser
    `
  },
  dressLength: {
    mini: 'mini',
    midi: 'midi',
    maxi: `
      maxi
      gulvlang
    `,
    knee: 'knælang'
  },
  sleeve: {
    sleeveless: `
      ærmeløs
      uden ærmer
    `,
    short: `
      korte ærmer
      kortærmet
    `,
    long: `
      lange ærmer
      langærmet
    `
  },
  closeness: {
    oversized: `
      oversize
      oversized
    `,
    relaxed: `
      løs
      løstsiddende
    `,
    fitted: 'tætsiddende'
  },
  silhouette: {
    pleated: `
      plisseret
      plissé
    `,
    'a-line': `
      a form
      a facon
    `,
    wrap: `
      slå om
      wrap
    `
  }
}

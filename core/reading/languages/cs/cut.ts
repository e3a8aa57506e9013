/** How sellers name the cut, in Czech. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      nízký pas
      nízký sed
    `,
    high: `
      vysoký pas
      vysoký sed
      s vysokým pasem
    `
  },
  leg: {
    wide: `
      široké
      široké nohavice
    `,
    straight: `
      rovné
      rovný střih
    `,
    skinny: `
      skinny
      úzké nohavice
    `,
    slim: 'slim',
    flared: `
      zvonové
      do zvonu
    `,
    bootcut: 'bootcut'
  },
  dressLength: {
    midi: 'midi',
    maxi: `
      maxi
      maxi šaty
    `,
    mini: 'mini',
    knee: `
      ke kolenům
      po kolena
    `
  },
  sleeve: {
    sleeveless: 'bez rukávů',
    short: `
      krátký rukáv
      krátké rukávy
    `,
    long: `
      dlouhý rukáv
      dlouhé rukávy
    `
  },
  silhouette: {
    pleated: `
      plisovaná
      skládaná
    `,
    'a-line': `
      áčková
      áčkový střih
    `,
    pencil: 'pouzdrová',
    wrap: 'zavinovací'
  },
  closeness: {
    oversized: `
      oversize
      oversized
    `,
    relaxed: 'volný střih',
    fitted: `
      vypasované
      vypasovaný
    `
  }
}

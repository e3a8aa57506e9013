/** How sellers name the cut, in Finnish. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      matala vyötärö
      matalavyötäröiset
    `,
    high: `
      korkea vyötärö
      korkeavyötäröiset
      korkeavyötäröinen
    `
  },
  leg: {
    wide: `
      leveät
      leveälahkeiset
    `,
    straight: `
      suora lahje
      suorat
      suorat lahkeet
    `,
    skinny: `
      pillifarkut
      skinny
    `,
    slim: 'slim',
    flared: `
      leveälahkeinen
      bootcut
    `
  },
  dressLength: {
    midi: 'midi',
    maxi: `
      maksi
      maksimekko
      maksihame
    `,
    mini: 'mini',
    knee: 'polvipituinen'
  },
  sleeve: {
    sleeveless: 'hihaton',
    short: `
      lyhyet hihat
      lyhythihainen
    `,
    long: `
      pitkät hihat
      pitkähihainen
    `
  },
  closeness: {
    oversized: 'oversize',
    relaxed: 'väljä'
  }
}

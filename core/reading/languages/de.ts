import type { Lexicon } from './lexicon.ts'

export const de: Lexicon = {
  language: 'de',
  endings: [],
  common: '',
  points: {},
  landmarks: {},
  basis: { flat: '', around: '', doubled: '', double: '' },
  words: {},
  units: { in: '', cm: '', mm: '', m: '', ft: '' },
  numbers: {},
  kinds: [],
  fibres: {},
  structures: {},
  traits: {},
  made: [],
  uses: {},
  faults: [],
  colours: {},
  currencies: {}
}

import type { Lexicon } from './lexicon.ts'

export const it: Lexicon = {
  language: 'it',
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

/** Whether the buttons of a jacket's cuffs open, in English: who they are with what is said of them, and names of their own. */
import { everyPairOf, type Phrases } from '../phrases.ts'

const CUFF_BUTTONS: Phrases = `
  cuff buttons
  sleeve buttons
  buttons on cuffs
  buttons on the cuffs
  buttons on cuff
  buttons on the cuff
  buttons on sleeves
  buttons on the sleeves
  buttons at the cuffs
  buttons at the cuff
  buttons at cuffs
`

const OPEN: Phrases = `
  work
  open
  undo
  unbutton
  do open
  do undo
  actually open
  actually work
  all open
  all work
  are functional
  are working
  are real
`

const DO_NOT_OPEN: Phrases = `
  don't open
  do not open
  don't undo
  do not undo
  don't unbutton
  do not unbutton
  don't work
  do not work
  aren't functional
  are not functional
  are non functional
  aren't working
  are not working
  are non working
  are not real
  aren't real
  are sham
  are fake
  are faux
  are stitched on
  // only there to look at
  are decorative
  are purely decorative
  are just decorative
  are only decorative
  are just for show
  are for show
`

export const CUFFS_OPEN: Phrases = `
  ${everyPairOf(CUFF_BUTTONS, OPEN)}
  // of the cuffs
  cuffs open
  cuffs do open
  cuffs actually open
  cuffs undo
  cuffs unbutton
  cuffs are functional
  working cuffs
  real working cuffs
  opening cuffs
  functional cuffs
  functioning cuffs
  surgeon cuffs
  surgeon's cuff
  surgeon's cuffs
  surgeons cuffs
  // of the buttons
  working cuff buttons
  working sleeve buttons
  working button cuffs
  functional cuff buttons
  functional sleeve buttons
  functional button cuffs
  functional buttons on cuffs
  functioning cuff buttons
  real cuff buttons
  kissing buttons functional
  // of the buttonholes
  working buttonholes
  working button holes
  working buttonholes at cuffs
  real buttonholes on the cuffs
  real buttonholes at the cuffs
`

export const CUFFS_ARE_SHAM: Phrases = `
  ${everyPairOf(CUFF_BUTTONS, DO_NOT_OPEN)}
  ${everyPairOf('cuffs', DO_NOT_OPEN)}
  ${everyPairOf('sleeve cuffs', DO_NOT_OPEN)}
  // of the cuffs
  sham cuffs
  mock cuffs
  false cuffs
  non functional cuffs
  non working cuffs
  non-functioning cuffs
  non opening cuffs
  no working cuffs
  cuffs not functional
  cuffs non functional
  cuffs have sham buttons
  // of the buttons
  sham buttons
  sham buttons on cuffs
  sham buttons at cuffs
  sham cuff buttons
  sham sleeve buttons
  fake cuff buttons
  faux cuff buttons
  dummy cuff buttons
  decorative cuff buttons
  decorative sleeve buttons
  non-functional cuff buttons
  non-functioning cuff buttons
  non working cuff buttons
  non working sleeve buttons
  cuff buttons just for show
`

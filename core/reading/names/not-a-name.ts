/** Names that name no figure: what is counted in or not, where something was measured, how the name before was taken, a size that heads a row. */
import type { PointName } from '../languages/lexicon.ts'
import { isLetterSize } from '../sizes/size-words.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, type Term, termAt } from '../text/terms.ts'
import { endsFigure, type TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

/** Does this name name nothing here? */
export const namesNothing = (text: TextRead, term: Term): boolean =>
  isWithout(text, term.from) ||
  isFastenedWith(text, term) ||
  (means(term, 'point', 'detail') && isCountedIn(text, term)) ||
  (means(term, 'detail') && isWithIt(text, term)) ||
  (means(term, 'point') &&
    (isIncluded(text, term.to) ||
      isWithIt(text, term) ||
      isOfNameBefore(text, term) ||
      isLongSize(text, term) ||
      isPlaceInBracket(text, term) ||
      isElasticIn(text, term)))

/** with: in the languages read. */
export const WITH = cue('with', 'withOrOf')

/** “collar not included”. */
const isIncluded = ({ tokens, terms }: TextRead, at: number): boolean =>
  COUNTED.test(tokens[at]?.text) || (means(termAt(terms, at), 'not') && COUNTED.test(tokens[termAt(terms, at)?.to ?? at + 1]?.text))
const COUNTED = cue('counted')

/** “Außenlänge mit Bund 106”, “rise with waistband 11”: a length, and what is counted into it; “28" long with sleeves 24"” has its figure. */
function isWithIt(text: TextRead, { from }: Term): boolean {
  const { tokens, terms } = text
  const length = termAt(terms, from - 2)
  const name = meaning(length, 'point')?.point
  if (length === undefined || name === undefined || !LENGTHS_WITH.has(name) || !WITH.test(tokens[from - 1]?.text)) return false
  return !endsFigure(text, length.from - 1)
}

/** “Sleeve with cuff zip closed 24.5”: what was closed while a length was taken. */
function isFastenedWith({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  if (!CLOSED.test(tokens[to]?.text)) return false
  let at = from - 1
  while (at > from - WORDS_WITH && tokens[at]?.kind === 'word' && !WITH.test(tokens[at]?.text)) at--
  const name = WITH.test(tokens[at]?.text) ? meaning(termAt(terms, at - 1), 'point')?.point : undefined
  return name === 'sleeveLength' || (name !== undefined && LENGTHS_WITH.has(name))
}
const WORDS_WITH = 4
const LENGTHS_WITH = new Set<PointName>(['length', 'outseam', 'inseam', 'rise', 'frontRise', 'backRise', 'skirtLength', 'legLength'])

/** “43" with collar”, “29.5 with the two turn ups”: behind a figure, and with none of its own, what was counted in. */
function isCountedIn({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  let at = from - 1
  while (at > from - 3 && (THE.test(tokens[at]?.text) || means(termAt(terms, at), 'number'))) at--
  if (!WITH.test(tokens[at]?.text)) return false
  const before = tokens[at - 1]
  const figure = before?.kind === 'digits' || before?.text === '"' || (before?.kind === 'word' && tokens[at - 2]?.kind === 'digits')
  // “with sleeves of 24"”: it has a figure of its own
  const own = isOneOf(tokens[to], ':=~-') || OF.test(tokens[to]?.text) ? to + 1 : to
  return figure && tokens[own]?.kind !== 'digits'
}
const OF = cue('of')

const THE = cue('the')
/** “Chest across (1" below armhole): 22"”: in brackets, behind a figure of its own, a name says where. */
function isPlaceInBracket({ tokens, terms }: TextRead, { from }: Term): boolean {
  let at = from - 1
  while (at > from - 3 && THE.test(tokens[at]?.text)) at--
  if (!means(termAt(terms, at), 'position')) return false
  for (at--; at > from - 7; at--) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break' || token.text === ')') return false
    if (token.text === '(') return true
  }
  return false
}

/** “Unterbrust (Gummizug, ungedehnt) 74”: elastic that is said of another name. */
const isElasticIn = ({ tokens, terms }: TextRead, term: Term): boolean =>
  meaning(term, 'made')?.fact.fact === 'elasticWaist' &&
  tokens[term.from - 1]?.text === '(' &&
  meaning(termAt(terms, term.from - 2), 'point') !== undefined

const CLOSED = cue('closed')
const WHEN = cue('when')

/** “The collar is 14" round when buttoned”: it says how the name before was taken. */
function isOfNameBefore({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  if (!CLOSED.test(tokens[to - 1]?.text) || !WHEN.test(tokens[to - 2]?.text)) return false
  for (let at = from - 1; at > from - REACH && tokens[at] && tokens[at]?.kind !== 'break' && !endsSentence(tokens, at); at--) {
    const name = meaning(termAt(terms, at), 'point')?.point
    if (name !== undefined) return name !== 'chest'
  }
  return false
}
const REACH = 14

/** “w/o hood”. */
const isWithout = ({ tokens }: TextRead, at: number): boolean =>
  tokens[at - 1]?.text === 'o' && tokens[at - 2]?.text === '/' && tokens[at - 3]?.text === 'w'

const LONG = cue('longSize')
/** “M long | 32 | 34”: the size that heads a row. */
const isLongSize = ({ tokens }: TextRead, { from, to }: Term): boolean =>
  LONG.test(tokens[from]?.text) &&
  tokens[to]?.text === '|' &&
  isLetterSize(tokens[from - 1]?.text ?? '') &&
  (from < 2 || tokens[from - 2]?.kind === 'break')

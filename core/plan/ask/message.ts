/** One ready message to the seller: at most three questions, each with what would suit if that is to be said. */
import { say, type Wording } from '../../words/say.ts'
import type { Ask } from './ask.ts'

/** More than these, and a seller answers none (from memory). */
const MOST_QUESTIONS = 3
/** From this share of what the first is worth a question is asked with it (from memory). */
const SHARE_OF_FIRST = 1 / 3

/** What can be asked of the seller: the first, and what else is worth something or decides; nothing of one's own body. */
export function sellersQuestions(asks: readonly Ask[]): Ask[] {
  const [first, ...others] = asks.filter(({ body }) => body === undefined)
  if (first === undefined) return []
  return [first, ...others.filter(({ worth, suits }) => worth > 0 || suits !== undefined)].slice(0, MOST_QUESTIONS)
}

/** The same question in another answer. */
export const questionId = ({ point, about, again }: Ask): string => `${point ?? about ?? ''}${again === true ? ' again' : ''}`

/** Those that are asked where nothing was chosen. */
export const askedAtOnce = (questions: readonly Ask[]): Ask[] =>
  questions.filter(({ worth, suits }, place) => {
    const first = questions[0]?.worth ?? 0
    return place === 0 || suits !== undefined || (worth > 0 && worth >= first * SHARE_OF_FIRST)
  })

/** `suits`: says what would suit, too. '': nothing is asked. */
export function messageToSeller(title: string, questions: readonly Ask[], suits: boolean, wording: Wording): string {
  if (questions.length === 0) return ''
  const name = title.replace(/\s+/g, ' ').trim()
  const hello = say(
    name === '' ? { code: 'message.hello-nameless', values: {} } : { code: 'message.hello', values: { title: name } },
    wording
  )
  const asked = questions.flatMap((one) => (suits && one.suits !== undefined ? [one.question, one.suits] : [one.question]))
  return [hello, ...asked, say({ code: 'message.thanks', values: {} }, wording)].join(' ')
}

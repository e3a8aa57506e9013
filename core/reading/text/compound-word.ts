/** Words written as one, in languages that do so. */
import { type Meaning, meaningOf, type PhraseTrie, type Sense } from './phrase-trie.ts'
import type { Token } from './tokens.ts'

/** What a word in the name of a garment tells for itself. */
export const INNER = new Set(['fibre', 'structure', 'trait', 'colour', 'use', 'made', 'kind'])

const LONGEST_HEAD = 14
const SHORTEST_FIRST = 3
const SHORTEST_HEAD = 4
const LONGEST = 40

/** Herrenhemd, Baumwollkleid: a garment by its last part; what cloth or person its first part names is kept. */
export function compoundWord({ kind, text }: Token, trie: PhraseTrie): Meaning | null {
  if (kind !== 'word' || text.length > LONGEST) return null
  for (let at = firstHead(text); at <= text.length - SHORTEST_HEAD; at++) {
    const head = trie.heads.get(text.slice(at))
    if (head !== undefined) return meaningOf([...head.senses, ...firstPart(text, trie)])
  }
  return null
}

/** Wollmantel: a garment that is known as one word, with what its first part tells. Worked out once a word. */
export function withFirstPart(meaning: Meaning, { text }: Token, trie: PhraseTrie): Meaning {
  if (meaning.whole !== null || !meaning.roles.has('kind') || text.length > LONGEST) return meaning.whole ?? meaning
  const more = firstPart(text, trie).filter(({ role }) => !meaning.roles.has(role))
  meaning.whole = more.length > 0 ? meaningOf([...meaning.senses, ...more]) : meaning
  return meaning.whole
}

const firstHead = (text: string): number => Math.max(SHORTEST_FIRST, text.length - LONGEST_HEAD)

/** Of the parts before a head the first that tells something: of Baumwollrock the cotton before a Rock, for Baum tells nothing before a Wollrock. */
function firstPart(text: string, { heads, joints, from }: PhraseTrie): Sense[] {
  for (let at = firstHead(text); at <= text.length - SHORTEST_HEAD; at++) {
    if (!heads.words.has(text.slice(at))) continue
    const first = text.slice(0, at)
    for (const word of [first, `${first}e`, withoutJoint(first, joints)]) {
      const own = from(word)?.root?.meaning?.senses.filter(({ role }) => INNER.has(role) && role !== 'kind')
      if (own !== undefined && own.length > 0) return own
    }
  }
  return []
}

function withoutJoint(first: string, joints: readonly string[]): string {
  const joint = joints.find((letters) => first.endsWith(letters))
  return joint === undefined ? first : first.slice(0, -joint.length)
}

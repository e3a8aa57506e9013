/** Words written as one, in languages that do so. */
import { type Meaning, meaningOf, type PhraseTrie } from './phrase-trie.ts'
import type { Token } from './tokens.ts'

/** What a word in the name of a garment tells for itself. */
export const INNER = new Set(['fibre', 'structure', 'trait', 'colour', 'use', 'made', 'kind'])

const LONGEST_HEAD = 14
const SHORTEST_FIRST = 3

/** Herrenhemd, Baumwollkleid: a garment by its last part; what cloth or person its first part names is kept. */
export function compoundWord({ kind, text }: Token, { heads, joints, from }: PhraseTrie): Meaning | null {
  if (kind !== 'word' || text.length > 40) return null
  for (let at = Math.max(SHORTEST_FIRST, text.length - LONGEST_HEAD); at <= text.length - 4; at++) {
    const head = heads.get(text.slice(at))
    if (head === undefined) continue
    const first = text.slice(0, at)
    const senses = [...head.senses]
    for (const word of [first, `${first}e`, withoutJoint(first, joints)]) {
      const own = from(word)?.root?.meaning?.senses.filter(({ role }) => INNER.has(role) && role !== 'kind')
      if (own === undefined || own.length === 0) continue
      senses.push(...own)
      break
    }
    return meaningOf(senses)
  }
  return null
}

function withoutJoint(first: string, joints: readonly string[]): string {
  const joint = joints.find((letters) => first.endsWith(letters))
  return joint === undefined ? first : first.slice(0, -joint.length)
}

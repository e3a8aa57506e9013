/** The single words of a language's phrases: all of them, and those that names of points are made of. Worked out when first asked. */
import { oncePer } from '../../once.ts'
import type { PhraseTrie, Sense } from './phrase-trie.ts'

export interface Vocabulary {
  /** Words in names of points. */
  names: ReadonlySet<string>
  /** Units of length, each a word. */
  units: ReadonlySet<string>
  /** Is this a word of some phrase? */
  has: (word: string) => boolean
  /** Every word of every phrase. */
  all: () => ReadonlySet<string>
}

export const vocabularyOf = oncePer((trie: PhraseTrie): Vocabulary => {
  let every: ReadonlySet<string> | null = null
  const all = () => {
    // signs of a kind are words of every trade
    if (every === null) {
      const words = trie.everyWord((tree) => tree !== 'signs')
      for (const head of trie.heads.words) words.add(head)
      every = words
    }
    return every
  }
  return {
    names: trie.everyWord((tree, { role }) => tree === 'root' && role === 'point'),
    units: new Set(
      [...trie.everyWord((_, sense) => isLength(sense))].filter((word) => trie.from(word)?.root?.meaning?.senses.some(isLength))
    ),
    has: (word) => {
      const starts = trie.from(word)
      return starts?.root !== undefined || starts?.cuts !== undefined || starts?.whose !== undefined || all().has(word)
    },
    all
  }
})

const LENGTHS = new Set(['in', 'cm', 'mm'])
const isLength = (sense: Sense): boolean => sense.role === 'unit' && LENGTHS.has(sense.unit)

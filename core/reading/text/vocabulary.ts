/** The single words of a language's phrases: all of them, and those that names of points are made of. Worked out when first asked. */
import type { Node, PhraseTrie } from './phrase-trie.ts'

export interface Vocabulary {
  /** Every word of every phrase. */
  all: ReadonlySet<string>
  /** Words in names of points. */
  names: ReadonlySet<string>
  /** Units of length, each a word. */
  units: ReadonlySet<string>
}

const known = new WeakMap<PhraseTrie, Vocabulary>()

export function vocabularyOf(trie: PhraseTrie): Vocabulary {
  const before = known.get(trie)
  if (before) return before
  const all = new Set<string>()
  const names = new Set<string>()
  const units = new Set<string>()
  const path: string[] = []
  const walk = (node: Node, root: boolean) => {
    for (const [word, next] of node.next) {
      all.add(word)
      path.push(word)
      if (root && next.meaning?.roles.has('point')) for (const one of path) names.add(one)
      if (root && path.length === 1 && next.meaning?.senses.some((sense) => sense.role === 'unit' && LENGTHS.has(sense.unit)))
        units.add(word)
      walk(next, root)
      path.pop()
    }
  }
  walk(trie.root, true)
  walk(trie.cuts, false)
  walk(trie.whose, false)
  for (const head of trie.heads.keys()) all.add(head)
  const made = { all, names, units }
  known.set(trie, made)
  return made
}

const LENGTHS = new Set(['in', 'cm', 'mm'])

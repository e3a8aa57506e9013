/** Finds tables that are asked by text and have beneath them what every object has: “constructor” would be found in them. */
import { type Node, place, type SourceFile, walk } from './project.ts'

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value

/** Types that say: any text may ask. */
const BY_TEXT = /\bRecord<\s*string\s*,|\[\w+: string\]/

/** Tables written as plain objects though their type lets any text ask. */
export function openTables(file: SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (node.type !== 'VariableDeclarator' || !isNode(node.id) || !isNode(node.init) || node.init.type !== 'ObjectExpression') return
    const type = node.id.typeAnnotation
    if (isNode(type) && BY_TEXT.test(file.text.slice(type.start, type.end))) found.push(place(file, node.start))
  })
  return found
}

/** Finds the message codes that a file says. */
import { type Node, place, type SourceFile, textOf, walk } from './project.ts'

/** The codes a file says, as literals or as the beginning of one that is put together, with their places. */
export function codesIn(file: SourceFile): { code: string; whole: boolean; at: string }[] {
  const found: { code: string; whole: boolean; at: string }[] = []
  const note = (node: Node) => {
    const whole = textOf(node)
    if (whole !== undefined) found.push({ code: whole, whole: true, at: place(file, node.start) })
    else if (node.type === 'ConditionalExpression') {
      note(node.consequent as Node)
      note(node.alternate as Node)
    } else if (node.type === 'TemplateLiteral') {
      const [head] = node.quasis as { value: { cooked: string } }[]
      if (head !== undefined && head.value.cooked !== '') found.push({ code: head.value.cooked, whole: false, at: place(file, node.start) })
    }
  }
  walk(file, (node, parent) => {
    if (node.type === 'Property' && parent?.type === 'ObjectExpression' && keyOf(node) === 'code') {
      const keys = (parent.properties as Node[]).map(keyOf)
      if (keys.includes('values')) note(node.value as Node)
    }
    if (node.type === 'CallExpression' && SAYERS.has(nameOf(node.callee))) {
      const [first] = node.arguments as Node[]
      if (first !== undefined) note(first)
    }
  })
  return found
}

/** What takes a code as its first argument: the words of a page. */
const SAYERS = new Set(['t'])
const nameOf = (node: unknown): string => {
  const one = node as Node
  return one.type === 'Identifier' ? String(one.name) : one.type === 'MemberExpression' ? nameOf(one.property) : ''
}
const keyOf = (property: Node): string => nameOf(property.key ?? property) || (textOf(property.key) ?? '')

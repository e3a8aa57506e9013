/** Finds the message codes that a file says. */
import { type Node, place, type SourceFile, textOf, walk } from './project.ts'

export interface Said {
  code: string
  /** false: only the beginning of a code. */
  whole: boolean
  /** path:line */
  at: string
}

/** The codes a file says, as literals or as the beginning of one that is put together, with their places. */
export function codesIn(file: SourceFile): Said[] {
  const found: Said[] = []
  const note = (node: Node) => {
    const whole = textOf(node)
    if (whole !== undefined) found.push({ code: whole, whole: true, at: place(file, node.start) })
    else if (node.type === 'ConditionalExpression') {
      note(node.consequent as Node)
      note(node.alternate as Node)
    } else if (node.type === 'TemplateLiteral') {
      if (headOf(node) !== '') found.push({ code: headOf(node), whole: false, at: place(file, node.start) })
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

const LOOKS_LIKE_A_CODE = /^[a-z][a-z0-9-]*(\.[A-Za-z0-9-]+)*\.?[A-Za-z0-9-]*$/

/**
 * Every string of a file that has the look of a message code of one of these families (`body.` of `body.title`), said or not:
 * codes are also chosen in tables and handed about. With the heads of those that are put together.
 */
export function likeCodesIn(file: SourceFile, families: ReadonlySet<string>): Said[] {
  const found: Said[] = []
  const note = (code: string, whole: boolean, at: number) => {
    if (code.includes('.') && LOOKS_LIKE_A_CODE.test(code) && families.has(code.slice(0, code.indexOf('.'))))
      found.push({ code, whole, at: place(file, at) })
  }
  walk(file, (node, parent) => {
    const text = textOf(node)
    if (text !== undefined && parent?.type !== 'ImportDeclaration') note(text, true, node.start)
    if (node.type === 'TemplateLiteral') note(headOf(node), false, node.start)
  })
  return found
}

const headOf = (template: Node): string => (template.quasis as { value: { cooked: string } }[])[0]?.value.cooked ?? ''

/** What takes a code as its first argument: the words of a page. */
const SAYERS = new Set(['t'])
const nameOf = (node: unknown): string => {
  const one = node as Node
  return one.type === 'Identifier' ? String(one.name) : one.type === 'MemberExpression' ? nameOf(one.property) : ''
}
const keyOf = (property: Node): string => nameOf(property.key ?? property) || (textOf(property.key) ?? '')

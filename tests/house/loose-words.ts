/** Finds words of a natural language that stand in a rule of the reader, where the languages' files should hold them. */
import { type Node, place, type SourceFile, textOf, walk } from './project.ts'

/** What a word test may name in any file: kinds of tokens, and units, which are written alike in every language. */
const ANYWHERE = new Set(['digits', 'fraction', 'mark', 'break', 'word', 'cm', 'mm', 'in', 'ins', 'inch', 'inches'])

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value
const listed = (value: unknown): Node[] => (Array.isArray(value) ? value.filter(isNode) : [])

/** Two letters and more: one alone is a sign (x between figures, the m of metres). */
const WORD = /\p{L}{2,}/gu
const wordsIn = (text: string): string[] => (text.match(WORD) ?? []).filter((word) => !ANYWHERE.has(word))

/** The words of a regular expression: without its escapes, sets of letters, names of groups and flags. */
const wordsOfPattern = (pattern: string): string[] =>
  wordsIn(
    pattern
      .replace(/\\[pP]\{[^}]*\}|\\u[0-9a-f]{4}|\\./gi, ' ')
      .replace(/\[(?:\^)?[^\]]*\]/g, ' ')
      .replace(/\(\?<\w+>/g, '(')
      .replace(/\{\d*,?\d*\}/g, ' ')
  )

const TOKEN_TEXT = /(\.text( \?\? '')?|\bword|\bword(At)?\([^()]*\)( \?\? '')?)$/

/** Tells whether code is the text of a token: `token.text`, `tokens[at]?.text ?? ''`, `word`, or a name that the file gave to one. */
function tokenTextsOf(file: SourceFile): (code: string) => boolean {
  const names = new Set<string>()
  walk(file, (node) => {
    if (node.type !== 'VariableDeclarator' || !isNode(node.id) || !isNode(node.init)) return
    if (TOKEN_TEXT.test(file.text.slice(node.init.start, node.init.end))) names.add(String(node.id.name))
  })
  return (code) => TOKEN_TEXT.test(code) || names.has(code)
}

/** The strings that a list, a set, a map or a table of a file holds, by the name it has there. */
function listsOf(file: SourceFile): Map<string, string[]> {
  const lists = new Map<string, string[]>()
  walk(file, (node) => {
    if (node.type !== 'VariableDeclarator' || !isNode(node.id) || !isNode(node.init)) return
    const value = node.init
    const given = value.type === 'NewExpression' || value.type === 'CallExpression' ? listed(value.arguments)[0] : value
    const held =
      given?.type === 'ArrayExpression'
        ? listed(given.elements).map((one) => (one.type === 'ArrayExpression' ? listed(one.elements)[0] : one))
        : given?.type === 'ObjectExpression'
          ? listed(given.properties).map(({ key }) => (isNode(key) ? key : undefined))
          : []
    const words = held.flatMap((one) => (one?.type === 'Identifier' ? [String(one.name)] : [textOf(one) ?? '']))
    if (words.some((word) => word !== '')) lists.set(String(node.id.name), words)
  })
  return lists
}

/** The words that the rules of a file hold, each with its place: in regular expressions, lists and comparisons of tokens. */
export function looseWords(file: SourceFile): { at: string; word: string }[] {
  const found: { at: string; word: string }[] = []
  const report = (node: Node, words: readonly string[]) => {
    for (const word of words) found.push({ at: place(file, node.start), word })
  }
  const code = (node: unknown): string => (isNode(node) ? file.text.slice(node.start, node.end) : '')
  const lists = listsOf(file)
  const isTokenText = tokenTextsOf(file)
  walk(file, (node) => {
    const { type } = node
    if (type === 'Literal' && code(node).startsWith('/')) report(node, wordsOfPattern(code(node).replace(/\/[a-z]*$/, '')))
    if (type === 'NewExpression' && code(node.callee) === 'RegExp') {
      const [pattern] = listed(node.arguments)
      if (pattern?.type === 'TemplateLiteral')
        for (const part of listed(pattern.quasis)) report(node, wordsOfPattern(String((part.value as { raw: string }).raw)))
      else report(node, wordsOfPattern(textOf(pattern) ?? ''))
    }
    if (type === 'BinaryExpression' && /^[!=]==?$/.test(String(node.operator))) {
      if (isTokenText(code(node.right))) report(node, wordsIn(textOf(node.left) ?? ''))
      if (isTokenText(code(node.left))) report(node, wordsIn(textOf(node.right) ?? ''))
    }
    if (type === 'SwitchStatement' && isTokenText(code(node.discriminant)))
      for (const one of listed(node.cases)) report(one, wordsIn(textOf(one.test) ?? ''))
    if (type === 'CallExpression' && isNode(node.callee) && node.callee.type === 'MemberExpression') {
      const method = code(node.callee.property)
      const [asked] = listed(node.arguments)
      const of = node.callee.object
      if (/^(has|get|includes)$/.test(method) && asked !== undefined && isTokenText(code(asked)))
        report(
          node,
          [...(lists.get(code(of)) ?? []), ...(isNode(of) ? listed(of.elements).map((one) => textOf(one) ?? '') : [])].flatMap(wordsIn)
        )
      // 'with mit avec'.split(' ')
      if (method === 'split' && isNode(of)) {
        const words = wordsIn(textOf(of) ?? '')
        if (words.length > 1) report(node, words)
      }
    }
    if (type === 'MemberExpression' && node.computed === true && isTokenText(code(node.property)))
      report(node, (lists.get(code(node.object)) ?? []).flatMap(wordsIn))
  })
  return found
}

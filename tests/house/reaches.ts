/** Finds what a file reaches for beyond its parameters: the clock, chance, the browser, the console. */
import { type Node, place, type SourceFile, walk } from './project.ts'

const BARRED = new Map(
  Object.entries({
    console: 'return what is to be said as an issue',
    document: 'take the text or the data that was found in it',
    window: 'take the value as a parameter',
    navigator: 'take the value as a parameter',
    location: 'take the address as a parameter',
    browser: 'pass the result in from the entrypoint',
    chrome: 'pass the result in from the entrypoint',
    localStorage: 'keep it in core/records',
    sessionStorage: 'keep it in core/records',
    fetch: 'nothing is requested, ever',
    XMLHttpRequest: 'nothing is requested, ever',
    WebSocket: 'nothing is requested, ever',
    performance: 'take the time from the caller',
    setTimeout: 'take the time from the caller',
    setInterval: 'take the time from the caller',
    requestAnimationFrame: 'take the time from the caller',
    crypto: 'take ids from the caller',
    process: 'take the value as a parameter'
  })
)

/** Names that a file gives to something of its own. */
function ownNames(file: SourceFile): Set<string> {
  const names = new Set<string>()
  const add = (node: unknown) => {
    if (typeof node === 'object' && node !== null && 'type' in node && node.type === 'Identifier' && 'name' in node)
      names.add(String(node.name))
  }
  walk(file, (node, parent, key) => {
    if (node.type === 'VariableDeclarator' || node.type === 'FunctionDeclaration') add(node.id)
    if (node.type === 'ImportSpecifier' || node.type === 'ImportDefaultSpecifier') add(node.local)
    if (key === 'params') add(node)
    if (node.type === 'Property' && parent?.type === 'ObjectPattern') add(node.value)
  })
  return names
}

const isNamed = (node: unknown, name: string): boolean =>
  typeof node === 'object' && node !== null && 'type' in node && node.type === 'Identifier' && 'name' in node && node.name === name

/** What a file of the core reaches for and may not, each with its place and what to do instead. */
export function reaches(file: SourceFile): string[] {
  const own = ownNames(file)
  const found: string[] = []
  const report = (node: Node, what: string, instead: string) => found.push(`${place(file, node.start)} uses ${what}: ${instead}.`)
  walk(file, (node, parent, key) => {
    if (node.type === 'MemberExpression' && isNamed(node.object, 'Math') && isNamed(node.property, 'random'))
      report(node, 'Math.random', 'take a fixed sequence, so that the same request has the same answer')
    if (node.type === 'MemberExpression' && isNamed(node.object, 'Date') && isNamed(node.property, 'now'))
      report(node, 'Date.now', 'take the time from the caller')
    const bareDate = node.type === 'NewExpression' && Array.isArray(node.arguments) && node.arguments.length === 0
    if ((bareDate || node.type === 'CallExpression') && isNamed(node.callee, 'Date'))
      report(node, 'the time of day', 'take the time from the caller')
    if (node.type !== 'Identifier' || typeof node.name !== 'string' || own.has(node.name)) return
    const instead = BARRED.get(node.name)
    if (instead === undefined) return
    const isOnlyAName = (key === 'property' && parent?.computed === false) || (key === 'key' && parent?.computed === false)
    if (!isOnlyAName && !parent?.type.startsWith('TS')) report(node, node.name, instead)
  })
  return found
}

/** Pages save by Saving alone (entrypoints/view/saving.ts): a call of the records whose answer nobody waits for loses text without a word. */
import { expect, test } from 'vitest'
import { type Node, place, type SourceFile, sourcesIn, textOf, walk } from './project.ts'

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value

/** The calls of functions of core/records that are left to themselves: `void choose(…)`, `setSettings(…)` as a statement, with or without .then behind. */
function leftAlone(file: SourceFile): string[] {
  const ofRecords = new Set<string>()
  const found: string[] = []
  walk(file, (node) => {
    if (node.type !== 'ImportDeclaration' || !/core\/records\/(?!trouble)/.test(textOf(node.source) ?? '')) return
    for (const one of node.specifiers as Node[]) if (isNode(one.local)) ofRecords.add(String(one.local.name))
  })
  const rootCall = (node: unknown): unknown => {
    if (!isNode(node) || node.type !== 'CallExpression' || !isNode(node.callee)) return undefined
    return node.callee.type === 'MemberExpression' ? rootCall(node.callee.object) : node.callee.name
  }
  walk(file, (node) => {
    const left =
      node.type === 'ExpressionStatement'
        ? node.expression
        : node.type === 'UnaryExpression' && node.operator === 'void'
          ? node.argument
          : null
    const name = rootCall(left)
    if (typeof name === 'string' && ofRecords.has(name)) found.push(place(file, node.start))
  })
  return found
}

/** Reading alone, whose answer is asked for again. */
const READS = ['entrypoints/workroom/workroom.tsx']

test('no page leaves a call of the records to itself: put it into saving.run(…)', () => {
  const files = sourcesIn('entrypoints').filter(({ path }) => !READS.includes(path))
  expect(files.length).toBeGreaterThan(40)
  expect(files.flatMap(leftAlone)).toEqual([])
})

test.each(['void choose(a)', 'choose(a)', 'choose(a).then(b)', 'const f = () => void choose(a).catch(c)'])('%s would be seen', (text) => {
  const file = { path: 'entrypoints/x.ts', text: `import { choose } from '../core/records/looks.ts'\n${text}` }
  expect(leftAlone(file).length).toBeGreaterThan(0)
})

test.each(['void saving.run(() => choose(a))', 'const b = await choose(a)'])('%s is no fault', (text) => {
  const file = { path: 'entrypoints/x.ts', text: `import { choose } from '../core/records/looks.ts'\n${text}` }
  expect(leftAlone(file)).toEqual([])
})

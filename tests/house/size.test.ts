/** No function is longer than can be read in one look. */
import { expect, test } from 'vitest'
import { type Node, place, type SourceFile, sourcesIn, walk } from './project.ts'

const MOST_LINES = 80

const FUNCTIONS = new Set(['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'])

/** The functions of a file with more lines than `most`: where each begins and how many lines it has. */
function longFunctions(file: SourceFile, most = MOST_LINES): { at: string; lines: number }[] {
  const found: { at: string; lines: number }[] = []
  walk(file, (node: Node, parent) => {
    if (!FUNCTIONS.has(node.type)) return
    // a method begins with its name, which stands outside its function
    const from = parent?.type === 'MethodDefinition' || (parent?.type === 'Property' && parent.method === true) ? parent.start : node.start
    const lines = file.text.slice(from, node.end).split('\n').length
    if (lines > most) found.push({ at: place(file, from), lines })
  })
  return found
}

test(`no function has more than ${MOST_LINES} lines`, () => {
  const long = sourcesIn('core', 'components', 'entrypoints')
    .flatMap((file) => longFunctions(file))
    .map(({ at, lines }) => `${at}: ${lines} lines; move a part that has a name of its own (a stage, a form, a table) into a function.`)
  expect(long).toEqual([])
})

test('declarations, arrows and methods are counted, each by its own lines', () => {
  const text = `function one() {
  return 1
}
const two = () => {
  return 2
}
const short = () => 3
class Four {
  four() {
    return 4
  }
}
const five = {
  five() {
    return 5
  }
}
`
  const found = (most: number) => longFunctions({ path: 'some.ts', text }, most).map(({ at, lines }) => `${at} ${lines}`)
  expect(found(2)).toEqual(['some.ts:1 3', 'some.ts:4 3', 'some.ts:9 3', 'some.ts:14 3'])
  expect(found(3)).toEqual([])
})

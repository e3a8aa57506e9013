/** JSON read in short steps is what it is read whole, and is refused where it would be, whatever the text. */
import { expect, test } from 'vitest'
import { type RowsOfJson, rowsOfJson } from '../../core/records/rows-of-json.ts'
import { mutatedBackup } from './mutated-backups.ts'
import { type Random, randomFrom } from './requests.ts'

const SEED = 20_261_130
const FILES = 300
const TEXTS = 20_000

function read(text: string): RowsOfJson | null {
  const steps = rowsOfJson(text)
  try {
    for (;;) {
      const step = steps.next()
      if (step.done === true) return step.value
    }
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}
function whole(text: string): { value: unknown } | null {
  try {
    return { value: JSON.parse(text) }
  } catch {
    return null
  }
}

/** The whole again: each place in the lists of the outermost object, and of those in it, with its item. */
function together({ outline, items }: RowsOfJson): unknown {
  const listed = (value: unknown): unknown => (Array.isArray(value) ? value.map((place) => items[Number(place)]) : value)
  const eachIn = (value: unknown, change: (inner: unknown) => unknown): unknown => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
    // names like __proto__ are names here
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, change(inner)]))
  }
  return eachIn(outline, (inner) => (Array.isArray(inner) ? listed(inner) : eachIn(inner, listed)))
}

function deepest(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0
  return 1 + Math.max(0, ...Object.values(value).map(deepest))
}

/** Does it say the same as JSON.parse? null: it was refused, by both. */
function agrees(text: string): boolean | null {
  const [apart, at] = [read(text), whole(text)]
  if (apart === null || at === null) {
    expect({ text, refused: apart === null }).toEqual({ text, refused: at === null })
    return null
  }
  expect(JSON.stringify(together(apart)), text).toBe(JSON.stringify(at.value))
  // of two of one name the later counts, whatever the other was
  expect(apart.depth, text).toBeGreaterThanOrEqual(deepest(at.value))
  return true
}

test(`${FILES} mutated backups (seed ${SEED})`, { timeout: 60_000 }, () => {
  const random = randomFrom(SEED)
  const all = Array.from({ length: FILES }, () => agrees(mutatedBackup(random)))
  expect(all.filter((one) => one === null).length).toBeGreaterThan(FILES / 50)
  expect(all.filter((one) => one !== null).length).toBeGreaterThan(FILES / 2)
})

const PIECES = [
  ...['{', '}', '[', ']', ',', ':', '"', '\\', '"a"', '"b":', '"a":[', '"a":{', '{"a":', '"\\""', '"\\\\"', '"]"', '",{"', '[]', '{}'],
  ...[' ', '\n', '\u00a0', '1', '-2.5', 'null', 'true', 'tru', '"__proto__":', '"👗"', '[1,2]', '{"a":[{"b":[1]},2]}']
]
/** JSON of random shape, or what is nearly so. */
function text(random: Random): string {
  const value = (left: number): string => {
    const chance = random()
    if (left === 0 || chance < 0.25) return ['1', '"a"', 'null', '"\\"],"', '[]', '{}', ' 7 ', '"\\\\"'][Math.floor(random() * 8)] ?? ''
    const many = Math.floor(random() * 4)
    if (chance < 0.6) return `[${Array.from({ length: many }, () => value(left - 1)).join(random() < 0.5 ? ',' : ' ,\n')}]`
    const names = ['"a"', '"b"', '"tables"', '"__proto__"', '"a[{"']
    return `{${Array.from({ length: many }, () => `${names[Math.floor(random() * 5)]}:${value(left - 1)}`).join(',')}}`
  }
  let made = random() < 0.8 ? value(5) : Array.from({ length: 9 }, () => PIECES[Math.floor(random() * PIECES.length)]).join('')
  if (random() < 0.4) {
    const at = Math.floor(random() * (made.length + 1))
    made =
      made.slice(0, at) +
      (random() < 0.5 ? (PIECES[Math.floor(random() * PIECES.length)] ?? '') : '') +
      made.slice(at + (random() < 0.5 ? 1 : 0))
  }
  return made
}

test(`${TEXTS} texts that are JSON or nearly (seed ${SEED})`, { timeout: 60_000 }, () => {
  const random = randomFrom(SEED)
  const all = Array.from({ length: TEXTS }, () => agrees(text(random)))
  expect(all.filter((one) => one === null).length).toBeGreaterThan(TEXTS / 10)
  expect(all.filter((one) => one !== null).length).toBeGreaterThan(TEXTS / 3)
})

test('of each item is told how deep it goes, and of the whole', () => {
  expect(read('{"a":[1,{"b":{}},[[[]]]],"t":{"c":[{}]},"d":7}')).toMatchObject({
    outline: { a: [0, 1, 2], t: { c: [3] }, d: 7 },
    depths: [2, 4, 5, 4],
    depth: 5
  })
  const many = 100_000
  expect(read(`{"a":[${'['.repeat(many)}${']'.repeat(many)}]}`)).toMatchObject({ depths: [many + 2], depth: many + 2 })
})

test('no step is long: many rows are read in many', () => {
  const row = JSON.stringify({ id: 'a', text: '“quoted” \\ "'.repeat(200) })
  const steps = [...rowsOfJson(`{"tables":{"looks":[${Array.from({ length: 2000 }, () => row).join()}]}}`)]
  expect(steps.length).toBeGreaterThan(30)
})

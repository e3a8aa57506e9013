/** What is asked of a schema with yes or no for an answer is answered as zod answers it, whatever is asked about. */
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { passes } from '../../core/records/passes.ts'
import { isRow } from '../../core/records/row.ts'
import { SCHEMAS, TABLES } from '../../core/records/schemas.ts'
import { mutatedBackup } from './mutated-backups.ts'
import { randomFrom } from './requests.ts'

const SEED = 20_261_130
const FILES = 400

test(`each row of ${FILES} mutated backups (seed ${SEED})`, { timeout: 120_000 }, () => {
  const random = randomFrom(SEED)
  const answers = { yes: 0, no: 0 }
  for (let n = 0; n < FILES; n++) {
    const rows = rowsOf(mutatedBackup(random))
    for (const [place, row] of rows.entries()) {
      for (const table of TABLES) {
        const zods = SCHEMAS[table].safeParse(row).success
        expect(passes(SCHEMAS[table])(row), `file ${n}, row ${place}, as one of ${table}`).toBe(zods)
        answers[zods ? 'yes' : 'no']++
      }
    }
  }
  expect(Math.min(answers.yes, answers.no)).toBeGreaterThan(FILES)
})

function rowsOf(text: string): unknown[] {
  try {
    const file: unknown = JSON.parse(text)
    const tables = isRow(file) && isRow(file.tables) ? Object.values(file.tables) : []
    return tables.flatMap((rows) => (Array.isArray(rows) ? rows : [rows]))
  } catch {
    return []
  }
}

class Odd {
  a = 1
}
const VALUES: readonly unknown[] = [
  ...[undefined, null, true, false, 0, 1, -1, 1.5, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY, 1e308, 100, 101],
  ...[
    '',
    'a',
    'b',
    '1',
    'ab',
    'abc',
    'é',
    '👗',
    '👗👗',
    '👗👗👗',
    '\ud800',
    '2026-03-01',
    '2026-02-30',
    '2026-03-01T09:30:00Z',
    '2026-03-01T09:30:00',
    'wren@peg.example'
  ],
  ...[[], ['a'], [null], ['a', 1], [1, 2], new Array(1), [undefined], new Date(0), Symbol('a'), new Odd(), new Map()],
  ...[{}, { a: 1 }, { a: 'a' }, { a: undefined }, { a: null }, { b: 1 }, { a: 1, b: 2 }, { 1: 1 }, { '-0.5': 1 }, { a: 1, z: 1 }],
  ...[Object.create({ a: 1 }), Object.create(null), Object.defineProperty({}, 'a', { value: 1 }), { [Symbol('a')]: 1 }, { constructor: 1 }],
  JSON.parse('{"__proto__":{"a":1}}'),
  JSON.parse('{"a":1,"__proto__":1}')
]

const SCHEMAS_TRIED: readonly (readonly [string, z.core.$ZodType])[] = [
  ['a text', z.string()],
  ['a text with something in it', z.string().check(z.minLength(1))],
  ['a text of two or more', z.string().check(z.minLength(2))],
  ['a text of two at most', z.string().check(z.maxLength(2))],
  ['a text of a pattern', z.string().check(z.maxLength(2), z.regex(/^a/))],
  ['a text of a pattern that goes on from where it was', z.string().check(z.regex(/a/g))],
  ['a text made of anything', z.coerce.string()],
  ['an e-mail address', z.email()],
  ['a time', z.iso.datetime()],
  ['a day', z.iso.date()],
  ['a number', z.number()],
  ['a number in bounds', z.number().check(z.positive(), z.maximum(100))],
  ['a number from nothing up', z.number().check(z.nonnegative())],
  ['a number below', z.number().check(z.lt(1), z.multipleOf(0.5))],
  ['a whole number', z.int().check(z.positive())],
  ['a small whole number', z.int32()],
  ['yes or no', z.boolean()],
  ['anything', z.unknown()],
  ['nothing', z.null()],
  ['one of some', z.enum(['a', 'b'])],
  ['one of some numbers', z.literal([1, 2])],
  ['a text or null', z.nullable(z.string())],
  ['a list', z.array(z.string())],
  ['a list of anything', z.array(z.unknown())],
  ['a list of two at most', z.array(z.unknown()).check(z.maxLength(1))],
  ['this or that', z.union([z.string(), z.object({ a: z.number() })])],
  ['an object', z.object({ a: z.number() })],
  ['an object with something that may lack', z.object({ a: z.exactOptional(z.number()), b: z.optional(z.number()) })],
  ['an object with something to stand for what lacks', z.object({ a: z._default(z.number(), 1) })],
  ['an object with anything at all in a place', z.object({ a: z.unknown() })],
  ['an object and nothing beside', z.strictObject({ a: z.exactOptional(z.number()) })],
  ['an object and numbers beside', z.catchall(z.object({ a: z.number() }), z.number())],
  ['an object that is asked about', z.object({ a: z.number() }).check(z.refine(({ a }) => a > 1))],
  ['numbers by some names', z.partialRecord(z.enum(['a', 'b']), z.number())],
  ['numbers by all of some names', z.record(z.enum(['a', 'b']), z.number())],
  ['numbers by any name', z.record(z.string(), z.number())],
  ['numbers by numbers', z.partialRecord(z.literal([1, 2]), z.number())],
  ['numbers by any number', z.record(z.number(), z.number())]
]

test.each(SCHEMAS_TRIED)('%s', (_, schema) => {
  const answers = new Set<boolean>()
  const tried = [...VALUES, ...VALUES.map((value) => ({ a: value })), ...VALUES.map((value) => [value])]
  for (const [place, value] of tried.entries()) {
    const zods = z.safeParse(schema, value).success
    expect(passes(schema)(value), `value ${place}`).toBe(zods)
    answers.add(zods)
  }
  expect(answers.has(true)).toBe(true)
})

/**
 * A schema as a question with yes or no for an answer. Asking zod itself makes a copy of all that it is asked about, and a list of what is wrong:
 * of ten thousand rows that is most of the time. What is not known here is asked of zod, and the law `yes-or-no` holds the two together.
 */
import * as z from 'zod/mini'

type Passes = (value: unknown) => boolean
type Schema = z.core.$ZodType

/** Does this schema take a value? Made once for each schema. */
export function passes(schema: Schema): Passes {
  const known = made.get(schema)
  if (known !== undefined) return known
  const one = madeFor(schema) ?? askedOf(schema)
  made.set(schema, one)
  return one
}
const made = new WeakMap<Schema, Passes>()

/** By zod. */
const askedOf =
  (schema: Schema): Passes =>
  (value) =>
    z.safeParse(schema, value).success

/** null: a kind of schema, or something about it, is not known here. */
function madeFor(schema: Schema): Passes | null {
  const { def } = schema._zod
  const { checks = [] } = def
  if ('coerce' in def && def.coerce === true) return null
  const every: Passes[] = []
  // a format is a schema and a check in one
  for (const check of schema instanceof z.core.$ZodCheck ? [schema, ...checks] : checks) {
    const one = checkOf(check, schema)
    if (one === null) return null
    every.push(one)
  }
  const its = kindOf(schema)
  if (its === null || every.length === 0) return its
  const [first, ...others] = every
  if (first !== undefined && others.length === 0) return (value) => its(value) && first(value)
  return (value) => its(value) && every.every((check) => check(value))
}

function kindOf(schema: Schema): Passes | null {
  if (schema instanceof z.core.$ZodString) return (value) => typeof value === 'string'
  if (schema instanceof z.core.$ZodNumber) return (value) => typeof value === 'number' && Number.isFinite(value)
  if (schema instanceof z.core.$ZodBoolean) return (value) => typeof value === 'boolean'
  if (schema instanceof z.core.$ZodUnknown) return () => true
  if (schema instanceof z.core.$ZodEnum || schema instanceof z.core.$ZodLiteral) {
    const values: ReadonlySet<unknown> = schema._zod.values
    return (value) => values.has(value)
  }
  if (schema instanceof z.core.$ZodNullable) {
    const inner = passes(schema._zod.def.innerType)
    return (value) => value === null || inner(value)
  }
  if (schema instanceof z.core.$ZodExactOptional) return passes(schema._zod.def.innerType)
  if (schema instanceof z.core.$ZodArray) {
    const item = passes(schema._zod.def.element)
    return (value) => Array.isArray(value) && isEach(value, item)
  }
  if (schema instanceof z.core.$ZodUnion) {
    const options = schema._zod.def.options.map(passes)
    return (value) => options.some((option) => option(value))
  }
  if (schema instanceof z.core.$ZodObject) return objectOf(schema)
  if (schema instanceof z.core.$ZodRecord) return recordOf(schema)
  return null
}

/** Holes, too: zod takes one for nothing. */
function isEach(list: readonly unknown[], item: Passes): boolean {
  for (let at = 0; at < list.length; at++) if (!item(list[at])) return false
  return true
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function objectOf(schema: z.core.$ZodObject): Passes | null {
  const { shape, catchall } = schema._zod.def
  if (catchall !== undefined && !(catchall instanceof z.core.$ZodNever)) return null
  const fields = Object.entries(shape).map(([name, its]) => {
    const { optin, optout } = its._zod
    const mayLack = optin === 'optional' && optout === 'optional'
    return { name, its: passes(its), mayLack, isKnown: mayLack || optin === undefined }
  })
  if (fields.some(({ name, isKnown }) => !isKnown || name === '__proto__')) return null
  const isWhole = (value: Readonly<Record<string, unknown>>): boolean => {
    for (const { name, its, mayLack } of fields) {
      // what is inherited counts, as it does for zod
      if (name in value ? !its(value[name]) : !mayLack) return false
    }
    return true
  }
  if (catchall === undefined) return (value) => isObject(value) && isWhole(value)
  const names = new Set(Object.keys(shape))
  return (value) => {
    if (!isObject(value) || !isWhole(value)) return false
    for (const name in value) if (!names.has(name)) return false
    return true
  }
}

function recordOf(schema: z.core.$ZodRecord): Passes | null {
  const { keyType, valueType, partial, mode } = schema._zod.def
  if (mode !== undefined || (keyType._zod.values !== undefined && partial !== true)) return null
  const [key, its, zods] = [passes(keyType), passes(valueType), askedOf(schema)]
  return (value) => {
    if (!z.core.util.isPlainObject(value)) return false
    for (const name of Reflect.ownKeys(value)) {
      if (name === '__proto__' || !Object.prototype.propertyIsEnumerable.call(value, name)) continue
      // a name that may be meant as a number, or a symbol, is for zod to judge
      if (!key(name)) return zods(value)
      if (!its(value[name])) return false
    }
    return true
  }
}

/** null: a check that is not known here. Each is asked of values that its schema takes for one of its kind. */
function checkOf(check: z.core.$ZodCheck | Schema, schema: Schema): Passes | null {
  if (check instanceof z.core.$ZodCheckNumberFormat) return check._zod.def.format === 'safeint' ? Number.isSafeInteger : null
  if (check instanceof z.core.$ZodCheckGreaterThan || check instanceof z.core.$ZodCheckLessThan) {
    const { value: bound, inclusive } = check._zod.def
    if (typeof bound !== 'number') return null
    const isLeast = check instanceof z.core.$ZodCheckGreaterThan
    return (value) => typeof value === 'number' && ((isLeast ? value > bound : value < bound) || (inclusive && value === bound))
  }
  if (!(schema instanceof z.core.$ZodString)) return null
  if (check instanceof z.core.$ZodCheckMinLength) return check._zod.def.minimum === 1 ? (value) => value !== '' : null
  if (check instanceof z.core.$ZodCheckMaxLength) {
    const { maximum } = check._zod.def
    // zod counts characters, of which some are two units
    return (value) =>
      typeof value === 'string' && (value.length <= maximum || (value.length <= 2 * maximum && [...value].length <= maximum))
  }
  if (check instanceof z.core.$ZodCheckStringFormat) {
    const { format, pattern } = check._zod.def
    if (pattern === undefined || pattern.global || pattern.sticky || !['datetime', 'date', 'regex'].includes(format)) return null
    return (value) => typeof value === 'string' && pattern.test(value)
  }
  return null
}

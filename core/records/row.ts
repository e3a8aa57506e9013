/** A stored record before a schema has said what it is. */
export type Row = Readonly<Record<string, unknown>>
/** The rows of each table; a row may be anything, in a backup file that was changed by hand. */
export type Tables = Readonly<Record<string, readonly unknown[]>>

export const isRow = (value: unknown): value is Row => typeof value === 'object' && value !== null && !Array.isArray(value)

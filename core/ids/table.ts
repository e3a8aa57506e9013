/** Tables that are asked by text of strangers: a word of a listing, a name in a page's data, a code in a file. */

/** What stands under a text; undefined: nothing does. */
export type Table<T> = Readonly<Partial<Record<string, T>>>

/**
 * A table with nothing beneath it: “constructor”, “toString” or “__proto__” find what the table says of them, which is nothing,
 * and never what every object has. Every table that is not asked by a closed list of ids is made with this (or is a Map).
 */
export const table = <T>(rows: Table<T>): Table<T> => Object.freeze(Object.assign(Object.create(null), rows))

/** Worked out when it is first asked for, and once. */
export function once<T>(make: () => T): () => T {
  let made: { it: T } | undefined
  return () => {
    made ??= { it: make() }
    return made.it
  }
}

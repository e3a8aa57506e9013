/** Worked out when it is first asked for, and once. */
export function once<T>(make: () => T): () => T {
  let made: { it: T } | undefined
  return () => {
    made ??= { it: make() }
    return made.it
  }
}

/** Worked out of each thing when it is first asked for, and once; nothing is kept of what is gone. */
export function oncePer<Thing extends object, T extends {}>(make: (thing: Thing) => T): (thing: Thing) => T {
  const made = new WeakMap<Thing, T>()
  return (thing) => {
    const known = made.get(thing)
    if (known !== undefined) return known
    const it = make(thing)
    made.set(thing, it)
    return it
  }
}

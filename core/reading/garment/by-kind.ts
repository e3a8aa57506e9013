/** What of a few names is so on each kind of garment: asked of every text, worked out once a name. */
import { GARMENT_KINDS, type GarmentKind } from '../../ids/kinds.ts'

/** Of a name whether it is so on each of GARMENT_KINDS, by its place there. */
export function byKind<Name>(is: (name: Name, kind: GarmentKind) => boolean): (name: Name) => readonly boolean[] {
  const known = new Map<Name, readonly boolean[]>()
  return (name) => {
    const before = known.get(name)
    if (before) return before
    const kinds = GARMENT_KINDS.map((kind) => is(name, kind))
    known.set(name, kinds)
    return kinds
  }
}

/** What a few names are on each kind of garment: asked of every text, worked out once a name. */
import { GARMENT_KINDS, type GarmentKind } from '../../ids/kinds.ts'

/** Of a name what it is on each of GARMENT_KINDS, by its place there. */
export function byKind<Name, Is = boolean>(is: (name: Name, kind: GarmentKind) => Is): (name: Name) => readonly Is[] {
  const known = new Map<Name, readonly Is[]>()
  return (name) => {
    const before = known.get(name)
    if (before) return before
    const kinds = GARMENT_KINDS.map((kind) => is(name, kind))
    known.set(name, kinds)
    return kinds
  }
}

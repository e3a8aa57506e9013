/** Whose sizes a garment is cut for. */
import type { GarmentKind } from '../../ids/kinds.ts'

export const WHOSE = ['women', 'men'] as const
export type Whose = (typeof WHOSE)[number]

/** What is sold as a dress or a skirt is nearly always cut for women (common practice, no source). */
const USUALLY: Partial<Record<GarmentKind, number>> = { dress: 0.97, skirt: 0.97, jumpsuit: 0.9 }
/** Told of the garment; and where nothing is, people look among their own sizes (shares from memory). */
const TOLD_SHARE = 0.97
const OWN_SHARE = 0.85

/** How likely it is cut for women, before any figure: by what is told of it, by its kind, by whose sizes its wearer wears. */
export function shareOfWomens(kind: GarmentKind, told: Whose | undefined, wearers: string | undefined): number {
  if (told !== undefined) return told === 'women' ? TOLD_SHARE : 1 - TOLD_SHARE
  const usual = USUALLY[kind]
  if (usual !== undefined) return usual
  return wearers === 'women' ? OWN_SHARE : wearers === 'men' ? 1 - OWN_SHARE : 0.5
}

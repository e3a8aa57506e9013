/** The stage of the garment: what kind it is, now that its points are known, and which garment of several a figure is of. */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { TextRead } from '../text/text.ts'
import { effectiveKind, type KindRead } from './kind.ts'
import { type Garments, garmentsOf } from './sections.ts'

export interface GarmentsRead extends Garments {
  /** As decided by words and points. */
  kindRead: KindRead
  /** What figures are judged by: the kind, or what its points look like. */
  kind: GarmentKind | null
}

/** `names`: the points that figures were found for. */
export function readGarments(text: TextRead, kindRead: KindRead, names: readonly PointName[]): GarmentsRead {
  const kind = kindRead.thing ? null : effectiveKind(kindRead.kind, names)
  return { kindRead, kind, ...garmentsOf(text, kind) }
}

/** The stage of the garment: what kind it is, now that its points are known, and which garment of several a figure is of. */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { TextRead } from '../text/text.ts'
import { effectiveKind, type KindRead, kindOf } from './kind.ts'
import { type Garments, garmentsOf } from './sections.ts'

export interface GarmentsRead extends Garments {
  /** As kindRead, or as its points show surely enough to be said. */
  kindRead: KindRead
  /** What figures are judged by: the kind, or what its points look like. */
  kind: GarmentKind | null
}

/** `names`: the points that figures were found for. `known`: the kind, where it is given with the text. */
export function readGarments(
  text: TextRead,
  title: TextRead | null,
  names: readonly PointName[],
  { language, known }: { language: string; known: GarmentKind | undefined }
): GarmentsRead {
  const kindRead = kindOf(title, text, names, language, known)
  const kind = effectiveKind(kindRead.kind, names)
  return { kindRead, kind, ...garmentsOf(text, kind) }
}

/** The corpus, a group a key. */
import type { Case } from './case.ts'
import { basis } from './en/basis.ts'
import { cloth } from './en/cloth.ts'
import { layouts } from './en/layouts.ts'
import { traps } from './en/traps.ts'

export const cases: Record<string, Case[]> = { layouts, basis, traps, cloth }

/**
 * Each alteration twice: once where it is the answer, once where it is forbidden or useless. The bands are a favourite's, or Rowan's, regular
 * fit (core/wearer/ease.ts); the arithmetic behind each amount stands beside it.
 */
import { lowerPairs } from './each-lower.ts'
import { upperPairs } from './each-upper.ts'
import type { Pair } from './pair.ts'

export const pairs: Pair[] = [...lowerPairs, ...upperPairs]

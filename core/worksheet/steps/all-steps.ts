/** The steps of every alteration, in one list. */
import type { AlterationId } from '../../ids/alterations.ts'
import type { StepsRow } from '../step.ts'
import { bodies } from './bodies.ts'
import { closures } from './closures.ts'
import { dresses } from './dresses.ts'
import { elastic } from './elastic.ts'
import { knits } from './knits.ts'
import { legLength } from './leg-length.ts'
import { legs } from './legs.ts'
import { pleats } from './pleats.ts'
import { shoulders } from './shoulders.ts'
import { skirts } from './skirts.ts'
import { sleeves } from './sleeves.ts'
import { waist } from './waist.ts'

export const STEPS: readonly StepsRow[] = [
  ...waist,
  ...elastic,
  ...pleats,
  ...closures,
  ...legs,
  ...legLength,
  ...skirts,
  ...bodies,
  ...dresses,
  ...knits,
  ...shoulders,
  ...sleeves
]
const BY_ID = new Map<AlterationId, StepsRow[]>()
for (const row of STEPS) BY_ID.set(row.id, [...(BY_ID.get(row.id) ?? []), row])

/** The steps of an alteration in one direction; undefined where none are written, which a test forbids. */
export const stepsOf = (id: AlterationId, direction: 'less' | 'more'): StepsRow | undefined =>
  BY_ID.get(id)?.find((row) => row.direction === undefined || row.direction === direction)

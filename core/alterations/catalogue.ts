/** Every row, in one list. */

import type { AlterationId } from '../ids/alterations.ts'
import { bodies } from './bodies.ts'
import { closures } from './closures.ts'
import { dresses } from './dresses.ts'
import { elastic } from './elastic.ts'
import { knits } from './knits.ts'
import { legLength } from './leg-length.ts'
import { legs } from './legs.ts'
import { pleats } from './pleats.ts'
import type { Row } from './row.ts'
import { shoulders } from './shoulders.ts'
import { skirts } from './skirts.ts'
import { sleeves } from './sleeves.ts'
import { waist } from './waist.ts'

export const CATALOGUE: readonly Row[] = [
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

/** Known by id, and no way to any figure, each with the reason. */
export const WITHOUT_ROW: Partial<Record<AlterationId, string>> = {
  'bust-darts': 'they shape: the front is shortened over the side by their depth, and nothing comes off the chest (CP)'
}

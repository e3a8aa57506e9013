/** Every row, in one list. */
import { bodies } from './bodies.ts'
import { closures } from './closures.ts'
import { legLength } from './leg-length.ts'
import { legs } from './legs.ts'
import type { Row } from './row.ts'
import { shoulders } from './shoulders.ts'
import { skirts } from './skirts.ts'
import { sleeves } from './sleeves.ts'
import { waist } from './waist.ts'

export const CATALOGUE: readonly Row[] = [...waist, ...closures, ...legs, ...legLength, ...skirts, ...bodies, ...shoulders, ...sleeves]

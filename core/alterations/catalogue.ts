/** Every row, in one list. undo-earlier has no row of its own amount: what it gives is what the old fold holds, told by the person as a limit. */

import { lowerBody } from './lower-body.ts'
import type { Row } from './row.ts'
import { skirts } from './skirts.ts'
import { sleeves } from './sleeves.ts'
import { upperBody } from './upper-body.ts'

export const CATALOGUE: readonly Row[] = [...lowerBody, ...skirts, ...upperBody, ...sleeves]

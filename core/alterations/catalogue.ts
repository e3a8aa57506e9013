/** Every row, in one list. */

import { lowerBody } from './lower-body.ts'
import type { Row } from './row.ts'
import { skirts } from './skirts.ts'
import { sleeves } from './sleeves.ts'
import { upperBody } from './upper-body.ts'

export const CATALOGUE: readonly Row[] = [...lowerBody, ...skirts, ...upperBody, ...sleeves]

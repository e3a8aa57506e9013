/** What the small window, the panel and every answer say. A code of the workroom alone stands in of-workroom.ts. */
import { cut } from './cut.ts'
import { names } from './names.ts'
import { panel } from './panel.ts'
import { plan } from './plan.ts'
import { popup } from './popup.ts'
import { reading } from './reading.ts'
import { saving } from './saving.ts'

export const ofAnswers: Record<string, Record<string, string>> = { names, cut, reading, plan, popup, panel, saving }

/** English, whole. One part a file, so that a part can be read; a code stands in one part only (a test holds it). */
import { cut } from './cut.ts'
import { glossary } from './glossary.ts'
import { help } from './help.ts'
import { names } from './names.ts'
import { panel } from './panel.ts'
import { plan } from './plan.ts'
import { popup } from './popup.ts'
import { reading } from './reading.ts'
import { workroom } from './workroom.ts'

export const parts: Record<string, Record<string, string>> = { names, cut, reading, plan, popup, panel, workroom, help, glossary }
export const en: Record<string, string> = Object.assign({}, ...Object.values(parts))

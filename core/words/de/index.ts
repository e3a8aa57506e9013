/**
 * German, whole, in the same parts as English. Names stand with the capital they keep inside a sentence; a phrase that may stand inside
 * one begins as it does there. The person is addressed as "du", and a name mostly stands alone before a colon, so that it needs no case.
 */
import { cut } from './cut.ts'
import { glossary } from './glossary.ts'
import { help } from './help.ts'
import { names } from './names.ts'
import { panel } from './panel.ts'
import { plan } from './plan.ts'
import { popup } from './popup.ts'
import { reading } from './reading.ts'
import { saving } from './saving.ts'
import { templates } from './templates.ts'
import { work } from './work.ts'
import { workroom } from './workroom.ts'
import { worksheet } from './worksheet.ts'
import { worksheetSteps } from './worksheet-steps.ts'

export const parts: Record<string, Record<string, string>> = {
  names,
  cut,
  reading,
  plan,
  popup,
  panel,
  workroom,
  work,
  help,
  glossary,
  saving,
  templates,
  worksheet,
  worksheetSteps
}
export const de: Record<string, string> = Object.assign({}, ...Object.values(parts))

/** English, whole. One part a file, so that a part can be read; a code stands in one part only (a test holds it). */
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
  saving,
  workroom,
  work,
  help,
  glossary,
  templates,
  worksheet,
  worksheetSteps
}
/** With nothing beneath: a code or a word that no part has is none, whatever objects have of their own. */
export const en: Readonly<Record<string, string>> = Object.freeze(Object.assign(Object.create(null), ...Object.values(parts)))

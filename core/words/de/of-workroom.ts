/** What only the workroom says, with its work sheets, templates and help. */
import { glossary } from './glossary.ts'
import { help } from './help.ts'
import { templates } from './templates.ts'
import { work } from './work.ts'
import { workroom } from './workroom.ts'
import { worksheet } from './worksheet.ts'
import { worksheetSteps } from './worksheet-steps.ts'

export const ofWorkroom: Record<string, Record<string, string>> = { workroom, work, help, glossary, templates, worksheet, worksheetSteps }

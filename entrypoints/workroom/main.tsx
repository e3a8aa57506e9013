import '../../components/tokens.css'
import '../../components/look.css'
import '../../components/workroom/workroom.css'
import { render } from 'preact'
import { openRecords } from '../../core/records/database.ts'
import { say } from '../../core/words/say.ts'
import { stampsOf } from '../platform/stamp.ts'
import { App } from './app.tsx'

const root = document.getElementById('page')
if (root === null) throw new Error('the page has no place to be drawn in')
const sentence = (code: string) => say({ code, values: {} }, { units: 'cm' })
const alone = (code: string) => render(<p class="wr-alone">{sentence(code)}</p>, root)

alone('workroom.loading')
const opened = await openRecords()
if (opened.ok) {
  const stamp = await stampsOf(opened.records)
  render(<App records={opened.records} stamp={stamp} />, root)
} else {
  alone(opened.problem === 'newer' ? 'workroom.newer' : 'workroom.unavailable')
}

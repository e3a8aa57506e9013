/** Opens the records and draws a page; while they can't be opened, or not yet, the page says so and what to do. It is never blank. */
import { type ComponentChildren, type ComponentType, render } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import { openRecords, type Records } from '../../core/records/database.ts'
import { MIGRATIONS } from '../../core/records/migrations.ts'
import { settingsOf } from '../../core/records/owned.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { troubleOf } from '../../core/records/trouble.ts'
import { loadWords, spokenRow, type WordsOf } from '../../core/words/languages.ts'
import { say } from '../../core/words/say.ts'
import { newStamps, stampsOf } from '../platform/stamp.ts'
import { askOnceTyped } from './asked-to-keep.ts'
import { keepDayByDay } from './day-by-day.ts'
import { Saving } from './saving.ts'
import { SavingHere } from './saving-here.tsx'
import { languageHere } from './wording-for.ts'

export interface PageProps {
  records: Records
  stamp: () => Stamp
  saving: Saving
}

const sentence = (code: string, detail = ''): string =>
  say({ code, values: { detail } }, { units: 'cm', language: document.documentElement.lang })

/** From here on the page comes in this language; where the file of its words can't be had, in English. */
async function speak(language: string, of: WordsOf): Promise<void> {
  await loadWords(language, of).catch(console.error)
  document.documentElement.lang = spokenRow(language).locale
}

/** A browser that takes longer than this to open what is saved is said to. */
const LONG_MS = 3000
/** Opening that is over sooner is not worth a word. */
const SOON_MS = 300

export async function startPage(Page: ComponentType<PageProps>, titleCode: string, of: WordsOf = 'answers'): Promise<void> {
  const root = document.getElementById('page')
  if (root === null) throw new Error('the page has no place to be drawn in')
  await speak(languageHere(null), of)
  document.title = sentence(titleCode)
  const tell = (code: string) => () => render(<Alone code={code} />, root)
  const waits = [setTimeout(tell('saved.opening'), SOON_MS), setTimeout(tell('saved.waiting'), LONG_MS)]
  const quiet = () => {
    for (const wait of waits) clearTimeout(wait)
  }
  const opened = await openRecords(undefined, MIGRATIONS, () => {
    quiet()
    tell('saved.blocked')()
  })
  quiet()
  if (!opened.ok) {
    console.error(opened.detail)
    return tell(`saved.${opened.problem}`)()
  }
  const { records } = opened
  const saving = new Saving(records)
  const [stamp] = await Promise.all([
    stampsOf(records).catch((error) => {
      // without room for its own id the browser can still be read from; what is saved meanwhile has an id of this page alone
      saving.tell(troubleOf(error))
      return newStamps()
    }),
    chosenLanguage(records).then((chosen) => speak(languageHere(chosen), of))
  ])
  document.title = sentence(titleCode)
  render(
    <Guarded>
      <SavingHere saving={saving}>
        <Page records={records} stamp={stamp} saving={saving} />
      </SavingHere>
    </Guarded>,
    root
  )
  askOnceTyped(saving)
  keepDayByDay(records, stamp)
}

/** null: none was chosen, or the settings can't be read. */
const chosenLanguage = async (records: Records) => {
  try {
    return (await settingsOf(records)).language
  } catch (error) {
    console.error(error)
    return null
  }
}

/** Nothing but a sentence, and the way to ask again. */
function Alone({ code }: { code: string }) {
  return (
    <main class="sheet answer" aria-live="polite">
      <h1 class="plainhead">{sentence(code === 'saved.opening' ? 'house.name' : 'saved.head')}</h1>
      <p class="why">{sentence(code)}</p>
      {code !== 'saved.opening' && (
        <button type="button" class="btn" onClick={() => location.reload()}>
          {sentence('saving.reload')}
        </button>
      )}
    </main>
  )
}

/** A mistake of our own does not leave an empty page: it is said, and told to the console. */
function Guarded({ children }: { children: ComponentChildren }) {
  const [error] = useErrorBoundary((caught) => console.error(caught))
  if (error === undefined) return <>{children}</>
  const detail = error instanceof Error ? error.message : String(error)
  return (
    <main class="sheet answer">
      <p class="why" role="alert">
        {sentence('saved.broken', detail)}
      </p>
      <button type="button" class="btn" onClick={() => location.reload()}>
        {sentence('saving.reload')}
      </button>
    </main>
  )
}

/** Opens the records and draws a page; where they can't be opened the page says so and what to do. */
import { type ComponentChildren, type ComponentType, render } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import { openRecords, type Records } from '../../core/records/database.ts'
import { settingsOf } from '../../core/records/owned.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { loadWords, spokenRow } from '../../core/words/languages.ts'
import { say } from '../../core/words/say.ts'
import { stampsOf } from '../platform/stamp.ts'
import { languageHere } from './wording-for.ts'

export interface PageProps {
  records: Records
  stamp: () => Stamp
}

export async function startPage(Page: ComponentType<PageProps>, titleCode: string): Promise<void> {
  const root = document.getElementById('page')
  if (root === null) throw new Error('the page has no place to be drawn in')
  const opened = await openRecords()
  const language = languageHere(opened.ok ? (await settingsOf(opened.records)).language : null)
  // where the file of its words can't be had, the page comes in English
  await loadWords(language).catch(console.error)
  const { locale } = spokenRow(language)
  document.documentElement.lang = locale
  const sentence = (code: string) => say({ code, values: {} }, { units: 'cm', language: locale })
  document.title = sentence(titleCode)
  if (opened.ok) {
    const stamp = await stampsOf(opened.records)
    render(
      <Guarded>
        <Page records={opened.records} stamp={stamp} />
      </Guarded>,
      root
    )
    return
  }
  render(
    <main class="sheet answer">
      <h1 class="plainhead">{sentence('saved.head')}</h1>
      <p class="why">{sentence(`saved.${opened.problem}`)}</p>
    </main>,
    root
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
        {say({ code: 'saved.broken', values: { detail } }, { units: 'cm', language: document.documentElement.lang })}
      </p>
    </main>
  )
}

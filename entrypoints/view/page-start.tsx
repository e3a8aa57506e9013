/** Opens the records and draws a page; where they can't be opened the page says so and what to do. */
import { type ComponentChildren, type ComponentType, render } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import { openRecords, type Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { say } from '../../core/words/say.ts'
import { stampsOf } from '../platform/stamp.ts'

export interface PageProps {
  records: Records
  stamp: () => Stamp
}

export async function startPage(Page: ComponentType<PageProps>, titleCode: string): Promise<void> {
  const sentence = (code: string) => say({ code, values: {} }, { units: 'cm' })
  const root = document.getElementById('page')
  if (root === null) throw new Error('the page has no place to be drawn in')
  document.title = sentence(titleCode)
  const opened = await openRecords()
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
        {say({ code: 'saved.broken', values: { detail } }, { units: 'cm' })}
      </p>
    </main>
  )
}

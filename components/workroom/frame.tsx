/** The workroom's head and the page under it: the same on every page. */
import type { ComponentChildren } from 'preact'
import { useRef } from 'preact/hooks'
import { HouseMark } from '../house-mark.tsx'
import { useWords } from '../words.tsx'

export const PAGES = ['wishlist', 'wardrobe', 'body', 'settings', 'backup', 'help'] as const
/** Parts that are reached from others: the table of jobs, the first visit, the listing that was open before it, a card for the shop, the work on a find. */
export const ALL_PAGES = [...PAGES, 'alterations', 'first', 'look', 'card', 'work'] as const
export type PageName = (typeof ALL_PAGES)[number]

export interface FrameProps {
  page: PageName
  people: readonly { id: string; name: string }[]
  personId: string | null
  onPerson: (id: string) => void
  /** Where the records are, in words. */
  place: string
  children: ComponentChildren
}

export function Frame({ page, people, personId, onPerson, place, children }: FrameProps) {
  const { t } = useWords()
  return (
    <div class="wr">
      <button type="button" class="wr-skip btn" onClick={() => document.getElementById('main')?.focus()}>
        {t('workroom.skip')}
      </button>
      <header class="wr-top">
        <span class="wr-name">
          <HouseMark />
          {t('house.name')}
        </span>
        <nav aria-label={t('workroom.parts')}>
          {PAGES.map((name) => (
            <a key={name} href={`#${name}`} aria-current={name === page ? 'page' : undefined}>
              {t(`workroom.page.${name}`)}
            </a>
          ))}
        </nav>
        {people.length > 0 && (
          <select
            class="small"
            aria-label={t('workroom.whose')}
            value={personId ?? ''}
            onChange={(event) => onPerson(event.currentTarget.value)}
          >
            {people.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        )}
        <p class="wr-place note">{place}</p>
      </header>
      <main id="main" class="wr-page sheet" tabIndex={-1}>
        {children}
      </main>
      <footer class="wr-foot">
        <a class="wr-foot-link" href="#what-can-be-altered" aria-current={page === 'alterations' ? 'page' : undefined}>
          {t('workroom.page.alterations')}
        </a>
      </footer>
    </div>
  )
}

/** A page's head: its name, and a line about what is there. */
export function Headline({ title, note }: { title: string; note?: string | null }) {
  return (
    <div class="wr-headline">
      <h1>{title}</h1>
      {note !== undefined && note !== null && <p class="note">{note}</p>}
    </div>
  )
}

/** Nothing here yet, and what to do. */
export function Empty({ children }: { children: ComponentChildren }) {
  return <div class="wr-empty stack">{children}</div>
}

/**
 * What was just done, with the way back; announced, and gone when something else is done. Pressed, it goes, so the focus goes back to where
 * it came from, and where that went, too, to the page.
 */
export function DoneBar({ said, onUndo, onClose }: { said: string | null; onUndo: (() => void) | null; onClose: () => void }) {
  const { t } = useWords()
  const from = useRef<HTMLElement | null>(null)
  const leave = (act: () => void) => () => {
    act()
    const before = from.current
    const target = before?.isConnected === true ? before : document.getElementById('main')
    target?.focus()
  }
  return (
    <div
      role="status"
      class={said === null ? undefined : 'changed'}
      onFocusIn={(event: FocusEvent) => {
        const bar = event.currentTarget
        const came = event.relatedTarget
        if (came instanceof HTMLElement && bar instanceof HTMLElement && !bar.contains(came)) from.current = came
      }}
    >
      {said !== null && (
        <>
          <p>{said}</p>
          {onUndo !== null && (
            <button type="button" class="btn small" onClick={leave(onUndo)}>
              {t('workroom.undo')}
            </button>
          )}
          <button type="button" class="btn small bare" onClick={leave(onClose)}>
            {t('workroom.close')}
          </button>
        </>
      )}
    </div>
  )
}

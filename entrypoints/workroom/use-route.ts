import { useEffect, useState } from 'preact/hooks'
import { ALL_PAGES, type PageName } from '../../components/workroom/frame.tsx'
import { table } from '../../core/ids/table.ts'

export interface Route {
  page: PageName
  /** The listing that is open, the part of the help. */
  open: string | null
}

/** Pages whose address says more than their name; the name alone is understood too. */
const ADDRESSES: Readonly<Partial<Record<PageName, string>>> = {
  alterations: 'what-can-be-altered',
  first: 'first-visit',
  look: 'listing-you-had-open',
  card: 'card-for-the-shop'
}
/** Names of before. */
const ALIASES = table<PageName>({ garments: 'wardrobe' })
/** Pages that have parts or things of their own: `#help/tape`, `#wishlist/ID`. */
const OPENS: ReadonlySet<PageName> = new Set(['wishlist', 'card', 'work', 'help'])

/** Where a page is: `#first-visit`, `#wishlist/ID`. */
export const addressOf = (page: PageName, open?: string): string =>
  `#${ADDRESSES[page] ?? page}${open === undefined ? '' : `/${encodeURIComponent(open)}`}`

/** The page that an address names; any other is the wishlist. */
export function routeOf(hash: string): Route {
  const [name = '', open = ''] = hash.replace(/^#/, '').split('/')
  const page = ALL_PAGES.find((one) => one === name || ADDRESSES[one] === name) ?? ALIASES[name] ?? 'wishlist'
  return { page, open: OPENS.has(page) && open !== '' ? decoded(open) : null }
}

/** An address typed by hand may be malformed; it is then taken as it stands. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

/** The part of the workroom that the address names. */
export function useRoute(): Route {
  const [route, setRoute] = useState(() => routeOf(location.hash))
  useEffect(() => {
    const follow = () => setRoute(routeOf(location.hash))
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  return route
}

import { useEffect, useState } from 'preact/hooks'
import { ALL_PAGES, type PageName } from '../../components/workroom/frame.tsx'

export interface Route {
  page: PageName
  /** The listing that is open. */
  open: string | null
}

/** `#body`, `#alterations`, `#wishlist/ID`, `#card/ID`, `#work/ID`; anything else is the wishlist. */
export function routeOf(hash: string): Route {
  const [name = '', open = ''] = hash.replace(/^#/, '').split('/')
  const page = ALL_PAGES.find((one) => one === name) ?? (name === 'garments' ? 'wardrobe' : 'wishlist')
  return { page, open: (page === 'wishlist' || page === 'card' || page === 'work') && open !== '' ? decoded(open) : null }
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

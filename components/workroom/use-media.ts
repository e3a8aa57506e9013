import { useEffect, useState } from 'preact/hooks'

/** Does the page match this media query now? Followed as the window changes; without a way to ask, no. */
export function useMedia(query: string): boolean {
  const [matches, setMatches] = useState(() => typeof matchMedia === 'function' && matchMedia(query).matches)
  useEffect(() => {
    if (typeof matchMedia !== 'function') return
    const list = matchMedia(query)
    const follow = () => setMatches(list.matches)
    follow()
    list.addEventListener('change', follow)
    return () => list.removeEventListener('change', follow)
  }, [query])
  return matches
}

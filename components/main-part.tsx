/** The main part of a page: `main` where the page is this alone, a plain part where a page around it has one already. */
import { type ComponentChildren, createContext } from 'preact'
import { useContext } from 'preact/hooks'

export const WithinMain = createContext(false)

export function MainPart({ children }: { children: ComponentChildren }) {
  return useContext(WithinMain) ? <div>{children}</div> : <main>{children}</main>
}

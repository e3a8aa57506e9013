/** Listings of a test's own, each a page of a name at a free port of 127.0.0.1. */
import { portOf, serve, stop, typeOf } from '../../../entrypoints/companion/serve.mjs'

export interface ListingPages {
  address(name: string): string
  close(): Promise<void>
}

/** `bodyOf`: the HTML of the page of this name; undefined: there is none. */
export async function serveListings(bodyOf: (name: string) => string | undefined): Promise<ListingPages> {
  const server = await serve({
    port: 0,
    answers: (path) => {
      const body = bodyOf(path.slice(1).replace('.html', ''))
      return body === undefined ? null : { type: typeOf('/x.html'), body }
    }
  })
  return { address: (name) => `http://127.0.0.1:${portOf(server)}/${name}.html`, close: () => stop(server) }
}

/** A page that says a title and a text, a paragraph a line. */
export function listingPage({ title, text }: { title: string; text: string }, language = 'en'): string {
  const lines = text.split('\n').map((line) => `<p>${line}</p>`)
  return `<!doctype html><html lang="${language}"><meta charset="utf-8"><title>${title}</title><main><h1>${title}</h1>${lines.join('')}</main></html>`
}

import * as z from 'zod/mini'

/** What the injected script hands back: plain JSON, checked on the way in like anything from a page. */
export const pageFound = z.object({
  /** The document's media type: a PDF viewer is a page without text. */
  contentType: z.string(),
  title: z.string(),
  /** The address in the bar, and the one the page calls its own. */
  pageAddress: z.string(),
  address: z.string(),
  /** What was selected; '' for nothing. */
  selection: z.string(),
  /** The page's main text, up to a bound, and how long it was at least. */
  text: z.string(),
  fullLength: z.number(),
  /** Raw JSON-LD blocks, then marked-up items and meta properties as JSON. */
  structured: z.array(z.string()),
  price: z.nullable(z.object({ amount: z.number(), currency: z.string() })),
  images: z.array(z.string()),
  /** Frames of another origin: how many, and the largest one's share of the window, 0..1. */
  frames: z.object({ count: z.number(), largestShare: z.number() })
})
export type PageFound = z.infer<typeof pageFound>

import { portOf, serve, stop } from '../../../entrypoints/companion/serve.mjs'
import { shopAnswers } from '../../demo-shop/shop.mjs'

export interface Shop {
  front: string
  /** The page of a garment, by its slug in tests/demo-shop/garments.mjs. */
  item(slug: string): string
  close(): Promise<void>
}

/** The demo shop at a free port of 127.0.0.1. */
export async function openShop(): Promise<Shop> {
  const server = await serve({ port: 0, answers: shopAnswers, alsoAtLocalhost: true })
  const front = `http://127.0.0.1:${portOf(server)}/`
  return { front, item: (slug) => `${front}item/${slug}.html`, close: () => stop(server) }
}

/** Each garment of the demo shop through the real button: its figures as a person would read them, and the answer where the trade leaves no doubt. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce } from './rig/workroom.ts'

let shop: Shop
let rig: Rig
beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start()
  await introduce(rig)
})
afterAll(async () => {
  await rig?.close()
  await shop?.close()
})

interface Expected {
  slug: string
  /** In centimetres, girths around: twice what is told flat. */
  figures: Record<string, string>
  /** Only where the trade leaves no doubt; with a word of the reason. */
  verdict?: string
  because?: RegExp
}

const EXPECTED: Expected[] = [
  {
    slug: 'charcoal-wool-trousers',
    figures: { 'Waist': '81.3', 'Hip': '106.7', 'Inside leg': '78.7' },
    verdict: 'Alters to fit',
    because: /waist/i
  },
  // 39 and 53 cm flat; 7 cm longer than she wears them
  { slug: 'indigo-jeans', figures: { 'Waist': '78', 'Hip': '106', 'Inside leg': '86' }, verdict: 'Alters to fit', because: /leg/i },
  // told as all the way round, so not doubled
  { slug: 'moss-tweed-skirt', figures: { 'Waist': '79', 'Hip': '104' } },
  // inches and centimetres side by side are one figure, not two
  { slug: 'oat-linen-shirt', figures: { 'Chest': '111.8', 'Shoulder': '45.7', 'Sleeve': '62.2' } },
  { slug: 'slate-jacket-sham-cuffs', figures: { 'Chest': '106.7', 'Shoulder': '45.1', 'Sleeve': '66' } },
  { slug: 'walnut-jacket-working-cuffs', figures: { 'Chest': '106', 'Shoulder': '46.5', 'Sleeve': '66' } },
  { slug: 'high-visibility-jacket', figures: { 'Chest': '124' }, verdict: 'Leave it', because: /protective/i },
  { slug: 'black-leather-trousers', figures: { 'Waist': '71.1', 'Hip': '94' }, verdict: 'Leave it', because: /needle holes/i },
  { slug: 'sky-shirt-too-small', figures: { 'Chest': '88', 'Shoulder': '38' }, verdict: 'Leave it', because: /shoulder/i },
  // no unit is told: inches, since in centimetres nobody could wear it
  { slug: 'rust-cord-trousers', figures: { 'Waist': '78.7', 'Hip': '106.7' } },
  { slug: 'plum-skirt-no-figures', figures: {}, verdict: 'Too little stated', because: /waist/i }
]

test.for(EXPECTED)('$slug', async ({ slug, figures, verdict, because }) => {
  const page = await rig.tab(shop.item(slug))
  const popup = await Popup.over(rig, page)
  const title = await popup.title()
  if (verdict !== undefined) {
    await until(`the answer to be "${verdict}", it is "${await popup.verdict()}"`, async () => (await popup.verdict()) === verdict)
    expect(await popup.says()).toMatch(because ?? /./)
  }
  // the small window has room for some figures; the panel has them all
  const panel = await popup.openBeside()
  await until('the panel to be about this garment', async () => (await panel.title()) === title && !(await panel.stands()).marked)
  for (const [point, figure] of Object.entries(figures)) expect(await panel.figure(point), point).toBe(figure)
  await page.close()
})

/** Listings in other languages: their phrases are files of their own, which the page brings when it meets one. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type ListingPages, listingPage, serveListings } from './rig/listing-pages.ts'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { introduce, Workroom } from './rig/workroom.ts'

/** Trousers each; centimetres, girths told flat. */
const PAGES = {
  fr: 'Pantalon en laine gris. Largeur taille à plat 41 cm, largeur hanches à plat 53 cm, entrejambe 78 cm.',
  pl: 'Szare spodnie wełniane. Szerokość w pasie na płasko 41 cm, szerokość w biodrach na płasko 53 cm, długość nogawki wewnętrzna 78 cm.',
  ja: 'ウールのパンツ グレー。平置き採寸 ウエスト 41cm、ヒップ 53cm、股下 78cm'
}

let rig: Rig
let pages: ListingPages
beforeAll(async () => {
  const texts = new Map(Object.entries(PAGES))
  pages = await serveListings((language) => {
    const text = texts.get(language)
    return text === undefined ? undefined : listingPage({ title: text.slice(0, 16), text }, language)
  })
  rig = await Rig.start()
  await introduce(rig)
})
afterAll(async () => {
  await rig?.close()
  await pages?.close()
})

test.each(Object.keys(PAGES))('%s', async (language) => {
  const page = await rig.tab(pages.address(language))
  const popup = await Popup.over(rig, page)
  const title = await popup.title()
  const panel = await popup.openBeside()
  await until('the panel to be about this garment', async () => (await panel.title()) === title && !(await panel.stands()).marked)
  for (const [point, figure] of Object.entries({ 'Waist': '82', 'Hip': '106', 'Inside leg': '78' }))
    expect(await panel.figure(point), point).toBe(figure)
  await panel.keep(language)
  await page.close()
})

test('their answers are worked out anew beside the wishlist, which has never read one of them', async () => {
  const { page } = await Workroom.open(rig, 'wishlist')
  const answers = () =>
    page.evaluate(
      () =>
        new Promise<number>((done, fail) => {
          const request = indexedDB.open('seam-reckoner')
          request.onerror = () => fail(request.error)
          request.onsuccess = () => {
            const all = request.result.transaction('answers').objectStore('answers').getAll()
            all.onsuccess = () => {
              request.result.close()
              done(all.result.filter((one) => JSON.stringify(one).includes('inseam')).length)
            }
          }
        })
    )
  await until('an answer about the inside leg of each', async () => (await answers()) === Object.keys(PAGES).length)
})

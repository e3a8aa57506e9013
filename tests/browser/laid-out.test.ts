/** What is taken from a page depends on how the browser lays it out: rows and grids keep a label and its figure on one line. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type ListingPages, serveListings } from './rig/listing-pages.ts'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'

const PAGE = `<!doctype html><title>Brown cords | Hob and Hinge</title>
<style>
  .row { display: flex; justify-content: space-between } .grid { display: grid; grid-template-columns: 1fr 1fr }
  .table { display: table } .tr { display: table-row } .td { display: table-cell } .inline { display: inline-block } .gone { display: none }
</style>
<header><nav>All shoes 40</nav></header>
<main><h1>Brown cords</h1>
  <div class="row"><span>Waist</span><span>80 cm</span></div><div class="row"><span>Hip</span><b>102 cm</b></div>
  <div class="grid"><div>Thigh</div><div>60 cm</div><div>Knee</div><div>44 cm</div></div>
  <div class="table"><div class="tr"><span class="td">Inside leg</span><span class="td">78 cm</span></div></div>
  <p>Of <span class="inline">heavy cotton</span>,<br>unlined.</p><p class="gone">Waist 99 cm</p>
  <button role="tab" aria-controls="more">More</button><div id="more" class="gone"><p>Front rise 28 cm</p></div>
  <iframe title="Care" srcdoc="<p>Wash at 30 degrees.</p>"></iframe>
</main><footer>Telephone 0123 456</footer>`
const TEXT = `Brown cords
Waist\t80 cm
Hip\t102 cm
Thigh\t60 cm
Knee\t44 cm
Inside leg\t78 cm
Of heavy cotton,
unlined.
Front rise 28 cm
Wash at 30 degrees.`

let rig: Rig
let pages: ListingPages
beforeAll(async () => {
  pages = await serveListings((name) => (name === 'cords' ? PAGE : undefined))
  rig = await Rig.start()
})
afterAll(async () => {
  await rig?.close()
  await pages?.close()
})

test('the text of a page, line by line', async () => {
  const address = pages.address('cords')
  await Popup.over(rig, await rig.tab(address))
  const kept = await rig.tab(rig.address('popup.html?records'))
  const looks = await kept.evaluate(
    () =>
      new Promise<{ title: string; text: string; address: string }[]>((done, fail) => {
        const request = indexedDB.open('seam-reckoner')
        request.onerror = () => fail(request.error)
        request.onsuccess = () => {
          const all = request.result.transaction('looks').objectStore('looks').getAll()
          all.onsuccess = () => done(all.result)
        }
      })
  )
  const read = looks.find((look) => look.address === address)
  expect(read?.title).toBe('Brown cords')
  expect(read?.text).toBe(TEXT)
})

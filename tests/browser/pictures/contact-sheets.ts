/** Many pictures on one sheet, each under its name, small enough to look through and large enough to read. */
import { readFileSync } from 'node:fs'
import type { BrowserContext } from 'playwright-core'

export interface Picture {
  name: string
  file: string
  width: number
}

/** `scale`: how large each is drawn; `across`: how wide the sheet is, px. What is taller than `tallest` is cut off below, and said so. */
export async function sheetOf(
  context: BrowserContext,
  pictures: readonly Picture[],
  to: string,
  { scale = 0.6, across = 1500, tallest = 1500 } = {}
): Promise<void> {
  const page = await context.newPage()
  await page.setViewportSize({ width: across, height: 800 })
  const figures = pictures.map(({ name, file, width }) => {
    const data = readFileSync(file).toString('base64')
    return `<figure style="width:${width * scale}px"><figcaption>${name}</figcaption><div><img src="data:image/png;base64,${data}"></div></figure>`
  })
  await page.setContent(
    `<style>body{margin:8px;background:#999;font:12px sans-serif;display:flex;flex-wrap:wrap;gap:8px;align-items:start}figure{margin:0}
    img{width:100%;display:block}div{max-height:${tallest}px;overflow:hidden}</style>${figures.join('')}`
  )
  await page.screenshot({ path: to, fullPage: true })
  await page.close()
}

/** Templates printed by a real Chromium: measured in the PDF's own coordinates, to a fifth of a millimetre. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { drawTemplates, type TemplatesDrawn } from '../../core/worksheet/drawing/draw-templates.ts'
import { foundChromiums, QUIET_FLAGS } from '../../entrypoints/companion/chromium.mjs'
import { inRoot } from '../../entrypoints/companion/places.mjs'
import { job, plan, request, SHIRT, TROUSERS, waistIn } from '../unit/core/worksheet/drawing/given.ts'
import { type PdfPage, readPdf, type Spot } from './rig/pdf.ts'

const TOLERANCE = 0.2
const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] } as const
type Paper = keyof typeof PAPERS

let browser: Browser
beforeAll(async () => {
  const [executablePath] = await foundChromiums()
  if (executablePath === undefined) throw new Error('No Chromium was found: run npm test once, it installs one.')
  browser = await chromium.launch({ executablePath, args: [...QUIET_FLAGS] })
})
afterAll(() => browser?.close())

/** As the page prints them: a sheet each, without margins of its own. Gives the PDF, and where its words lie on screen, mm. */
async function print(
  { pages }: TemplatesDrawn,
  paper: Paper,
  name: string
): Promise<{ pdf: PdfPage[]; words: { text: string; box: number[] }[] }> {
  const [wide, tall] = PAPERS[paper]
  const page = await browser.newPage()
  const sheet = `@page{size:${wide}mm ${tall}mm;margin:0}body{margin:0}svg{display:block}svg+svg{break-before:page}`
  await page.setContent(`<!doctype html><style>${sheet}</style>${pages.map(({ svg }) => svg).join('')}`)
  const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: true })
  const words = await page.evaluate(() =>
    [...document.querySelectorAll('svg')].flatMap((svg) => {
      const sheet = svg.getBoundingClientRect()
      const mm = 25.4 / 96
      return [...svg.querySelectorAll('text')].map((text) => {
        const { left, top, right, bottom } = text.getBoundingClientRect()
        return {
          text: text.textContent ?? '',
          box: [left - sheet.left, top - sheet.top, right - sheet.left, bottom - sheet.top].map((px) => px * mm)
        }
      })
    })
  )
  await page.close()
  mkdirSync(inRoot('test-results/templates'), { recursive: true })
  writeFileSync(inRoot(`test-results/templates/${name}-${paper}.pdf`), bytes)
  return { pdf: readPdf(bytes), words }
}

const strokes = (page: PdfPage): Spot[][] => page.drawn.filter(({ how }) => how === 'stroke').flatMap(({ paths }) => paths)
const spotsOf = (page: PdfPage): Spot[] => page.drawn.slice(1).flatMap(({ paths }) => paths.flat())
/** Closed squares of this side. */
const squares = (page: PdfPage, side: number): Spot[][] =>
  strokes(page).filter(
    (path) => path.length === 5 && [0, 1, 2, 3].every((i) => Math.abs(apart(path[i] as Spot, path[i + 1] as Spot) - side) <= TOLERANCE)
  )
const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y)

/** The middles of all crosses ×: two strokes of 3.2 mm each way through one spot. */
function crosses(page: PdfPage): Spot[] {
  const slanted = strokes(page).filter((path) => {
    const [a, b] = path as [Spot, Spot]
    return path.length === 2 && Math.abs(Math.abs(a.x - b.x) - 3.2) < 0.05 && Math.abs(Math.abs(a.y - b.y) - 3.2) < 0.05
  })
  const middles = slanted.map(([a, b]) => ({ x: ((a?.x ?? 0) + (b?.x ?? 0)) / 2, y: ((a?.y ?? 0) + (b?.y ?? 0)) / 2 }))
  return middles.filter((spot, i) => middles.findIndex((other) => apart(spot, other) < 0.02) === i).sort((a, b) => a.y - b.y)
}
/** 1 − kt, then k(1 − t)²/(2β), k = 1/(1 − β/2), β a third: written out once more, to measure against. */
const share = (t: number): number => (t <= 2 / 3 ? 1 - 1.2 * t : 1.8 * (1 - t) ** 2)

describe.each(['A4', 'Letter'] as const)('on %s', (paper) => {
  const [wide, tall] = PAPERS[paper]
  const trousers = drawTemplates(
    plan([waistIn(63.5), job('leg-shorten-blind', 38, { inseam: -38 }, [{ seam: 'hem', offsetMm: 38 }])], { inseam: 750 }),
    request('trousers', TROUSERS),
    paper,
    'in'
  )

  test('sheets are as large as the paper, and both check squares are true', async () => {
    const { pdf } = await print(trousers, paper, 'trousers')
    expect(pdf).toHaveLength(trousers.pages.length)
    for (const { wideMm, tallMm } of pdf) {
      expect(Math.abs(wideMm - wide)).toBeLessThan(TOLERANCE)
      expect(Math.abs(tallMm - tall)).toBeLessThan(TOLERANCE)
    }
    const [first, ...rest] = pdf as [PdfPage, ...PdfPage[]]
    expect(squares(first, 50)).toHaveLength(1)
    expect(squares(first, 50.8)).toHaveLength(1)
    for (const page of rest) expect([...squares(page, 50), ...squares(page, 50.8)]).toEqual([])
  })

  test('the taper is as long as it should be, and every cross stands where the trade puts it', async () => {
    const { pdf } = await print(trousers, paper, 'trousers')
    const found = crosses(pdf[0] as PdfPage)
    const [head, end] = [found[0] as Spot, found.at(-1) as Spot]
    expect(found.length).toBeGreaterThanOrEqual(8)
    expect(Math.abs(end.y - head.y - 200)).toBeLessThan(TOLERANCE)
    expect(Math.abs(head.x - end.x - 31.75)).toBeLessThan(TOLERANCE)
    for (const { x, y } of found) expect(Math.abs(x - end.x - 31.75 * share((y - head.y) / 200))).toBeLessThan(TOLERANCE)
    // a step of two inches is two inches
    expect(Math.abs((found[2]?.y ?? 0) - head.y - 50.8)).toBeLessThan(TOLERANCE)
  })

  const tiled = drawTemplates(
    plan(
      [
        job('sleeve-shorten-head', 30, { sleeveLength: -30 }, [{ seam: 'armhole', offsetMm: 30 }]),
        job('body-shorten', 40, { bodyLength: -40 }, [{ seam: 'hem', offsetMm: 40 }]),
        job('sides-in', 60, { chest: -40, waist: -60, hem: -50 }, [{ seam: 'side', offsetMm: 15 }])
      ],
      { hem: 1050 }
    ),
    request('shirt', SHIRT),
    paper,
    'cm'
  )

  test('tiles meet: the marks of each join lie on each other, and a line goes on where the last sheet left it', async () => {
    const { pdf } = await print(tiled, paper, 'shirt')
    const holds = tiled.pages.flatMap(({ holds: all, number }) =>
      all.filter(({ rows, columns }) => rows * columns > 1).map((hold) => ({ ...hold, page: pdf[number - 1] as PdfPage }))
    )
    expect(holds.length).toBeGreaterThanOrEqual(6)
    let joins = 0
    for (const one of holds) {
      const next = holds.find(
        ({ template, row, column }) =>
          template === one.template && ((row === one.row && column === one.column + 1) || (column === one.column && row === one.row + 1))
      )
      if (next === undefined) continue
      joins++
      const inTemplate = ({ shows, at }: typeof one, spot: Spot): Spot => ({ x: spot.x - at.x + shows.left, y: spot.y - at.y + shows.top })
      const band = {
        left: Math.max(one.shows.left, next.shows.left),
        right: Math.min(one.shows.right, next.shows.right),
        top: Math.max(one.shows.top, next.shows.top),
        bottom: Math.min(one.shows.bottom, next.shows.bottom)
      }
      expect(Math.abs(Math.min(band.right - band.left, band.bottom - band.top) - 10)).toBeLessThan(TOLERANCE)
      const isInBand = ({ x, y }: Spot) => x > band.left + 0.3 && x < band.right - 0.3 && y > band.top + 0.3 && y < band.bottom - 0.3
      // whatever one sheet strokes inside the overlap, the other strokes at the same place
      const within = (hold: typeof one) =>
        strokes(hold.page)
          .filter((path) => path.length === 2)
          .map((path) => path.map((spot) => inTemplate(hold, spot)))
          .filter((path) => path.every(isInBand))
      const [mine, theirs] = [within(one), within(next)]
      expect(mine.length).toBeGreaterThanOrEqual(4)
      for (const path of mine) {
        const gap = Math.min(
          ...theirs.map((other) => Math.max(apart(path[0] as Spot, other[0] as Spot), apart(path[1] as Spot, other[1] as Spot)))
        )
        expect(gap).toBeLessThan(TOLERANCE)
      }
    }
    expect(joins).toBeGreaterThanOrEqual(3)
  })

  test('nothing is cut off: lines keep a printer’s margin, words lie on the sheet whole', async () => {
    for (const [drawn, name] of [
      [trousers, 'trousers'],
      [tiled, 'shirt']
    ] as const) {
      const { pdf, words } = await print(drawn, paper, name)
      for (const page of pdf) {
        const spots = spotsOf(page)
        expect(spots.length).toBeGreaterThan(20)
        expect(Math.min(...spots.map(({ x }) => x))).toBeGreaterThan(8.5)
        expect(Math.max(...spots.map(({ x }) => x))).toBeLessThan(wide - 8.5)
        expect(Math.min(...spots.map(({ y }) => y))).toBeGreaterThan(8.5)
        expect(Math.max(...spots.map(({ y }) => y))).toBeLessThan(tall - 8.5)
      }
      for (const { text, box } of words) {
        const [left = 0, top = 0, right = 0, bottom = 0] = box
        expect(left >= 10 && top >= 10 && right <= wide - 10 && bottom <= tall - 10, `${text}: ${box}`).toBe(true)
      }
      expect(words.length).toBeGreaterThan(20)
    }
  })
})

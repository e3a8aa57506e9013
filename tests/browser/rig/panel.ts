import type { Locator, Page } from 'playwright-core'
import { type Rig, until } from './rig.ts'

/** The side panel, by the words a person reads in it. */
export class Panel {
  readonly page: Page

  private constructor(page: Page) {
    this.page = page
  }

  /** The panel that is open beside the page. */
  static async of(rig: Rig): Promise<Panel> {
    const page = await rig.surface('sidepanel')
    await page.getByRole('main').waitFor()
    return new Panel(page)
  }

  title = async (): Promise<string | null> => (await this.stands()).title
  verdict = (): Promise<string | null> => this.page.getByRole('heading', { level: 2 }).first().textContent()
  /** The sentence that says the answer is about another page; null where there is none. */
  mark = async (): Promise<string | null> => (await this.stands()).mark
  /** Whose garment the answer is about, and whether it says that it is not the one in front: both of one moment. */
  stands(): Promise<{ title: string | null; mark: string | null; marked: boolean }> {
    return this.page.evaluate(() => {
      const marks = [...document.querySelectorAll('[role=status]')].map((one) => one.textContent ?? '')
      const mark = marks.find((text) => text.startsWith('This answer is about ')) ?? null
      return { title: document.querySelector('h1')?.textContent ?? null, mark, marked: mark !== null }
    })
  }

  /** What the answer says as a whole: verdict, reasons and facts. */
  answer = (): Promise<string | null> => this.page.evaluate(() => document.querySelector('section.answer')?.textContent ?? null)
  /** What is to be done, job by job, and beside it the ways to do it, as their text; empty where nothing is. */
  plans = (): Promise<string> =>
    this.page.evaluate(() => {
      const sewn = document.querySelector('#moves-head')?.closest('.part')
      return `${sewn?.textContent ?? ''}${document.querySelector('table.plans')?.textContent ?? ''}`
    })

  /** Waits until the answer is another than `before`, and then stays as it is: a first answer comes before its chance. */
  changedFrom(before: string | null): Promise<string> {
    let last: string | null = null
    return until('another answer', async () => {
      const now = await this.answer()
      const stays = now !== null && now === last && now !== before && !/working it out/i.test(now)
      last = now
      await this.page.waitForTimeout(500)
      return stays ? now : undefined
    })
  }

  /** The answer once nothing in it is still being worked out. */
  settled = (): Promise<string> => this.changedFrom(null)

  /** Opens the form under a point, and gives its field. */
  async field(point: string): Promise<Locator> {
    const form = this.page.getByRole('group', { name: `Correct the ${point}` })
    const toggle = this.page.getByRole('button', { name: new RegExp(`^(Correct|Enter|Close) ${point}$`), includeHidden: true })
    await this.unfold(toggle)
    if ((await toggle.getAttribute('aria-expanded')) !== 'true') await toggle.click()
    return form.getByRole('textbox', { name: `Stated ${point}` })
  }

  /** Opens the part that something is folded into, as a person would: by its head. */
  async unfold(what: Locator): Promise<void> {
    const part = this.page.locator('details.part', { has: what })
    if ((await part.count()) === 0 || (await part.first().evaluate((one) => (one as HTMLDetailsElement).open))) return
    await part.first().locator('> summary').click()
  }

  /** Where the person's notes are typed. */
  async notes(): Promise<Locator> {
    const notes = this.page.getByRole('textbox', { name: 'Your notes', includeHidden: true })
    await this.unfold(notes)
    return notes
  }

  /** Pastes what the seller answered, and has it read. */
  async answered(text: string): Promise<void> {
    const field = this.page.getByRole('textbox', { name: 'The seller’s answer' })
    if (!(await field.isVisible())) await this.page.getByText('Add what the seller answered').click()
    await field.fill(text)
    await this.page.getByRole('button', { name: 'Read the answer' }).click()
  }

  /** A point's tape in words, whole or in one line, wherever the point stands. */
  tape = (point: string): Promise<string> =>
    this.page.evaluate((named) => {
      const head = [...document.querySelectorAll('article.point h3, table.quiet th')].find(
        (one) => one.firstChild?.textContent?.trim() === named
      )
      return head?.closest('article, tr')?.querySelector('[role=img]')?.getAttribute('aria-label') ?? ''
    }, point)
  /** The figure that counts at a point, all around. */
  figure = async (point: string): Promise<string | undefined> => /: (\d+(?:\.\d+)?) cm/.exec(await this.tape(point))?.[1]

  async keep(notes: string): Promise<void> {
    await (await this.notes()).fill(notes)
    await this.page.getByRole('button', { name: /^Keep (for later|anyway)$/ }).click()
    await this.page.getByText('Kept on your wishlist.').waitFor()
  }

  undo = (): Promise<void> => this.page.getByRole('button', { name: 'Undo the last change' }).click()
}

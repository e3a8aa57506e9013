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
  /** The plans as their table's text; empty where there is none. */
  plans = (): Promise<string> => this.page.evaluate(() => document.querySelector('table.plans')?.textContent ?? '')

  /** Waits until the answer is another than `before`, and then stays as it is: a first answer comes before its chance. */
  changedFrom(before: string | null): Promise<string> {
    let last: string | null = null
    return until('another answer', async () => {
      const now = await this.answer()
      const stays = now !== null && now === last && now !== before && !now.includes('being worked out')
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
    const toggle = this.page.getByRole('button', { name: new RegExp(`^(Correct|Enter|Close) ${point}$`) })
    if ((await toggle.getAttribute('aria-expanded')) !== 'true') await toggle.click()
    return form.getByRole('textbox', { name: `Stated ${point}` })
  }

  /** Pastes what the seller answered, and has it read. */
  async answered(text: string): Promise<void> {
    const field = this.page.getByRole('textbox', { name: 'The seller’s answer' })
    if (!(await field.isVisible())) await this.page.getByText('Add what the seller answered').click()
    await field.fill(text)
    await this.page.getByRole('button', { name: 'Read the answer' }).click()
  }

  /** A point's tape in words. */
  tape = async (point: string): Promise<string> =>
    (await this.page
      .getByRole('article')
      .filter({ has: this.page.getByRole('heading', { name: point, exact: true }) })
      .getByRole('img')
      .first()
      .getAttribute('aria-label')) ?? ''

  async keep(notes: string): Promise<void> {
    await this.page.getByRole('textbox', { name: 'Notes' }).fill(notes)
    await this.page.getByRole('button', { name: /^Keep with/ }).click()
    await this.page.getByText('It is kept in the workroom.').waitFor()
  }

  undo = (): Promise<void> => this.page.getByRole('button', { name: 'Undo the last change' }).click()
}

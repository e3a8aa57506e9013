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

  title = (): Promise<string | null> => this.heading(1).textContent()
  verdict = (): Promise<string | null> => this.heading(2).textContent()
  /** The sentence that says the answer is about another page; null where there is none. */
  async mark(): Promise<string | null> {
    const mark = this.page.getByText(/^This answer is about /)
    return (await mark.count()) === 0 ? null : mark.first().textContent()
  }
  /** Whose garment the panel says its answer is about, and whether it says that it is not the one in front. */
  async stands(): Promise<{ title: string | null; marked: boolean }> {
    const heading = this.heading(1)
    return { title: (await heading.count()) === 0 ? null : await heading.textContent(), marked: (await this.mark()) !== null }
  }

  /** What the answer says as a whole: verdict, reasons and facts. */
  answer = (): Promise<string | null> => this.page.locator('section.answer').first().textContent()
  /** The plans as their table's text; empty where there is none. */
  async plans(): Promise<string> {
    const table = this.page.getByRole('table', { name: 'Plans' })
    return (await table.count()) === 0 ? '' : ((await table.textContent()) ?? '')
  }

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

  async keep(notes: string): Promise<void> {
    await this.page.getByRole('textbox', { name: 'Notes' }).fill(notes)
    await this.page.getByRole('button', { name: /^Keep with/ }).click()
    await this.page.getByText('It is kept in the workroom.').waitFor()
  }

  undo = (): Promise<void> => this.page.getByRole('button', { name: 'Undo the last change' }).click()

  private heading = (level: number): Locator => this.page.getByRole('heading', { level }).first()
}

import type { Page } from 'playwright-core'
import { Panel } from './panel.ts'
import type { Rig } from './rig.ts'

/** The popup, by the words a person reads in it. */
export class Popup {
  readonly page: Page
  private readonly rig: Rig

  constructor(rig: Rig, page: Page) {
    this.rig = rig
    this.page = page
  }

  /** Presses the toolbar button over a page and waits until the popup has read it. */
  static async over(rig: Rig, listing: Page): Promise<Popup> {
    const page = await rig.press(listing)
    await page.getByRole('main').getByRole('button').first().waitFor()
    return new Popup(rig, page)
  }

  title = (): Promise<string | null> => this.page.getByRole('heading', { level: 1 }).textContent()
  verdict = (): Promise<string | null> => this.page.getByRole('heading', { level: 2 }).textContent()
  says = (): Promise<string | null> => this.page.locator('body').textContent()
  /** The figure beside a point, as it stands there. */
  figure = (point: string): Promise<string | null> =>
    this.page
      .getByRole('row')
      .filter({ has: this.page.getByRole('rowheader', { name: point, exact: true }) })
      .locator('.v')
      .textContent()

  async openBeside(): Promise<Panel> {
    await this.leaveBy(/^(More details|Open beside the page)/)
    return Panel.of(this.rig)
  }

  /** Presses a button that closes the popup, perhaps before the press is reported as done. */
  async leaveBy(name: string | RegExp): Promise<void> {
    try {
      await this.page.getByRole('button', { name }).click()
    } catch (error) {
      if (!(error instanceof Error && error.message.includes('has been closed'))) throw error
    }
  }
}

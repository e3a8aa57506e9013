import type { Page } from 'playwright-core'
import type { Rig } from './rig.ts'

export interface DemoPerson {
  name: string
  currency: string
  /** Body measures by the words on the page, in centimetres as typed. */
  measures: Record<string, string>
}

/** Invented: somebody whom the demo shop's charcoal trousers fit but for the waist. */
export const WREN: DemoPerson = {
  name: 'Wren',
  currency: 'GBP',
  measures: {
    'Waistband': '75',
    'Hip': '100',
    'Thigh': '58',
    'Inside leg': '80',
    'Chest': '96',
    'Shoulder width': '43',
    'Arm length': '61'
  }
}

/** The workroom, by the words a person reads in it. */
export class Workroom {
  readonly page: Page

  private constructor(page: Page) {
    this.page = page
  }

  static async open(rig: Rig, part: 'wishlist' | 'wardrobe' | 'body' | 'settings' | 'backup' | 'help'): Promise<Workroom> {
    const page = await rig.tab(rig.address(`workroom.html#${part}`))
    await page.getByRole('heading', { level: 1 }).waitFor()
    return new Workroom(page)
  }

  /** Enters somebody and what they measure, as a person would: field by field. */
  async enter(person: DemoPerson): Promise<void> {
    const skip = this.page.getByRole('button', { name: /^Skip, / })
    if ((await skip.count()) > 0) await skip.click()
    await this.page.getByRole('textbox', { name: 'Name' }).fill(person.name)
    await this.page.getByRole('combobox', { name: 'Units' }).selectOption('cm')
    await this.page.getByRole('combobox', { name: 'Currency' }).selectOption(person.currency)
    await this.page.getByRole('button', { name: 'Save' }).click()
    await this.page.getByRole('heading', { name: new RegExp(`^${person.name}: `) }).waitFor()
    for (const [name, typed] of Object.entries(person.measures)) {
      await this.page.getByRole('textbox', { name, exact: true }).fill(typed)
      await this.page.keyboard.press('Tab')
      await this.page.getByRole('status').getByText(`${name}: ${typed} cm saved.`).waitFor()
    }
  }

  /** The kept listings, one text a row. */
  async wishlist(): Promise<string[]> {
    await this.page.getByRole('table').waitFor()
    return this.page
      .getByRole('row')
      .filter({ has: this.page.getByRole('rowheader') })
      .allTextContents()
  }
}

/** A rig whose workroom knows the demo person. */
export async function introduce(rig: Rig, person: DemoPerson = WREN): Promise<void> {
  const workroom = await Workroom.open(rig, 'body')
  await workroom.enter(person)
  await workroom.page.close()
}

import { browser } from 'wxt/browser'
import type { Platform } from './platform.ts'

/** Inside the extension. The companion's build puts page.ts in this module's place. */
export const platform: Platform = {
  where: 'extension',
  async openWorkroom(part) {
    await browser.tabs.create({ url: browser.runtime.getURL('/workroom.html') + (part === undefined ? '' : `#${part}`) })
  }
}

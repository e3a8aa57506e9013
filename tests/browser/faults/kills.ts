/** Kills the browser, on the acknowledgement of a write or at random, and checks after each that all that was acknowledged is there. */
import { introduced, KillablePage, sendGarment, served } from './page.ts'

export interface Figures {
  kills: number
  acknowledged: number
  /** Said to be saved, and not there afterwards. */
  lost: string[]
}

/** A garment's name in the sentence that says it is saved. */
const NAMED = /(Garment \d+) saved\./

export async function kills(folder: string, count: number, when: 'acknowledged' | 'random', chance: () => number): Promise<Figures> {
  const { address, profile, end } = await served(folder)
  const said = new Set<string>()
  const lost = new Set<string>()
  let made = 0
  try {
    let page = await KillablePage.open(profile, `${address}#body`)
    await introduced(page.page)
    await page.close()
    for (let n = 0; n < count; n++) {
      let killed = false
      page = await KillablePage.open(profile, `${address}#wardrobe`, (sentence) => {
        const [, name] = NAMED.exec(sentence) ?? []
        // what is said once the process is being ended was said before
        if (name === undefined) return
        said.add(name)
        if (when === 'acknowledged' && !killed) {
          killed = true
          page.kill()
        }
      })
      check(await page.rows('garmentsOwned'))
      const stop = when === 'random' ? setTimeout(() => page.kill(), chance() * RANDOM_MS) : null
      try {
        for (let turn = 0; turn < MOST_IN_A_TURN; turn++) await sendGarment(page.page, `Garment ${++made}`)
      } catch {
        // the browser is gone, which was meant
      }
      if (stop !== null) clearTimeout(stop)
      page.kill()
      await page.gone()
    }
    page = await KillablePage.open(profile, `${address}#wardrobe`)
    check(await page.rows('garmentsOwned'))
    await page.close()
  } finally {
    await end()
  }
  return { kills: count, acknowledged: said.size, lost: [...lost] }

  function check(rows: { name?: string }[]): void {
    const there = new Set(rows.map(({ name }) => name))
    for (const name of said) if (!there.has(name)) lost.add(name)
  }
}

const RANDOM_MS = 1500
const MOST_IN_A_TURN = 200

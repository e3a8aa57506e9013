/** The licences of everything that is built in, in one file beside it: of each package whose code came into a bundle, its whole text. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { inRoot } from './places.mjs'

export const LICENCES_FILE = 'LICENCES.txt'

/** Packages seen in the bundles of this process: an extension is built in several. @type {Set<string>} */
const seen = new Set()

/** The package whose file this is; null: it is of the project's own. @param {string} id */
export function packageOf(id) {
  const path = id.replaceAll('\\', '/').replace(/^\0/, '')
  const at = path.lastIndexOf('/node_modules/')
  if (at < 0) return null
  const [first = '', second = ''] = path.slice(at + '/node_modules/'.length).split('/')
  return first.startsWith('@') ? `${first}/${second}` : first
}

/** A package's name, version and licence, and the text it comes with; where it has none, that of its licence's name. @param {string} name */
function licenceOf(name) {
  const folder = inRoot(`node_modules/${name}`)
  const { version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const file = existsSync(folder) ? readdirSync(folder).find((one) => /^licen[cs]e(\.|$)/i.test(one)) : undefined
  const text =
    file === undefined
      ? plainText(license, typeof author === 'string' ? author : (author?.name ?? `the authors of ${name}`))
      : readFileSync(join(folder, file), 'utf8')
  return `=== ${name} ${version} (${license})\n\n${text.trim()}\n`
}

/** @param {string} license @param {string} holder */
function plainText(license, holder) {
  if (license !== 'MIT') throw new Error(`A package under ${license} comes without the text of its licence: put it beside this file.`)
  return readFileSync(inRoot('LICENSE'), 'utf8').replace(/^Copyright.*$/m, `Copyright (c) ${holder}`)
}

/**
 * Writes the file into what is built. `also`: packages that come in past the bundles.
 * @param {readonly string[]} also
 * @returns {import('vite').Plugin}
 */
export function licences(also = []) {
  return {
    name: 'licences',
    generateBundle(_options, bundle) {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk') continue
        for (const id of Object.keys(chunk.modules)) {
          const name = packageOf(id)
          if (name !== null) seen.add(name)
        }
      }
      const texts = [...new Set([...seen, ...also])].sort().map(licenceOf)
      const own = `=== Seam Reckoner (MIT)\n\n${readFileSync(inRoot('LICENSE'), 'utf8').trim()}\n`
      this.emitFile({ type: 'asset', fileName: LICENCES_FILE, source: [own, ...texts].join('\n') })
    }
  }
}

/** The project as its own tests see it: its files, what each imports, and what stands in its code. */
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { dirname, extname, posix } from 'node:path'
import { parseSync } from 'vite'
import { inRoot, ROOT } from '../../entrypoints/companion/places.mjs'

export interface SourceFile {
  /** From the project's folder, with forward slashes. */
  path: string
  text: string
}

/** Every file that belongs to the project: tracked, or new and not ignored. */
export const projectFiles: string[] = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: ROOT,
  encoding: 'utf8'
})
  .split('\n')
  .filter((path) => path !== '' && existsSync(inRoot(path)))

export const read = (path: string): string => readFileSync(inRoot(path), 'utf8')

/** The TypeScript of some folders. */
export const sourcesIn = (...folders: string[]): SourceFile[] =>
  projectFiles
    .filter((path) => /\.tsx?$/.test(path) && folders.some((folder) => path.startsWith(`${folder}/`)))
    .map((path) => ({ path, text: read(path) }))

export interface Node {
  type: string
  start: number
  end: number
  [key: string]: unknown
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value

/** Walks every node of a file, each with the node it stands in. */
export function walk(file: SourceFile, visit: (node: Node, parent: Node | null, key: string) => void): void {
  const { program, errors } = parseSync(file.path, file.text)
  if (errors[0] !== undefined) throw new Error(`${file.path} can't be parsed: ${errors[0].message}`)
  const step = (node: Node, parent: Node | null, key: string) => {
    visit(node, parent, key)
    for (const [name, value] of Object.entries(node)) {
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) step(child, node, name)
    }
  }
  const root: unknown = program
  if (isNode(root)) step(root, null, 'program')
}

const IMPORTERS = new Set(['ImportDeclaration', 'ExportNamedDeclaration', 'ExportAllDeclaration', 'ImportExpression', 'TSImportType'])

/** What a file names as its imports, types included, as written. */
export function importsOf(file: SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (!IMPORTERS.has(node.type)) return
    const source = textOf(node.source)
    if (source !== undefined) found.push(source)
  })
  return found
}

/** The text of a string literal, or of a template without values. */
export function textOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value
  if (node.type === 'TSLiteralType') return textOf(node.literal)
  return undefined
}

/** Where a relative import leads, from the project's folder; undefined for a package. */
export const target = (file: SourceFile, written: string): string | undefined =>
  written.startsWith('.') ? posix.normalize(posix.join(dirname(file.path), written)) : undefined

export const hasEnding = (written: string): boolean => ['.ts', '.tsx', '.mjs', '.css'].includes(extname(written))

/** `path:line`, to be pressed in a terminal. */
export const place = (file: SourceFile, at: number): string => `${file.path}:${file.text.slice(0, at).split('\n').length}`

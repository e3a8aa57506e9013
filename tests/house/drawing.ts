/**
 * Draws the house from its imports: a line a room, with the rooms it stands on and how many imports go there. A folder is a room;
 * where a folder has rooms of its own, each file that lies beside them is shown by itself.
 *   npx tsx tests/house/drawing.ts [folder]    core when no folder is named
 */
import { posix } from 'node:path'
import { fileURLToPath } from 'node:url'
import { importsOf, sourcesIn, target } from './project.ts'

/** The room a file is in. */
export function roomOf(path: string, paths: readonly string[]): string {
  const folder = posix.dirname(path)
  return paths.some((other) => other.startsWith(`${folder}/`) && posix.dirname(other) !== folder) ? path : folder
}

/** Room → the rooms its files import from → how often. */
export function roomsOf(...folders: string[]): Map<string, Map<string, number>> {
  const rooms = new Map<string, Map<string, number>>()
  const files = sourcesIn(...folders)
  const paths = files.map(({ path }) => path)
  for (const file of files) {
    const here = roomOf(file.path, paths)
    const to = rooms.get(here) ?? new Map<string, number>()
    rooms.set(here, to)
    for (const written of importsOf(file)) {
      const path = target(file, written)
      if (path === undefined) continue
      const there = roomOf(path, paths)
      if (there !== here) to.set(there, (to.get(there) ?? 0) + 1)
    }
  }
  return rooms
}

/** Rooms that reach each other round about, each round told once. */
export function roundsOf(rooms: ReadonlyMap<string, ReadonlyMap<string, number>>): string[] {
  const done = new Set<string>()
  const rounds: string[] = []
  const follow = (room: string, trail: string[]) => {
    const at = trail.indexOf(room)
    if (at >= 0) rounds.push([...trail.slice(at), room].join(' → '))
    else if (!done.has(room)) {
      for (const to of rooms.get(room)?.keys() ?? []) follow(to, [...trail, room])
      done.add(room)
    }
  }
  for (const room of rooms.keys()) follow(room, [])
  return rounds
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const rooms = roomsOf(process.argv[2] ?? 'core')
  const files = sourcesIn(process.argv[2] ?? 'core')
  const paths = files.map(({ path }) => path)
  for (const [room, to] of [...rooms].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const mine = files.filter(({ path }) => roomOf(path, paths) === room).length
    const there = [...to].sort(([, a], [, b]) => b - a).map(([name, n]) => `${name.replace(/^core\//, '')} ${n}`)
    console.log(`${room} (${mine} files) → ${there.join(', ') || 'nothing'}`)
  }
  const rounds = roundsOf(rooms)
  console.log(rounds.length === 0 ? 'No room reaches itself round about.' : `Rounds:\n  ${rounds.join('\n  ')}`)
}

import type { Person } from './schemas.ts'

/** Whose body counts: the one asked for, else the one set, else the first; null when there is nobody yet. */
export function personFor(people: readonly Person[], asked: string | null, current: string | null): Person | null {
  return people.find((person) => person.id === asked) ?? people.find((person) => person.id === current) ?? people[0] ?? null
}

/** Where a language does not say what English says. */
import type { Messages } from '../../core/words/languages.ts'

interface Placeholder {
  name: string
  /** undefined: written as it is. */
  form: string | undefined
}
const placeholdersOf = (text: string): Placeholder[] =>
  [...text.matchAll(/\{(\w+)(?:\|([^{}]+))?\}/g)].map(([, name = '', form]) => ({ name, form }))
const isPlural = ({ form }: Placeholder): boolean => form?.includes(':') ?? false
const written = ({ name, form }: Placeholder): string => (form === undefined ? `{${name}}` : `{${name}|${form}}`)
const unique = <T>(all: readonly T[]): T[] => [...new Set(all)]

/** Every gap as a sentence that says the fix. A plural may stand wherever its value is given; a padded minute may be written plain. */
export function languageGaps(english: Messages, other: Messages, locale: string): string[] {
  const lacking = Object.keys(english).filter((code) => !Object.hasOwn(other, code))
  const tooMany = Object.keys(other).filter((code) => !Object.hasOwn(english, code))
  const shared = Object.keys(english).filter((code) => Object.hasOwn(other, code))
  return [
    ...lacking.map((code) => `"${code}": not said: write it.`),
    ...tooMany.map((code) => `"${code}": English has no such code: take it away.`),
    ...shared.flatMap((code) => gapsOf(english[code] ?? '', other[code] ?? '', locale).map((gap) => `"${code}": ${gap}`))
  ]
}

function gapsOf(english: string, other: string, locale: string): string[] {
  const theirs = placeholdersOf(english)
  const own = placeholdersOf(other)
  const given = new Set(theirs.map(givenAs))
  const used = new Set(own.map(givenAs))
  const formsOf = (name: string) => unique(theirs.filter((one) => !isPlural(one) && one.name === name).map(written))
  const plural = unique(new Intl.PluralRules(locale).resolvedOptions().pluralCategories)
  return [
    ...[...given].filter((name) => !used.has(name)).map((name) => `{${name}} is left out.`),
    ...[...used].filter((name) => !given.has(name)).map((name) => `{${name}} is not given.`),
    ...own.flatMap((one) => {
      const its = formsOf(one.name)
      if (isPlural(one) || its.length === 0 || its.includes(written(one))) return []
      return [`${written(one)} is written ${its.join(' or ')} in English.`]
    }),
    ...own.filter(isPlural).flatMap((one) => {
      const has = new Set((one.form ?? '').split('|').map((part) => part.slice(0, part.indexOf(':'))))
      return plural.filter((form) => !has.has(form)).map((form) => `{${one.name}|…} lacks the form "${form}".`)
    })
  ]
}

/** Minutes behind hours come as a number and as two digits; a language writes the one it likes. */
const givenAs = ({ name }: Placeholder): string => (name === 'padded' ? 'minutes' : name)

/** The tables of steps are whole: every alteration and every mend has its steps, every step its words, and no words stand there unsaid. */
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { CATALOGUE, WITHOUT_ROW } from '../../../../core/alterations/catalogue.ts'
import { CONDITIONS } from '../../../../core/garment/garment-input.ts'
import { ALTERATIONS } from '../../../../core/ids/alterations.ts'
import { en } from '../../../../core/words/en/index.ts'
import { STEPS, stepsOf } from '../../../../core/worksheet/steps/all-steps.ts'
import { MENDS } from '../../../../core/worksheet/steps/conditions.ts'
import { FRAME } from '../../../../core/worksheet/steps/frame.ts'
import { OPENINGS } from '../../../../core/worksheet/steps/openings.ts'
import { THING_IDS, thing } from '../../../../core/worksheet/things.ts'

const rows: { does: string; mind?: readonly string[] }[] = [
  ...STEPS.flatMap(({ fit, work }) => [...fit, ...work]),
  ...Object.values(OPENINGS).flatMap(({ open, close }) => [...open, ...close]),
  ...Object.values(MENDS).flatMap(({ steps }) => steps),
  ...FRAME.map(({ step }) => step)
]
const codesOf = (family: string): string[] => Object.keys(en).filter((code) => code.startsWith(`${family}.`))

test('every alteration of the catalogue has its steps, either way', () => {
  const without = CATALOGUE.filter(({ id, direction }) => {
    const steps = stepsOf(id, direction)
    return steps === undefined || steps.fit.length === 0 || steps.work.length === 0
  }).map(({ id, direction }) => `${id}, ${direction}: write its steps in the file of its part under core/worksheet/steps`)
  expect(without).toEqual([])
  // one that has no row is known by id, and a plan someone writes may hold it
  expect(Object.keys(WITHOUT_ROW).filter((id) => stepsOf(id as (typeof ALTERATIONS)[number], 'less') === undefined)).toEqual([])
})

test('no steps are written twice, or for an id that nobody knows', () => {
  const keys = STEPS.map(({ id, direction }) => `${id}/${direction ?? 'either'}`)
  expect(new Set(keys).size).toBe(keys.length)
  expect(STEPS.filter(({ id }) => !ALTERATIONS.includes(id))).toEqual([])
})

test('every job is measured, tried before anything is cut, and looked at when it is done', () => {
  const wrong = STEPS.filter(({ fit, work }) => {
    const all = [...fit, ...work]
    const cut = all.findIndex(({ act }) => act === 'cut')
    const tried = all.findIndex(({ act }) => act === 'try')
    return !fit.some(({ figures }) => figures !== undefined) || (cut >= 0 && (tried < 0 || tried > cut)) || work.at(-1)?.act !== 'look'
  }).map(({ id }) => id)
  expect(wrong).toEqual([])
})

test('every mend has its steps', () => {
  expect(CONDITIONS.filter((job) => MENDS[job].steps.length === 0)).toEqual([])
})

test('every step has its sentence, and every sentence its step', () => {
  const said = new Set(rows.map(({ does }) => `step.${does}`))
  expect([...said].filter((code) => !Object.hasOwn(en, code))).toEqual([])
  expect(codesOf('step').filter((code) => !said.has(code))).toEqual([])
})

test('every tool and notion has its name, every substitute its sentence, and none is left over', () => {
  expect(codesOf('gather').sort()).toEqual(THING_IDS.map((id) => `gather.${id}`).sort())
  const instead = THING_IDS.flatMap((id) => thing(id).instead ?? [])
  expect(codesOf('instead').sort()).toEqual(instead.map((id) => `instead.${id}`).sort())
})

test('a caution named on a step has its sentence', () => {
  expect(rows.flatMap(({ mind = [] }) => mind).filter((id) => !Object.hasOwn(en, `caution.${id}`))).toEqual([])
})

test('no name of a figure stands there unused', () => {
  const folders = ['core/worksheet/', 'core/worksheet/steps/']
  const text = folders
    .flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith('.ts'))
        .map((name) => readFileSync(folder + name, 'utf8'))
    )
    .join('\n')
  const unused = codesOf('figure').filter((code) => !text.includes(`'${code.slice('figure.'.length)}'`) && !text.includes(`'${code}'`))
  expect(unused).toEqual([])
})

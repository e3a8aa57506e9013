import { describe, expect, it } from 'vitest'
import { CLOTH_WORK, clothWork } from '../../../core/garment/cloth-work.ts'
import { mendingOf } from '../../../core/garment/condition.ts'
import type { Structure, Trait } from '../../../core/garment/garment-input.ts'
import { hasMessage } from '../../../core/words/say.ts'

const cloth = (traits: Trait[], structure: Structure = 'woven') => ({ structure, traits: new Set(traits) })

describe('what cloth does to the work', () => {
  it.each([
    ['cotton', cloth([]), 0, 1, 1],
    ['a check: only long seams are matched', cloth(['check']), 0, 1, 1.4],
    ['silk', cloth(['silk']), 1, 1.4, 1.4],
    ['beads', cloth(['beaded']), 2, 2, 2],
    ['garment leather', cloth([], 'leather'), 1, 1.8, 1.8],
    ['suede counts as leather', cloth(['suede']), 1, 1.8, 1.8],
    ['a biker’s hide', { ...cloth([], 'leather'), thick: true }, 2, 2.5, 2.5],
    ['a thick lining does not make leather of cotton', { ...cloth([]), thick: true }, 0, 1, 1],
    ['coated', cloth(['coated']), 1, 1.4, 1.4],
    ['down', { ...cloth([]), quilted: true }, 1, 1.6, 1.6],
    ['the most that any says, not their sum', cloth(['silk', 'beaded', 'check']), 2, 2, 2]
  ] as const)('%s', (_name, what, level, minutes, atSeams) => {
    expect(clothWork(what)).toMatchObject({ level, minutes, minutesAtSeams: atSeams })
  })
  it('what is not done in a cloth has its sentence', () => {
    for (const { id, without } of CLOTH_WORK) if (without !== undefined) expect(hasMessage(`limit.in-${id}`), id).toBe(true)
  })
  it('felt does not come back: blocking it is no job', () => {
    const felted = { kind: 'jumper' as const, measures: [], condition: [{ job: 'block-knit' as const }] }
    expect(mendingOf(felted).minutes).toBe(30)
    expect(mendingOf({ ...felted, cut: { knit: 'felted' } }).minutes).toBe(0)
  })
})

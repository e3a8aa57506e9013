/** The listing and the seller's later answers as one reading: at each point the newer stated figure counts. Pure. */
import type { Reading } from '../../core/reading/reading.ts'

export function combinedReading(first: Reading, answers: readonly Reading[]): Reading {
  return answers.reduce(later, first)
}

function later(before: Reading, answer: Reading): Reading {
  const answered = new Set(answer.measures.map(({ point }) => point))
  // a doubt about a point is settled by a plain answer about it
  const open = before.issues.filter(({ readings }) => readings.length === 0 || readings.some(({ point }) => !answered.has(point)))
  return {
    ...before,
    garment: before.garment.kind === null ? answer.garment : before.garment,
    measures: [...before.measures.filter(({ point }) => !answered.has(point)), ...answer.measures],
    cloth: {
      fibres: answer.cloth.fibres.length > 0 ? answer.cloth.fibres : before.cloth.fibres,
      traits: [...new Set([...before.cloth.traits, ...answer.cloth.traits])],
      stretchPercent: answer.cloth.stretchPercent ?? before.cloth.stretchPercent,
      structure: answer.cloth.structure ?? before.cloth.structure
    },
    made: { ...before.made, ...answer.made },
    use: before.use ?? answer.use,
    price: answer.price ?? before.price,
    mending: [...new Set([...before.mending, ...answer.mending])],
    faults: [...before.faults, ...answer.faults],
    allowances: [...before.allowances, ...answer.allowances],
    issues: [...open, ...answer.issues]
  }
}

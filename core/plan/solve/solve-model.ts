/**
 * Every model is solved here and nowhere else. The simplex method may turn in circles where several steps are equally good, and the solver's
 * plain rule does so once in millions of models. Such a model is asked again with a minute price on every variable, each of its own size: where no
 * two steps are equally good there is no circle to turn in (perturbation; any textbook on linear programming).
 */
import { type Options, solve } from 'yalps'
import { LinearModel } from './linear-model.ts'

/** The price, per mm or per choice: so little that all of a plan's amounts together come to less than a hundredth of a minute. */
const MINUTE_PRICE = 1e-6
/** So often, each time with other prices. */
const ATTEMPTS = 4
/**
 * The values of the variables at the optimum, or the best that was found within the branches allowed; those that are left out are 0. Undefined where
 * nothing was found: the model has no answer, or every attempt turned in circles, which was never seen.
 */
export function solveModel(model: LinearModel, options: Partial<Options> = {}): ReadonlyMap<string, number> | undefined {
  for (let attempt = 0; attempt <= ATTEMPTS; attempt++) {
    const { status, variables } = solve((attempt === 0 ? model : priced(model, attempt)).forSolver(), options)
    if (status === 'optimal') return new Map(variables)
    if (status !== 'cycled') return variables.length === 0 ? undefined : new Map(variables)
  }
  return undefined
}

function priced(model: LinearModel, attempt: number): LinearModel {
  const turned = new LinearModel()
  for (const [row, bound] of model.constraints) turned.limit(row, bound)
  for (const binary of model.binaries) turned.binaries.add(binary)
  for (const integer of model.integers) turned.integers.add(integer)
  let place = 0
  for (const [variable, rows] of model.variables) {
    const price = MINUTE_PRICE * (1 + ((++place * Math.SQRT2 * attempt) % 1))
    const cost = rows.find(([row]) => row === 'cost')?.[1] ?? 0
    turned.put(variable, 'cost', cost + price)
    for (const [row, coefficient] of rows) if (row !== 'cost') turned.put(variable, row, coefficient)
  }
  return turned
}

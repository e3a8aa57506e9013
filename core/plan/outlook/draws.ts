/**
 * Fixed quasi-random draws: a Kronecker sequence on the square roots of the primes, ranked in each dimension so that every dimension alone
 * is spread evenly (each of its 256 shares holds one draw), and freed of correlations by ranked Gram–Schmidt (A. B. Owen, "Controlling
 * correlations in Latin hypercube samples", 1994; from memory). No chance and no clock: the same draws for everyone, every time.
 */
export const DRAWS = 256
const DIMENSIONS = 79
const SWEEPS = 4

/** z[dimension][draw], standard normal. Made once, on first use. */
let made: readonly Float64Array[] | undefined
export function normalDraws(): readonly Float64Array[] {
  made ??= uncorrelated(
    primes(DIMENSIONS).map((prime) => scores(Float64Array.from({ length: DRAWS }, (_, i) => ((i + 1) * Math.sqrt(prime)) % 1)))
  )
  return made
}

/** The normal score of each value's rank. */
function scores(values: Float64Array): Float64Array {
  const z = new Float64Array(values.length)
  const order = [...values.keys()].sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0) || one - other)
  for (const [rank, i] of order.entries()) z[i] = normalQuantile((rank + 0.5) / values.length)
  return z
}

/** Forward, then backward: each column freed of those before it, and ranked again. */
function uncorrelated(columns: Float64Array[]): Float64Array[] {
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const freed: Float64Array[] = []
    for (const column of columns) {
      const rest = Float64Array.from(column)
      for (const other of freed) {
        const shared = along(rest, other) / DRAWS
        for (let i = 0; i < DRAWS; i++) rest[i] = (rest[i] as number) - shared * (other[i] as number)
      }
      freed.push(scores(rest))
    }
    columns = freed.reverse()
  }
  return columns
}

function along(one: Float64Array, other: Float64Array): number {
  let sum = 0
  for (let i = 0; i < DRAWS; i++) sum += (one[i] as number) * (other[i] as number)
  return sum
}

function primes(count: number): number[] {
  const found: number[] = []
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime !== 0)) found.push(n)
  return found
}

const A = [-3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2, -3.066479806614716e1, 2.506628277459239]
const B = [-5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1]
const C = [-7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783]
const D = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416]
const horner = (coefficients: readonly number[], at: number): number => coefficients.reduce((sum, coefficient) => sum * at + coefficient, 0)

/** The standard normal quantile for 0 < p < 1, by P. J. Acklam's rational approximation (relative error under 1.2e-9). */
export function normalQuantile(p: number): number {
  if (p < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(p))
    return horner(C, q) / (horner(D, q) * q + 1)
  }
  if (p > 1 - 0.02425) return -normalQuantile(1 - p)
  const q = p - 0.5
  const r = q * q
  return (horner(A, r) * q) / (horner(B, r) * r + 1)
}

/** Most tapes are read well and a few badly: sellers' errors have heavier tails than a normal (degrees of freedom from memory). */
const TAILS = 5
/**
 * A normal draw as one of Student's t with an sd of one: the Cornish–Fisher expansion of its quantile (Abramowitz and Stegun 26.7.5, to the
 * third order), scaled by √((ν − 2)/ν).
 */
export function heavyTailed(z: number): number {
  const first = (z ** 3 + z) / 4
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384
  return (z + first / TAILS + second / TAILS ** 2 + third / TAILS ** 3) * Math.sqrt((TAILS - 2) / TAILS)
}

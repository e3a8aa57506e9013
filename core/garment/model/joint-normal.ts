/**
 * Quantities that are jointly normal, and what is thought of them once some are known. Exact: an observation is one rank-one update of mean and
 * covariance (conditioning of a multivariate normal, any textbook of statistics), so that the order of observing changes nothing.
 */

/** A quantity as a line on quantities before it: at + Σ slope × earlier + an error of its own. */
export interface LineOn {
  at: number
  from: readonly (readonly [index: number, slope: number])[]
  sd: number
}

export class JointNormal {
  readonly size: number
  readonly mean: Float64Array
  /** Row by row. */
  readonly covariance: Float64Array
  /** Natural logarithm of how likely all that was observed was. */
  logEvidence: number

  private constructor(size: number, mean: Float64Array, covariance: Float64Array, logEvidence: number) {
    this.size = size
    this.mean = mean
    this.covariance = covariance
    this.logEvidence = logEvidence
  }

  static fromLines(lines: readonly LineOn[]): JointNormal {
    const size = lines.length
    const mean = new Float64Array(size)
    const covariance = new Float64Array(size * size)
    for (const [j, { at, from, sd }] of lines.entries()) {
      mean[j] = from.reduce((sum, [i, slope]) => sum + slope * (mean[i] ?? 0), at)
      for (let k = 0; k < j; k++) {
        let shared = 0
        for (const [i, slope] of from) shared += slope * (covariance[i * size + k] ?? 0)
        covariance[j * size + k] = shared
        covariance[k * size + j] = shared
      }
      covariance[j * size + j] = from.reduce((sum, [i, slope]) => sum + slope * (covariance[j * size + i] ?? 0), sd * sd)
    }
    return new JointNormal(size, mean, covariance, 0)
  }

  copy(): JointNormal {
    return new JointNormal(this.size, this.mean.slice(), this.covariance.slice(), this.logEvidence)
  }

  sdOf(index: number): number {
    return Math.sqrt(Math.max(0, this.covariance[index * this.size + index] ?? 0))
  }

  /** Σ weight × quantity was observed to be `value`, give or take `noiseSd`. */
  observe(weights: readonly (readonly [index: number, weight: number])[], value: number, noiseSd: number): void {
    const { size, mean, covariance } = this
    const along = new Float64Array(size)
    let expected = 0
    for (const [i, weight] of weights) {
      expected += weight * (mean[i] ?? 0)
      for (let k = 0; k < size; k++) along[k] = (along[k] as number) + weight * (covariance[i * size + k] as number)
    }
    const variance = weights.reduce((sum, [i, weight]) => sum + weight * (along[i] ?? 0), noiseSd * noiseSd)
    if (!(variance > 0)) return
    const off = value - expected
    this.logEvidence -= (off * off) / variance / 2 + Math.log(2 * Math.PI * variance) / 2
    for (let j = 0; j < size; j++) {
      const gain = (along[j] as number) / variance
      if (gain === 0) continue
      mean[j] = (mean[j] as number) + gain * off
      for (let k = 0; k < size; k++) covariance[j * size + k] = (covariance[j * size + k] as number) - gain * (along[k] as number)
    }
  }

  /** One quantity as it would be thought of without an observation that was made, and the log of how likely that observation then was. */
  without(
    index: number,
    weights: readonly (readonly [index: number, weight: number])[],
    value: number,
    noiseSd: number
  ): { mean: number; variance: number; logLikelihood: number } | undefined {
    const { size, mean, covariance } = this
    const along = (j: number): number => weights.reduce((sum, [i, weight]) => sum + weight * (covariance[i * size + j] ?? 0), 0)
    const own = weights.reduce((sum, [i, weight]) => sum + weight * along(i), 0)
    // what is left of the noise once the observation has had its say
    const left = noiseSd * noiseSd - own
    if (!(left > 1e-9)) return undefined
    const off = weights.reduce((sum, [i, weight]) => sum + weight * (mean[i] ?? 0), -value)
    const predicted = own + (own * own) / left + noiseSd * noiseSd
    const apart = off + (own * off) / left
    return {
      mean: (mean[index] ?? 0) + (along(index) * off) / left,
      variance: (covariance[index * size + index] ?? 0) + along(index) ** 2 / left,
      logLikelihood: -(apart * apart) / predicted / 2 - Math.log(2 * Math.PI * predicted) / 2
    }
  }

  /** Nothing is known of this quantity better than that (sd): what lacks is doubt of its own. */
  widen(index: number, leastSd: number): void {
    const at = index * this.size + index
    this.covariance[at] = Math.max(this.covariance[at] ?? 0, leastSd * leastSd)
  }

  /** Several beliefs about the same quantities as one with their mean and covariance: what they differ by is doubt. Weights by prior and evidence. */
  static mixed(beliefs: readonly Weighed[]): JointNormal {
    const [first] = beliefs
    if (first === undefined) throw new Error('no belief to mix')
    if (beliefs.length === 1) return first.belief
    const { weights, all, logEvidence } = weighed(beliefs)
    const { size } = first.belief
    const mean = new Float64Array(size)
    const covariance = new Float64Array(size * size)
    for (const [b, { belief }] of beliefs.entries()) {
      const share = (weights[b] ?? 0) / all
      for (let j = 0; j < size; j++) mean[j] = (mean[j] as number) + share * (belief.mean[j] as number)
    }
    for (const [b, { belief }] of beliefs.entries()) {
      const share = (weights[b] ?? 0) / all
      for (let j = 0; j < size; j++) {
        const off = (belief.mean[j] as number) - (mean[j] as number)
        for (let k = 0; k < size; k++)
          covariance[j * size + k] =
            (covariance[j * size + k] as number) +
            share * ((belief.covariance[j * size + k] as number) + off * ((belief.mean[k] as number) - (mean[k] as number)))
      }
    }
    return new JointNormal(size, mean, covariance, logEvidence)
  }
}

interface Weighed {
  belief: JointNormal
  prior: number
}
interface Evident {
  belief: { logEvidence: number }
  prior: number
}
/** What `mixed` has as its evidence, by what each belief has. */
export const mixedEvidence = (beliefs: readonly Evident[]): number =>
  beliefs.length === 1 ? (beliefs[0] as Evident).belief.logEvidence : weighed(beliefs).logEvidence

/** How much each of several beliefs counts: by its prior and by how likely it made what was observed. */
function weighed(beliefs: readonly Evident[]): { weights: number[]; all: number; logEvidence: number } {
  const most = Math.max(...beliefs.map(({ belief }) => belief.logEvidence))
  const weights = beliefs.map(({ belief, prior }) => prior * Math.exp(belief.logEvidence - most))
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  return { weights, all, logEvidence: most + Math.log(all) }
}

/** A quantity that was observed together with a share of one that all observations have in common. */
export interface ObservedOne {
  value: number
  commonWeight: number
  noiseSd: number
}

/**
 * How likely observations are together (natural logarithm): what `observe` adds up, to the same bit, worked out over what was observed alone. Nothing
 * else is worked out anew, and nothing changes. `common`: the place of what they have in common. `places`: those of what was observed; −1: it hangs on
 * nothing, and is thought to be about what was observed (sd `apartSd`).
 */
export function logEvidenceOf(
  from: JointNormal,
  common: number,
  observed: readonly ObservedOne[],
  places: readonly number[],
  apartSd: number
): number {
  const last = observed.length
  const n = last + 1
  const { mean, covariance, along } = roomFor(n)
  for (let j = 0; j < n; j++) {
    const place = j === last ? common : (places[j] as number)
    mean[j] = place < 0 ? (observed[j] as ObservedOne).value : (from.mean[place] as number)
    for (let k = 0; k < n; k++) {
      const other = k === last ? common : (places[k] as number)
      covariance[j * n + k] =
        place >= 0 && other >= 0 ? (from.covariance[place * from.size + other] as number) : j === k ? apartSd * apartSd : 0
    }
  }
  let log = 0
  for (let i = 0; i < last; i++) {
    const { value, commonWeight, noiseSd } = observed[i] as ObservedOne
    for (let k = i; k < n; k++) along[k] = (covariance[i * n + k] as number) + commonWeight * (covariance[last * n + k] as number)
    const variance = noiseSd * noiseSd + (along[i] as number) + commonWeight * (along[last] as number)
    if (!(variance > 0)) continue
    const off = value - ((mean[i] as number) + commonWeight * (mean[last] as number))
    log -= (off * off) / variance / 2 + Math.log(2 * Math.PI * variance) / 2
    // what was observed is not asked again
    for (let j = i + 1; j < n; j++) {
      const gain = (along[j] as number) / variance
      if (gain === 0) continue
      mean[j] = (mean[j] as number) + gain * off
      for (let k = i + 1; k < n; k++) covariance[j * n + k] = (covariance[j * n + k] as number) - gain * (along[k] as number)
    }
  }
  return log
}

/** The same few numbers are worked out for every kind of garment: in one place, which is used again. */
let room = { mean: new Float64Array(0), covariance: new Float64Array(0), along: new Float64Array(0) }
function roomFor(size: number): typeof room {
  if (room.mean.length < size)
    room = { mean: new Float64Array(size), covariance: new Float64Array(size * size), along: new Float64Array(size) }
  return room
}

/**
 * The lower triangle L with L·Lᵀ = the covariance of the chosen quantities, in their order (Cholesky). A quantity that the ones before it settle
 * gets a row of noughts past them.
 */
export function choleskyOf({ size, covariance }: JointNormal, chosen: readonly number[]): Float64Array {
  const n = chosen.length
  const lower = new Float64Array(n * n)
  for (let j = 0; j < n; j++) {
    const row = (chosen[j] as number) * size
    for (let k = 0; k <= j; k++) {
      let left = covariance[row + (chosen[k] as number)] as number
      for (let m = 0; m < k; m++) left -= (lower[j * n + m] as number) * (lower[k * n + m] as number)
      if (j === k) lower[j * n + j] = Math.sqrt(Math.max(0, left))
      else {
        const pivot = lower[k * n + k] as number
        lower[j * n + k] = pivot > 1e-6 ? left / pivot : 0
      }
    }
  }
  return lower
}

/** Conditioning of a joint normal against closed forms of two and three quantities (any textbook of multivariate statistics). */
import { describe, expect, it } from 'vitest'
import { choleskyOf, JointNormal } from '../../../../core/garment/model/joint-normal.ts'

const two = () =>
  JointNormal.fromLines([
    { at: 800, from: [], sd: 80 },
    { at: 266, from: [[0, 0.92]], sd: 60 }
  ])
const three = () =>
  JointNormal.fromLines([
    { at: 800, from: [], sd: 80 },
    { at: 266, from: [[0, 0.92]], sd: 60 },
    {
      at: 10,
      from: [
        [0, 0.1],
        [1, 0.5]
      ],
      sd: 40
    }
  ])
const covarianceOf = (joint: JointNormal, i: number, j: number) => joint.covariance[i * joint.size + j] ?? Number.NaN

describe('a joint normal', () => {
  it('of lines has their means, variances and covariances', () => {
    const joint = three()
    expect(joint.mean[1]).toBeCloseTo(266 + 0.92 * 800, 9)
    expect(covarianceOf(joint, 1, 1)).toBeCloseTo(0.92 ** 2 * 80 ** 2 + 60 ** 2, 9)
    expect(covarianceOf(joint, 0, 1)).toBeCloseTo(0.92 * 80 ** 2, 9)
    expect(covarianceOf(joint, 2, 0)).toBeCloseTo((0.1 + 0.5 * 0.92) * 80 ** 2, 9)
    expect(covarianceOf(joint, 2, 2)).toBeCloseTo((0.1 + 0.46) ** 2 * 80 ** 2 + 0.25 * 60 ** 2 + 40 ** 2, 9)
  })
  it('of two: mean and variance of the other given one, with the tape’s error', () => {
    const joint = two()
    joint.observe([[1, 1]], 1100, 12)
    const variance = 0.92 ** 2 * 80 ** 2 + 60 ** 2 + 12 ** 2
    const gain = (0.92 * 80 ** 2) / variance
    expect(joint.mean[0]).toBeCloseTo(800 + gain * (1100 - 1002), 9)
    expect(covarianceOf(joint, 0, 0)).toBeCloseTo(80 ** 2 - gain * 0.92 * 80 ** 2, 9)
    expect(joint.logEvidence).toBeCloseTo(-((1100 - 1002) ** 2) / variance / 2 - Math.log(2 * Math.PI * variance) / 2, 9)
  })
  it('of three, two of them known exactly: the regression on both', () => {
    const joint = three()
    joint.observe([[0, 1]], 850, 0)
    joint.observe([[1, 1]], 1000, 0)
    expect(joint.mean[2]).toBeCloseTo(10 + 0.1 * 850 + 0.5 * 1000, 6)
    expect(joint.sdOf(2)).toBeCloseTo(40, 6)
    expect(joint.sdOf(0)).toBeCloseTo(0, 6)
  })
  it('of three, the last known: the first by the closed form of its covariance', () => {
    const joint = three()
    const [c02, v2] = [covarianceOf(joint, 0, 2), covarianceOf(joint, 2, 2)]
    const m2 = joint.mean[2] ?? 0
    joint.observe([[2, 1]], m2 + 50, 0)
    expect(joint.mean[0]).toBeCloseTo(800 + (c02 / v2) * 50, 9)
    expect(joint.sdOf(0)).toBeCloseTo(Math.sqrt(80 ** 2 - c02 ** 2 / v2), 9)
  })
  it('the order of observing changes nothing', () => {
    const [one, other] = [three(), three()]
    const seen = [
      [0, 870],
      [2, 590],
      [1, 1010]
    ] as const
    for (const [i, mm] of seen) one.observe([[i, 1]], mm, 12)
    for (const [i, mm] of [...seen].reverse()) other.observe([[i, 1]], mm, 12)
    for (const i of [0, 1, 2]) expect(one.mean[i]).toBeCloseTo(other.mean[i] ?? 0, 6)
    for (const [i, variance] of one.covariance.entries()) expect(variance).toBeCloseTo(other.covariance[i] ?? 0, 6)
    expect(one.logEvidence).toBeCloseTo(other.logEvidence, 6)
  })
  it('is drawn by a triangle that gives its covariance back', () => {
    const joint = three()
    const lower = choleskyOf(joint, [2, 0, 1])
    for (const [j, one] of [2, 0, 1].entries())
      for (const [k, other] of [2, 0, 1].entries()) {
        let sum = 0
        for (let m = 0; m < 3; m++) sum += (lower[j * 3 + m] ?? 0) * (lower[k * 3 + m] ?? 0)
        expect(sum).toBeCloseTo(covarianceOf(joint, one, other), 6)
      }
  })
  it('two beliefs as one: weighed by prior and evidence, what they differ by is doubt', () => {
    const at = (mm: number) => JointNormal.fromLines([{ at: mm, from: [], sd: 10 }])
    const even = JointNormal.mixed([
      { belief: at(100), prior: 0.5 },
      { belief: at(140), prior: 0.5 }
    ])
    expect(even.mean[0]).toBeCloseTo(120, 9)
    expect(even.sdOf(0)).toBeCloseTo(Math.hypot(10, 20), 9)
    const [one, other] = [at(100), at(140)]
    one.observe([[0, 1]], 138, 5)
    other.observe([[0, 1]], 138, 5)
    const seen = JointNormal.mixed([
      { belief: one, prior: 0.5 },
      { belief: other, prior: 0.5 }
    ])
    expect(Math.abs((seen.mean[0] ?? 0) - (other.mean[0] ?? 0))).toBeLessThan(1)
  })
})

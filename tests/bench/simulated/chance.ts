/** Chance, the same for the same seed, and the shapes that it takes. */
export type Random = () => number

export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x9e3779b9) >>> 0
    let t = state ^ (state >>> 16)
    t = Math.imul(t, 0x21f0aaad)
    t ^= t >>> 15
    t = Math.imul(t, 0x735a2d97)
    return ((t ^ (t >>> 15)) >>> 0) / 4294967296
  }
}

export const normal = (random: Random, mean = 0, sd = 1): number =>
  mean + sd * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())

/** Student's t with so many degrees of freedom, scaled to an sd of one: some are far off. */
export function heavy(random: Random, freedom: number): number {
  let chi = 0
  for (let i = 0; i < freedom; i++) chi += normal(random) ** 2
  return normal(random) / Math.sqrt(chi / freedom) / Math.sqrt(freedom / (freedom - 2))
}

export const chance = (random: Random, share: number): boolean => random() < share
/** Never below zero; `share` is about the sd as a share of the middle. */
export const about = (random: Random, middle: number, share: number): number => Math.max(0, middle * Math.exp(normal(random, 0, share)))

/** One of several, by their weights. */
export function oneOf<T extends string>(random: Random, weights: Readonly<Record<T, number>>): T {
  const all = Object.entries(weights) as [T, number][]
  let left = random() * all.reduce((sum, [, weight]) => sum + weight, 0)
  for (const [value, weight] of all) {
    left -= weight
    if (left < 0) return value
  }
  return (all.at(-1) as [T, number])[0]
}

export type Figures = Record<string, number>

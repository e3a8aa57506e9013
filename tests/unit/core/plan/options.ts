/** Small options for the planner's own tests: one line, one job. All mm. */
import type { Line, Option } from '../../../../core/alterations/row.ts'

/** A line that moves these points by so much a mm, up to a cap; over so many mm of girth a mm of offset. */
export const line = (effects: Line['effects'], capMm: number, mmPerOffset = 2): Line => ({
  point: 'waist',
  effects,
  capMm,
  because: { code: 'limit.sides', values: {} },
  seams: [{ seam: 'side', mmPerOffset }]
})

export const option = (id: Option['id'], lines: Line[], more: Partial<Option> = {}): Option => ({
  key: `${id}/less`,
  id,
  direction: 'less',
  lines,
  smoothMm: 60,
  shared: [],
  opens: [],
  setupMinutes: 10,
  per25Minutes: 0,
  level: 2,
  penaltyMinutes: 0,
  excludes: [],
  rescue: false,
  ...more
})

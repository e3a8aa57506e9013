/** A garment set beside what is wanted, point by point, for the planner's own tests. All mm. */
import type { PointId } from '../../../../core/ids/points.ts'
import { type Gap, overshoot } from '../../../../core/wearer/gaps.ts'

/** A told figure beside a band, within which it is to stay as it is. */
export const besideBand = (point: PointId, mm: number, least: number, most: number, more: Partial<Gap> = {}): Gap => ({
  ...{
    point,
    garmentMm: mm,
    from: 'own',
    sdMm: 5,
    band: { least, ideal: (least + most) / 2, most },
    aimMm: Math.min(Math.max(mm, least), most),
    edgeMarginMm: 0
  },
  ...{ bandSdMm: 0, gapMm: overshoot(mm, least, most), judged: true, because: [] },
  ...more
})

/** Which caution belongs to which act on which cloth; each is said once, on the first step that needs it. They defer to maker, label and local rules. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { ClothSetup } from './cloth-setup.ts'
import type { Act } from './step.ts'

/** `caution.<id>`, by what the hands do. */
export function cautionsOf(act: Act, garment: Garment, cloth: ClothSetup): string[] {
  switch (act) {
    case 'pin':
      return cloth.clips ? [] : ['pins']
    case 'baste':
    case 'hand':
      return ['needles', ...(garment.use === 'child' ? ['child'] : [])]
    case 'sew':
      return ['needles', ...(cloth.clips ? ['holes-stay'] : []), ...(garment.use === 'child' ? ['child'] : [])]
    case 'unpick':
      return ['seam-ripper', ...(cloth.clips ? ['holes-stay'] : [])]
    case 'cut':
      return ['knife']
    case 'press':
      return cloth.clips ? ['iron-none'] : ['iron', `iron-${cloth.press}`, 'old-buttons']
    case 'wash':
      return ['label-first']
    default:
      return []
  }
}

/** What an act always takes, on which cloth. */
import type { ClothSetup } from './cloth-setup.ts'
import type { Act } from './step.ts'
import type { Thing } from './things.ts'

export function usesOf(act: Act, cloth: ClothSetup): Thing[] {
  switch (act) {
    case 'look':
    case 'try':
    case 'fill':
    case 'wash':
      return []
    case 'pin':
      return ['tape', cloth.clips ? 'clips' : 'pins']
    case 'mark':
      return ['tape', 'ruler', 'chalk']
    case 'unpick':
      return ['seam-ripper']
    case 'baste':
      return ['hand-needle', 'basting-thread']
    case 'hand':
      return ['hand-needle', 'thread']
    case 'sew':
      return ['machine', 'machine-needle', 'thread']
    case 'cut':
      return ['scissors', 'ruler']
    case 'press':
      return cloth.clips ? [] : ['iron', 'press-cloth']
  }
}

import type { ReckonOptions } from '../../core/reckon.ts'
import { type FindAnswer, type FindTold, findAnswer } from '../../core/records/find-answer.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'

/** The answer of a find. Where working it out fails there is none: it is then shown as it was when kept, and is not asked again. */
export function answerOrNone(find: FindTold, wardrobe: Wardrobe, options: ReckonOptions): FindAnswer {
  try {
    return findAnswer(find, wardrobe, options)
  } catch (error) {
    console.error(error)
    return { id: find.id, kind: null, brief: null, jobs: [], answer: null }
  }
}

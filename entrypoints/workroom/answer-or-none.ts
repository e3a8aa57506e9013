import { withLanguages } from '../../core/reading/text/lexicons.ts'
import type { ReckonOptions } from '../../core/reckon.ts'
import { type FindAnswer, type FindTold, findAnswer } from '../../core/records/find-answer.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'

/**
 * The answer of a find, once the phrases of its language are here. Where working it out fails there is none: it is then shown as it was when kept, and
 * is not asked again.
 */
export async function answerOrNone(find: FindTold, wardrobe: Wardrobe, options: ReckonOptions): Promise<FindAnswer> {
  try {
    return await withLanguages(() => findAnswer(find, wardrobe, options))
  } catch (error) {
    console.error(error)
    return { id: find.id, kind: null, brief: null, jobs: [], answer: null }
  }
}

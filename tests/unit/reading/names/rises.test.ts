/** Front and back rise told in one name. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('one name of two', () => {
  test.each([
    ['en', 'front/back rise 11/15', ['frontRise+backRise: front/back rise']],
    ['en', 'front & back rise 11/15', ['frontRise+backRise: front & back rise']],
    ['en', 'front + back rise 11/15', ['frontRise+backRise: front + back rise']],
    ['en', 'back and front rise 11/15', ['backRise+frontRise: back and front rise']],
    ['en', 'rise (front & back) 11/15', ['frontRise+backRise: rise (front & back']],
    ['en', 'rise [back/front] 11/15', ['backRise+frontRise: rise [back/front']],
    ['en', 'rise front/back 11/15', ['frontRise+backRise: rise front/back']],
    ['en', 'front rise/back 11/15', ['frontRise+backRise: front rise/back']],
    ['en', 'front rise and back 11/15', ['frontRise+backRise: front rise and back']],
    // no joint, or twice the same
    ['en', 'front, back rise 11/15', ['backRise: back rise']],
    ['en', 'rise (front, back) 11/15', ['rise: rise']],
    ['en', 'back/back rise 11/15', ['backRise: back rise']],
    ['en', 'rise front/front 11/15', ['frontRise: rise front']],
    ['en', 'lovely/back rise 11/15', ['backRise: back rise']],
    ['en', 'rise/back 11/15', ['rise: rise', 'back: back']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

/** Whatever figures come in, the planner answers: it throws only on its own mistakes. `tests/bench/fuzz-requests.ts` asks more of them. */
import { expect, it } from 'vitest'
import { reckon, whatWouldChange } from '../../core/reckon.ts'
import { absurdIn } from './absurd.ts'
import { faultsOf, oddRequest } from './odd-request.ts'
import { randomFrom } from './requests.ts'

const SEED = 31_337
const REQUESTS = 400

it(`never throws, every figure it gives is one, and every sentence could be said (seed ${SEED})`, { timeout: 120_000 }, () => {
  const random = randomFrom(SEED)
  let sentences = 0
  for (let i = 0; i < REQUESTS; i++) {
    const request = oddRequest(random, i)
    const reckoning = reckon(request)
    expect(faultsOf(reckoning)).toEqual([])
    expect(absurdIn(whatWouldChange(request))).toEqual([])
    sentences += reckoning.because.length
  }
  expect(sentences).toBeGreaterThan(REQUESTS)
})

it.each(['It is NaN too big.', 'Take in {amount}.', 'It costs undefined.', '1e+21 cm', 'a  gap', '−0 cm', ''])(
  '“%s” would be seen',
  (text) => {
    expect(absurdIn({ because: [{ text }] })).toEqual([text])
  }
)

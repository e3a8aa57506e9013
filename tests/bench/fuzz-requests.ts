/**
 * Asks the planner what nobody would ask and what many might, in turn: nothing may throw, every figure is one, every sentence could be said.
 * `npx tsx tests/bench/fuzz-requests.ts`; REQUESTS=100000 without chances, WHOLE=1000 with them, SEED=7.
 */
import { reckon, whatWouldChange } from '../../core/reckon.ts'
import { loadWords } from '../../core/words/languages.ts'
import { absurdIn } from '../law/absurd.ts'
import { faultsOf, oddRequest } from '../law/odd-request.ts'
import { randomFrom, requestFrom } from '../law/requests.ts'

const REQUESTS = Number(process.env.REQUESTS ?? 100_000)
const WHOLE = Number(process.env.WHOLE ?? 1_000)
const SEED = Number(process.env.SEED ?? 20261130)
/** What takes longer, ms, hangs as far as a person can tell. */
const HANGS_MS = 20_000
/** What would change is worked out for each so many. */
const EACH = 20
const SHOWN = 20

const random = randomFrom(SEED)
let wrong = 0
let slowest = 0
const tell = (what: string, request: unknown): void => {
  wrong++
  if (wrong <= SHOWN) console.log(`wrong: ${what} in ${JSON.stringify(request)}`)
}

function ask(count: number, outlook: boolean): void {
  for (let n = 0; n < count; n++) {
    const request = n % 2 === 0 ? oddRequest(random, n / 2) : requestFrom(random)
    const wording = { units: n % 3 === 0 ? ('in' as const) : ('cm' as const), language: n % 4 < 2 ? 'en' : 'de' }
    const began = performance.now()
    try {
      for (const fault of faultsOf(reckon(request, { outlook, ...wording }))) tell(fault, request)
      if (n % EACH < 2) for (const fault of absurdIn(whatWouldChange(request, wording))) tell(fault, request)
    } catch (error) {
      tell(String(error), request)
    }
    const took = performance.now() - began
    slowest = Math.max(slowest, took)
    if (took > HANGS_MS) tell(`${Math.round(took)} ms`, request)
  }
}

await loadWords('de')
ask(REQUESTS, false)
console.log(`seed ${SEED}: ${REQUESTS} requests without chances, ${wrong} wrong, the slowest ${Math.round(slowest)} ms`)
const before = wrong
slowest = 0
ask(WHOLE, true)
console.log(`seed ${SEED}: ${WHOLE} requests with chances, ${wrong - before} wrong, the slowest ${Math.round(slowest)} ms`)
if (wrong > 0) process.exitCode = 1

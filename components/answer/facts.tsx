/** Work, cost and chance: the figure first, then the same as a small drawing. */
import { listed } from '../../core/words/say.ts'
import { type Judged, whyLow } from '../judged.ts'
import { ChanceTicks, sameInTens } from '../tape/chance-ticks.tsx'
import { LevelStitches } from '../tape/level-stitches.tsx'
import { useWords, type Words } from '../words.tsx'
import { costOf, planOf } from './cost.ts'

export function chanceOf(judged: Judged): number | null {
  const plan = planOf(judged)
  return plan === null ? (judged.reckoning?.chance ?? null) : plan.chance
}

/** The chance if all that is not told lies as it must, by the same hands; null: there is nothing it hangs on, or it makes no difference in tens. */
export function chanceIfOf(judged: Judged): number | null {
  const { reckoning } = judged
  const chance = chanceOf(judged)
  if (reckoning === null || chance === null || reckoning.chanceIf === null) return null
  return isOfOtherHands(judged) || sameInTens(chance, reckoning.chanceIf) ? null : reckoning.chanceIf
}

/** Is the plan that is looked at done by others than the advised one: a tailor, or the person? */
function isOfOtherHands(judged: Judged): boolean {
  const plan = planOf(judged)
  const advised = judged.reckoning?.plans[0]
  return plan !== null && advised !== undefined && (plan.aim === 'tailor') !== (advised.aim === 'tailor')
}

/** Three facts in one ruled line. What is to be left has no work to it: its chance is that of doing nothing. */
export function Facts({ judged, short, onEnterPrice }: { judged: Judged; short: boolean; onEnterPrice?: () => void }) {
  const words = useWords()
  const { t, inner } = words
  // what can't be judged, or is to be left, has no work to it
  const leave = judged.reckoning?.verdict === 'leave-it' || judged.reckoning?.verdict === 'too-little-told'
  const cost = costOf(judged, words)
  const low = isOfOtherHands(judged) ? null : whyLow(judged)
  return (
    <>
      <dl class={leave ? 'facts two' : 'facts'}>
        {!leave && (
          <div>
            <dt>{t('facts.work')}</dt>
            <Work judged={judged} />
          </div>
        )}
        <div>
          <dt>{t('facts.cost')}</dt>
          <dd>
            {cost.figure}
            {cost.note !== '' && <small>{cost.note}</small>}
            {cost.isUnpriced === true && onEnterPrice !== undefined && (
              <button type="button" class="btn bare" onClick={onEnterPrice}>
                {t('ask.enter-own')}
                <span class="sr"> {inner('tailor.enter')}</span>
              </button>
            )}
          </dd>
        </div>
        <div>
          <dt>{t('facts.chance-name')}</dt>
          <dd>
            <Chance judged={judged} short={short} why={short ? (low?.most ?? null) : null} />
          </dd>
        </div>
      </dl>
      {!short && low !== null && <p class="note why-low">{low.sentence}</p>}
    </>
  )
}

/** Mending and care where there is nothing else to do, minutes: it is no alteration, but it is work, and its cost is counted. */
function mendingOf({ reckoning }: Judged): number | null {
  const minutes = reckoning?.because.find(({ code }) => code === 'verdict.mending')?.values.minutes
  return typeof minutes === 'number' ? minutes : null
}

function Work({ judged }: { judged: Judged }) {
  const { t } = useWords()
  const plan = planOf(judged)
  if (plan === null || plan.alterations.length === 0) {
    const mending = mendingOf(judged)
    if (mending !== null)
      return (
        <dd>
          {t('facts.minutes', { minutes: mending })}
          <small>{t('facts.mending')}</small>
        </dd>
      )
    return <dd>{t(judged.reckoning?.verdict === 'comes-close' ? 'facts.no-work-helps' : 'facts.no-work')}</dd>
  }
  const byTailor = plan.aim === 'tailor'
  return (
    <dd>
      {byTailor ? t('facts.by-tailor') : t('facts.minutes', { minutes: plan.minutes })}
      <LevelStitches level={plan.level} />
      <small>{t('facts.level-of', { level: plan.level })}</small>
    </dd>
  )
}

/** More than these are not named again: they stand right above. */
const MOST_NAMED = { short: 1, whole: 2 }
/** What has to be so, by its points' names where they are few. */
function ifSo({ reckoning }: Judged, chance: number, { t, inner, wording }: Words, most: number): string {
  const points = (reckoning?.conditions ?? []).map(({ point }) => point)
  if (points.length > most || points.includes(undefined)) return t('facts.chance-if', { chance })
  const names = points.map((point) => inner('ask.what', { point: point ?? '' }))
  return t('facts.chance-if-points', { chance, points: listed(names, wording), n: names.length })
}

/** The chance, and beside it the chance if so, or else `why` it is low. */
function Chance({ judged, short, why }: { judged: Judged; short: boolean; why: string | null }) {
  const words = useWords()
  const { t } = words
  const chance = chanceOf(judged)
  if (chance === null) return <>{t(judged.settled ? 'facts.chance.none' : 'facts.chance.pending')}</>
  const chanceIf = chanceIfOf(judged)
  return (
    <>
      <span>{t('facts.chance', { chance })}</span>
      <ChanceTicks chance={chance} chanceIf={chanceIf} />
      {chanceIf !== null ? (
        <small>{ifSo(judged, chanceIf, words, short ? MOST_NAMED.short : MOST_NAMED.whole)}</small>
      ) : (
        why !== null && <small>{why}</small>
      )}
    </>
  )
}

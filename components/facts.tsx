/** Hardest step, time, money and chance: figures first, then the same as a small drawing. */
import { chosenPlan, type Judged, moneyReasons } from './judged.ts'
import { ChanceTicks, sameInTens } from './tape/chance-ticks.tsx'
import { LevelStitches } from './tape/level-stitches.tsx'
import { asSentences, useWords } from './words.tsx'

/** Nothing to do, or a plan: what the facts are about. */
const planOf = (judged: Judged) => {
  const { reckoning } = judged
  return reckoning === null || reckoning.verdict === 'wears-as-is' || reckoning.verdict === 'too-little-told' ? null : chosenPlan(judged)
}

export function chanceOf(judged: Judged): number | null {
  const plan = planOf(judged)
  return plan === null ? (judged.reckoning?.chance ?? null) : plan.chance
}

/** The chance if all that is not told lies as it must, by the same hands; null: there is nothing it hangs on, or it makes no difference in tens. */
export function chanceIfOf(judged: Judged): number | null {
  const { reckoning } = judged
  const chance = chanceOf(judged)
  if (reckoning === null || chance === null || reckoning.chanceIf === null) return null
  const plan = planOf(judged)
  const [advised] = reckoning.plans
  const otherHands = plan !== null && advised !== undefined && (plan.aim === 'tailor') !== (advised.aim === 'tailor')
  return otherHands || sameInTens(chance, reckoning.chanceIf) ? null : reckoning.chanceIf
}

/** The chance, and beside it the chance if so. */
function Chance({ judged }: { judged: Judged }) {
  const { t } = useWords()
  const chance = chanceOf(judged)
  if (chance === null) return <>{t(judged.settled ? 'facts.chance.none' : 'facts.chance.pending')}</>
  const chanceIf = chanceIfOf(judged)
  return (
    <>
      <span>{t(chanceIf === null ? 'facts.chance' : 'facts.chance-now', { chance })}</span>
      {chanceIf !== null && <small>{t('facts.chance-if', { chance: chanceIf })}</small>}
      <ChanceTicks chance={chance} chanceIf={chanceIf} />
    </>
  )
}

export function Facts({ judged }: { judged: Judged }) {
  const { t } = useWords()
  const plan = planOf(judged)
  const worth = judged.reckoning?.worth ?? null
  const money = judged.reckoning === null ? [] : moneyReasons(judged.reckoning)
  return (
    <dl class="facts">
      {plan !== null && plan.level > 0 && (
        <>
          <dt>{t('facts.hardest')}</dt>
          <dd>
            {t('facts.level-name', { level: plan.level })} <LevelStitches level={plan.level} />
            <small>{t(plan.aim === 'tailor' ? 'facts.level-tailor' : 'facts.level-own', { level: plan.level, own: judged.level })}</small>
          </dd>
        </>
      )}
      {plan !== null && plan.alterations.length > 0 && (
        <>
          <dt>{t('facts.time')}</dt>
          <dd>{plan.aim === 'tailor' ? t('facts.handed-over') : t('facts.minutes', { minutes: plan.minutes })}</dd>
        </>
      )}
      {worth !== null && (
        <>
          <dt>{t('facts.money')}</dt>
          <dd>
            {t('facts.in-all', { spend: worth.spend })}
            {worth.against !== null && <small>{t('facts.worth', { against: worth.against })}</small>}
            {worth.risk !== null && <small>{t(worth.riskOrAltered ? 'facts.risk-or-altered' : 'facts.risk', { risk: worth.risk })}</small>}
          </dd>
        </>
      )}
      {worth === null && money.length > 0 && (
        <>
          <dt>{t('facts.money')}</dt>
          <dd>
            {t('facts.no-price')} <small>{asSentences(money)}</small>
          </dd>
        </>
      )}
      <dt>{t('facts.chance-name')}</dt>
      <dd>
        <Chance judged={judged} />
      </dd>
    </dl>
  )
}

/** The same four in one ruled line. */
export function FourFacts({ judged }: { judged: Judged }) {
  const { t } = useWords()
  const plan = planOf(judged)
  const worth = judged.reckoning?.worth ?? null
  return (
    <dl class="four">
      <div>
        <dt>{t('facts.hardest-short')}</dt>
        <dd>
          {t(plan === null || plan.level === 0 ? 'facts.nothing' : 'facts.level', { level: plan?.level ?? 0 })}
          {plan !== null && plan.level > 0 && <LevelStitches level={plan.level} />}
        </dd>
      </div>
      <div>
        <dt>{t('facts.time')}</dt>
        <dd>
          {plan === null || plan.alterations.length === 0
            ? t('facts.nothing')
            : plan.aim === 'tailor'
              ? t('facts.handed-over')
              : t('facts.minutes', { minutes: plan.minutes })}
        </dd>
      </div>
      <div>
        <dt>{t('facts.in-all-name')}</dt>
        <dd>{worth === null ? t('facts.no-price') : t('facts.money-figure', { spend: worth.spend })}</dd>
      </div>
      <div>
        <dt>{t('facts.chance-name')}</dt>
        <dd>
          <Chance judged={judged} />
        </dd>
      </div>
    </dl>
  )
}

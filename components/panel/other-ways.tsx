/** What else would move what is wrong, and why the advised plan does not take it. */
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

export function OtherWays({ judged }: { judged: Judged }) {
  const { t } = useWords()
  const ways = judged.reckoning?.notTaken ?? []
  if (ways.length === 0) return null
  return (
    <details class="part">
      <summary>
        <h2>{t('other-ways.head')}</h2>
      </summary>
      <dl class="ways">
        {ways.map(({ id, direction, point, because }) => (
          <div key={`${id} ${direction}`}>
            <dt>{t('other-ways.way', { alteration: id, point })}</dt>
            <dd>{because.text}</dd>
          </div>
        ))}
      </dl>
    </details>
  )
}

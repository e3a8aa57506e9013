/** What would better the answer: another level, a tailor, a figure, another fit. Never the work of a plan that is not advised. */
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'

const MOST = { short: 2, whole: 6 }

export function WouldFit({ judged, short }: { judged: Judged; short: boolean }) {
  const { t } = useWords()
  const { wouldChange, settled, reckoning } = judged
  const leave = reckoning?.verdict === 'leave-it'
  if (wouldChange.length === 0) return leave && settled ? <p class="note would-fit">{t('answer.nothing-would')}</p> : null
  return (
    <div class="would-fit">
      <h3>{t(leave ? 'answer.would-fit' : 'answer.would-better')}</h3>
      <ul class="bullets">
        {wouldChange.slice(0, short ? MOST.short : MOST.whole).map(({ code, text }) => (
          <li key={`${code} ${text}`}>{text}</li>
        ))}
      </ul>
    </div>
  )
}

/** The work on a garment that was bought: measured on arrival, tried on, sewn from the sheet, finished. */
import { useWords } from '../../words.tsx'
import { Arrival } from './arrival.tsx'
import { Finish } from './finish.tsx'
import { SheetPart } from './sheet-part.tsx'
import { TryOn } from './try-on.tsx'
import type { Paper, WorkActions, WorkShown } from './work-shown.ts'

export interface WorkPageProps extends WorkActions {
  work: WorkShown
  paper: Paper
  /** Today, an ISO date. */
  today: string
}

export function WorkPage(props: WorkPageProps) {
  const { t } = useWords()
  const { work, paper } = props
  return (
    <article class="wk" aria-labelledby="work-title">
      <h1 id="work-title" class="wk-title">
        {t('work.title', { title: work.title || t('wishlist.untitled') })}
      </h1>
      <Arrival work={work} onArrived={props.onArrived} onForget={props.onForget} />
      <TryOn work={work} onTried={props.onTried} onUntried={props.onUntried} />
      <SheetPart work={work} paper={paper} onBegin={props.onBegin} onTick={props.onTick} onNote={props.onNote} onPaper={props.onPaper} />
      {work.sheet !== null && (
        <Finish work={work} today={props.today} onFinish={props.onFinish} onPace={props.onPace} onSellers={props.onSellers} />
      )}
    </article>
  )
}

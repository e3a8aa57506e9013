/** The work sheet on screen and on paper: what to have ready, the steps to tick off, the tailor's docket, the templates at true scale. */
import { type ComponentChild, h } from 'preact'
import { useState } from 'preact/hooks'
import type { Shape } from '../../../core/worksheet/drawing/shapes.ts'
import { sketchOf } from '../../../core/worksheet/drawing/sketches.ts'
import { viewsOf } from '../../../core/worksheet/outline/outline-geometry.ts'
import type { Step, Worksheet } from '../../../core/worksheet/worksheet.ts'
import { MovesTable } from '../../outline/moves-table.tsx'
import { Outline } from '../../outline/outline.tsx'
import { Pick } from '../../pick.tsx'
import { TypedText } from '../../typed-text.tsx'
import { useWords } from '../../words.tsx'
import { Docket } from './docket.tsx'
import { printed } from './print.ts'
import type { Paper, SheetShown, WorkActions, WorkShown } from './work-shown.ts'

type Props = { work: WorkShown; paper: Paper } & Pick_<'onBegin' | 'onTick' | 'onNote' | 'onPaper'>
type Pick_<K extends keyof WorkActions> = { [name in K]: WorkActions[name] }

export function SheetPart({ work, paper, onBegin, onTick, onNote, onPaper }: Props) {
  const { t } = useWords()
  const { sheet } = work
  return (
    <section class="part wk-sheet" aria-labelledby="sheet-head">
      <h2 id="sheet-head">{t('sheet.head')}</h2>
      {sheet === null ? (
        <Begin work={work} onBegin={onBegin} />
      ) : sheet.sheet.refused !== null ? (
        <p>{sheet.sheet.refused.text}</p>
      ) : (
        <>
          {sheet.isStale && (
            <div class="wk-stale noprint">
              <p>{t('sheet.anew.why')}</p>
              <button type="button" class="btn small" onClick={onBegin}>
                {t('sheet.anew')}
              </button>
            </div>
          )}
          <p class="note">{t('sheet.level', { level: sheet.level, minutes: sheet.minutes })}</p>
          <Moves work={work} sheet={sheet} />
          <Gather gather={sheet.sheet.gather} />
          <Steps work={work} steps={sheet.sheet.steps} onTick={onTick} onNote={onNote} />
          {sheet.sheet.docket !== null && <Docket docket={sheet.sheet.docket} title={work.title} wearer={work.wearer} />}
          <Templates sheet={sheet} paper={paper} />
          <div class="row noprint wk-print">
            <Pick
              label={t('sheet.paper')}
              options={(['A4', 'Letter'] as const).map((value) => ({ value, label: t(`sheet.paper.${value}`) }))}
              value={paper}
              onPick={onPaper}
            />
            <button type="button" class="btn main" onClick={() => printed('sheet', paper)}>
              {t('sheet.print')}
            </button>
            {sheet.templates.pages.length > 0 && (
              <button type="button" class="btn" onClick={() => printed('templates', paper)}>
                {t('sheet.print.templates', { n: sheet.templates.pages.length })}
              </button>
            )}
            {sheet.sheet.docket !== null && (
              <button type="button" class="btn" onClick={() => printed('docket', paper)}>
                {t('sheet.print.docket')}
              </button>
            )}
          </div>
        </>
      )}
    </section>
  )
}

function Begin({ work, onBegin }: { work: WorkShown } & Pick_<'onBegin'>) {
  const { t } = useWords()
  if (work.reckoning.plans.length === 0) return <p>{t('sheet.nothing-to-do')}</p>
  return (
    <>
      <p class="note">{t('sheet.make.why')}</p>
      <button type="button" class="btn main" onClick={onBegin}>
        {t('sheet.make')}
      </button>
    </>
  )
}

/** The garment to scale with the lines that move, front and back, and the same as a table. */
function Moves({ work: { kind }, sheet: { plan, points, made } }: { work: WorkShown; sheet: SheetShown }) {
  if (plan.alterations.length === 0) return null
  return (
    <div class="wk-moves">
      {viewsOf(plan.alterations).map((view) => (
        <Outline key={view} kind={kind} points={points} plan={plan} made={made} view={view} size="small" />
      ))}
      <MovesTable plan={plan} points={points} />
    </div>
  )
}

function Gather({ gather: { tools, notions, substitutes } }: Pick<Worksheet, 'gather'>) {
  const { t } = useWords()
  return (
    <div class="wk-gather">
      <h3>{t('sheet.gather')}</h3>
      <ul>
        {[...tools, ...notions].map(({ thing, text }) => (
          <li key={thing}>{text}</li>
        ))}
      </ul>
      {substitutes.length > 0 && (
        <details class="fold">
          <summary>{t('sheet.instead')}</summary>
          <ul class="bullets">
            {substitutes.map(({ thing, text }) => (
              <li key={thing}>{text}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}

function Steps({ work, steps, onTick, onNote }: { work: WorkShown; steps: readonly Step[] } & Pick_<'onTick' | 'onNote'>) {
  const { t } = useWords()
  const parts = [...new Set(steps.map(({ part }) => part))]
  const done = steps.filter(({ id }) => work.ticked[id] !== undefined).length
  return (
    <>
      <p role="status" class="noprint">
        {t('sheet.done-of', { done, all: steps.length })}
      </p>
      {parts.map((part) => (
        <div key={part} class="wk-part">
          <h3>{t(`sheet.part.${part}`)}</h3>
          <ol class="wk-steps">
            {steps.map((step, i) =>
              step.part === part ? <StepRow key={step.id} step={step} n={i + 1} work={work} onTick={onTick} onNote={onNote} /> : null
            )}
          </ol>
        </div>
      ))}
    </>
  )
}

function StepRow({ step, n, work, onTick, onNote }: { step: Step; n: number; work: WorkShown } & Pick_<'onTick' | 'onNote'>) {
  const { t, length, wording } = useWords()
  const sketch = sketchOf(step.does.code, wording)
  const isDone = work.ticked[step.id] !== undefined
  const note = work.notes[step.id] ?? ''
  const [open, setOpen] = useState(note !== '')
  return (
    <li value={n} class={step.tryOn ? 'wk-step try' : step.irreversible ? 'wk-step cut' : 'wk-step'}>
      <label class="wk-tick">
        <input type="checkbox" checked={isDone} onChange={(event) => onTick(step.id, event.currentTarget.checked)} />
        <span class="sr">{t('sheet.step', { n })}</span>
        <span class="wk-n" aria-hidden="true">
          {n}
        </span>
        <span>
          {step.does.text}
          {step.tryOn && <b class="wk-tag">{t('sheet.try-on')}</b>}
          {step.irreversible && <b class="wk-tag">{t('sheet.no-way-back')}</b>}
        </span>
      </label>
      {step.figures.length > 0 && (
        <dl class="wk-figures">
          {step.figures.map(({ name, mm }) => (
            <div key={`${name} ${mm}`}>
              <dt>{name}</dt>
              <dd class="n">{length(mm)}</dd>
            </div>
          ))}
        </dl>
      )}
      {sketch !== null && <div class="wk-sketch">{nodeOf(sketch.tree)}</div>}
      {step.cautions.map((text) => (
        <p key={text} class="wk-mind">
          {text}
        </p>
      ))}
      {open ? (
        <div class={note === '' ? 'noprint' : undefined}>
          <TypedText
            label={t('sheet.note', { n })}
            value={note}
            rows={2}
            onTyped={() => undefined}
            onDone={(text) => onNote(step.id, text)}
          />
        </div>
      ) : (
        <button type="button" class="btn bare small noprint" onClick={() => setOpen(true)}>
          {t('sheet.note.add')}
          <span class="sr"> {n}</span>
        </button>
      )}
    </li>
  )
}

function Templates({ sheet: { templates }, paper }: { sheet: SheetShown; paper: Paper }) {
  const { t } = useWords()
  if (templates.pages.length === 0 && templates.without.length === 0) return null
  return (
    <div class="wk-templates" data-paper={paper}>
      <h3 class="noprint">{t('sheet.templates')}</h3>
      {templates.pages.length > 0 && <p class="note noprint">{t('sheet.templates.how')}</p>}
      <div class="wk-pages">
        {templates.pages.map((page) => (
          <figure key={page.number} class="wk-paper">
            {nodeOf(page.tree)}
            <figcaption class="note noprint">{t('sheet.templates.page', { n: page.number, of: page.of })}</figcaption>
          </figure>
        ))}
      </div>
      {templates.without.map(({ alteration, because }) => (
        <p key={alteration} class="note noprint">
          {t('sheet.templates.without', { alteration, because: because.text })}
        </p>
      ))}
    </div>
  )
}

/** A drawing as nodes of the page: numbers and words alone, never markup. */
function nodeOf({ tag, attributes, text, children = [] }: Shape, place = 0): ComponentChild {
  return h(tag, { ...attributes, key: place }, text, ...children.map(nodeOf))
}

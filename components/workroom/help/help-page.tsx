/** The help: how it works, how to read what is shown, how to measure, and the words of the trade. Its drawings are those of the pages themselves. */
import type { ComponentChildren } from 'preact'
import { useEffect } from 'preact/hooks'
import { VERDICTS } from '../../../core/ids/verdicts.ts'
import { INCH_MM } from '../../../core/length.ts'
import { TERMS } from '../../../core/words/terms.ts'
import { HELP_TOPICS, HelpLink, type HelpTopic } from '../../help-link.tsx'
import { HouseMark } from '../../house-mark.tsx'
import { Outline } from '../../outline/outline.tsx'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { Tape } from '../../tape/tape.tsx'
import { TapeKey } from '../../tape/tape-key.tsx'
import { TapeLine } from '../../tape/tape-line.tsx'
import type { PointShown } from '../../tape/tape-words.ts'
import { VerdictMark } from '../../tape/verdict-mark.tsx'
import { useWords } from '../../words.tsx'
import { BodyFigure } from '../body/body-figure.tsx'
import { Headline } from '../frame.tsx'
import { LEVELS } from '../settings/sewing.tsx'
import { GarmentMeasures, OwnMeasures } from './how-to-measure.tsx'

export interface HelpPageProps {
  /** The part to go to; null: the beginning. */
  topic: string | null
}

export function HelpPage({ topic }: HelpPageProps) {
  const { t } = useWords()
  useEffect(() => {
    if (topic === null) return
    const head = document.getElementById(`help-${topic}`)
    head?.scrollIntoView?.({ block: 'start' })
    head?.focus({ preventScroll: true })
  }, [topic])
  return (
    <>
      <Headline title={t('help.title')} />
      <nav class="wr-help-parts" aria-label={t('help.parts')}>
        {HELP_TOPICS.map((one) => (
          <HelpLink key={one} topic={one} />
        ))}
      </nav>
      <Part topic="steps">
        <Steps />
      </Part>
      <Part topic="tape">
        <p>{t('help.tape.what')}</p>
        <div class="wr-help-tape">
          <Tape shown={SAMPLE_WAIST} afterMm={29.5 * INCH_MM} />
        </div>
        <TapeKey />
        <p class="note">{t('help.figures')}</p>
      </Part>
      <Part topic="answers">
        <dl class="wr-help-list">
          {VERDICTS.map((verdict) => (
            <div key={verdict}>
              <dt class="wr-verdict">
                <VerdictMark verdict={verdict} />
                <span>{t('wishlist.verdict', { verdict })}</span>
              </dt>
              <dd>{t(`help.answer.${verdict}`)}</dd>
            </div>
          ))}
        </dl>
      </Part>
      <Part topic="levels">
        <dl class="wr-help-list">
          {LEVELS.map((level) => (
            <div key={level}>
              <dt class="wr-level">
                <b>{t('person.level.is', { level })}</b>
                <LevelStitches level={level} />
              </dt>
              <dd>{t(`person.level.what.${level}`)}</dd>
            </div>
          ))}
        </dl>
      </Part>
      <Part topic="measure-a-garment">
        <GarmentMeasures />
      </Part>
      <Part topic="measure-yourself">
        <OwnMeasures />
      </Part>
      <Part topic="words">
        <Glossary />
      </Part>
    </>
  )
}

function Part({ topic, children }: { topic: HelpTopic; children: ComponentChildren }) {
  const { t } = useWords()
  return (
    <section class="part stack wr-help-part" aria-labelledby={`help-${topic}`}>
      <h2 id={`help-${topic}`} tabIndex={-1}>
        {t(`help.link.${topic}`)}
      </h2>
      {children}
    </section>
  )
}

const STEPS = [1, 2, 3, 4, 5] as const

function Steps() {
  const { t } = useWords()
  return (
    <ol class="wr-help-steps">
      {STEPS.map((step) => (
        <li key={step}>
          <span class="wr-number" aria-hidden="true">
            {step}
          </span>
          <div>
            <h3>{t(`help.step.${step}`)}</h3>
            <p>{t(`help.step.${step}.what`)}</p>
          </div>
          <div class="wr-help-picture">
            <StepPicture step={step} />
          </div>
        </li>
      ))}
    </ol>
  )
}

/** What the page in question shows, in small. */
function StepPicture({ step }: { step: (typeof STEPS)[number] }) {
  switch (step) {
    case 1:
      return <BodyFigure side="front" active="waistbandGirth" alone />
    case 2:
      return <HouseMark />
    case 3:
      return <VerdictMark verdict="alters-to-fit" large />
    case 4:
      return <TapeLine shown={{ ...SAMPLE_WAIST, from: 'inferred' }} width={88} />
    case 5:
      return <Outline kind="trousers" points={{}} plan={null} view="front" size="small" />
  }
}

/** Invented: the waist of a pair of trousers, a little too big. */
const SAMPLE_WAIST: PointShown = {
  point: 'waist',
  garmentMm: 32 * INCH_MM,
  from: 'seller',
  sdMm: 10,
  band: { least: 28.75 * INCH_MM, ideal: 29.5 * INCH_MM, most: 30.5 * INCH_MM },
  gapMm: 1.5 * INCH_MM
}

/** In the order of the language's own alphabet. */
function Glossary() {
  const { t, wording } = useWords()
  const collator = new Intl.Collator(wording.language)
  const rows = TERMS.map((term) => ({ term, name: t(`term.${term}`) })).sort((a, b) => collator.compare(a.name, b.name))
  return (
    <dl class="wr-help-words">
      {rows.map(({ term, name }) => (
        <div key={term}>
          <dt>{name}</dt>
          <dd>{t(`term-is.${term}`)}</dd>
        </div>
      ))}
    </dl>
  )
}

/** Help: what can be altered, on which kinds, by how much, how hard and how long, as the reckoning itself has it. */
import { useState } from 'preact/hooks'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { listed, say } from '../../../core/words/say.ts'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { gapKind } from '../../tape/tape-words.ts'
import { useWords, type Words } from '../../words.tsx'
import { Choice, Field } from '../field.tsx'
import { Headline } from '../frame.tsx'
import { ALTERED_KINDS, type JobShown, jobsShown } from './jobs-shown.ts'

const ANY = 'any'
const HEADS = ['job', 'limit', 'level', 'time', 'from'] as const

export function AlterationsPage() {
  const words = useWords()
  const { t } = words
  const [kind, setKind] = useState<GarmentKind | null>(null)
  const [find, setFind] = useState('')
  const jobs = jobsShown(kind).filter((job) => has(job, find, words))
  return (
    <>
      <Headline title={t('jobs.title')} note={t('jobs.note')} />
      <search class="wr-tools">
        <Choice
          label={t('jobs.kind')}
          value={kind ?? ANY}
          options={[
            { value: ANY, label: t('jobs.kind.any') },
            ...ALTERED_KINDS.map((value) => ({ value, label: t('jobs.kind.is', { kind: value }) }))
          ]}
          onChoose={(value) => setKind(GARMENT_KINDS.find((one) => one === value) ?? null)}
        />
        <Field label={t('jobs.find')} type="search" typed={find} onTyped={setFind} />
      </search>
      <p role="status" class={jobs.length === 0 ? 'wr-none' : 'note wr-count'}>
        {t(jobs.length === 0 ? 'jobs.none' : 'jobs.count', { count: jobs.length })}
      </p>
      {jobs.length > 0 && (
        <table class="wr-jobs">
          <caption class="sr">{kind === null ? t('jobs.kind.any') : t('jobs.kind.is', { kind })}</caption>
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {t(`jobs.head.${head}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {jobs.map((job) => (
              <JobRow key={`${job.id} ${job.direction}`} job={job} oneKind={kind !== null} />
            ))}
          </tbody>
        </table>
      )}
      <p class="note wr-count">{t('jobs.sources')}</p>
    </>
  )
}

function JobRow({ job, oneKind }: { job: JobShown; oneKind: boolean }) {
  const words = useWords()
  const { t } = words
  const [whole, per25] = job.minutes
  return (
    <tr>
      <th scope="row">
        <span>{t('prices.job', { alteration: job.id })}</span>
        <span class="note">{effectWords(job, words)}</span>
        {!oneKind && <span class="note">{kindWords(job, words)}</span>}
        {job.rescue && <span class="note">{t('jobs.rescue')}</span>}
      </th>
      <td>
        <span class="wr-small" aria-hidden="true">
          {t('jobs.head.limit')}
        </span>
        <LimitWords job={job} />
      </td>
      <td>
        <span class="wr-small" aria-hidden="true">
          {t('jobs.head.level')}
        </span>
        <span class="wr-level">
          {t('person.level.is', { level: job.level })}
          <LevelStitches level={job.level} />
        </span>
      </td>
      <td>
        <span class="wr-small" aria-hidden="true">
          {t('jobs.head.time')}
        </span>
        <span>{t('jobs.minutes', { minutes: whole })}</span>
        {per25 > 0 && <span class="note">{t(`jobs.per25.${words.units}`, { minutes: per25 })}</span>}
      </td>
      <td>
        <span class="wr-small" aria-hidden="true">
          {t('jobs.head.from')}
        </span>
        <span class="note">{job.sources.map((one) => t(`jobs.from.${one}`)).join(', ')}</span>
      </td>
    </tr>
  )
}

/** How far it goes, and why no further; where the usual garment does not allow it, why. */
export function LimitWords({ job }: { job: JobShown }) {
  const { t, wording } = useWords()
  const because = job.unless ?? job.because
  const none = job.unless !== null || job.limitMm <= 0
  return (
    <>
      <b>{none ? t('jobs.not-usually') : t('jobs.up-to', { mm: job.limitMm })}</b>
      {job.warnedMm !== null && !none && <span class="note">{t('jobs.warned', { mm: job.warnedMm })}</span>}
      {because !== null && <span class="note">{say(because, wording)}</span>}
    </>
  )
}

/** "Waist smaller", "chest, waist and bottom edge larger". */
function effectWords({ points, direction }: JobShown, { t, inner, wording }: Words): string {
  const [first] = points
  if (first === undefined) return ''
  const [head = '', ...rest] = points.map((point, i) => (i === 0 ? t : inner)('points.point', { point }))
  const list = listed([head, ...rest], wording)
  return t(`jobs.effect.${direction}.${gapKind(first)}`, { points: list })
}
function kindWords({ kinds }: JobShown, { t, inner, wording }: Words): string {
  const names = kinds.map((kind, i) => (i === 0 ? t : inner)('jobs.kind.is', { kind }))
  return listed(names, wording)
}

/** Has a row every word that is looked for? */
function has(job: JobShown, find: string, words: Words): boolean {
  const text = [words.t('prices.job', { alteration: job.id }), effectWords(job, words), kindWords(job, words)].join(' ').toLowerCase()
  return find
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}

/** What is gathered before the work begins: tools, notions, and what stands in where a machine or a foot is missing. */

interface ThingRow {
  sort: 'tool' | 'notion'
  /** What does instead: the message `instead.<id>`. */
  instead?: string
}
const tool = (instead?: string): ThingRow => (instead === undefined ? { sort: 'tool' } : { sort: 'tool', instead })
const notion = (instead?: string): ThingRow => (instead === undefined ? { sort: 'notion' } : { sort: 'notion', instead })

/** Each is the message `gather.<id>`. */
export const THINGS = {
  tape: tool(),
  ruler: tool('ruler'),
  chalk: tool('chalk'),
  pins: tool(),
  clips: tool('clips'),
  'seam-ripper': tool('seam-ripper'),
  scissors: tool(),
  'hand-needle': tool(),
  thimble: tool(),
  machine: tool('machine'),
  'machine-needle': notion(),
  overlocker: tool('overlocker'),
  'twin-needle': notion('twin-needle'),
  'zipper-foot': tool('zipper-foot'),
  'walking-foot': tool('walking-foot'),
  iron: tool(),
  'press-cloth': tool('press-cloth'),
  ham: tool('ham'),
  bodkin: tool('bodkin'),
  awl: tool('awl'),
  hammer: tool(),
  pliers: tool(),
  spacer: tool('spacer'),
  'knitting-needle': tool(),
  thread: notion(),
  'topstitching-thread': notion('topstitching-thread'),
  'basting-thread': notion('basting-thread'),
  elastic: notion(),
  cord: notion(),
  eyelets: notion('eyelets'),
  button: notion(),
  hook: notion(),
  'hem-tape': notion('hem-tape'),
  'panel-cloth': notion(),
  interfacing: notion(),
  'grip-tape': notion(),
  'loop-tape': notion(),
  lacing: notion(),
  'leather-glue': notion(),
  yarn: notion(),
  'patch-cloth': notion(),
  zip: notion(),
  'pocket-cloth': notion(),
  vinegar: notion(),
  comb: tool('comb'),
  cleaner: notion(),
  dye: notion(),
  proofing: notion(),
  polish: notion(),
  heels: notion(),
  bags: notion()
} as const satisfies Record<string, ThingRow>
export type Thing = keyof typeof THINGS
export const THING_IDS = Object.keys(THINGS) as Thing[]
export const thing = (id: Thing): ThingRow => THINGS[id]

/** Units told once for a list or not at all, and kinds that are given with the text. */
import { type Case, m } from '../case.ts'

export const unitsAndKinds: Case[] = [
  {
    name: 'a short sleeve in a bare list of centimetres',
    teaches: 'a bare 46 is of centimetres for every rule alike: no sleeve of 46 inches, measured from the centre back',
    listing: { title: 'Wool jumper', text: 'Chest 52\nSleeve 46\nLength 60' },
    expect: {
      kind: 'jumper',
      fibres: [['wool', null]],
      measures: [
        m('chest', '52', 'cm flat judged guessed'),
        m('sleeveLength', '46', 'cm length guessed'),
        m('bodyLength', '60', 'cm length guessed')
      ],
      issues: [{ code: 'reading.unit-judged', about: '52' }]
    }
  }
]

/** What a language's files hold: phrases by what they mean (how they are written: phrases.ts). */
import type { ConditionId, Made, Structure, Trait, Use } from '../../garment/garment-input.ts'
import type { Whose } from '../../garment/model/whose.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { Amounts, Cues } from './cue-roles.ts'
import type { CutWords } from './cut-words.ts'
import type { Phrases } from './phrases.ts'
import type { Script } from './scripts.ts'

/** Points as sellers name them: some depend on the kind of garment (see points-by-kind.ts). */
export type PointName =
  | PointId
  | 'length'
  | 'width'
  | 'rise'
  | 'cuffEdge'
  | 'bottomEdge'
  | 'legLength'
  | 'legWidth'
  | 'topEdge'
  | 'waistband'
export type Landmark = 'shoulder' | 'neck' | 'armpit' | 'waist' | 'hip' | 'crotch' | 'knee' | 'hem' | 'cuff' | 'elbow' | 'bust' | 'top'

/** What a phrase is about that is no measure of the garment: figures beside it are not its own. */
export type AsideRole =
  /** labels that are no measure of fit: lapel, collar height, belt, pocket */
  | 'detail'
  /** other things for sale or in the picture: bag, shoe, laptop */
  | 'thing'
  /** how tall somebody is */
  | 'height'
  /** someone's body: model, mannequin, “I am” */
  | 'model'
  /** “best for”, “would fit”, “to fit” */
  | 'fits'
  /** “size guide”: heads the bodies that sizes are cut for, or the garment, as its figures show */
  | 'sizeChart'
  /** “body measurements” */
  | 'bodyChart'
  /** “to fit bust”, “fits hips”: a body that this size is cut for */
  | 'cutFor'
  | 'parcel'
  /** “sold separately”, “in another listing”: what its part of the text measures is not for sale here */
  | 'elsewhere'
  /** words that are nothing: names of cuts, “knee length” */
  | 'nothing'
  /** after a number: not a length (days, pockets, %, kg) */
  | 'otherUnit'

/** What a phrase tells beside points, places and garments; asked for with `means` (see text/terms.ts). */
export type WordRole =
  | AsideRole
  /** “measurements”: opens a list */
  | 'heading'
  /** below, above: what stands before is a place */
  | 'position'
  /** from: a place only when no name claims the figure */
  | 'from'
  /** “to let down”, “hem allowance” */
  | 'letDown'
  | 'letOut'
  | 'seamAllowance'
  | 'relaxed'
  | 'stretched'
  | 'cuffed'
  | 'uncuffed'
  | 'front'
  | 'back'
  /** underarm, inner: which sleeve */
  | 'inner'
  /** measures, is, approximately, articles, prepositions: nothing to hold a figure off its name */
  | 'light'
  /** “measures”: begins what is measured */
  | 'measures'
  /** “I measured”, “my own tape”: what the seller took, which counts before what a shop says */
  | 'ownTape'
  /** “the website says”, “from the brand”: figures that a shop or a maker gives */
  | 'shopCopy'
  /** a wrap or a front as it is worn, and laid open */
  | 'closed'
  | 'opened'
  /** “to”, between two landmarks or two ends of a range */
  | 'to'
  /** “between … and …” */
  | 'between'
  | 'and'
  | 'or'
  /** size, tagged, marked: a size label follows */
  | 'size'
  | 'region'
  | 'letterSize'
  | 'age'
  | 'years'
  /** “including the waistband”: the name after it is no label */
  | 'including'
  /** sets all before it right: “all”, “everything” */
  | 'all'
  | 'not'
  | 'lining'
  /** half lined, lined to the knee: lined in part */
  | 'partLined'
  | 'retail'
  | 'price'
  | 'condition'
  | 'conditionWord'
  | 'conditionPhrase'
  /** the part of the cloth that is looked at: shell, outer */
  | 'shell'
  /** what is worn in bed */
  | 'nightwear'
  /** but, except: what was denied before is not denied behind it */
  | 'but'
  /** how far the back pockets lie apart is told beside them */
  | 'backPockets'
  | 'apart'
  /** a fault that was seen to */
  | 'mended'
  /** only looks like: faux, effect */
  | 'imitation'
  | 'stretch'
  /** how much it gives, in words: a lot, some, a little, not any more */
  | 'stretchMuch'
  | 'stretchSome'
  | 'stretchLittle'
  | 'stretchGone'
  /** never washed: it will still shrink */
  | 'unwashed'
  | 'half'

export type MadeFact =
  | {
      fact:
        | 'lined'
        | 'elasticWaist'
        | 'workingCuffButtons'
        | 'shortSleeves'
        | 'backSeam'
        | 'darts'
        | 'felledSeams'
        | 'slantPockets'
        | 'tailored'
      value: boolean
    }
  | { fact: 'skirtShape'; value: Made['skirtShape'] }
  | { fact: 'hemKind'; value: Made['hemKind'] }
  | { fact: 'opens'; value: PointId[] }

/**
 * Words that speak for some kinds: a hint by how it is made, a style that names it, its cloth. Or for none: what its part of the text names is not
 * for sale here (elsewhere: “not included”), what follows is listed beside what is (others: “also selling”),
 * and the page is one of many things (list: “128 results”).
 */
export interface KindSign {
  kinds: readonly (GarmentKind | 'thing')[]
  as: 'construction' | 'style' | 'cloth' | 'elsewhere' | 'others' | 'list'
  phrases: Phrases
}

export interface Lexicon {
  language: string
  /** Other codes that pages have for it. */
  alsoCalled?: readonly string[]
  /** Endings that a last word of a phrase may also take. */
  endings: string[]
  /** Letters that join the parts of words written as one; absent where words are not joined. */
  joinedBy?: string[]
  /** Scripts that tell this language, and how much a word in each does. */
  scripts?: Partial<Record<Script, number>>
  /** Words may stand without spaces: runs of letters are cut by the words of these files (see text/runs.ts). */
  unspaced?: true
  /** Verbs end their sentences: that something is not there, or was paid, is told behind it. */
  verbLast?: true
  /** In what unit figures are where none is told anywhere; absent: it is judged by what can be worn. */
  bareUnit?: 'cm'
  /** The head of a compound stands first: “robe chemise” is a dress. */
  headFirst?: true
  /** Very common words by which the language is known. */
  common: Phrases
  /** English words that mean something else here: “im” is no “I'm” in German. */
  falseFriends?: Phrases
  /** `point`, `point flat`, `point around`, `point weak`: weak ones need the figure right beside them. */
  points: Partial<Record<PointName | `${PointName} flat` | `${PointName} around` | `${PointName} weak`, Phrases>>
  /** One-letter names that are this language's own. */
  letters?: Partial<Record<string, PointName>>
  landmarks: Partial<Record<Landmark, Phrases>>
  basis: { flat: Phrases; around: Phrases; doubled: Phrases; double: Phrases }
  words: Partial<Record<WordRole, Phrases>>
  units: { in: Phrases; cm: Phrases; mm: Phrases; m: Phrases; ft: Phrases }
  /** Numbers in words that stand before a unit. */
  numbers: Record<string, number>
  /** Phrases by kind; `made` is what the word tells beside the kind, `or` what else it may name: a vest. */
  kinds: { kind: GarmentKind; or?: GarmentKind; phrases: Phrases; made?: Partial<Made> }[]
  /** What tells a kind without naming it: a fly, lapels; `names`: styles that stand for it, a sheath. */
  signs?: KindSign[]
  fibres: Record<string, Phrases>
  structures: Partial<Record<Structure, Phrases>>
  traits: Partial<Record<Trait, Phrases>>
  made: { fact: MadeFact; phrases: Phrases }[]
  /** How a garment is meant to be worn. */
  cut?: CutWords
  uses: Partial<Record<Use, Phrases>>
  /** Whose sizes it is cut for; named: the people by themselves, who possess a garment only right behind it, or in a title. */
  whose: Partial<Record<Whose | `${Whose} named` | 'both', Phrases>>
  /** Faults, and the mending they ask for. */
  faults: { mending: ConditionId[]; phrases: Phrases }[]
  colours: Record<string, Phrases>
  /** Single words that tip a rule. */
  cues: Cues
  /** What says where a seller posts to, by ISO 3166 code: whose dollars they are. */
  postedIn?: Record<string, Phrases>
  /** Words of amounts, by where they are read. */
  amounts?: Amounts
  /** Currency words and signs by ISO 4217 code, beside £, € and $. */
  currencies: Record<string, Phrases>
}

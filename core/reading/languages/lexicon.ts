/**
 * What a language file holds: phrases by what they mean. Phrases of one meaning stand in one string, parted by ` | `.
 * They are written as people write them; case, accents, hyphens and glued dots are evened out when the table is read.
 */
import type { ConditionId, Made, Structure, Trait, Use } from '../../garment/garment-input.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'

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

/**
 * label: what a figure can be of without being a measure · aside words open a stretch of text that is about something else.
 */
export type WordRole =
  /** “measurements”: opens a list */
  | 'heading'
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
  | 'parcel'
  /** “sold separately”, “in another listing”: what its part of the text measures is not for sale here */
  | 'elsewhere'
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
  /** words that are nothing: names of cuts, “knee length” */
  | 'nothing'
  /** after a number: not a length (days, pockets, %, kg) */
  | 'otherUnit'
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

export interface Lexicon {
  language: string
  /** Endings that a last word of a phrase may also take. */
  endings: string[]
  /** Very common words by which the language is known. */
  common: string
  /** English words that mean something else here: “im” is no “I'm” in German. */
  falseFriends?: string
  /** `point`, `point flat`, `point around`, `point weak`: weak ones need the figure right beside them. */
  points: Partial<Record<PointName | `${PointName} flat` | `${PointName} around` | `${PointName} weak`, string>>
  /** One-letter names that are this language's own. */
  letters?: Partial<Record<string, PointName>>
  landmarks: Partial<Record<Landmark, string>>
  basis: { flat: string; around: string; doubled: string; double: string }
  words: Partial<Record<WordRole, string>>
  units: { in: string; cm: string; mm: string; m: string; ft: string }
  /** Numbers in words that stand before a unit. */
  numbers: Record<string, number>
  /** Phrases by kind; `made` is what the word tells beside the kind. */
  kinds: { kind: GarmentKind; phrases: string; made?: Partial<Made> }[]
  fibres: Record<string, string>
  structures: Partial<Record<Structure, string>>
  traits: Partial<Record<Trait, string>>
  made: { fact: MadeFact; phrases: string }[]
  uses: Partial<Record<Use, string>>
  /** Faults, and the mending they ask for. */
  faults: { mending: ConditionId[]; phrases: string }[]
  colours: Record<string, string>
  /** Currency words and signs by ISO 4217 code, beside £, € and $. */
  currencies: Record<string, string>
}

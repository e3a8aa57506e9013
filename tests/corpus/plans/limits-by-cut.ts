/**
 * How far a job goes on a garment of a certain cut, make or cloth, and where it is not done: what the trade says, written from the pages of
 * tailors and dressmakers that stand beside the rows, mm around or along. null: not offered. Nobody's band bears on these.
 */
import type { Cloth, Made, Use } from '../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { Cut } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'

export interface CutCase {
  why: string
  kind: GarmentKind
  cut?: Cut
  made?: Partial<Made>
  cloth?: Cloth
  use?: Use
  job: `${AlterationId}/${'less' | 'more'}`
  /** The widest of its amounts, mm; null: it is not offered. */
  most: number | null
  soft?: number
  level?: number
  rescue?: boolean
}

export const byCut: CutCase[] = [
  { why: 'over a fly 13, warned past 10', kind: 'trousers', cut: { closing: 'fly' }, job: 'waist-button-move/less', most: 13, soft: 10 },
  {
    why: 'the hook of a band beside a side zip: 6',
    kind: 'trousers',
    cut: { closing: 'side-zip' },
    job: 'waist-button-move/less',
    most: 6
  },
  { why: 'a skirt that buttons: 19', kind: 'skirt', cut: { closing: 'buttons' }, job: 'waist-button-move/less', most: 19 },
  { why: 'nothing to move on elastic', kind: 'shorts', cut: { closing: 'elastic' }, job: 'waist-button-move/less', most: null },
  { why: 'a kilt has straps', kind: 'skirt', cut: { silhouette: 'kilt' }, job: 'waist-button-move/less', most: null },
  { why: 'a wrap has ties', kind: 'skirt', cut: { silhouette: 'wrap' }, job: 'waist-button-move/more', most: null },
  { why: 'a zip alone', kind: 'skirt', cut: { closing: 'front-zip' }, job: 'waist-button-move/more', most: null },
  {
    why: 'a tailored back seam: 74 of a taper of 200, warned past 40',
    kind: 'trousers',
    job: 'waist-in-centre-back/less',
    most: 74,
    soft: 40,
    level: 3
  },
  { why: 'jeans: the yoke allows 40, warned past 25', kind: 'jeans', job: 'waist-in-centre-back/less', most: 40, soft: 25 },
  {
    why: 'a skirt with its zip in the back seam: level 4',
    kind: 'skirt',
    cut: { closing: 'back-zip' },
    made: { backSeam: true },
    job: 'waist-in-centre-back/less',
    most: 74,
    level: 4
  },
  { why: 'skirt darts: 60, warned past 40', kind: 'skirt', job: 'waist-in-darts/less', most: 60, soft: 40, level: 2 },
  { why: 'a lined skirt: a level more', kind: 'skirt', made: { lined: true }, job: 'waist-in-darts/less', most: 60, level: 3 },
  { why: 'no darts across pleats', kind: 'skirt', cut: { silhouette: 'pleated' }, job: 'waist-in-darts/less', most: null },
  { why: 'no darts in gathers', kind: 'skirt', cut: { silhouette: 'gathered' }, job: 'waist-in-darts/less', most: null },
  { why: 'no elastic in a kilt', kind: 'skirt', cut: { silhouette: 'kilt' }, job: 'waist-in-elastic/less', most: null },
  { why: 'no elastic in tailored trousers', kind: 'trousers', job: 'waist-in-elastic/less', most: null },
  { why: 'no elastic in silk', kind: 'skirt', cloth: { traits: ['silk'] }, job: 'waist-in-elastic/less', most: null },
  {
    why: 'gathered already: elastic is no rescue',
    kind: 'skirt',
    cut: { silhouette: 'gathered' },
    job: 'waist-in-elastic/less',
    most: 85,
    rescue: false
  },
  { why: 'in a plain waist it is one', kind: 'shorts', job: 'waist-in-elastic/less', most: 85, rescue: true },
  { why: 'the seat: 38, warned past 25', kind: 'jeans', job: 'seat-in/less', most: 38, soft: 25, level: 4 },
  { why: 'a bootcut keeps its flare', kind: 'jeans', cut: { leg: 'bootcut' }, job: 'leg-taper/less', most: null },
  { why: 'so does a palazzo', kind: 'trousers', cut: { leg: 'palazzo' }, job: 'leg-taper/less', most: null },
  { why: 'straight legs taper', kind: 'trousers', cut: { leg: 'straight' }, job: 'leg-taper/less', most: 76 },
  {
    why: 'a flare up past 50 is another flare',
    kind: 'jeans',
    cut: { leg: 'flared' },
    made: { hemKind: 'plain' },
    job: 'leg-shorten-plain/less',
    most: 413,
    soft: 50
  },
  { why: 'a rib comes off and on', kind: 'trousers', cut: { leg: 'jogger' }, job: 'leg-shorten-plain/less', most: 413, level: 3 },
  { why: 'no band on tailored legs', kind: 'trousers', job: 'leg-lengthen-band/more', most: null },
  { why: 'jeans may have one, and it shows', kind: 'jeans', job: 'leg-lengthen-band/more', most: 60, rescue: true },
  {
    why: 'what a seller says is turned up is used: 50 − 10',
    kind: 'jeans',
    made: { hemDepthMm: 50 },
    job: 'leg-lengthen-hem/more',
    most: 40
  },
  { why: 'turn-ups as usual: 2 × 38 − 30', kind: 'trousers', cut: { turnUps: 'made' }, job: 'turn-up-let-down/more', most: 46 },
  {
    why: 'turn-ups of 45: 2 × 45 − 30',
    kind: 'trousers',
    cut: { turnUps: 'made' },
    made: { hemDepthMm: 45 },
    job: 'turn-up-let-down/more',
    most: 60
  },
  { why: 'they are opened, not let down as a hem', kind: 'trousers', cut: { turnUps: 'made' }, job: 'leg-lengthen-hem/more', most: null },
  { why: 'a child’s legs are never cut', kind: 'trousers', use: 'child', job: 'leg-shorten-blind/less', most: null },
  { why: 'a child’s skirt neither', kind: 'skirt', use: 'child', job: 'skirt-shorten/less', most: null },
  { why: 'a tuck instead', kind: 'skirt', use: 'child', job: 'growth-tuck/less', most: 60, rescue: false },
  { why: 'a grown person’s has none', kind: 'skirt', job: 'growth-tuck/less', most: null },
  { why: 'no cord for a child', kind: 'shorts', use: 'child', job: 'drawstring-add/less', most: null },
  {
    why: 'past a vent the vent is cut again: warned past 50',
    kind: 'skirt',
    cut: { vent: 'vent' },
    job: 'skirt-shorten/less',
    most: 150,
    soft: 50
  },
  { why: 'a pleated hem stays', kind: 'skirt', cut: { silhouette: 'pleated' }, job: 'skirt-shorten/less', most: null },
  {
    why: 'it is shortened from the waist, to 100',
    kind: 'skirt',
    cut: { silhouette: 'pleated' },
    job: 'skirt-shorten-from-waist/less',
    most: 100,
    level: 4
  },
  { why: 'another to 50', kind: 'skirt', cut: { silhouette: 'pencil' }, job: 'skirt-shorten-from-waist/less', most: 50 },
  { why: 'a circle is level 3', kind: 'skirt', cut: { silhouette: 'circle' }, job: 'skirt-shorten/less', most: 150, level: 3 },
  { why: 'cut on the bias too', kind: 'dress', cut: { silhouette: 'bias' }, job: 'skirt-shorten/less', most: 150, level: 3 },
  { why: 'layers have their own hem', kind: 'dress', cut: { layers: 'several' }, job: 'skirt-shorten/less', most: null },
  { why: 'nor are layers let down', kind: 'dress', cut: { layers: 'several' }, job: 'skirt-lengthen/more', most: null },
  { why: 'a lined skirt’s sides are level 4', kind: 'skirt', made: { lined: true }, job: 'skirt-sides-in/less', most: 100, level: 4 },
  { why: 'a kilt has no sides to take in', kind: 'skirt', cut: { silhouette: 'kilt' }, job: 'skirt-sides-in/less', most: null },
  { why: 'a gathered skirt neither', kind: 'skirt', cut: { silhouette: 'gathered' }, job: 'skirt-sides-in/less', most: null },
  { why: 'a tailored jacket: 76, warned past 38', kind: 'jacket', job: 'sides-in/less', most: 76, soft: 38, level: 4 },
  { why: 'a dress lining hangs free: level 3', kind: 'dress', made: { lined: true }, job: 'sides-in/less', most: 100, level: 3 },
  { why: 'a zip in the side: level 3', kind: 'dress', cut: { closing: 'side-zip' }, job: 'sides-in/less', most: 100, level: 3 },
  { why: 'bones come out first', kind: 'dress', cut: { boning: 'boned' }, job: 'sides-in/less', most: null },
  { why: 'a jumper is overlocked', kind: 'jumper', job: 'sides-in/less', most: null },
  { why: 'level 4 where it is knitted', kind: 'jumper', job: 'knit-take-in/less', most: 60, level: 4 },
  { why: 'level 3 where it is a sweatshirt', kind: 'knit-top', cut: { knit: 'sweatshirt' }, job: 'knit-take-in/less', most: 60, level: 3 },
  { why: 'two darts of 25 in a shirt', kind: 'shirt', job: 'back-darts/less', most: 100, soft: 50 },
  { why: 'of 19 in a dress', kind: 'dress', job: 'back-darts/less', most: 76 },
  { why: 'none across princess seams', kind: 'dress', cut: { silhouette: 'princess' }, job: 'back-darts/less', most: null },
  { why: 'none through a big print', kind: 'shirt', cloth: { traits: ['large-print'] }, job: 'back-darts/less', most: null },
  { why: 'none through beads', kind: 'dress', cloth: { traits: ['beaded'] }, job: 'back-darts/less', most: null },
  { why: 'bust darts take nothing off a chest', kind: 'shirt', job: 'bust-darts/less', most: null },
  { why: 'a shirt front: 8', kind: 'shirt', job: 'front-button-move/less', most: 8 },
  { why: 'a jacket: 13, warned past 10', kind: 'jacket', job: 'front-button-move/less', most: 13, soft: 10 },
  { why: 'a coat: 25', kind: 'coat', job: 'front-button-move/less', most: 25 },
  { why: 'never on a zip', kind: 'jacket', cut: { closing: 'front-zip' }, job: 'front-button-move/more', most: null },
  { why: 'a biker closes with a zip', kind: 'jacket', cut: { layer: 'biker' }, job: 'front-button-move/less', most: null },
  { why: 'a waistcoat keeps its points: 13', kind: 'waistcoat', job: 'body-shorten/less', most: 13 },
  { why: 'a jacket: 25, warned past 19', kind: 'jacket', job: 'body-shorten/less', most: 25, soft: 19 },
  { why: 'a denim jacket keeps its band', kind: 'jacket', cut: { layer: 'denim' }, job: 'body-shorten/less', most: null },
  { why: 'a bomber its rib', kind: 'jacket', cut: { layer: 'bomber' }, job: 'body-lengthen/more', most: null },
  { why: 'a suit’s shoulders: 10 a side, level 5', kind: 'jacket', job: 'shoulder-in/less', most: 20, level: 5 },
  { why: 'a casual jacket’s: 13 a side, as hard', kind: 'jacket', made: { tailored: false }, job: 'shoulder-in/less', most: 26, level: 5 },
  { why: 'a shirt’s: 19 a side', kind: 'shirt', job: 'shoulder-in/less', most: 38, level: 4 },
  { why: 'no raglan has one', kind: 'coat', cut: { shoulder: 'raglan' }, job: 'shoulder-in/less', most: null },
  {
    why: 'a raglan is shortened at the cuff alone',
    kind: 'coat',
    cut: { shoulder: 'raglan' },
    job: 'sleeve-shorten-head/less',
    most: null
  },
  { why: 'sham buttons: 38, warned past 25', kind: 'jacket', job: 'sleeve-shorten-lined/less', most: 38, soft: 25, level: 4 },
  { why: 'a biker’s cuffs have zips', kind: 'jacket', cut: { layer: 'biker' }, job: 'sleeve-shorten-lined/less', most: null },
  { why: 'a lined sleeve comes down 19', kind: 'jacket', job: 'sleeve-lengthen/more', most: 19 },
  { why: 'or all of a told hem but 12', kind: 'jacket', made: { hemDepthMm: 45 }, job: 'sleeve-lengthen/more', most: 33 },
  { why: 'a shirt dress has cuffs', kind: 'dress', cut: { silhouette: 'shirt-dress' }, job: 'sleeve-shorten-cuff/less', most: 45 },
  { why: 'so its sleeves have no hem', kind: 'dress', cut: { silhouette: 'shirt-dress' }, job: 'sleeve-shorten-hem/less', most: null },
  { why: 'a lined sleeve tapers 38', kind: 'jacket', job: 'sleeve-taper/less', most: 38 },
  { why: 'a plain one 76', kind: 'shirt', job: 'sleeve-taper/less', most: 76 },
  { why: 'with sleeves set in, 12', kind: 'shirt', job: 'lift-at-shoulder/less', most: 12, level: 4 },
  { why: 'without, 25', kind: 'dress', cut: { sleeve: 'sleeveless' }, job: 'lift-at-shoulder/less', most: 25, level: 3 },
  {
    why: 'a waist seam is lowered with 20 of cloth',
    kind: 'dress',
    made: { seamAllowanceMm: 18 },
    job: 'dress-waist-lower/more',
    most: null
  },
  { why: 'a shift has none', kind: 'dress', cut: { silhouette: 'shift' }, job: 'dress-waist-raise/less', most: null },
  { why: 'a panel in the waist: 50, and it shows', kind: 'jeans', job: 'waist-out-panel/more', most: 50, rescue: true },
  { why: 'never in a lined skirt', kind: 'skirt', made: { lined: true }, job: 'waist-out-panel/more', most: null },
  { why: 'nor a godet', kind: 'skirt', made: { lined: true }, job: 'hem-widen/more', most: null },
  { why: 'side panels: 60', kind: 'dress', job: 'side-panels/more', most: 60, rescue: true },
  { why: 'never in a sheath', kind: 'dress', cut: { silhouette: 'sheath' }, job: 'side-panels/more', most: null },
  { why: 'the fork deepens 10', kind: 'trousers', job: 'rise-deepen/more', most: 10, rescue: true },
  { why: 'a facing is no rescue', kind: 'trousers', job: 'leg-lengthen-facing/more', most: 34, rescue: false },
  { why: 'a shoulder is dear, and no rescue', kind: 'shirt', job: 'shoulder-in/less', most: 38, rescue: false },
  {
    why: 'a leather jacket is level 5 to take in',
    kind: 'jacket',
    cloth: { structure: 'leather' },
    job: 'sides-in/less',
    most: 76,
    level: 5
  },
  {
    why: 'leather trousers, unlined: a level more',
    kind: 'trousers',
    cloth: { structure: 'leather' },
    job: 'waist-in-centre-back/less',
    most: 74,
    level: 4
  },
  { why: 'nothing goes out in it', kind: 'trousers', cloth: { structure: 'leather' }, job: 'waist-out-centre-back/more', most: null },
  { why: 'no darts in it', kind: 'skirt', cloth: { structure: 'leather' }, job: 'waist-in-darts/less', most: null },
  { why: 'its sleeves do not taper', kind: 'jacket', cloth: { structure: 'leather' }, job: 'sleeve-taper/less', most: null },
  { why: 'from its cuff 40', kind: 'jacket', cloth: { structure: 'leather' }, job: 'sleeve-shorten-lined/less', most: 40 },
  { why: 'coated cloth: a level more', kind: 'skirt', cloth: { traits: ['coated'] }, job: 'skirt-sides-in/less', most: 100, level: 4 },
  { why: 'beads: two', kind: 'dress', cloth: { traits: ['beaded'] }, job: 'sides-in/less', most: 100, level: 4 },
  { why: 'the trim alone is leather: cotton stays cotton', kind: 'skirt', job: 'skirt-sides-in/less', most: 100, level: 3 },
  {
    why: 'a boned bodice: 50, warned past 38, level 5',
    kind: 'dress',
    cut: { boning: 'boned' },
    job: 'bodice-boned-in/less',
    most: 50,
    soft: 38,
    level: 5
  },
  {
    why: 'a wrap keeps 120 over: 150 told gives 30',
    kind: 'skirt',
    cut: { silhouette: 'wrap' },
    made: { overlapMm: 150 },
    job: 'tie-move/more',
    most: 30
  },
  { why: 'dungarees: the straps, 80', kind: 'jumpsuit', cut: { silhouette: 'dungarees' }, job: 'buckle-move/less', most: 80 }
]

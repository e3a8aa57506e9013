/**
 * Each facet of the cut once where it decides what is wanted of a point, and once where it must not. Figures in mm, girths around; argued from the
 * trade before any run. Body: stature 1680, bust 920, natural waist 740, hip 1000, thigh 590, knee 380, calf 365, inside leg 780, arm 560,
 * shoulder 400, nape to waist 410, underbust 800.
 */
import type { Cloth } from '../../../core/garment/garment-input.ts'
import type { Cut, Facet } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'

export interface FacetCase {
  facet: Facet
  kind: GarmentKind
  cut: Cut
  figures: Partial<Record<PointId, number>>
  cloth?: Cloth
  point: PointId
  /** With this cut: fits, too big, too small, or not judged at all. */
  is: 'fits' | 'too big' | 'too small' | 'not judged'
  /** Without the word: the facet decides where this differs. */
  without: 'fits' | 'too big' | 'too small' | 'not judged'
  why: string
}

export const facetCases: FacetCase[] = [
  // rise: a low band sits on the hip
  {
    facet: 'rise',
    kind: 'jeans',
    cut: { rise: 'high' },
    figures: { waist: 880 },
    point: 'waist',
    is: 'too big',
    without: 'fits',
    why: 'high, 25 under the natural waist, she is near 790 and 38 of ease is the most; at the usual height near 875'
  },
  {
    facet: 'rise',
    kind: 'jeans',
    cut: { rise: 'low' },
    figures: { thigh: 650 },
    point: 'thigh',
    is: 'fits',
    without: 'fits',
    why: 'where the band sits says nothing of the thigh'
  },
  // leg
  {
    facet: 'leg',
    kind: 'trousers',
    cut: { leg: 'palazzo' },
    figures: { thigh: 900 },
    point: 'thigh',
    is: 'fits',
    without: 'too big',
    why: 'a palazzo is wide on purpose'
  },
  {
    facet: 'leg',
    kind: 'trousers',
    cut: { leg: 'palazzo' },
    figures: { waist: 1000 },
    point: 'waist',
    is: 'too big',
    without: 'too big',
    why: 'the waist alone holds it up'
  },
  // length of the leg
  {
    facet: 'legLength',
    kind: 'trousers',
    cut: { legLength: 'cropped' },
    figures: { inseam: 690 },
    point: 'inseam',
    is: 'fits',
    without: 'fits',
    why: 'told 90 short of the leg, it is a cropped leg; untold its figure shows an ankle length'
  },
  {
    facet: 'legLength',
    kind: 'trousers',
    cut: { legLength: 'full' },
    figures: { inseam: 690 },
    point: 'inseam',
    is: 'too small',
    without: 'fits',
    why: 'a full-length leg that ends 90 short is short'
  },
  {
    facet: 'legLength',
    kind: 'trousers',
    cut: { legLength: 'cropped' },
    figures: { hip: 1300 },
    point: 'hip',
    is: 'too big',
    without: 'too big',
    why: 'a cropped leg is no wide seat'
  },
  // silhouette
  {
    facet: 'silhouette',
    kind: 'dress',
    cut: { silhouette: 'smock' },
    figures: { waist: 1100 },
    point: 'waist',
    is: 'fits',
    without: 'too big',
    why: 'a smock stands free below the shoulders'
  },
  {
    facet: 'silhouette',
    kind: 'dress',
    cut: { silhouette: 'smock' },
    figures: { chest: 900 },
    point: 'chest',
    is: 'too small',
    without: 'too small',
    why: 'free is never too big; too small it can be'
  },
  {
    facet: 'silhouette',
    kind: 'skirt',
    cut: { silhouette: 'pleated' },
    figures: { waist: 760, hip: 1500 },
    point: 'hip',
    is: 'fits',
    without: 'fits',
    why: 'pleats stand free; untold, 1.5 times the waist is seen as gathered'
  },
  {
    facet: 'silhouette',
    kind: 'skirt',
    cut: { silhouette: 'pencil' },
    figures: { hip: 1150 },
    point: 'hip',
    is: 'too big',
    without: 'fits',
    why: 'a pencil skirt touches the hip; untold up to a loose skirt is worn'
  },
  // waist seam
  {
    facet: 'waistSeam',
    kind: 'dress',
    cut: { waistSeam: 'natural' },
    figures: { napeToWaist: 460 },
    point: 'napeToWaist',
    is: 'too big',
    without: 'not judged',
    why: 'a waist seam 50 under the waist hangs on the hip'
  },
  {
    facet: 'waistSeam',
    kind: 'dress',
    cut: { waistSeam: 'none' },
    figures: { napeToWaist: 460 },
    point: 'napeToWaist',
    is: 'not judged',
    without: 'not judged',
    why: 'no seam, nothing to judge'
  },
  // length of skirts and dresses
  {
    facet: 'dressLength',
    kind: 'skirt',
    cut: { dressLength: 'midi' },
    figures: { skirtLength: 1000 },
    point: 'skirtLength',
    is: 'too big',
    without: 'fits',
    why: 'from 1063 a midi ends 200 to 380 over the floor; 1000 is at the ankle bone, which nobody minds unless a midi is wanted'
  },
  {
    facet: 'dressLength',
    kind: 'skirt',
    cut: { dressLength: 'midi' },
    figures: { waist: 900 },
    point: 'waist',
    is: 'too big',
    without: 'too big',
    why: 'a length is no waist'
  },
  // length of tops
  {
    facet: 'topLength',
    kind: 'shirt',
    cut: { topLength: 'cropped' },
    figures: { hem: 900 },
    point: 'hem',
    is: 'fits',
    without: 'too small',
    why: 'it ends at the waist and need not pass the hip'
  },
  {
    facet: 'topLength',
    kind: 'knit-top',
    cut: { topLength: 'cropped' },
    figures: { chest: 780 },
    point: 'chest',
    is: 'too small',
    without: 'too small',
    why: 'short is not narrow'
  },
  // drawn-in hem
  {
    facet: 'hem',
    kind: 'jacket',
    cut: { hem: 'drawn-in' },
    figures: { hem: 800 },
    point: 'hem',
    is: 'fits',
    without: 'too small',
    why: 'a rib sits above the hip'
  },
  {
    facet: 'hem',
    kind: 'jacket',
    cut: { hem: 'drawn-in' },
    figures: { hem: 700 },
    point: 'hem',
    is: 'too small',
    without: 'too small',
    why: 'but it must go round the waist'
  },
  // closeness
  {
    facet: 'closeness',
    kind: 'jumper',
    cut: { closeness: 'oversized' },
    figures: { chest: 1090, shoulderWidth: 455 },
    point: 'shoulderWidth',
    is: 'fits',
    without: 'fits',
    why: 'oversized: wide shoulders are the cut; 55 over is borne by any jumper'
  },
  {
    facet: 'closeness',
    kind: 'jumper',
    cut: { closeness: 'oversized' },
    figures: { chest: 1300 },
    point: 'chest',
    is: 'fits',
    without: 'fits',
    why: 'oversized on purpose; as it is cut, figures show it too'
  },
  {
    facet: 'closeness',
    kind: 'shirt',
    cut: { closeness: 'slim' },
    figures: { chest: 1100 },
    point: 'chest',
    is: 'too big',
    without: 'fits',
    why: 'a slim shirt has 50 to 135 of ease, this one 180'
  },
  // shoulder
  {
    facet: 'shoulder',
    kind: 'shirt',
    cut: { shoulder: 'raglan' },
    figures: { shoulderWidth: 330 },
    point: 'shoulderWidth',
    is: 'not judged',
    without: 'too small',
    why: 'a raglan has no shoulder seam'
  },
  {
    facet: 'shoulder',
    kind: 'shirt',
    cut: { shoulder: 'drop' },
    figures: { shoulderWidth: 370 },
    point: 'shoulderWidth',
    is: 'too small',
    without: 'too small',
    why: 'dropped or not, 30 narrower than the body pulls'
  },
  // sleeve
  {
    facet: 'sleeve',
    kind: 'dress',
    cut: { sleeve: 'sleeveless' },
    figures: { shoulderWidth: 340 },
    point: 'shoulderWidth',
    is: 'not judged',
    without: 'too small',
    why: 'sleeveless is cut in from the shoulder'
  },
  {
    facet: 'sleeve',
    kind: 'shirt',
    cut: { sleeve: 'long' },
    figures: { sleeveLength: 440 },
    point: 'sleeveLength',
    is: 'too small',
    without: 'fits',
    why: 'a long sleeve that ends 120 over the wrist is short; untold its figure shows a three-quarter sleeve'
  },
  // layer
  {
    facet: 'sleeve',
    kind: 'shirt',
    cut: { sleeve: 'long' },
    figures: { sleeveLength: 640 },
    point: 'sleeveLength',
    is: 'too big',
    without: 'too big',
    why: 'a long sleeve 80 over the arm is too long, said or not'
  },
  {
    facet: 'layer',
    kind: 'jacket',
    cut: { layer: 'boyfriend' },
    figures: { chest: 1120 },
    point: 'chest',
    is: 'fits',
    without: 'too big',
    why: 'a boyfriend blazer has 90 to 320 of ease'
  },
  {
    facet: 'layer',
    kind: 'jacket',
    cut: { layer: 'boyfriend' },
    figures: { chest: 950 },
    point: 'chest',
    is: 'too small',
    without: 'too small',
    why: 'wide on purpose is not narrow'
  },
  // knit
  {
    facet: 'knit',
    kind: 'jumper',
    cut: { knit: 'ribbed' },
    figures: { chest: 800 },
    point: 'chest',
    is: 'fits',
    without: 'too small',
    why: 'a rib is worn up to 15 % under the body: 782'
  },
  {
    facet: 'knit',
    kind: 'jumper',
    cut: { knit: 'felted' },
    figures: { chest: 930 },
    point: 'chest',
    is: 'too small',
    without: 'fits',
    why: 'felt gives nothing and wants 40 of ease'
  },
  {
    facet: 'knit',
    kind: 'jumper',
    cut: { knit: 'chunky' },
    figures: { sleeveLength: 700 },
    point: 'sleeveLength',
    is: 'too big',
    without: 'too big',
    why: 'chunky or fine, a sleeve 140 over the arm is too long'
  },
  // closing
  {
    facet: 'closing',
    kind: 'trousers',
    cut: { closing: 'drawstring' },
    figures: { hip: 1200 },
    point: 'hip',
    is: 'fits',
    without: 'too big',
    why: 'pull-on cuts are straight from hip to waist'
  },
  {
    facet: 'closing',
    kind: 'trousers',
    cut: { closing: 'fly' },
    figures: { hip: 1200 },
    point: 'hip',
    is: 'too big',
    without: 'too big',
    why: 'a fly holds a fitted seat'
  },
  // pleats
  {
    facet: 'pleats',
    kind: 'trousers',
    cut: { pleats: 'front' },
    figures: { hip: 1040 },
    point: 'hip',
    is: 'too small',
    without: 'fits',
    why: 'pleats that stand open say too small: they want 50'
  },
  {
    facet: 'pleats',
    kind: 'trousers',
    cut: { pleats: 'front' },
    figures: { waist: 850 },
    point: 'waist',
    is: 'fits',
    without: 'fits',
    why: 'pleats are no waist'
  },
  // era
  {
    facet: 'era',
    kind: 'dress',
    cut: { era: '1940s-50s' },
    figures: { chest: 950 },
    point: 'chest',
    is: 'fits',
    without: 'too small',
    why: 'worn over foundations, 25 of ease was all it ever had'
  },
  {
    facet: 'era',
    kind: 'dress',
    cut: { era: '1940s-50s' },
    figures: { waist: 850 },
    point: 'waist',
    is: 'too big',
    without: 'too big',
    why: 'a nipped waist is no loose one'
  },
  // growth
  {
    facet: 'growth',
    kind: 'coat',
    cut: { growth: 'child' },
    figures: { sleeveLength: 615 },
    point: 'sleeveLength',
    is: 'fits',
    without: 'too big',
    why: 'a child grows into 55 of sleeve'
  },
  {
    facet: 'growth',
    kind: 'coat',
    cut: { growth: 'child' },
    figures: { chest: 960 },
    point: 'chest',
    is: 'too small',
    without: 'too small',
    why: 'room to grow is wanted, not less than a coat’s'
  }
]

/** Jackets, coats and waistcoats by what is worn under them and how they are built. */
import { type GarmentKind, OUTER } from '../../ids/kinds.ts'
import { type CutRow, type CutWant, free, over, row } from './cut-row.ts'

const JACKET: GarmentKind[] = ['jacket']
const COAT: GarmentKind[] = ['coat']

/** Tailored waists: wrong only where the ease on the body and the waist under the garment's own chest both are. */
const UNDER_CHEST: CutWant = { or: [-120, -75, -35], under: 'chest' }

export const jacketRows: CutRow[] = [
  row(
    'layer',
    'suit',
    JACKET,
    {
      chest: over(60, 100, 145),
      waist: over(50, 110, 175),
      hem: over(60, 110, 175),
      shoulderWidth: over(5, 28, 55),
      sleeveLength: over(-12, 3, 18)
    },
    'chest TM; shoulder RASBAND (13–25 beyond each joint); sleeve TM and shirts’ makers (6–13 of the shirt shows); the rest MEM'
  ),
  row(
    'layer',
    'blazer',
    JACKET,
    {
      chest: over(50, 90, 140),
      waist: over(50, 100, 180),
      hem: over(45, 95, 180),
      shoulderWidth: over(0, 30, 65),
      sleeveLength: over(-12, 3, 25)
    },
    'chest EASE; the rest MEM'
  ),
  row('layer', ['suit', 'blazer'], JACKET, { waist: UNDER_CHEST }, 'a tailor on the waist of a suit jacket; TM 10-227'),
  // sold as fitted it must have a waist on the body: one that is only narrower than its own chest hangs like a box
  row('closeness', 'fitted', JACKET, { waist: over(50, 95, 175) }, 'TM, a tailor on the waist of a suit jacket (50–175)'),
  row(
    'layer',
    'boyfriend',
    JACKET,
    { chest: over(90, 190, 320), waist: free(100), hem: free(70), shoulderWidth: over(20, 85, 150), sleeveLength: over(-20, 10, 70) },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    ['denim', 'overshirt'],
    [...OUTER, 'shirt'],
    {
      chest: over(50, 110, 200),
      waist: free(60),
      hem: free(-60),
      shoulderWidth: over(5, 35, 90),
      sleeveLength: over(-10, 15, 50),
      bodyLength: 'skip'
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'biker',
    JACKET,
    {
      chest: over(35, 65, 120),
      waist: over(40, 80, 160),
      hem: over(-20, 50, 140),
      shoulderWidth: over(0, 18, 45),
      sleeveLength: over(10, 30, 55)
    },
    'chest EASE; the rest MEM: cut long for arms on a bar'
  ),
  // it blouses over the rib; the rib sits where it holds and passes the hip pulled out
  row(
    'layer',
    'bomber',
    OUTER,
    {
      chest: over(70, 170, 280),
      waist: free(),
      hem: free(0, 'waistGirth'),
      shoulderWidth: over(5, 45, 110),
      sleeveLength: over(-10, 20, 60),
      bodyLength: 'skip'
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'field',
    OUTER,
    {
      chest: over(90, 170, 280),
      waist: free(80),
      hem: free(60),
      hip: free(60),
      shoulderWidth: over(5, 45, 110),
      sleeveLength: over(0, 30, 70)
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'waxed',
    OUTER,
    {
      chest: over(110, 190, 300),
      waist: free(100),
      hem: free(80),
      hip: free(80),
      shoulderWidth: over(10, 50, 120),
      sleeveLength: over(10, 35, 70)
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'fleece',
    [...OUTER, 'jumper'],
    { chest: over(30, 120, 260), waist: free(30), hem: free(0), shoulderWidth: over(0, 40, 120), sleeveLength: over(-10, 20, 60) },
    'chest EASE; the rest MEM'
  ),
  // the filling eats 20–40 of the girth inside
  row(
    'layer',
    'puffer',
    [...OUTER, 'waistcoat'],
    {
      chest: over(110, 230, 400),
      waist: free(100),
      hem: free(80),
      hip: free(80),
      shoulderWidth: over(5, 60, 150),
      sleeveLength: over(-5, 30, 70)
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'kimono',
    [...OUTER, 'dress'],
    { chest: over(80, null, null), waist: free(), hem: free(), hip: free(0), shoulderWidth: 'skip', sleeveLength: 'skip' },
    'chest EASE; the rest CP'
  ),
  row(
    'layer',
    'overcoat',
    COAT,
    {
      chest: over(120, 165, 240),
      waist: free(125),
      hip: free(100),
      hem: free(100),
      shoulderWidth: over(10, 38, 75),
      sleeveLength: over(8, 25, 45)
    },
    'chest CUTTER; shoulder RASBAND; sleeve a coat guide (covers the jacket’s cuff); the rest MEM'
  ),
  row(
    'layer',
    'coat',
    COAT,
    {
      chest: over(75, 120, 200),
      waist: free(75),
      hip: free(65),
      hem: free(65),
      shoulderWidth: over(5, 32, 70),
      sleeveLength: over(0, 22, 45)
    },
    'chest a coat guide and a vintage sizing note; the rest MEM'
  ),
  row(
    'layer',
    'fitted-coat',
    COAT,
    {
      chest: over(85, 130, 190),
      waist: over(70, 115, 170),
      hip: free(70),
      hem: free(70),
      shoulderWidth: over(0, 28, 60),
      sleeveLength: over(0, 22, 45)
    },
    'chest EASE; the rest MEM'
  ),
  // buttons are never moved to make the hip smaller; bracelet sleeves are the cut
  row(
    'layer',
    'swing-coat',
    COAT,
    { chest: over(80, 140, 260), waist: free(), hip: free(), hem: free(), shoulderWidth: over(0, 30, 80), sleeveLength: over(-130, 0, 40) },
    'chest EASE; the rest MEM'
  ),
  row(
    'layer',
    'wrap-coat',
    COAT,
    {
      chest: over(90, null, null),
      waist: free(),
      hip: free(70),
      hem: free(70),
      shoulderWidth: over(5, 45, 130),
      sleeveLength: over(-10, 25, 60)
    },
    'chest EASE; the rest MEM'
  ),
  // the strap at the back draws 20–50 in
  row(
    'layer',
    'suit-waistcoat',
    ['waistcoat'],
    { chest: over(35, 65, 115), waist: over(15, 45, 95), shoulderWidth: 'skip' },
    'waist tailors on waistcoats; the rest MEM'
  ),
  row(
    'layer',
    'casual-waistcoat',
    ['waistcoat'],
    { chest: over(50, 120, 260), waist: free(40), hem: free(0), shoulderWidth: 'skip' },
    'MEM'
  )
]

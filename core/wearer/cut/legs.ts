/** Trousers, jeans, shorts, jumpsuits: rise, leg shape, leg length. */
import { LEGGED, LONG_LEGS } from '../../ids/kinds.ts'
import { type CutRow, type CutWant, type Edges, free, over, percent, row } from './cut-row.ts'

/** hip, thigh, knee, calf over the body. The opening is what it is: only a foot judges it. */
const leg = (hip: Edges, thigh: Edges, knee: CutWant, calf: CutWant): CutRow['wants'] => ({
  hip: over(...hip),
  thigh: over(...thigh),
  knee,
  calf
})

export const legRows: CutRow[] = [
  // a low band is held by the hip it sits on; a high one creeps up to the waist: nothing to spare is felt when sitting
  row('rise', ['ultra-low', 'low'], LEGGED, { waist: over(-15, 5, 35) }, 'MEM'),
  row('rise', ['high', 'waist'], LEGGED, { waist: over(0, 13, 38) }, 'MEM'),
  row('leg', 'skinny', LONG_LEGS, leg([0, 20, 50], [-35, 10, 45], over(-20, 15, 50), free(-10)), 'MEM'),
  row('leg', 'slim', LONG_LEGS, leg([25, 45, 75], [20, 45, 75], over(30, 60, 105), free(10)), 'C209; calf MEM'),
  row('leg', 'straight', LONG_LEGS, leg([38, 60, 100], [30, 65, 110], free(50), free(30)), 'C209; calf MEM'),
  row('leg', 'tapered', LONG_LEGS, leg([50, 80, 140], [50, 95, 160], free(50), free(20)), 'MEM'),
  row('leg', 'relaxed', LONG_LEGS, leg([60, 100, 200], [60, 110, 220], free(80), free(50)), 'MEM'),
  row('leg', 'bootcut', LONG_LEGS, leg([20, 45, 80], [15, 45, 85], over(25, 50, 95), free(20)), 'C209; calf MEM'),
  row('leg', 'flared', LONG_LEGS, leg([15, 40, 75], [10, 40, 80], over(15, 45, 90), free(20)), 'C209; calf MEM'),
  // the waist alone holds it up: nothing below it is too big
  row('leg', 'wide', LONG_LEGS, leg([45, null, null], [60, null, null], free(80), free(60)), 'MEM'),
  row('leg', 'palazzo', LONG_LEGS, leg([50, null, null], [80, null, null], free(100), free(80)), 'MEM'),
  row('leg', 'barrel', LONG_LEGS, leg([50, 90, 180], [80, 160, 300], free(100), free(80)), 'MEM'),
  // drawn in by rib or elastic: it passes the foot pulled out, and spare length bags over it
  row(
    'leg',
    'jogger',
    LONG_LEGS,
    { hip: over(20, 90, 200), thigh: over(20, 90, 200), knee: free(20), legOpening: 'skip', inseam: over(-60, -10, 40) },
    'CP; hip MEM'
  ),
  row(
    'pleats',
    'front',
    LEGGED,
    { hip: over(50, 95, 170), thigh: over(50, 110, 190) },
    'CP (each pair of pleats holds 40–60; a pleat that stands open says too small, TM); thigh MEM'
  ),
  // pull-on cuts are straight from hip to waist
  row('closing', ['elastic', 'drawstring'], [...LEGGED, 'skirt'], { hip: over(40, null, null) }, 'CP'),
  // leggings are pulled on too, and cling
  row(
    'leg',
    'legging',
    LONG_LEGS,
    {
      waist: percent(-25, -15, 0),
      hip: percent(-25, -12, 0),
      thigh: percent(-25, -12, 0),
      knee: free(),
      calf: free(),
      legOpening: 'skip',
      inseam: over(-110, -50, 10)
    },
    'hip by published figures of stretch cloth; the rest MEM; inseam CP: they end between the ankle and a hand above it'
  ),

  row('legLength', 'full', LONG_LEGS, { inseam: over(-45, -15, 5) }, 'BREAK (names), MEM (mm): half break in a heel of 25'),
  // a leg that is wide at the hem hangs nearer the floor, 10–15 off it in the shoe that is worn
  row('leg', ['wide', 'flared', 'palazzo', 'bootcut'], LONG_LEGS, { inseam: { shift: [5, 10, 10] } }, 'MEM'),
  row('legLength', 'puddle', LONG_LEGS, { inseam: over(-5, 30, 80) }, 'MEM'),
  row('legLength', 'stacked', LONG_LEGS, { inseam: over(0, 60, 130) }, 'MEM'),
  row('legLength', 'ankle', LONG_LEGS, { inseam: over(-150, -105, -70) }, 'NAMES (at or just above the ankle bone), CP (mm)'),
  row('legLength', 'seven-eighths', LONG_LEGS, { inseam: over(-165, -115, -75) }, 'NAMES'),
  row('legLength', 'cropped', LONG_LEGS, { inseam: over(-230, -160, -90) }, 'NAMES (25–75 above the ankle bone)'),
  row('legLength', 'capri', LONG_LEGS, { inseam: over(-340, -270, -200) }, 'NAMES'),
  row('legLength', 'pedal', LONG_LEGS, { inseam: over(-440, -390, -330) }, 'NAMES (just under the knee)'),
  row('legLength', ['bermuda', 'shorts'], LEGGED, { inseam: 'skip' }, 'NAMES (not judged without a wish)')
]

/** Waists, legs and skirts: each alteration where it is the answer, and where it is forbidden or useless. */
import { asked, cut, likes, type Pair } from './pair.ts'

export const lowerPairs: Pair[] = [
  {
    id: 'waist-in-centre-back',
    direction: 'less',
    answer: { why: '895 − 845 = 50, the back seam holds 74', request: asked('trousers', { waist: 895 }), amount: [50, 74] },
    never: { why: 'no back seam', request: asked('trousers', { waist: 895 }, { made: { backSeam: false } }) }
  },
  {
    id: 'waist-in-side-seams',
    direction: 'less',
    answer: {
      why: '890 − 845 = 45 and no back seam, darts ruled out: the sides hold 50',
      request: asked('trousers', { waist: 890 }, { made: { backSeam: false }, without: ['waist-in-darts', 'waist-in-elastic'] }),
      amount: [44, 50]
    },
    never: { why: 'the waist is too small', request: asked('trousers', { waist: 780 }) }
  },
  {
    id: 'waist-in-darts',
    direction: 'less',
    answer: { why: '885 − 845 = 40 on a skirt', request: asked('skirt', { waist: 885 }, { level: 2 }), amount: [40, 66] },
    never: { why: 'a back seam is the better place', request: asked('trousers', { waist: 885 }) }
  },
  {
    id: 'waist-in-elastic',
    direction: 'less',
    rescue: true,
    answer: {
      why: '885 − 845 = 40 at level 1: a button gives 13, elastic a tenth',
      request: asked('shorts', { waist: 885 }, { level: 1 }),
      amount: [40, 88]
    },
    never: {
      why: 'no gathers in a kilt',
      request: likes('skirt', { waist: 890 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) })
    }
  },
  {
    id: 'waist-elastic-shorten',
    direction: 'less',
    answer: {
      why: 'as it lies it may be no larger than the body, 800: 850 − 800 = 50; a fifth of 850 is 170',
      request: asked('shorts', { waist: 850 }, { made: { elasticWaist: true } }),
      amount: [50, 104]
    },
    never: { why: 'no elastic there', request: asked('shorts', { waist: 890 }) }
  },
  {
    id: 'waist-button-move',
    direction: 'less',
    answer: {
      why: '835 − 825 = 10; over a fly a button gives 13',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1 }),
      amount: [10, 13]
    },
    never: {
      why: 'a zip alone closes it',
      request: likes('skirt', { waist: 835 }, { waist: 800 }, { more: cut({ closing: 'front-zip' }) })
    }
  },
  {
    id: 'waist-button-move',
    direction: 'more',
    answer: {
      why: '785 − 775 = 10; over a fly it gives 10',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1 }),
      amount: [8, 10]
    },
    never: {
      why: 'an overlap of 20 has none to spare',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, made: { overlapMm: 20 } })
    }
  },
  {
    id: 'waist-out-centre-back',
    direction: 'more',
    answer: { why: '800 − 780 = 20, an outlet of 25 gives 2 × 15 = 30', request: asked('trousers', { waist: 780 }), amount: [18, 30] },
    never: { why: 'a felled seam gives nothing', request: asked('jeans', { waist: 780 }) }
  },
  {
    id: 'waist-out-side-seams',
    direction: 'more',
    answer: {
      why: '800 − 765 = 35, no back seam, 20 a side gives 4 × 10 = 40',
      request: asked('trousers', { waist: 765 }, { made: { backSeam: false, seamAllowanceMm: 20 } }),
      amount: [34, 40]
    },
    never: { why: '10 a side gives nothing', request: asked('trousers', { waist: 765 }) }
  },
  {
    id: 'waist-out-panel',
    direction: 'more',
    rescue: true,
    answer: {
      why: '785 − 745 = 40 on felled jeans: only a panel, to 50',
      request: likes('jeans', { waist: 745 }, { waist: 800 }),
      amount: [40, 50]
    },
    never: { why: 'a let-out does it unseen', request: likes('trousers', { waist: 770 }, { waist: 800 }) }
  },
  {
    id: 'undo-earlier',
    direction: 'more',
    answer: {
      why: '800 − 775 = 25 on felled jeans, and the fold inside is told to hold 30',
      request: asked('jeans', { waist: 775 }, { limits: { 'undo-earlier': 30 } }),
      amount: [24, 30]
    },
    never: { why: 'no earlier alteration is told', request: asked('jeans', { waist: 775 }) }
  },
  {
    id: 'seat-in',
    direction: 'less',
    answer: {
      why: '1060 − 1025 = 35, the seat gives 38',
      request: likes('trousers', { hip: 1060 }, { hip: 1000 }, { level: 4 }),
      amount: [34, 38]
    },
    never: { why: 'level 4 work at level 3', request: likes('trousers', { hip: 1060 }, { hip: 1000 }) }
  },
  {
    id: 'seat-out',
    direction: 'more',
    answer: {
      why: '1018 − 1000 = 18, 25 a side gives 2 × 15 = 30',
      request: asked('trousers', { hip: 1000 }, { level: 4, made: { seamAllowanceMm: { seat: 25 } } }),
      amount: [16, 30]
    },
    never: { why: '10 a side gives nothing', request: asked('trousers', { hip: 1000 }, { level: 4 }) }
  },
  {
    id: 'leg-taper',
    direction: 'less',
    answer: { why: '700 − 680 = 20 at the thigh', request: asked('trousers', { thigh: 700 }), amount: [20, 76] },
    never: { why: 'a felled inside leg makes it level 4', request: asked('jeans', { thigh: 700 }) }
  },
  {
    id: 'thigh-out',
    direction: 'more',
    answer: {
      why: '605 − 590 = 15, 16 a side gives 4 × 6 = 24',
      request: asked('trousers', { thigh: 590 }, { made: { seamAllowanceMm: 16 } }),
      amount: [14, 24]
    },
    never: { why: 'felled inside leg, 10 at the side: nothing', request: asked('jeans', { thigh: 590 }) }
  },
  {
    id: 'thigh-panel',
    direction: 'more',
    rescue: true,
    answer: {
      why: '612 − 570 = 42, no seam gives it, a gusset holds 60',
      request: likes('jeans', { thigh: 570 }, { thigh: 620 }),
      amount: [42, 60]
    },
    never: {
      why: 'let out inside, unseen, where the seams hold it',
      request: likes('trousers', { thigh: 598 }, { thigh: 620 }, { made: { seamAllowanceMm: 25 } })
    }
  },
  {
    id: 'leg-shorten-plain',
    direction: 'less',
    answer: {
      why: '830 − 785 = 45, to the ideal 65, a plain hem',
      request: asked('trousers', { inseam: 830 }, { made: { hemKind: 'plain' }, level: 2 }),
      amount: [60, 90]
    },
    never: { why: 'a blind hem stays blind', request: asked('trousers', { inseam: 830 }, { level: 2 }) }
  },
  {
    id: 'leg-shorten-keep-edge',
    direction: 'less',
    answer: {
      why: '870 − 785 = 85, to the ideal 105, the fold holds 125',
      request: asked('jeans', { inseam: 870 }, { level: 2 }),
      amount: [100, 125]
    },
    never: { why: 'no original edge', request: asked('jeans', { inseam: 870 }, { level: 2, made: { hemKind: 'plain' } }) }
  },
  {
    id: 'leg-shorten-blind',
    direction: 'less',
    answer: {
      why: '830 − 785 = 45, to the ideal 65, tailored',
      request: asked('trousers', { inseam: 830 }, { level: 2 }),
      amount: [60, 90]
    },
    never: { why: 'jeans have none', request: asked('jeans', { inseam: 830 }) }
  },
  {
    id: 'leg-lengthen-hem',
    direction: 'more',
    answer: { why: '740 − 730 = 10, a hem of 40 keeps 25', request: asked('trousers', { inseam: 730 }, { level: 2 }), amount: [8, 15] },
    never: {
      why: 'cloth that keeps needle holes',
      request: asked('trousers', { inseam: 730 }, { level: 2, more: { cloth: { traits: ['silk'] } } })
    }
  },
  {
    id: 'leg-lengthen-facing',
    direction: 'more',
    answer: {
      why: '740 − 712 = 28, all of a hem of 40 but 6',
      request: asked('trousers', { inseam: 712 }, { level: 2 }),
      amount: [26, 34]
    },
    never: { why: 'the hem alone gives it', request: asked('trousers', { inseam: 738 }, { level: 2 }) }
  },
  {
    id: 'leg-lengthen-band',
    direction: 'more',
    rescue: true,
    answer: {
      why: '751 − 705 = 46 on casual legs; a hem of 40 gives 34, a band 50 at most',
      request: likes('trousers', { inseam: 705 }, { inseam: 755 }, { level: 2, made: { tailored: false } }),
      amount: [45, 50]
    },
    never: { why: 'tailored legs take none', request: likes('trousers', { inseam: 700 }, { inseam: 755 }, { level: 2 }) }
  },
  {
    id: 'rise-shorten',
    direction: 'less',
    rescue: true,
    answer: {
      why: '295 − (270 + 7) = 18 against a favourite',
      request: asked('trousers', { frontRise: 295 }, { level: 5, liked: { frontRise: 270 } }),
      amount: [18, 25]
    },
    never: { why: 'level 5 work at level 4', request: asked('trousers', { frontRise: 295 }, { level: 4, liked: { frontRise: 270 } }) }
  },
  {
    id: 'rise-deepen',
    direction: 'more',
    rescue: true,
    answer: {
      why: '405 − 4 − 393 = 8 against a favourite',
      request: asked('trousers', { backRise: 393 }, { level: 4, liked: { backRise: 405 } }),
      amount: [6, 10]
    },
    never: { why: 'the rise is liked as it is', request: asked('trousers', { backRise: 405 }, { level: 4, liked: { backRise: 405 } }) }
  },
  {
    id: 'calf-out',
    direction: 'more',
    answer: {
      why: '386 − 373 = 13, 20 a side gives 2 × 10 = 20',
      request: likes('trousers', { calf: 373 }, { calf: 395 }, { level: 2, made: { seamAllowanceMm: 20 } }),
      amount: [13, 20]
    },
    never: { why: 'a felled inside leg', request: likes('jeans', { calf: 373 }, { calf: 395 }) }
  },
  {
    id: 'hem-widen',
    direction: 'more',
    rescue: true,
    answer: {
      why: '352 − 305 = 47, a slit opens 50 at most',
      request: likes('trousers', { legOpening: 305 }, { legOpening: 360 }),
      amount: [46, 50]
    },
    never: { why: 'never in a lined skirt', request: likes('skirt', { sweep: 1000 }, { sweep: 1060 }, { made: { lined: true } }) }
  },
  {
    id: 'skirt-shorten',
    direction: 'less',
    answer: {
      why: '680 − (620 + 12) = 48',
      request: asked('skirt', { skirtLength: 680 }, { liked: { skirtLength: 620 } }),
      amount: [48, 75]
    },
    never: {
      why: 'at 290, 250 must stay: 40 would go, but nothing is too long',
      request: asked('skirt', { skirtLength: 290 }, { liked: { skirtLength: 290 } })
    }
  },
  {
    id: 'skirt-lengthen',
    direction: 'more',
    answer: {
      why: '640 − 7 − 620 = 13, a hem of 40 keeps 10',
      request: asked('skirt', {}, { liked: { skirtLength: 640 } }),
      amount: [12, 30]
    },
    never: { why: 'a hem of 10 has none to give', request: asked('skirt', {}, { liked: { skirtLength: 640 }, made: { hemDepthMm: 10 } }) }
  },
  {
    id: 'skirt-shorten-from-waist',
    direction: 'less',
    answer: {
      why: '620 − (580 + 12) = 28 with the hem ruled out; the waist grows by (1040 − 800) ÷ 200 of it, 34, and stays inside',
      request: asked('skirt', { waist: 800 }, { level: 4, liked: { skirtLength: 580 }, without: ['skirt-shorten'] }),
      amount: [28, 50]
    },
    never: { why: 'the hem is the easy way', request: asked('skirt', { skirtLength: 680 }, { level: 3, liked: { skirtLength: 620 } }) }
  },
  {
    id: 'skirt-sides-in',
    direction: 'less',
    answer: {
      why: 'waist 885 − 845 = 40 and hip 1140 − 1100 = 40 on one line',
      request: asked('skirt', { waist: 885, hip: 1140 }),
      amount: [40, 100]
    },
    never: { why: 'too small everywhere', request: asked('skirt', { waist: 770, hip: 1000 }) }
  },
  {
    id: 'skirt-sides-out',
    direction: 'more',
    answer: {
      why: 'waist 800 − 770 = 30 and hip 1020 − 1000 = 20, 20 a side gives 40',
      request: asked('skirt', { waist: 770, hip: 1000 }, { made: { seamAllowanceMm: 20, outletMm: 10, darts: false } }),
      amount: [30, 40]
    },
    never: {
      why: 'taffeta keeps its needle holes',
      request: asked('skirt', { waist: 770, hip: 1000 }, { made: { seamAllowanceMm: 20 }, more: { cloth: { traits: ['taffeta'] } } })
    }
  },
  {
    id: 'release-darts',
    direction: 'more',
    answer: {
      why: '800 − 785 = 15; the button gives 10, four darts 40',
      request: asked('skirt', { waist: 785 }, { level: 2 }),
      amount: [14, 40]
    },
    never: { why: 'no darts', request: asked('skirt', { waist: 785 }, { level: 2, made: { darts: false } }) }
  },
  {
    id: 'yoke-darts',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40 at level 2, past what the button gives',
      request: likes('jeans', { waist: 865 }, { waist: 800 }, { level: 2 }),
      amount: [40, 64]
    },
    never: { why: 'the centre back does it unseen at level 3', request: likes('jeans', { waist: 845 }, { waist: 800 }) }
  },
  {
    id: 'drawstring-add',
    direction: 'less',
    rescue: true,
    answer: {
      why: '905 − 825 = 80, more than the seams of one size and a cord unseen under a shirt, elastic ruled out: 15 in 100 is 136',
      request: likes('shorts', { waist: 905 }, { waist: 800 }, { level: 2, without: ['waist-in-elastic'] }),
      amount: [80, 106]
    },
    never: {
      why: 'never a cord on children’s clothes',
      request: likes('shorts', { waist: 905 }, { waist: 800 }, { level: 2, without: ['waist-in-elastic'], more: { use: 'child' } })
    }
  },
  {
    id: 'pleat-reset',
    direction: 'less',
    answer: {
      why: '880 − 825 = 55; pleats give 80 in all',
      request: likes('skirt', { waist: 880 }, { waist: 800 }, { more: cut({ silhouette: 'pleated' }) }),
      amount: [54, 80]
    },
    never: { why: 'no pleats', request: likes('skirt', { waist: 880 }, { waist: 800 }, { more: cut({ silhouette: 'pencil' }) }) }
  },
  {
    id: 'pleat-release',
    direction: 'more',
    answer: {
      why: '785 − 760 = 25, no cloth at the seams, a pair of pleats holds 40',
      request: likes(
        'trousers',
        { waist: 760, hip: 990 },
        { waist: 800 },
        { level: 2, made: { outletMm: 10 }, more: cut({ pleats: 'front' }) }
      ),
      amount: [25, 40]
    },
    never: { why: 'no pleats', request: likes('trousers', { waist: 760 }, { waist: 800 }, { level: 2, made: { outletMm: 10 } }) }
  },
  {
    id: 'gathers-reset',
    direction: 'less',
    answer: {
      why: '900 − 825 = 75 with elastic and cord ruled out',
      request: likes(
        'skirt',
        { waist: 900 },
        { waist: 800 },
        { without: ['waist-in-elastic', 'drawstring-add'], more: cut({ silhouette: 'gathered' }) }
      ),
      amount: [74, 100]
    },
    never: {
      why: 'elastic holds the gathers',
      request: likes('skirt', { waist: 900 }, { waist: 800 }, { more: cut({ silhouette: 'gathered', closing: 'elastic' }) })
    }
  },
  {
    id: 'hook-move',
    direction: 'less',
    answer: {
      why: '835 − 825 = 10, a hook gives 13',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1, more: cut({ closing: 'hook' }) }),
      amount: [10, 13]
    },
    never: {
      why: 'a fly has its button',
      request: likes('trousers', { waist: 835 }, { waist: 800 }, { level: 1, more: cut({ closing: 'fly' }) })
    }
  },
  {
    id: 'hook-move',
    direction: 'more',
    answer: {
      why: '785 − 775 = 10, a hook gives 13',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, more: cut({ closing: 'hook' }) }),
      amount: [10, 13]
    },
    never: {
      why: 'an overlap of 20 has none to spare',
      request: likes('trousers', { waist: 775 }, { waist: 800 }, { level: 1, made: { overlapMm: 20 }, more: cut({ closing: 'hook' }) })
    }
  },
  {
    id: 'buckle-move',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40, the straps of a kilt give 60',
      request: likes('skirt', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) }),
      amount: [40, 60]
    },
    never: { why: 'nothing buckles', request: likes('skirt', { waist: 865 }, { waist: 800 }, { level: 1 }) }
  },
  {
    id: 'buckle-move',
    direction: 'more',
    answer: {
      why: '785 − 740 = 45, the straps of a kilt give 60',
      request: likes('skirt', { waist: 740 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'kilt' }) }),
      amount: [45, 60]
    },
    never: {
      why: '785 − 720 = 65, and nothing buckles',
      request: likes('skirt', { waist: 720 }, { waist: 800 }, { level: 1, more: cut({ closing: 'back-zip' }) })
    }
  },
  {
    id: 'tie-move',
    direction: 'less',
    answer: {
      why: '865 − 825 = 40, a wrap gives 60',
      request: likes('dress', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'wrap' }) }),
      amount: [40, 60]
    },
    never: {
      why: 'nothing is tied',
      request: likes('dress', { waist: 865 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'sheath' }) })
    }
  },
  {
    id: 'tie-move',
    direction: 'more',
    answer: {
      why: '785 − 740 = 45, a wrap gives 60',
      request: likes('dress', { waist: 740 }, { waist: 800 }, { level: 1, more: cut({ silhouette: 'wrap' }) }),
      amount: [45, 60]
    },
    never: {
      why: 'an overlap of 120 must stay',
      request: likes('dress', { waist: 740 }, { waist: 800 }, { level: 1, made: { overlapMm: 120 }, more: cut({ silhouette: 'wrap' }) })
    }
  },
  {
    id: 'turn-up-let-down',
    direction: 'more',
    answer: {
      why: '751 − 715 = 36; turn-ups of 40 hold 80, less a hem of 30',
      request: likes('trousers', { inseam: 715 }, { inseam: 755 }, { level: 2, made: { hemDepthMm: 40 }, more: cut({ turnUps: 'made' }) }),
      amount: [35, 50]
    },
    never: { why: 'no turn-ups', request: likes('trousers', { inseam: 715 }, { inseam: 755 }, { level: 2, made: { hemDepthMm: 40 } }) }
  },
  {
    id: 'turn-up-shorten',
    direction: 'less',
    answer: {
      why: '800 − 762 = 38',
      request: likes('trousers', { inseam: 800 }, { inseam: 755 }, { level: 2, more: cut({ turnUps: 'made' }) }),
      amount: [38, 46]
    },
    never: { why: 'no turn-ups', request: likes('trousers', { inseam: 800 }, { inseam: 755 }, { level: 2 }) }
  },
  {
    id: 'hem-unroll',
    direction: 'more',
    answer: {
      why: '751 − 720 = 31, a roll of 40 opened',
      request: likes('jeans', { inseam: 720 }, { inseam: 755 }, { level: 1, made: { hemDepthMm: 40 }, more: cut({ turnUps: 'rolled' }) }),
      amount: [30, 40]
    },
    never: {
      why: 'sewn turn-ups are unpicked, not unrolled',
      request: likes('jeans', { inseam: 720 }, { inseam: 755 }, { level: 1, more: cut({ turnUps: 'made' }) })
    }
  },
  {
    id: 'growth-tuck',
    direction: 'less',
    answer: {
      why: '600 − 567 = 33; a tuck takes 60 and nothing is cut',
      request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 1, more: { use: 'child' } }),
      amount: [32, 60]
    },
    never: { why: 'grown people do not grow', request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 1 }) }
  },
  {
    id: 'growth-hem',
    direction: 'less',
    answer: {
      why: '640 − 567 = 73, more than a tuck takes',
      request: likes('trousers', { inseam: 640 }, { inseam: 560 }, { level: 2, more: { use: 'child' } }),
      amount: [72, 100]
    },
    never: { why: 'a tuck does it', request: likes('trousers', { inseam: 600 }, { inseam: 560 }, { level: 2, more: { use: 'child' } }) }
  },
  {
    id: 'hem-layered',
    direction: 'less',
    answer: {
      why: '700 − 632 = 68 on three layers',
      request: likes('dress', { skirtLength: 700 }, { skirtLength: 620 }, { level: 4, more: cut({ layers: 'several' }) }),
      amount: [68, 80]
    },
    never: { why: 'one layer is a plain hem', request: likes('dress', { skirtLength: 700 }, { skirtLength: 620 }, { level: 4 }) }
  }
]

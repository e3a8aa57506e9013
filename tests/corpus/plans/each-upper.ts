/** Bodies, shoulders and sleeves: each alteration where it is the answer, and where it is forbidden or useless. */
import { asked, cut, likes, type Pair } from './pair.ts'

export const upperPairs: Pair[] = [
  {
    id: 'sides-in',
    direction: 'less',
    answer: {
      why: 'chest 1180 − 1133 = 47, waist 1050 − 1015 = 35, hem 1210 − 1163 = 47',
      request: likes('shirt', { chest: 1180, waist: 1050, hem: 1210 }, { chest: 1120, waist: 990, hem: 1150 }, { level: 2 }),
      amount: [47, 64]
    },
    never: {
      why: 'everything is too small',
      request: likes('shirt', { chest: 1060, waist: 900, hem: 1060 }, { chest: 1120, waist: 990, hem: 1150 }, { level: 4 })
    }
  },
  {
    id: 'sides-out',
    direction: 'more',
    answer: {
      why: '1010 − 990 = 20, 20 a side unfelled gives 40',
      request: asked(
        'shirt',
        { chest: 990 },
        { level: 2, made: { seamAllowanceMm: 20, felledSeams: false }, without: ['front-button-move'] }
      ),
      amount: [18, 40]
    },
    never: { why: 'felled sides', request: asked('shirt', { chest: 990 }, { level: 2 }) }
  },
  {
    id: 'back-darts',
    direction: 'less',
    answer: { why: '1080 − 1020 = 60 at the waist alone', request: asked('shirt', { waist: 1080 }, { level: 2 }), amount: [60, 100] },
    never: { why: 'a knit takes none', request: asked('knit-top', { waist: 1080 }, { level: 2 }) }
  },
  {
    id: 'centre-back-in',
    direction: 'less',
    answer: {
      why: '1010 − 978 = 32 with sides and buttons ruled out',
      request: asked('jacket', { waist: 1010 }, { level: 4, without: ['sides-in', 'front-button-move'] }),
      amount: [32, 38]
    },
    never: { why: 'no back seam', request: asked('jacket', { waist: 1010 }, { level: 4, made: { backSeam: false } }) }
  },
  {
    id: 'side-panels',
    direction: 'more',
    rescue: true,
    answer: {
      why: '992 − 950 = 42 on a knit, 7 a side gives nothing, panels 60',
      request: likes('knit-top', { chest: 950 }, { chest: 1000 }),
      amount: [42, 60]
    },
    never: {
      why: 'a shift is too plain for them',
      request: likes('dress', { chest: 950 }, { chest: 1000 }, { more: cut({ silhouette: 'shift' }) })
    }
  },
  {
    id: 'body-shorten',
    direction: 'less',
    answer: {
      why: '760 − (700 + 10) = 50',
      request: asked('shirt', { bodyLength: 760 }, { level: 2, liked: { bodyLength: 700 } }),
      amount: [50, 70]
    },
    never: { why: 'too short already', request: asked('shirt', { bodyLength: 640 }, { level: 2, liked: { bodyLength: 700 } }) }
  },
  {
    id: 'body-lengthen',
    direction: 'more',
    answer: {
      why: '740 − 6 − 725 = 9, a hem of 30 keeps 10',
      request: asked('shirt', { bodyLength: 725 }, { level: 2, made: { hemDepthMm: 30 }, liked: { bodyLength: 740 } }),
      amount: [8, 20]
    },
    never: { why: 'too long already', request: asked('shirt', { bodyLength: 760 }, { level: 2, liked: { bodyLength: 700 } }) }
  },
  {
    id: 'sleeve-shorten-cuff',
    direction: 'less',
    answer: {
      why: '650 − 640 = 10, to the ideal 32, the placket allows 45',
      request: asked('shirt', { sleeveLength: 650 }),
      amount: [10, 45]
    },
    never: { why: 'a jumper has no such cuff', request: asked('jumper', { sleeveLength: 650 }) }
  },
  {
    id: 'sleeve-shorten-hem',
    direction: 'less',
    answer: {
      why: '650 − 617 = 33 on a jersey top',
      request: likes('knit-top', { sleeveLength: 650 }, { sleeveLength: 610 }),
      amount: [32, 40]
    },
    never: { why: 'a rib comes off first', request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }, { level: 5 }) }
  },
  {
    id: 'sleeve-shorten-lined',
    direction: 'less',
    answer: {
      why: '650 − 618 = 32, sham buttons allow 38',
      request: asked('jacket', { sleeveLength: 650 }, { level: 4 }),
      amount: [32, 38]
    },
    never: { why: 'the buttons work', request: asked('jacket', { sleeveLength: 650 }, { level: 4, made: { workingCuffButtons: true } }) }
  },
  {
    id: 'sleeve-shorten-head',
    direction: 'less',
    answer: {
      why: '650 − 618 = 32 with working buttons, level 5',
      request: asked('jacket', { sleeveLength: 650 }, { level: 5, made: { workingCuffButtons: true } }),
      amount: [32, 38]
    },
    never: {
      why: 'level 5 work at level 4',
      request: asked('jacket', { sleeveLength: 650 }, { level: 4, made: { workingCuffButtons: true } })
    }
  },
  {
    id: 'sleeve-lengthen',
    direction: 'more',
    answer: {
      why: '611 − 595 = 16, a lined sleeve gives 19',
      request: likes('jacket', { sleeveLength: 595 }, { sleeveLength: 615 }, { level: 4 }),
      amount: [15, 19]
    },
    never: {
      why: 'a hem of 10 has none to give',
      request: likes('jacket', { sleeveLength: 595 }, { sleeveLength: 615 }, { level: 4, made: { hemDepthMm: 10 } })
    }
  },
  {
    id: 'sleeve-taper',
    direction: 'less',
    answer: { why: '490 − 460 = 30 at the upper sleeve', request: asked('shirt', { bicep: 490 }, { level: 2 }), amount: [30, 76] },
    never: { why: 'too tight already', request: asked('shirt', { bicep: 330 }, { level: 2 }) }
  },
  {
    id: 'cuff-in',
    direction: 'less',
    answer: { why: '300 − 260 = 40, a button gives 20', request: asked('shirt', { cuff: 300 }, { level: 2 }), amount: [40, 50] },
    never: { why: 'a button does it', request: asked('shirt', { cuff: 270 }, { level: 1 }) }
  },
  {
    id: 'cuff-button-move',
    direction: 'less',
    answer: { why: '272 − 260 = 12, a button gives 20', request: asked('shirt', { cuff: 272 }, { level: 1 }), amount: [12, 20] },
    never: { why: 'too tight already', request: asked('shirt', { cuff: 175 }, { level: 1, without: ['cuff-button-move'] }) }
  },
  {
    id: 'cuff-button-move',
    direction: 'more',
    answer: { why: '185 − 175 = 10, a button gives 20', request: asked('shirt', { cuff: 175 }, { level: 1 }), amount: [10, 20] },
    never: { why: 'a jacket has no such button', request: asked('jacket', { cuff: 250 }, { level: 5 }) }
  },
  {
    id: 'shoulder-in',
    direction: 'less',
    answer: {
      why: '470 − 437 = 33, a shirt shoulder gives 19 a side',
      request: likes('shirt', { shoulderWidth: 470 }, { shoulderWidth: 430 }, { level: 4 }),
      amount: [33, 38]
    },
    never: { why: 'a jacket shoulder is level 5', request: likes('jacket', { shoulderWidth: 450 }, { shoulderWidth: 430 }, { level: 4 }) }
  },
  {
    id: 'shoulder-pads',
    direction: 'more',
    answer: {
      why: '1010 − 1002 = 8, a thinner pad gives 10, buttons ruled out',
      request: asked('jacket', { chest: 1002 }, { level: 3, without: ['front-button-move'] }),
      amount: [10, 10]
    },
    never: { why: 'a shirt has none', request: asked('shirt', { chest: 1002 }) }
  },
  {
    id: 'front-button-move',
    direction: 'less',
    answer: {
      why: '935 − 925 = 10; a jacket gives 13',
      request: likes('jacket', { waist: 935, chest: 1058 }, { waist: 900 }, { level: 1 }),
      amount: [10, 13]
    },
    never: {
      why: 'a bomber closes with a zip',
      request: likes('jacket', { waist: 935, chest: 1058 }, { waist: 900 }, { level: 1, more: cut({ layer: 'bomber' }) })
    }
  },
  {
    id: 'front-button-move',
    direction: 'more',
    answer: {
      why: '885 − 875 = 10; the button stands 30 from the edge and its own half must stay on it: 17',
      request: likes('jacket', { waist: 875, chest: 1045 }, { waist: 900 }, { level: 1 }),
      amount: [10, 17]
    },
    never: {
      why: 'an overlap of 25 has none to spare',
      request: likes('jacket', { waist: 875, chest: 1045 }, { waist: 900 }, { level: 1, made: { overlapMm: 25 } })
    }
  },
  {
    id: 'strap-shorten',
    direction: 'less',
    answer: { why: '340 − (300 + 12) = 28', request: asked('dress', { strap: 340 }, { liked: { strap: 300 } }), amount: [28, 60] },
    never: { why: 'too short already', request: asked('dress', { strap: 260 }, { liked: { strap: 300 } }) }
  },
  {
    id: 'lift-at-shoulder',
    direction: 'less',
    answer: {
      why: '445 − (425 + 12) = 8, the shoulder seam gives 25',
      request: asked('dress', { napeToWaist: 445 }, { liked: { napeToWaist: 425 } }),
      amount: [8, 25]
    },
    never: { why: 'too short already', request: asked('dress', { napeToWaist: 400 }, { liked: { napeToWaist: 425 } }) }
  },
  {
    id: 'dress-waist-raise',
    direction: 'less',
    answer: {
      why: '470 − (425 + 12) = 33, more than the shoulder seam gives',
      request: asked('dress', { napeToWaist: 470 }, { level: 4, liked: { napeToWaist: 425 } }),
      amount: [32, 38]
    },
    never: { why: 'level 4 work at level 3', request: asked('dress', { napeToWaist: 470 }, { level: 3, liked: { napeToWaist: 425 } }) }
  },
  {
    id: 'dress-waist-lower',
    direction: 'more',
    answer: {
      why: '425 − 7 − 410 = 8, 25 of cloth keeps 10',
      request: asked('dress', { napeToWaist: 410 }, { level: 4, made: { seamAllowanceMm: 25 }, liked: { napeToWaist: 425 } }),
      amount: [8, 15]
    },
    never: {
      why: '10 of cloth has none to give',
      request: asked('dress', { napeToWaist: 410 }, { level: 4, made: { seamAllowanceMm: 10 }, liked: { napeToWaist: 425 } })
    }
  },
  {
    id: 'neckline-take-in',
    direction: 'less',
    answer: { why: '600 − (560 + 7) = 33', request: asked('jumper', { neck: 600 }, { liked: { neck: 560 } }), amount: [32, 38] },
    never: { why: 'a shirt collar moves its button', request: asked('shirt', { neck: 420 }, { level: 5 }) }
  },
  {
    id: 'neck-button-move',
    direction: 'less',
    answer: { why: '420 − 412 = 8', request: asked('shirt', { neck: 420 }, { level: 1 }), amount: [8, 13] },
    never: { why: 'it suits', request: asked('shirt', {}, { level: 1 }) }
  },
  {
    id: 'neck-button-move',
    direction: 'more',
    answer: { why: '385 − 376 = 9', request: asked('shirt', { neck: 376 }, { level: 1 }), amount: [8, 13] },
    never: { why: 'it suits', request: asked('shirt', {}, { level: 1 }) }
  },
  {
    id: 'bodice-boned-in',
    direction: 'less',
    answer: {
      why: '970 − 933 = 37, bones out and in again: 38 blends in',
      request: likes('dress', { chest: 970 }, { chest: 920 }, { level: 5, more: cut({ boning: 'boned' }) }),
      amount: [36, 50]
    },
    never: {
      why: 'level 5 work at level 4',
      request: likes('dress', { chest: 970 }, { chest: 920 }, { level: 4, more: cut({ boning: 'boned' }) })
    }
  },
  {
    id: 'strapless-draw',
    direction: 'less',
    answer: {
      why: '955 − 933 = 22 with the sides ruled out; elastic in the top edge gives 40',
      request: likes('dress', { chest: 955 }, { chest: 920 }, { level: 2, without: ['sides-in'], more: cut({ silhouette: 'strapless' }) }),
      amount: [22, 40]
    },
    never: {
      why: 'it hangs from its shoulders',
      request: likes('dress', { chest: 955 }, { chest: 920 }, { level: 2, without: ['sides-in'] })
    }
  },
  {
    id: 'lace-back',
    direction: 'less',
    rescue: true,
    answer: {
      why: '980 − 933 = 47; the top edge gives 40, and bones are level 5 work',
      request: likes('dress', { chest: 980 }, { chest: 920 }, { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned' }) }),
      amount: [46, 60]
    },
    never: {
      why: 'taken in with the bones out at level 5',
      request: likes('dress', { chest: 980 }, { chest: 920 }, { level: 5, more: cut({ silhouette: 'strapless', boning: 'boned' }) })
    }
  },
  {
    id: 'lace-back',
    direction: 'more',
    rescue: true,
    answer: {
      why: '912 − 865 = 47, no seam gives it',
      request: likes('dress', { chest: 865 }, { chest: 920 }, { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned' }) }),
      amount: [46, 50]
    },
    never: {
      why: 'buttons close its back',
      request: likes(
        'dress',
        { chest: 860 },
        { chest: 920 },
        { level: 4, more: cut({ silhouette: 'strapless', boning: 'boned', closing: 'buttons' }) }
      )
    }
  },
  {
    id: 'waistcoat-back-in',
    direction: 'less',
    answer: {
      why: '960 − 905 = 55, the back gives 76',
      request: likes('waistcoat', { waist: 960, chest: 1020 }, { waist: 880 }),
      amount: [54, 76]
    },
    never: { why: 'too small already', request: likes('waistcoat', { waist: 840 }, { waist: 880 }, { level: 5 }) }
  },
  {
    id: 'knit-take-in',
    direction: 'less',
    answer: {
      why: '1060 − 1013 = 47, an overlocked side gives 60',
      request: likes('jumper', { chest: 1060 }, { chest: 1000 }, { level: 4 }),
      amount: [46, 60]
    },
    never: { why: 'jersey is taken in as it is sewn', request: likes('knit-top', { chest: 1060 }, { chest: 1000 }, { level: 4 }) }
  },
  {
    id: 'rib-rejoin',
    direction: 'less',
    answer: {
      why: '650 − 617 = 33',
      request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }, { level: 4 }),
      amount: [32, 40]
    },
    never: { why: 'a knitted rib is level 4 work', request: likes('jumper', { sleeveLength: 650 }, { sleeveLength: 610 }) }
  },
  {
    id: 'rib-rejoin-body',
    direction: 'less',
    answer: {
      why: '740 − 690 = 50 above the rib of a sweatshirt',
      request: likes('knit-top', { bodyLength: 740 }, { bodyLength: 680 }, { more: cut({ knit: 'sweatshirt' }) }),
      amount: [50, 60]
    },
    never: { why: 'no rib', request: likes('knit-top', { bodyLength: 740 }, { bodyLength: 680 }) }
  },
  {
    id: 'sleeve-lengthen-facing',
    direction: 'more',
    answer: {
      why: '611 − 585 = 26, more than 19; all of a hem of 40 but 6',
      request: likes('jacket', { sleeveLength: 585 }, { sleeveLength: 615 }, { level: 4 }),
      amount: [25, 34]
    },
    never: { why: 'the hem alone gives it', request: likes('jacket', { sleeveLength: 600 }, { sleeveLength: 615 }, { level: 4 }) }
  },
  {
    id: 'underarm-raise',
    direction: 'less',
    answer: {
      why: '480 − 455 = 25 without sleeves',
      request: likes('dress', { armhole: 480 }, { armhole: 440 }, { level: 2, more: cut({ sleeve: 'sleeveless' }) }),
      amount: [25, 40]
    },
    never: {
      why: 'sleeves are set there',
      request: likes('dress', { armhole: 480 }, { armhole: 440 }, { level: 2, more: cut({ sleeve: 'long' }) })
    }
  }
]

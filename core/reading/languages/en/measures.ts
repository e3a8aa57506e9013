/** What is measured, in English: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      chest
      bust
      breast
      bust line
      bustline
      chest size
      chest measurement
      bust measurement
      bust size
      breasts
      chst
      full bust
      bst
      brst
      bust measures
      chest measures
      fullest part of bust
      bust circ
      around bust line
    `,
    'chest flat': `
      // between the pits
      pit to pit
      pit 2 pit
      p p
      pits to pits
      armpit to armpit
      arm pit to arm pit
      p2p
      ptp
      p t p
      wide at the pits
      wide at pits
      wide at the armpits
      at the pits
      at the armpits
      p to p
      pit pit
      pit-pit
      pit to pit chest
      pit to pit bust
      pit to pit width
      armpit to pit
      pit to armpit
      pit to pits
      pit-to-pit measurement
      armpits
      pits
      armpit
      pit
      armpit across
      armpit width
      pit width
      across the pits
      across the armpits
      across armpits
      width armpit to armpit
      width pit to pit
      across the armpit
      across pits
      across the pit
      pit to pit flat
      pit across
      pits across
      from one armpit to the other
      one armpit to the other
      // between the underarms and armholes
      underarm to underarm
      under arm to under arm
      under arm to underarm
      underarm to under arm
      underarm width
      seam to seam under arms
      armhole to armhole
      sleeve to sleeve
      underarm across
      across underarm
      across underarms
      across the underarm
      across the underarms
      width underarm
      width at underarm
      width at underarms
      width under arms
      width across underarms
      across at underarm
      across at the underarm
      underarm seam to underarm seam
      side to side under the arms
      armhole to arm hole
      under the arms
      under arms
      across under the arms
      across under arms
      beneath the arms
      below the arms
      across below the arms
      one underarm to the other
      width across body under the sleeves
      under the sleeves
      across under the sleeves
      // the chest, the bust, the body laid flat
      half chest
      half bust
      chest width
      bust width
      across chest
      across the chest
      across bust
      across the bust
      pitt to pitt
      width at bust
      width at chest
      width at the bust
      chest across
      bust across
      flat chest
      flat bust
      across body
      across the body
    `,
    'chest around': `
      all round when buttoned
      all around when buttoned
      around when buttoned
      round when buttoned
      buttoned up around
      all round when fastened
      all around when fastened
      all the way round when buttoned
      chest circumference
      bust circumference
      around the bust
      around bust
      around the chest
      around chest
    `,
    waist: `
      elastic waist
      elasticated waist
      elastic waistband
      elasticated waistband
      drawstring waist
      stretch waist
      stretchy waist
      waist elastic
      waist
      waistline
      waist line
      waist band
      waistband
      waste
      natural waist
      waist measurement
      waist size
      top of waist
      top waist
      wasit
      wiast
      waists
      waist actual
      actual waist
    `,
    'waist flat': `
      half waist
      waist width
      waistband width
      across waist
      across the waist
      across waistband
      across the waistband
      waist across
      width at waist
      width at the waist
      waist flat
      flat waist
      across at waist
      waistband across
      width of waist
      width across waist
      waist seam to seam
    `,
    'waist around': `
      waist circumference
      around the waist
      around waist
      round the waist
    `,
    hip: `
      hip
      hipline
      hip line
      seat
      widest part of hips
      widest point of hips
      hip measurement
      hip size
      hips size
      full hip
      low hip
      bum
      bottom hip
    `,
    'hip flat': `
      half hip
      half hips
      hip width
      hips width
      across hips
      across the hips
      across hip
      across the hip
      across the seat
      width at hips
      width at hip
      width at the hips
      hips across
      hip across
      width of hips
      flat hip
      flat hips
    `,
    'hip around': `
      hip circumference
      around the hips
      around hips
      around the hip
      round the hips
    `,
    hem: `
      bottom hem width
      hem of top
    `,
    sweep: `
      sweep
      skirt sweep
      hem circumference
      hem sweep
      bottom sweep
      hemline sweep
    `,
    bottomEdge: `
      // the hem
      hem
      hemline
      bottom hem
      hem width
      width at hem
      ribbed hem
      hem opening
      across hem
      across the hem
      hem edge
      width of hem
      bottom of hem
      around hem
      around the hem
      across at hem
      across the bottom hem
      // the bottom
      bottom
      bottoms
      bottom width
      bottom edge
      width at bottom
      bottom band
      bottom opening
      across bottom
      across the bottom
      btm
      bottom layer
      bottom tier
      bottom frill
      around bottom
      around the bottom
      bottom rib
      // a band, a welt, the last layer
      welt
      lowest layer
      lowest tier
      lowest frill
      ribbed welt
      waist rib
    `,
    bicep: `
      bicep
      biceps
      upper arm
      arm width
      sleeve width
      upper sleeve
      upper sleeve width
      sleeve circumference
      arm circumference
      upperarm
      bicep width
      arm girth
      around the arm
      across the arm
      arm opening width
      width of sleeve
      around upper arm
      around bicep
      around biceps
      around sleeve
      around the sleeve
      upper arms
      arm circumference at bicep
      sleeve at bicep
      sleeve at widest
      sleeve width at top
      top of arm
      upper arm around
      round upper arm
      top of sleeve width
    `,
    cuff: `
      sleeve cuff
      wrist
      sleeve opening
      cuff opening sleeve
      wrist opening
      wrist cuff
      sleeve hem
      sleeve end
      end of sleeve
      wrists
      around the wrist
      round the wrist
      sleeve at wrist
      across wrist
      across the wrist
      width of sleeve end
      sleeve bottom
      bottom of sleeve
      sleeve cuffs
    `,
    cuffEdge: `
      cuff
      bell end
      bell ends
      sleeve bell
      bell of sleeve
      bell of the sleeve
      cuff width
      cuff opening
      cuff circumference
      cuffs width
    `,
    neck: `
      neck
      collar size
      neck size
      neck circumference
      collar circumference
      neck opening
      neckline circumference
      neck measurement
      around the neck
      around neck
      neck girth
      neck hole circumference
      neck around
      round the neck
      collar around
      around collar
      collar button to buttonhole
      neckband
    `,
    'neck weak': `
      collar
      button to buttonhole
      button to button hole
      button to hole
    `,
    thigh: `
      thigh
      upper thigh
      thigh width
      upper leg
      top of leg
      top of thigh
      thigh opening
      thighs
      leg at crotch
      thight
      thai
      upper thighs
      across thigh
      across the thigh
      top thigh
      widest part of thigh
      thigh at crotch
      top of the leg
      top of the thigh
      leg at top
      widest part of leg
      around thighs
      top leg
    `,
    legWidth: `
      leg width
      width of leg
      width of legs
      width of the leg
      legs width
    `,
    'thigh around': `
      thigh circumference
      around the thigh
      around thigh
    `,
    knee: `
      knee
      knee width
      at the knee
      across knee
      across the knee
      width at knee
      width at knees
    `,
    calf: `
      calf
      calf width
      calves
      calf circumference
    `,
    legOpening: `
      // the opening
      leg opening
      leg op
      leg opg
      leg openings
      ankle opening
      bottom leg opening
      hem opening leg
      lo
      l o
      opening
      leg openning
      legs opening
      leg open
      across leg opening
      leg opening width
      hem opening of leg
      leg hole
      leg holes
      bottom of leg opening
      bell opening
      // the ankle and the cuff
      ankle
      ankle width
      leg cuff
      bottom cuff
      cuffs of leg
      width at ankle
      width at cuff
      ankle hem
      ankle cuff
      // a flare
      bell bottom
      bells
      flare
      flares width
      bell
      bell at hem
      bell hem
      // the hem and the bottom of the leg
      leg hem
      leg bottom
      bottom of leg
      bottom of the leg
      bottom leg
      leg hem width
      hem leg
      trouser hem
      bottom leg width
      leg ends
      leg bottoms
      leg end
      width at leg hem
      leg bottom width
      trouser bottoms
      bottoms of legs
      leg width at hem
      leg width at bottom
      hem of leg
      hem of legs
      across leg hem
    `,
    elbow: `
      elbow
      elbow width
    `,
    underbust: `
      underbust
      under bust
      under the bust
      ribcage
      rib cage
      below bust
      empire waist
      empire line
    `,
    armhole: `
      armhole
      arm hole
      armscye
      arm opening
      armholes
      arm holes
      scye
      arm hole opening
      armhole opening
      armhole circumference
      armhole depth
    `,
    shoulderWidth: `
      // from one to the other
      shoulder to shoulder
      shoulder seam to shoulder seam
      shoulder seam to seam
      s2s
      sts
      shoulder 2 shoulder
      shoulder seam to shoulder
      shoulder seams
      seam to seam shoulders
      shoulders seam to seam
      shoulder seam
      shoulder point to point
      point to point
      across shoulder seams
      shoulder seams across
      from shoulder to shoulder
      shoulder point to shoulder point
      shoulder to shoulder seam
      shoulder tip to shoulder tip
      // across
      shoulder width
      across shoulder
      across the shoulder
      across shoulders
      across the shoulders
      shoulder across
      shoulders across
      shoulder span
      shoulder breadth
      cross shoulder
      back of shoulders
      across the back shoulders
      across back shoulders
      across the back of the shoulders
      across top of shoulders
      across top of the shoulders
      across the top of the shoulders
      back shoulder width
      width across shoulders
      width at shoulders
      width of shoulders
      // the shoulders alone
      shoulder
      shoulders
      shldr
      shldrs
      sholder
      sholders
      yoke
      shlders
      shouldr
      shulders
      shdr
      shdrs
    `,
    sleeveLength: `
      // from the shoulder or the crown of the sleeve
      shoulder to cuff
      shoulder to wrist
      shoulder to end of sleeve
      s2c
      sleeve from shoulder seam
      sleeve from shoulder
      sleeves from shoulder
      sleeve shoulder to cuff
      sleeves from the shoulder
      sleeve crown to wrist
      sleeve crown to cuff
      crown to cuff
      sleeve head to cuff
      head of sleeve to cuff
      crown of sleeve to cuff
      top of shoulder to cuff
      // the outer, the upper side
      overarm
      over arm
      sleeve overarm
      outer sleeve
      sleeve outseam
      top of sleeve
      outside sleeve
      outer arm
      outside arm
      sleeve outer
      outside of sleeve
      outer sleeve length
      // named with how long it is meant
      sleeve bracelet
      sleeves bracelet
      slv bracelet
      sleeve three quarter
      sleeves three quarter
      sleeve 3 4
      sleeves 3 4
      slv 3 4
      sleeve elbow length
      // the sleeve, the arm
      sleeve
      sleeve length
      arm length
      arm
      arms
      length of sleeve
      sleeves length
      sleeve lenght
      sleve
      long sleeve length
      sleave
      sleeves measure
      sleeve seam
      slv
      slvs
      slv length
      slv len
      sleeve len
      sleves
      sleeve lgth
      sleeve measures
      arm seam
    `,
    'sleeveLength weak': `
      long sleeve
      short sleeve
      long sleeves
      short sleeves
      3 4 sleeve
      3 4 sleeves
      three quarter sleeve
      three quarter sleeves
      bracelet sleeve
      bracelet sleeves
      elbow sleeves
      cap sleeve
      cap sleeves
      bell sleeve
      bell sleeves
      puff sleeve
      puff sleeves
      bishop sleeves
      balloon sleeves
      half sleeve
      half sleeves
    `,
    sleeveFromCentreBack: `
      center back to cuff
      centre back to cuff
      middle of collar to cuff
      raglan sleeve length
      raglan sleeve
      center back sleeve
      centre back sleeve
      cb to cuff
      center neck to cuff
      raglan
      c2c
      center of back to cuff
      centre of back to cuff
      dress shirt sleeve
    `,
    sleeveUnderarm: `
      // from the pit or underarm
      underarm to cuff
      pit to cuff
      armpit to cuff
      p2c
      ptc
      pit to wrist
      armpit to wrist
      sleeve pit to cuff
      pit to end of sleeve
      pit to sleeve end
      armpit to end of sleeve
      under arm to cuff
      underarm to wrist
      // the under sleeve
      under sleeve
      undersleeve
      underarm sleeve
      underarm sleeve length
      sleeve underarm
      underarm length
      under arm length
      under arm sleeve
      underarm seam sleeve
      sleeve under
      underarm seam
      under slv
      underarm of sleeve
      sleeve under arm
      sleeves underarm
      undersleeve length
      under the sleeve
      sleeve along the underneath
      sleeve along underneath
      sleeve underneath
      sleeve along the underside
      sleeve underside
      underside of sleeve
      underneath of sleeve
      sleeve along the under seam
      sleeve on the underside
      // the inside
      inner sleeve
      inside sleeve
      sleeve inseam
      inner arm
      inseam sleeve
      inside arm
      inner sleeve length
      sleeve inner
      sleeve inside
      inner sleeve seam
      inside sleeve length
      inside sleeve seam
      inner slv
      inside of sleeve
      inside of arm
      sleeve inner seam
      inner sleeves
      sleeve undearm
      sleeve along the inside
      sleeve along inside
      sleeve on the inside
      inside seam of sleeve
    `,
    length: `
      // down the back or front
      back length
      // “pit to pit x back length”: no width of the back
      x back length
      length back
      front length
      length front
      length down back
      down the back
      down back
      down centre back
      down center back
      down the centre back
      down the center back
      down front
      // in all
      total length
      overall length
      full length measurement
      length overall
      length total
      full length total
      overall
      entire length
      full length from shoulder
      total lgth
      longest length
      whole length
      length in all
      // from the top
      shoulder to hem length
      top to bottom
      top to hem
      top to bottom length
      length top to bottom
      drop length
      // the length, the body
      length
      long
      length size
      lenght
      lengh
      lgth
      lenth
      len
      lnth
      leingth
      body length
      body
      lengths
      garment length
      lng
      leng
      finished length
    `,
    'length weak': `
      full length
      drops
      hangs
    `,
    bodyLength: `
      // from the neck, nape or collar
      nape to hem
      collar to hem
      neck to hem
      bottom of collar to hem
      boc
      collar to tail
      top of collar to hem
      bottom of collar to bottom hem
      back collar to hem
      back of collar to hem
      nape down
      collar seam down
      collar down
      back collar down
      neck seam down
      back length from nape
      back neck to hem
      length from nape
      length from collar
      length from neck
      cb neck to hem
      // from the shoulder or its highest point
      shoulder to hem
      top of shoulder to hem
      hps to hem
      hsp
      hps length
      shoulder down
      shoulder seam to hem
      from shoulder to hem
      length from shoulder
      length from shoulders
      hsp to hem
      // from a strap or the bust
      strap to hem
      top of strap to hem
      bust to hem total
      // the length of a garment that is named, or of its centre back
      coat length
      jacket length
      shirt length
      dress length
      top length
      center back length
      centre back length
      cb length
      torso length shirt
      body length
      blouse length
      jumper length
      sweater length
      tee length
    `,
    skirtLength: `
      skirt length
      waist to hem
      length of skirt
      waistband to hem
      waist down
      top of waist to hem
      skirt part
      skirt portion
      skirt section
      skirt alone
      skirt only
      skirt part only
      skirt from waist
      skirt measures
    `,
    napeToWaist: `
      nape to waist
      waist length
      back waist length
      back waist
      bodice length
      bodice
      shoulder to waist
      neck to waist
      collar to waist
      shoulder to waist seam
      front waist length
      length to waist
      waist length back
      back neck to waist
      neck to waist seam
      back neck to waist seam
      collar to waist seam
      shoulder to the waist
      shoulder to waistline
      nape to waist seam
    `,
    backWidth: `
      back width
      across back
      across the back
      width of back
      cross back
      back across
      x back
      across upper back
      yoke width
      upper back width
      back width across shoulders
      width across back
      width across the back
      across back width
      back across shoulder blades
      across shoulder blades
      across the shoulder blades
      across the back between sleeve seams
      across the back between the sleeve seams
      between sleeve seams
      between the sleeve seams
      across the back between armholes
      across back between armholes
      across the back sleeve seam to sleeve seam
      sleeve seam to sleeve seam
      back sleeve seam to sleeve seam
      armhole to armhole across back
      between armhole seams
    `,
    inseam: `
      inseam
      inside leg
      in seam
      inner leg
      inseam length
      inner seam
      inside leg length
      inleg
      insideleg
      inside seam
      leg inseam
      inside leg seam
      insean
      inner leg length
      crotch to hem
      crotch to ankle
      inner leg seam
      inside legs
      insteam
      insem
      inseem
      in-seem
      inside measurement leg
      inside leg measures
      inside leg from crotch
      inside leg measurement
      inner leg measurement
      inseem length
      inside of leg
      inside the leg
      crotch to cuff
    `,
    'outseam weak': 'outside',
    'inseam weak': `
      leg
      inside
      inner
    `,
    legLength: `
      leg length
      length of leg
      legs
      leg lenght
    `,
    outseam: `
      outseam
      outside leg
      outer leg
      out seam
      outer seam
      outside seam
      side seam
      outside leg length
      waist to ankle
      outter seam
      outerseam
      outleg
      outside length
      waist to floor
      outer leg length
      trouser length
      pant length
      pants length
      waist to cuff
      outside leg seam
      full leg length
    `,
    rise: `
      rise
      crotch rise
      rise length
    `,
    'rise weak': `
      high rise
      mid rise
      low rise
      high-waisted rise
      highrise
      midrise
      lowrise
      high waist rise
      super high rise
      medium rise
    `,
    frontRise: `
      front rise
      rise front
      crotch to waist
      crotch to waistband
      waist to crotch
      front crotch
      crotch seam to waist
      crotch depth
      rise in front
      waistband to crotch
      f rise
      crotch to top of waist
      front rise length
      fr
      crotch to top of waistband
      crotch to top of the waistband
      crotch to button
      top of waist to crotch
      top of waistband to crotch
      top of the waistband to crotch
      top of the waistband to the crotch
      top of waistband to the crotch
      waistband to the crotch
      crotch seam to top
    `,
    backRise: `
      back rise
      rise back
      rear rise
      rise in back
      back crotch
      b rise
      back rise length
      seat rise
      br
      rise at back
    `,
    crotchLength: `
      total rise
      crotch length
      full rise
      front to back rise
      crotch front to back
      crotch seam front to back
      front to back crotch
      waist to waist through crotch
      full crotch
    `,
    strap: `
      strap length
      straps length
      shoulder strap
      strap
      length of straps
      length of strap
      shoulder straps
    `,
    torsoLength: `
      torso
      torso length
      shoulder to crotch
      trunk
      torso girth
      strap to crotch
    `,
    width: `
      width
      wide
      breadth
      widest
      widest point
      widest part
      body width
    `,
    'topEdge around': `
      round the top
      around the top
      round top
      around top
    `,
    topEdge: `
      top edge
      across top
      across the top
    `
  },
  landmarks: {
    shoulder: `
      shoulder
      shoulder seam
      top of shoulder
      high point shoulder
      hps
      shoulder point
      strap
      straps
      top of strap
      shoulders
      top of the shoulder
      shoulder strap
      top of straps
      shoulder top
      tip of shoulder
      shoulder tip
      edge of shoulder
      shoulder edge
      top of shoulder seam
      high shoulder point
      shoulder at neck
      highest point of shoulder
      strap top
      top of the straps
      strap seam
      shoulder line
      // a length by itself, and where one starts: “shoulder down to the cuff”
      shoulder down
    `,
    neck: `
      collar
      nape down
      collar down
      back collar down
      collar seam down
      neck seam down
      neck
      nape
      neckline
      base of neck
      base of collar
      base of hood
      base of the hood
      hood seam
      mid neck
      mid neck seam
      middle neck seam
      bottom of collar
      center back
      centre back
      under collar
      top of collar
      back neck
      neck seam
      back of neck
      collar seam
      nape of neck
      base of the collar
      bottom of the collar
      back of collar
      middle of back
      neck hole
      centre back of neck
      center back of neck
      centre back neck
      center back neck
      back of the neck
      nape of the neck
      base of the neck
      base of collar at back
      cb neck
      cb
      collar band
      neckband
      under the collar
      below the collar
      below collar
      just below the collar
      just under the collar
      just below collar
      below the neckband
      underside of collar
      bottom of neckband
    `,
    armpit: `
      armpit
      pit
      underarm
      under arm
      arm pit
      armhole
      arm hole
      armpits
      pits
      the pit
      pit seam
      underarm seam
    `,
    waist: `
      waist
      waist down
      waistband
      waist band
      top of waistband
      top of the waistband
      waistline
      top of waist
      top of the waist
      waist seam
    `,
    hip: 'hip',
    crotch: `
      crotch
      crotch seam
      fork
      groin
      crutch
      gusset
    `,
    knee: 'knee',
    hem: `
      hem
      bottom
      bottom of the leg
      bottom of the hem
      bottom of the skirt
      bottom of the dress
      bottom hem
      hemline
      end
      tail
      floor
      bottom of skirt
      bottom edge
      bottom of leg
      bottom of hem
      ankle
      ends
      bottom of dress
      bottom seam
      points
      the floor
      longest point
      floor hem
      floor length hem
      hem at the floor
      front point
      bottom of the welt
      bottom of jacket
      bottom of coat
      bottom of shirt
      bottom of the back
      back hem
      front hem
      very bottom
    `,
    cuff: `
      cuff
      wrist
      end of sleeve
      sleeve end
      sleeve hem
      sleeve cuff
      edge of cuff
      end of cuff
      sleeve
      edge of sleeve
      sleeves
      cuff end
      end of the sleeve
      end of the cuff
      end of arm
      bottom of sleeve
      bottom of cuff
      sleeve edge
      cuff edge
      wrist edge
    `,
    elbow: 'elbow',
    bust: `
      bust
      chest
      bustline
      underbust
      under bust
      under the bust
      bust seam
      empire seam
    `,
    top: 'top'
  },
  basis: {
    flat: `
      // how it lay
      flat
      laid flat
      laying flat
      lying flat
      lay flat
      lays flat
      layed flat
      laid out flat
      lying down
      flat lay
      flatlay
      measured flat
      flat across
      laying down
      laid down
      taken flat
      when flat
      held flat
      laid on a flat surface
      on a flat surface
      on flat surface
      // which way the tape went
      side to side
      across
      straight across
      seam to seam
      side seam to side seam
      edge to edge
      one way
      one way across
      from side to side
      across front
      across the front
      measured across
      tip to tip
      width ways
      widthways
      accross
      straight accross
      acros
      // not doubled yet
      not doubled
      pre doubled
      before doubling
      undoubled
      // one side only
      one side
      half
      on one side
      single side
      single layer
      half circumference
      front only
    `,
    around: `
      around
      round
      circumference
      all around
      all round
      all the way around
      all the way round
      total circumference
      in total
      circ
      full circumference
      girth around
      whole way around
      in circumference
      total
      around total
      when doubled
      in the round
      girth
      full circ
      circumfrence
      circumferance
    `,
    doubled: `
      doubled
      x2
      x 2
      2x
      times two
      times 2
    `,
    double: `
      double
      please double
      to be doubled
      must be doubled
      multiply by 2
      multiply by two
      double for
      double up
      double it
      double these
      double measurement
      just double
    `
  },
  units: {
    in: `
      inch
      inches
      in
      ins
      inchs
      inche
      inces
      inchese
      inched
      incehs
      ich
      inchss
      iches
    `,
    cm: `
      cm
      cms
      centimeter
      centimetre
      centimeters
      centimetres
      cm s
      centimetre s
      cmt
      cmts
      centimetr
      centimenters
    `,
    mm: `
      mm
      mms
      millimeter
      millimetre
      millimeters
      millimetres
    `,
    m: `
      m
      metre
      metres
      meter
      meters
      mtr
      mtrs
    `,
    ft: `
      ft
      foot
      feet
    `
  },
  numbers: {
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50
  }
}

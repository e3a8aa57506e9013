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
      pit to pit
      pit 2 pit
      p p
      pits to pits
      armpit to armpit
      arm pit to arm pit
      underarm to underarm
      under arm to under arm
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
      half chest
      half bust
      chest width
      bust width
      across chest
      across the chest
      across bust
      across the bust
      armpit to pit
      pit to armpit
      pitt to pitt
      pit to pits
      pit-to-pit measurement
      under arm to underarm
      underarm to under arm
      armpits
      pits
      armpit
      pit
      armpit across
      armpit width
      underarm width
      pit width
      across the pits
      across the armpits
      across armpits
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
      width armpit to armpit
      width pit to pit
      across the armpit
      across at underarm
      across at the underarm
      width at bust
      width at chest
      width at the bust
      chest across
      bust across
      across pits
      across the pit
      flat chest
      flat bust
      underarm seam to underarm seam
      side to side under the arms
      armhole to arm hole
      pit to pit flat
      pit across
      pits across
      under the arms
      under arms
      across under the arms
      across under arms
      beneath the arms
      below the arms
      across below the arms
      from one armpit to the other
      one armpit to the other
      one underarm to the other
      width across body under the sleeves
      under the sleeves
      across under the sleeves
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
      hem
      hemline
      bottom hem
      bottom
      bottoms
      bottom width
      hem width
      bottom edge
      width at hem
      width at bottom
      bottom band
      ribbed hem
      bottom opening
      hem opening
      across hem
      across the hem
      across bottom
      across the bottom
      welt
      hem edge
      btm
      width of hem
      bottom of hem
      around hem
      lowest layer
      bottom layer
      lowest tier
      bottom tier
      lowest frill
      bottom frill
      around the hem
      around bottom
      around the bottom
      across at hem
      across the bottom hem
      bottom rib
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
      leg opening
      leg openings
      leg hem
      ankle opening
      ankle
      ankle width
      leg bottom
      leg cuff
      bottom leg opening
      bottom of leg
      bottom leg
      leg hem width
      hem leg
      hem opening leg
      trouser hem
      lo
      l o
      bottom leg width
      leg ends
      leg bottoms
      bottom cuff
      cuffs of leg
      opening
      bell bottom
      leg openning
      legs opening
      leg open
      across leg opening
      bells
      width at ankle
      flare
      flares width
      leg end
      leg opening width
      hem opening of leg
      width at cuff
      ankle hem
      width at leg hem
      leg bottom width
      trouser bottoms
      bottoms of legs
      ankle cuff
      leg hole
      leg holes
      leg width at hem
      leg width at bottom
      hem of leg
      hem of legs
      across leg hem
      bottom of leg opening
      bell
      bell at hem
      bell opening
      bell hem
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
      shoulder to shoulder
      shoulder
      shoulders
      shoulder width
      shoulder seam to shoulder seam
      shoulder seam to seam
      s2s
      sts
      across shoulder
      across the shoulder
      across shoulders
      across the shoulders
      shoulder across
      shoulders across
      shoulder span
      shoulder breadth
      shoulder 2 shoulder
      shldr
      shldrs
      shoulder seam to shoulder
      shoulder seams
      seam to seam shoulders
      sholder
      sholders
      shoulders seam to seam
      shoulder seam
      shoulder point to point
      point to point
      yoke
      cross shoulder
      back of shoulders
      shlders
      shouldr
      shulders
      across shoulder seams
      shoulder seams across
      from shoulder to shoulder
      shoulder point to shoulder point
      shoulder to shoulder seam
      back shoulder width
      width across shoulders
      width at shoulders
      width of shoulders
      shoulder tip to shoulder tip
      shdr
      shdrs
    `,
    sleeveLength: `
      sleeve
      sleeve length
      sleeve bracelet
      sleeves bracelet
      slv bracelet
      sleeve three quarter
      sleeves three quarter
      sleeve 3 4
      sleeves 3 4
      slv 3 4
      sleeve elbow length
      overarm
      over arm
      sleeve overarm
      arm length
      arm
      arms
      length of sleeve
      sleeves length
      sleeve lenght
      sleve
      outer sleeve
      sleeve outseam
      shoulder to cuff
      shoulder to wrist
      shoulder to end of sleeve
      long sleeve length
      top of sleeve
      outside sleeve
      sleave
      sleeves measure
      sleeve seam
      outer arm
      s2c
      outside arm
      slv
      slvs
      slv length
      slv len
      sleeve len
      sleves
      sleeve lgth
      sleeve measures
      arm seam
      sleeve outer
      outside of sleeve
      sleeve from shoulder seam
      sleeve from shoulder
      sleeves from shoulder
      sleeve shoulder to cuff
      outer sleeve length
      sleeves from the shoulder
      sleeve crown to wrist
      sleeve crown to cuff
      crown to cuff
      sleeve head to cuff
      head of sleeve to cuff
      crown of sleeve to cuff
      top of shoulder to cuff
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
      inner sleeve
      inside sleeve
      sleeve inseam
      under sleeve
      undersleeve
      underarm sleeve
      underarm sleeve length
      underarm to cuff
      pit to cuff
      armpit to cuff
      p2c
      ptc
      pit to sleeve
      armpit to sleeve
      pit to wrist
      armpit to wrist
      sleeve underarm
      inner arm
      inseam sleeve
      inside arm
      underarm length
      under arm length
      inner sleeve length
      sleeve inner
      sleeve inside
      under arm sleeve
      sleeve pit to cuff
      pit to end of sleeve
      underarm seam sleeve
      inner sleeve seam
      inside sleeve length
      sleeve under
      underarm seam
      pit to sleeve end
      armpit to end of sleeve
      inside sleeve seam
      under arm to cuff
      underarm to wrist
      inner slv
      inside of sleeve
      inside of arm
      under slv
      sleeve inner seam
      inner sleeves
      underarm of sleeve
      sleeve under arm
      sleeves underarm
      sleeve undearm
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
      sleeve along the inside
      sleeve along inside
      sleeve on the underside
      sleeve on the inside
      inside seam of sleeve
    `,
    length: `
      length
      long
      length size
      lenght
      lengh
      lgth
      total length
      overall length
      full length measurement
      length overall
      lenth
      length total
      shoulder to hem length
      len
      lnth
      leingth
      back length
      length back
      front length
      length front
      full length total
      top to bottom
      top to hem
      top to bottom length
      overall
      body length
      length down back
      down the back
      body
      lengths
      length top to bottom
      garment length
      entire length
      lng
      leng
      full length from shoulder
      total lgth
      drop length
      longest length
      down back
      down centre back
      down center back
      down the centre back
      down the center back
      down front
      whole length
      finished length
      length in all
    `,
    'length weak': `
      full length
      drops
      hangs
    `,
    bodyLength: `
      nape to hem
      collar to hem
      shoulder to hem
      shoulder to bottom
      collar to bottom
      neck to hem
      top of shoulder to hem
      coat length
      jacket length
      shirt length
      dress length
      top length
      hps to hem
      hsp
      hps length
      center back length
      centre back length
      cb length
      torso length shirt
      body length
      bottom of collar to hem
      boc
      collar to tail
      top of collar to hem
      top of shoulder to bottom
      shoulder down
      blouse length
      jumper length
      sweater length
      strap to hem
      top of strap to hem
      bust to hem total
      bottom of collar to bottom hem
      back collar to hem
      tee length
      back of collar to hem
      nape down
      collar seam down
      collar down
      back collar down
      neck seam down
      shoulder seam to hem
      from shoulder to hem
      back length from nape
      back neck to hem
      length from nape
      length from collar
      length from shoulder
      length from shoulders
      length from neck
      hsp to hem
      cb neck to hem
    `,
    skirtLength: `
      skirt length
      waist to hem
      length of skirt
      waistband to hem
      waist down
      waist to bottom
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
      crotch to bottom
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
    `,
    neck: `
      collar
      neck
      nape
      neckline
      base of neck
      base of collar
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
      one side
      side to side
      across
      straight across
      seam to seam
      edge to edge
      half
      one way
      on one side
      single side
      single layer
      one way across
      not doubled
      flat across
      half circumference
      laying down
      laid down
      from side to side
      taken flat
      when flat
      held flat
      front only
      across front
      across the front
      measured across
      laid on a flat surface
      on a flat surface
      on flat surface
      tip to tip
      width ways
      widthways
      pre doubled
      before doubling
      undoubled
      accross
      straight accross
      acros
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

/** What tells a kind in English without naming it: how it is made, styles that stand for it, cloth of which some kinds are made. */
import type { GarmentKind } from '../../../ids/kinds.ts'
import type { KindSign } from '../lexicon.ts'

const LEGS: GarmentKind[] = ['trousers', 'jeans', 'shorts']
const LONG_LEGS: GarmentKind[] = ['trousers', 'jeans']
const OUTER: GarmentKind[] = ['jacket', 'coat']

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      results
      sort by
      filter by
      filters
      items found
      showing all
      show more results
      view all
      new arrivals
      shop all
      next page
      add to basket
      add to cart
      featured items
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      not included
      not for sale
      in the photo
      in the photos
      in the picture
      in the pictures
      in photos
      in pictures
      for styling only
      for display only
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      also selling
      also listing
      also listed
      also for sale
      also available
      i also have
      also got
      other items
      see my other
      check my other
      check out my
      have a look at my
      would swap for
      will swap for
      to swap for
      swap for
      swaps for
      bundle with
      you may also like
      you might also like
      similar items
      more from this seller
      related searches
      looking for
    `
  },
  {
    kinds: ['dress'],
    as: 'style',
    phrases: `
      sheath
      shift
      wiggle
      shirtwaister
      sun dress
      fit and flare
      fit n flare
      skater
      bodycon
      little black number
      lbd
      tea length
      strappy number
    `
  },
  {
    kinds: ['dress', 'skirt'],
    as: 'style',
    phrases: `
      midi
      mini
      maxi
    `
  },
  {
    kinds: ['shirt'],
    as: 'style',
    phrases: `
      hawaiian
      aloha
      bowling
    `
  },
  {
    kinds: ['coat'],
    as: 'style',
    phrases: `
      duffle
      duffel
    `
  },
  {
    kinds: ['knit-top'],
    as: 'style',
    phrases: `
      breton
      bretons
    `
  },
  {
    kinds: ['jacket'],
    as: 'style',
    phrases: `
      norfolk
      trucker
      spencer
      eisenhower
      ike
      perfecto
    `
  },
  {
    kinds: LONG_LEGS,
    as: 'style',
    phrases: `
      bootcut
      bootcuts
      boot cuts
      flared leg
      bell bottom
      wide legs
      wide leg
      wide leg fit
      straight legs
      straight leg
      drainpipes
      drainpipe
      mom fit
      mum fit
      skinny fit
      skinnies
      five pocket
      carpenters
      painters
    `
  },
  {
    kinds: ['trousers'],
    as: 'style',
    phrases: `
      palazzo
      peg leg
      cigarette leg
      oxford bags
      cropped culotte
    `
  },
  {
    kinds: LEGS,
    as: 'construction',
    phrases: `
      fly
      zip fly
      button fly
      fly front
      fly fastening
      belt loops
      inside leg
      inseam
      back pockets
      turn ups
      turn up hems
      cuffed hems
      pleated front
      flat front
      double pleats
      pleats at the band
      crotch
      seat
      knees
      leg opening
    `
  },
  {
    kinds: ['jeans'],
    as: 'construction',
    phrases: `
      five pockets
      5 pockets
      5 pocket
      five pocket
      rivets
      selvedge
      selvage
      selvedge denim
      red tab
      whiskering
      stonewash
      stonewashed
      distressed knees
    `
  },
  {
    kinds: [...OUTER, 'waistcoat'],
    as: 'construction',
    phrases: `
      lapel
      lapels
      notch lapels
      notched lapels
      peak lapels
      shawl lapels
      welt pockets
      inside pocket
      breast pocket inside
      double breasted
      single breasted
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      side vents
      double vent
      double vented
      single vent
      twin vents
      centre vent
      center vent
      no vents
      ventless
      two button front
      three button front
      two button
      three button
      working cuffs
      sleeve buttons
      ticket pocket
      sack cut
      soft shoulders
      patch pockets and vents
      canvassed
      half canvassed
      snap cuffs
      zip cuffs
    `
  },
  {
    kinds: ['coat'],
    as: 'construction',
    phrases: `
      storm flap
      gun flap
      down filled
      fill power
      taped seams
      waterproof
      weatherproof
      toggles
      fur trimmed hood
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      snap front
      pearl snaps
      pearl snap
      button down collar
      button front collar
      double cuffs
      double cuff
      french cuffs
      french cuff
      grandad collar
      inch neck
      inch collar
      cuban collar
      camp collar
      revere collar
      point collar
      barrel cuffs
      spread collar
      cutaway collar
      pussy bow
      collar stays
      single needle
      shirt tails
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      kangaroo pocket
      pouch pocket
      brushed inside
      drawstring hood
      hood with zip
      zip hood
      ribbed cuffs and hem
      ribbed cuffs
      ribbed hem
      raglan knit
      merino
      gauge
      welt
      roll neck
      turtleneck
      turtle neck
      chunky
      cable
      cables
      knitted
    `
  },
  {
    kinds: ['knit-top'],
    as: 'construction',
    phrases: `
      single stitch
      graphic print
      band tour
      tagless
      thin straps
      vest straps
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      spaghetti straps
      straps
      strappy
      strapless
      tie straps
      halter neck
      halterneck
      racer back
      racerback
    `
  },
  {
    kinds: ['dress'],
    as: 'construction',
    phrases: `
      bodice
      boned bodice
      full circle below
      full skirt
      tiered skirt
      gathered skirt
      skirt part
      train
      drop waist
      dropped waist
      empire line
      empire waist
      waist seam
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'construction',
    phrases: `
      crotch snaps
      snap crotch
      popper crotch
      poppers at the crotch
      snaps at the crotch
      snaps at crotch
      gusset snaps
      bib
      bib front
      bib and brace
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: `
      popper crotch
      crotch snaps
      snaps at the crotch
      bib and brace
    `
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      silk
      silky
      satin
      chiffon
      georgette
      organza
      crepe
      crepe de chine
      linen
      poplin
      voile
      gauze
      muslin
      lawn
      cheesecloth
      smocked
      shirred
      viscose
      rayon
      woven
      ruffle
      ruffled
      frill
      frilled
      peplum
      puff sleeve
      puff sleeves
      peasant
      boho
      broderie
      broderie anglaise
      button front
      buttons down the front
    `
  },
  {
    kinds: ['jumper'],
    as: 'cloth',
    phrases: `
      fair isle
      hand knit
      hand knitted
      hand framed
      cable
      aran
      intarsia
      lambswool
      shetland
      mohair knit
      chunky knit
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      instant download
      digital download
      pdf pattern
      digital pdf
      instructions included
      factory folded
      envelope
      pattern pieces
      uncut
      per metre
      per meter
      per yard
      by the metre
      by the meter
      by the yard
      yards of
      metres of
      fat quarter
      heel height
      insole
      clip on
      shoulder strap drop
      strap drop
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      ribbed
      rib
      stretch cotton
      cotton jersey
      modal
      stretchy
      super stretchy
    `
  }
]

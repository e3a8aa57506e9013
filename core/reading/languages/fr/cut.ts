/** Words of the cut in French, as the trade and sellers say them. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: 'taille basse',
    mid: `
      taille mi haute
      taille normale
      taille moyenne
    `,
    high: `
      taille haute
      taille très haute
    `,
    waist: `
      taille naturelle
      paperbag
    `
  },
  leg: {
    skinny: `
      skinny
      moulant
      moulante
    `,
    slim: `
      slim
      jambe slim
      coupe slim
    `,
    straight: `
      coupe droite
      jambe droite
      jambes droites
      jean droit
      pantalon droit
    `,
    tapered: `
      fuselé
      fuselée
      coupe carotte
      pantalon carotte
      jean carotte
      tapered
      resserré à la cheville
    `,
    relaxed: `
      coupe décontractée
      coupe boyfriend
      jean mom
      coupe mom
      baggy
      loose
    `,
    bootcut: `
      bootcut
      semi évasé
      légèrement évasé
    `,
    flared: `
      évasé
      évasée
      évasés
      pattes d'éléphant
      pattes d eph
      patte d eph
      patte d éléphant
      pat d eph
      jean flare
      flare
    `,
    wide: `
      jambe large
      jambes larges
      coupe large
      pantalon large
      jean large
      wide leg
      jupe culotte
    `,
    palazzo: 'palazzo',
    legging: `
      legging
      leggings
    `,
    jogger: `
      jogging
      jogger
    `
  },
  legLength: {
    full: 'pleine longueur',
    ankle: `
      longueur cheville
      longueur chevilles
      à la cheville
      7 8
    `,
    cropped: `
      court aux chevilles
      cropped
      raccourci
    `,
    capri: `
      pantacourt
      corsaire
      capri
    `,
    bermuda: 'bermuda'
  },
  silhouette: {
    pencil: `
      jupe crayon
      coupe crayon
      crayon
    `,
    'a-line': `
      trapèze
      jupe trapèze
      robe trapèze
      ligne a
      coupe en a
    `,
    flared: `
      jupe évasée
      robe évasée
      évasée
    `,
    circle: `
      jupe cercle
      jupe corolle
    `,
    pleated: `
      plissé
      plissée
      jupe plissée
      plis creux
    `,
    kilt: 'kilt',
    wrap: `
      portefeuille
      cache coeur
      robe portefeuille
      jupe portefeuille
    `,
    bodycon: `
      moulante
      près du corps
    `,
    shift: 'robe droite',
    sheath: `
      fourreau
      robe fourreau
    `,
    empire: `
      empire
      taille empire
    `,
    'shirt-dress': `
      robe chemise
      robe chemisier
    `,
    strapless: `
      bustier
      sans bretelles
    `,
    gathered: `
      froncée
      à volants
      volantée
    `,
    'fit-flare': `
      patineuse
      robe patineuse
    `,
    dungarees: 'salopette'
  },
  dressLength: {
    mini: `
      mini jupe
      minijupe
      robe courte
      jupe courte
      mini
    `,
    'above-knee': 'au dessus du genou',
    knee: `
      longueur genou
      longueur genoux
      au genou
      aux genoux
    `,
    midi: `
      midi
      mi longue
      mi long
      mi mollet
    `,
    maxi: `
      robe longue
      jupe longue
      maxi
    `,
    ankle: 'longueur cheville'
  },
  topLength: {
    cropped: `
      crop top
      cropped
    `,
    longline: `
      long gilet
      gilet long
    `
  },
  closeness: {
    fitted: `
      cintré
      cintrée
      ajusté
      ajustée
      près du corps
    `,
    slim: `
      coupe slim
      slim fit
    `,
    classic: `
      coupe classique
      coupe regular
    `,
    relaxed: `
      coupe ample
      ample
      coupe décontractée
      coupe loose
    `,
    oversized: `
      oversize
      oversized
      très ample
    `
  },
  shoulder: {
    drop: `
      épaules tombantes
      épaule tombante
    `,
    raglan: `
      manches raglan
      manche raglan
      raglan
    `,
    dolman: `
      manches chauve souris
      chauve souris
    `,
    halter: `
      dos nu
      col halter
    `
  },
  sleeve: {
    sleeveless: `
      sans manches
      sans manche
    `,
    short: `
      manches courtes
      manche courte
    `,
    'three-quarter': `
      manches 3/4
      manche 3/4
      manches trois quarts
      manches 3 4
    `,
    long: `
      manches longues
      manche longue
    `,
    balloon: `
      manches ballon
      manches bouffantes
      manche ballon
    `
  },
  turnUps: {
    made: `
      à revers
      revers en bas
    `
  },
  pleats: {
    front: `
      à pinces
      pantalon à pinces
    `
  }
}

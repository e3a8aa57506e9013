/** What tells a kind in French without naming it. */
import type { KindSign } from '../lexicon.ts'

export const kindSigns: KindSign[] = [
  {
    kinds: [],
    as: 'list',
    phrases: `
      résultats
      trier par
      voir tout
      ajouter au panier
      nouveautés
    `
  },
  {
    kinds: [],
    as: 'elsewhere',
    phrases: `
      non inclus
      non incluse
      non vendu
      non vendue
      sur la photo
      sur les photos
    `
  },
  {
    kinds: [],
    as: 'others',
    phrases: `
      je vends aussi
      je vends également
      voir mes autres
      mes autres annonces
      je recherche
      échange contre
      en échange de
    `
  },
  {
    kinds: ['dress'],
    as: 'style',
    phrases: `
      petite robe noire
      fourreau
      patineuse
    `
  },
  {
    kinds: ['dress', 'skirt'],
    as: 'style',
    phrases: `
      midi
      mini
      maxi
      trapèze
    `
  },
  {
    kinds: ['trousers', 'jeans'],
    as: 'style',
    phrases: `
      bootcut
      pattes d eph
      patte d éléphant
      coupe droite
      jambe large
      flare
    `
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    as: 'construction',
    phrases: `
      braguette
      entrejambe
      passants
      passants de ceinture
      pinces
      fourche
      cinq poches
    `
  },
  {
    kinds: ['jacket', 'coat', 'waistcoat'],
    as: 'construction',
    phrases: `
      revers crantés
      col tailleur
      double boutonnage
      poche intérieure
    `
  },
  {
    kinds: ['jacket'],
    as: 'construction',
    phrases: `
      fente dos
      fentes dos
      épaulettes
    `
  },
  {
    kinds: ['coat'],
    as: 'construction',
    phrases: `
      ceinture de trench
      imperméabilisé
      duvet
    `
  },
  {
    kinds: ['shirt'],
    as: 'construction',
    phrases: `
      poignets mousquetaire
      col boutonné
      patte de boutonnage
      lavallière
    `
  },
  {
    kinds: ['jumper'],
    as: 'construction',
    phrases: `
      poche kangourou
      bords côtes
      torsades
      maille fine
      grosse maille
      tricoté main
    `
  },
  {
    kinds: ['dress', 'knit-top'],
    as: 'construction',
    phrases: `
      fines bretelles
      bretelles fines
      bretelles
      dos nu
    `
  },
  {
    kinds: ['jumpsuit'],
    as: 'style',
    phrases: `
      pressions à l entrejambe
      bavette
    `
  },
  {
    kinds: ['shirt'],
    as: 'cloth',
    phrases: `
      soie
      satin
      mousseline
      lin
      crêpe
      voile de coton
      viscose
    `
  },
  {
    kinds: ['knit-top'],
    as: 'cloth',
    phrases: `
      jersey
      côtelé
      maille côtelée
    `
  },
  {
    kinds: ['thing'],
    as: 'construction',
    phrases: `
      au mètre
      le mètre
      patron
      hauteur de talon
      livret d instructions
    `
  }
]

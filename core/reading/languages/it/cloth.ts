/** Cloth in Italian: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      cotone
      cotone biologico
    `,
    wool: `
      lana
      lana vergine
      lana merino
      merino
      pura lana
    `,
    linen: 'lino',
    silk: `
      seta
      pura seta
    `,
    viscose: `
      viscosa
      rayon
    `,
    polyester: 'poliestere',
    polyamide: `
      poliammide
      poliamide
      nylon
    `,
    elastane: `
      elastan
      elastane
      elastam
      lycra
      spandex
    `,
    acrylic: 'acrilico',
    cashmere: `
      cashmere
      cachemire
    `,
    modal: 'modal',
    lyocell: `
      lyocell
      tencel
    `,
    acetate: 'acetato',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca',
    angora: 'angora',
    hemp: 'canapa',
    polyurethane: 'poliuretano'
  },
  structures: {
    woven: `
      tessuto a navetta
      denim
      popeline
      flanella
      velluto a coste
    `,
    knit: `
      lavorato a maglia
      jersey
      a maglia
      uncinetto
      maglia rasata
    `,
    leather: `
      pelle
      cuoio
      camoscio
      vera pelle
      nappa
      scamosciata
    `
  },
  traits: {
    rigid: `
      rigido
      non elasticizzato
      non elastico
      rigidi
      non elasticizzati
    `,
    denim: `
      denim
      di jeans
      jeans
    `,
    pile: `
      velluto
      velluto a coste
    `,
    check: `
      quadri
      a quadri
      scozzese
      tartan
      pied de poule
      quadretti
      a quadretti
      principe di galles
    `,
    stripe: `
      righe
      a righe
      gessato
      gessata
      rigato
    `,
    sheer: `
      trasparente
      chiffon
      tulle
      organza
    `,
    slippery: `
      raso
      satin
      satinato
    `,
    beaded: `
      paillettes
      perline
      pailettes
    `,
    pleated: `
      plissettata
      plissettato
      plissé
      pieghe
    `,
    suede: `
      camoscio
      scamosciata
      scamosciato
    `,
    vinyl: `
      vinile
      ecopelle
      similpelle
      finta pelle
      vernice
    `,
    coated: `
      cerato
      cerata
      spalmato
    `,
    silk: `
      seta
      pura seta
    `,
    taffeta: 'taffetà'
  },
  colours: {
    black: `
      nero
      nera
      neri
      nere
    `,
    white: `
      bianco
      bianca
      bianchi
    `,
    grey: `
      grigio
      grigia
      antracite
      grigi
    `,
    navy: `
      blu navy
      blu notte
      blu scuro
      blu marino
    `,
    blue: `
      blu
      azzurro
      azzurra
      celeste
    `,
    teal: `
      turchese
      petrolio
      ottanio
    `,
    green: `
      verde
      verde militare
      verde oliva
      verdi
    `,
    red: `
      rosso
      rossa
      rossi
    `,
    burgundy: `
      bordeaux
      bordò
    `,
    pink: `
      rosa
      fucsia
    `,
    purple: `
      viola
      lilla
    `,
    orange: `
      arancione
      ruggine
    `,
    yellow: `
      giallo
      gialla
      senape
    `,
    brown: `
      marrone
      cammello
      cuoio marrone
      testa di moro
      marroni
    `,
    beige: `
      beige
      sabbia
      tortora
    `,
    cream: `
      panna
      crema
      avorio
    `,
    gold: `
      oro
      dorato
    `,
    silver: `
      argento
      argentato
    `
  }
}

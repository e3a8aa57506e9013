/** What is measured, in Italian: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      petto
      torace
      busto
      circonferenza petto
      seno
      giro petto
      circonferenza seno
      circonferenza torace
      giro seno
      circonferenza busto
    `,
    'chest flat': `
      ascella ascella
      ascella a ascella
      da ascella a ascella
      da ascella ad ascella
      ascella ad ascella
      larghezza ascelle
      larghezza petto
      ascelle
      larghezza ascella
      sotto le ascelle
      da un ascella all altra
      larghezza torace
      larghezza sotto le ascelle
      larghezza ascella ascella
      larghezza da ascella ad ascella
      mezzo petto
      ampiezza petto
      larghezza busto
      larghezza sotto ascella
      larghezza sotto ascelle
      da ascella ascella
      sottomanica sottomanica
      larghezza seno
      ascella-ascella
      ampiezza ascelle
    `,
    waist: `
      vita
      circonferenza vita
      giro vita
      girovita
      punto vita
    `,
    'waist flat': `
      larghezza vita
      mezza vita
      ampiezza vita
      larghezza in vita
      larghezza punto vita
      larghezza cintura
    `,
    hip: `
      fianchi
      bacino
      circonferenza fianchi
      giro fianchi
      fianco
      circonferenza bacino
    `,
    'hip flat': `
      larghezza fianchi
      larghezza bacino
      ampiezza fianchi
    `,
    sweep: `
      circonferenza orlo
      giro orlo
    `,
    bottomEdge: `
      orlo
      fondo
      larghezza fondo
      larghezza orlo
      larghezza in fondo
      larghezza al fondo
      fondo larghezza
    `,
    bicep: `
      larghezza manica
      bicipite
      circonferenza braccio
      giro braccio
      giromanica
    `,
    cuff: `
      polsino
      polso
      polsini
    `,
    'neck weak': `
      collo
      colletto
    `,
    'sleeveLength weak': `
      maniche lunghe
      manica lunga
      maniche corte
      manica corta
    `,
    waistband: 'cintura',
    neck: `
      circonferenza collo
      giro collo
    `,
    thigh: `
      coscia
      larghezza coscia
      cosce
      circonferenza coscia
      larghezza cosce
    `,
    knee: `
      ginocchio
      larghezza ginocchio
    `,
    calf: 'polpaccio',
    legOpening: `
      fondo gamba
      larghezza fondo gamba
      apertura gamba
      caviglia
      orlo gamba
      larghezza caviglia
      fondo pantalone
      larghezza gamba in fondo
      fondo pantaloni
      larghezza fondo pantalone
      orlo pantalone
      larghezza fondo gambe
    `,
    elbow: 'gomito',
    underbust: `
      sottoseno
      sotto seno
      circonferenza sottoseno
    `,
    armhole: `
      giro manica
      scalfo
    `,
    shoulderWidth: `
      spalla spalla
      spalla a spalla
      da spalla a spalla
      spalle
      larghezza spalle
      larghezza spalla
      da spalla spalla
      larghezza delle spalle
      da una spalla all altra
      spalla
      spalla-spalla
      ampiezza spalle
      larghezza da spalla a spalla
    `,
    sleeveLength: `
      manica
      maniche
      lunghezza manica
      lunghezza maniche
      lungh manica
      manica lunghezza
      lunghezza della manica
      lunghezza delle maniche
      braccio
      lunghezza braccio
    `,
    sleeveUnderarm: `
      interno manica
      manica interna
      sottomanica
      lunghezza interna manica
      lunghezza manica interna
      lunghezza interno manica
      sotto manica
    `,
    length: `
      lunghezza
      lunghezza totale
      lungo
      lunga
      lungh
      altezza
      lunghezza dietro
      lunghezza schiena
      lunghezza davanti
      lunghezza complessiva
      lung
      lunghezza posteriore
      lunghi
    `,
    bodyLength: `
      spalla orlo
      da spalla a orlo
      lunghezza vestito
      lunghezza giacca
      spalla fondo
      da spalla a fondo
      lunghezza abito
      da spalla all orlo
    `,
    skirtLength: `
      lunghezza gonna
      lunghezza della gonna
    `,
    napeToWaist: `
      collo vita
      spalla vita
    `,
    backWidth: `
      larghezza schiena
      larghezza dorso
    `,
    inseam: `
      interno gamba
      cavallo interno gamba
      lunghezza interno gamba
      interno coscia lunghezza
      gamba interna
      lunghezza interna
      cucitura interna
      lunghezza gamba interna
      lunghezza interna gamba
      interno gambe
      dal cavallo al fondo
      lunghezza cavallo fondo
      interno
      entrogamba
    `,
    legLength: `
      lunghezza gamba
      lunghezza gambe
    `,
    outseam: `
      esterno gamba
      lunghezza esterna
      gamba esterna
      lunghezza pantalone
      cucitura esterna
      lunghezza esterno gamba
      lunghezza pantaloni
      lunghezza gamba esterna
      lunghezza esterna gamba
    `,
    rise: `
      cavallo
      altezza cavallo
      tiraggio
      lunghezza cavallo
    `,
    frontRise: `
      cavallo davanti
      cavallo anteriore
      cavallo frontale
    `,
    backRise: `
      cavallo dietro
      cavallo posteriore
    `,
    strap: `
      spalline
      bretelle
      spallina
    `,
    torsoLength: 'lunghezza torso',
    width: `
      larghezza
      ampiezza
      largo
      larga
    `
  },
  letters: { l: 'length', m: 'sleeveLength', s: 'shoulderWidth' },
  landmarks: {
    shoulder: `
      spalla
      cucitura spalla
      cucitura della spalla
      spallina
      spalle
    `,
    neck: `
      collo
      nuca
      colletto
      scollo
      base del collo
      sotto il colletto
    `,
    armpit: `
      ascella
      sottomanica
      ascelle
    `,
    waist: `
      vita
      cintura
      girovita
    `,
    hip: `
      fianco
      fianchi
    `,
    crotch: 'cavallo',
    knee: 'ginocchio',
    hem: `
      orlo
      fondo
      terra
      caviglia
      fine
    `,
    cuff: `
      polsino
      polso
      fine manica
      fondo manica
      polsini
    `,
    elbow: 'gomito',
    bust: `
      petto
      seno
    `,
    top: 'cima'
  },
  basis: {
    flat: `
      in piano
      piatto
      a piatto
      misurato in piano
      steso
      prese in piano
      disteso
      da lato a lato
      da cucitura a cucitura
      da un lato all altro
      adagiato
      stesa
      appoggiato in piano
      in posizione piana
      da piatto
      capo in piano
      capo disteso
      capo steso
      su un piano
      in orizzontale
    `,
    around: `
      circonferenza
      giro
      tutto intorno
      intorno
      circonferenza totale
      in totale
      di circonferenza
      totale
    `,
    doubled: `
      x2
      x 2
      per due
      per 2
      raddoppiato
      doppio
      2x
    `,
    double: `
      da raddoppiare
      moltiplicare per 2
      moltiplicare per due
      da moltiplicare per 2
      raddoppiare
    `
  },
  units: {
    in: `
      pollice
      pollici
      inch
      inches
    `,
    cm: `
      cm
      centimetro
      centimetri
      cm.
    `,
    mm: `
      mm
      millimetro
      millimetri
    `,
    m: `
      m
      metro
      metri
      mt
    `,
    ft: 'piedi'
  },
  numbers: {
    due: 2,
    tre: 3,
    quattro: 4,
    cinque: 5,
    sei: 6,
    otto: 8,
    dieci: 10,
    dodici: 12,
    quindici: 15,
    venti: 20,
    trenta: 30,
    quaranta: 40,
    cinquanta: 50
  }
}

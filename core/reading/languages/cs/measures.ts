/** What is measured, in Czech: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      prsa
      hrudník
      hruď
      přes prsa celkem
      poprsí
    `,
    'chest flat': `
      podpaží podpaží
      od podpaží k podpaží
      z podpaží do podpaží
      podpaží k podpaží
      přes prsa
      šířka přes prsa
      šířka podpaží
      šířka v podpaží
      šířka od podpaží k podpaží
      v podpaží
      podpaží
      šířka přes hrudník
      šířka hrudníku
      šířka prsou
      od podpaží do podpaží
      přes hrudník
      šířka v prsou
      šířka přes prsa podpaží podpaží
      šířka pod pažemi
      mezi podpažím
      přes podpaží
    `,
    'chest around': `
      obvod prsou
      obvod hrudníku
      obvod přes prsa
    `,
    waist: `
      pas
      v pase
    `,
    'waist flat': `
      šířka pasu
      šířka v pase
      pas šířka
      přes pas
      půl pasu
    `,
    'waist around': `
      obvod pasu
      obvod v pase
      pas obvod
    `,
    hip: `
      boky
      přes boky celkem
      zadek
    `,
    'hip flat': `
      šířka boků
      přes boky
      šířka přes boky
      šířka v bocích
    `,
    'hip around': `
      obvod boků
      obvod přes boky
    `,
    bottomEdge: `
      spodní lem
      dolní lem
      šířka dole
      dole
      šířka spodního lemu
      spodní okraj
      dolní okraj
      spodní šířka
    `,
    'sweep around': `
      obvod dole
      obvod spodního lemu
    `,
    bicep: 'šířka rukávu',
    cuff: `
      manžeta
      zápěstí
      šířka manžety
    `,
    neck: `
      obvod límce
      obvod krku
    `,
    'sleeveLength weak': `
      dlouhý rukáv
      krátký rukáv
      dlouhé rukávy
      krátké rukávy
    `,
    thigh: `
      stehno
      stehna
      šířka stehna
      šířka nohavice ve stehně
      přes stehno
    `,
    'thigh around': 'obvod stehna',
    knee: `
      koleno
      šířka v koleni
    `,
    calf: 'lýtko',
    legOpening: `
      nohavice dole
      šířka nohavice dole
      šířka nohavice
      spodek nohavice
      nohavice spodní šířka
      spodní šířka nohavice
      konec nohavice
      dole nohavice
      šířka nohavic dole
      kotník
    `,
    elbow: 'loket',
    underbust: 'pod prsy',
    armhole: 'průramek',
    shoulderWidth: `
      ramena
      šířka ramen
      rameno k rameni
      od ramene k rameni
      přes ramena
      šířka přes ramena
      šíře ramen
    `,
    sleeveLength: `
      rukáv
      délka rukávu
      rukávy
      délka rukávů
      rukáv od ramene
      délka rukávu od ramene
    `,
    sleeveUnderarm: `
      vnitřní délka rukávu
      rukáv z podpaží
      rukáv od podpaží
      délka rukávu od podpaží
      délka rukávu z podpaží
    `,
    sleeveFromCentreBack: `
      rukáv od krku
      délka rukávu od krku
    `,
    length: `
      délka
      celková délka
      délka celková
      celk délka
      délka zad
      délka vzadu
      délka vpředu
      délka celkem
      délka od ramene
    `,
    bodyLength: `
      délka od ramene dolů
      od ramene dolů
      délka šatů
      délka kabátu
    `,
    skirtLength: 'délka sukně',
    backWidth: 'šířka zad',
    inseam: `
      vnitřní délka nohavice
      krok
      vnitřní šev
      vnitřní délka
      délka v kroku
      vnitřní délka nohavic
      délka od rozkroku
      od rozkroku dolů
      od rozkroku
      rozkrok délka
      krok dolů
    `,
    outseam: `
      vnější délka nohavice
      délka kalhot
      vnější šev
      vnější délka
      boční délka
      délka na boku
      délka od pasu
      celková délka kalhot
    `,
    legLength: `
      délka nohavice
      délka nohavic
    `,
    rise: `
      sed
      výška sedu
      hloubka sedu
    `,
    frontRise: `
      přední sed
      sed přední
      sed vpředu
    `,
    backRise: `
      zadní sed
      sed zadní
      sed vzadu
    `,
    strap: `
      délka ramínek
      ramínka
    `,
    width: `
      šířka
      šíře
    `
  },
  landmarks: {
    shoulder: `
      rameno
      ramena
      ramene
    `,
    neck: `
      krk
      límec
      výstřih
    `,
    armpit: 'podpaží',
    waist: `
      pas
      pasu
    `,
    hip: 'boky',
    crotch: `
      rozkrok
      rozkroku
    `,
    knee: 'koleno',
    hem: `
      lem
      dolů
    `,
    cuff: `
      manžeta
      zápěstí
    `,
    top: 'vrch'
  },
  basis: {
    flat: `
      v ploše
      naplocho
      na plocho
      položené
      rozložené
      na rovné ploše
      v leže
      vleže
      z jedné strany
      na ploše
      jedna strana
      měřeno v ploše
      na stole
    `,
    around: `
      obvod
      dokola
      kolem dokola
      v obvodu
      po obvodu
      celý obvod
    `,
    doubled: `
      x2
      x 2
      krát dva
      krát 2
      2x
    `,
    double: `
      vynásobit dvěma
      nutno vynásobit 2
    `
  },
  units: {
    in: `
      palce
      palců
    `,
    cm: `
      cm
      centimetrů
    `,
    mm: `
      mm
      milimetrů
    `,
    m: `
      m
      metr
      metrů
    `,
    ft: 'stop'
  },
  numbers: {
    dva: 2,
    'tři': 3,
    'čtyři': 4,
    'pět': 5
  }
}

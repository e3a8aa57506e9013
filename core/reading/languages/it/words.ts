/** The small words, and those of sizes, cloth and sale, in Italian. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    misure
    misura
    dimensioni
    le misure
    misurazioni
    misurato
    misurata
    misurati
    prese
  `,
  position: `
    sopra
    sotto
    al di sopra
    al di sotto
    sopra il
    sotto il
  `,
  from: `
    da
    dal
    dalla
    dall
    dalle
  `,
  letDown: `
    di orlo da allungare
    per allungare
    orlo da allungare
    di orlo
    da poter allungare
    da allungare
    di risvolto interno
  `,
  letOut: `
    da allargare
    per allargare
    di margine
    da poter allargare
  `,
  seamAllowance: 'margine di cucitura',
  ownTape: `
    misurato da me
    misurata da me
    misurate da me
    prese da me
    misure prese da me
    ho misurato
    le mie misure
    misure reali
    in realtà
    misurato a casa
  `,
  shopCopy: `
    dal sito
    secondo il sito
    secondo il marchio
    del produttore
    descrizione del sito
    misure del sito
    misure del produttore
    scheda prodotto
    come da sito
  `,
  closed: `
    allacciato
    allacciata
    chiuso
    chiusa
    legato
    legata
    annodato
    annodata
    abbottonato
    abbottonata
  `,
  opened: `
    aperto
    aperta
    aperto in piano
    slacciato
    slacciata
    sbottonato
    sbottonata
    disteso
    distesa
  `,
  relaxed: `
    non tirato
    a riposo
    senza tirare
    rilassato
    non teso
    rilassata
    non tirata
  `,
  stretched: `
    tirato
    allungato
    si allarga fino a
    elastico fino a
    esteso
    tirando
    teso
    tirata
    tesa
    tirando l elastico
    si estende fino a
    allungabile fino a
  `,
  cuffed: `
    con risvolto
    arrotolato
    risvoltato
  `,
  uncuffed: `
    senza risvolto
    srotolato
  `,
  front: `
    davanti
    anteriore
    frontale
  `,
  back: `
    dietro
    posteriore
    retro
    schiena
  `,
  inner: `
    sotto il braccio
    sotto braccio
    sotto l'ascella
    interno
    interna
  `,
  including: `
    incluso
    inclusa
    compreso
    esclusa
    compresa
    escluso
    senza
  `,
  measures: `
    misura
    misurano
  `,
  light: `
    il
    la
    lo
    l
    i
    gli
    le
    di
    del
    della
    dello
    un
    una
    è
    sono
    circa
    ca
    approssimativamente
    in
    al
    alla
    a
    ad
    con
    per
    e
    ogni
    totale
    suo
    sua
    parte
    altezza
    lato
    cucitura
    punto
    da
    dal
    dalla
    ha
    si
    centro
    metà
    all
    dell
    nel
    nella
    sul
    più o meno
    qui
  `,
  to: `
    a
    ad
    fino a
    al
    alla
    fino al
    all
    fino alla
    fino all
  `,
  between: 'tra',
  and: 'e',
  or: `
    o
    oppure
    cioè
    ovvero
  `,
  size: `
    taglia
    tg
    tagli
    etichetta
    taglia etichetta
    segnata
    tg.
    veste taglia
    riporta taglia
    taglia indicata
    misura taglia
  `,
  region: `
    it
    ita
  `,
  letterSize: 'taglia unica',
  age: 'età',
  years: `
    anni
    mesi
  `,
  all: `
    tutte
    tutto
    tutti
  `,
  not: `
    senza
    non
    nessun
    nessuna
    né
    mai
    niente
    nessuno
  `,
  partLined: `
    semifoderato
    semifoderata
    mezza fodera
    parzialmente foderato
    parzialmente foderata
    foderato a metà
  `,
  lining: `
    fodera
    imbottitura
    bordo
    rivestimento interno
  `,
  retail: `
    pagato
    pagata
    prezzo originale
    originale
    spedizione
    nuovo costava
    valore
    acquistato a
    acquistata a
    listino
  `,
  price: `
    prezzo
    vendo
    a soli
    in vendita
  `,
  condition: `
    condizioni
    stato
    condizione
  `,
  conditionWord: `
    ottime
    ottimo
    buone
    buono
    perfette
    perfetto
    nuovo
    nuova
    come
    eccellenti
    usato
    usata
    in
    pari
    molto
    discrete
    ottima
    eccellente
    buona
  `,
  conditionPhrase: `
    nuovo con cartellino
    nuova con cartellino
    ottime condizioni
    buone condizioni
    perfette condizioni
    come nuovo
    come nuova
    mai usato
    mai usata
    mai indossato
    mai indossata
    ottimo stato
    perfetto stato
    buono stato
    indossato una volta
    indossata una volta
    pari al nuovo
    nuovo con etichetta
  `,
  shell: `
    esterno
    tessuto
    composizione
    materiale
    tessuto esterno
  `,
  nightwear: `
    pigiama
    camicia da notte
    tutina
  `,
  backPockets: `
    tasche posteriori
    tasche dietro
    tasche sul retro
  `,
  apart: `
    distanti
    distanza
    tra
  `,
  mended: `
    rammendato
    rammendata
    rammendati
    riparato
    riparata
    riparati
    ricucito
    ricucita
    rattoppato
  `,
  but: `
    ma
    tranne
    eccetto
    salvo
  `,
  imitation: `
    finta
    finto
    effetto
    simil
    ecopelle tipo
    sintetica
    tipo
  `,
  stretch: `
    elasticizzato
    elastico
    elasticità
    stretch
    elasticizzata
  `,
  half: 'mezzo'
}

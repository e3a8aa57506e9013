/** What is no measure of the garment, in Italian: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    strascico
    colletto
    altezza colletto
    revers
    bavero
    tasca
    tasche
    spacco
    cerniera
    zip
    cintura
    bottoni
    bottone
    passanti
    cappuccio
    tacco
    tacchi
    volant
    fiocco
    pizzo
    frange
    altezza cintura
    risvolto
    risvolti
    scollatura
    fodera
    ascella orlo
    da ascella a orlo
    altezza vita cintura
    fascia
  `,
  thing: `
    borsa
    borsetta
    zaino
    scarpe
    stivali
    stivaletti
    portatile
    telefono
    cappello
    berretto
    sciarpa
    foulard
    tessuto
    scampolo
    tenda
    cuscino
    valigia
    suola
    gambale
    portafoglio
    velo
    velo da sposa
    cartamodello
    collana
    orecchini
    spilla
    guanti
    cravatta
    manichino
  `,
  height: `
    di altezza
    alta
    alto
    statura
  `,
  model: `
    modella
    modello
    manichino
    io sono
    sono alta
    sono alto
    indosso
    lei indossa
    la modella
    le mie misure
    su di me
    io porto
    porto una
  `,
  fits: `
    veste
    vesta
    adatto a
    adatta a
    ideale per
    consigliato per
    consigliata per
    va bene per
    calza
    indicato per
    per una
    per un
    corrisponde a
    vestibilità
    equivale
    può andare
    va bene
  `,
  parcel: `
    pacco
    spedizione
    scatola
    imballaggio
    busta
  `,
  elsewhere: `
    altro annuncio
    annuncio separato
    venduto a parte
    venduta a parte
    separatamente
  `,
  nothing: `
    manica lunga
    manica corta
    senza maniche
    vita alta
    vita bassa
    maniche lunghe
    maniche corte
    girocollo
    collo alto
    collo a v
    scollo a v
    taglia unica
    maniche a tre quarti
    manica 3 4
    maniche 3 4
    vita elastica
    al ginocchio
    vita media
    collo alla coreana
    dolcevita
    scollo tondo
    a lungo
    vestito lungo
    abito lungo
    gonna lunga
    cappotto lungo
    spalle scoperte
    stile impero
    vita regolare
    vita stretta
    collo tondo
  `,
  otherUnit: `
    bottoni
    tasche
    pezzi
    pezzo
    paio
    giorni
    giorno
    anni
    mesi
    per cento
    gradi
    kg
    g
    gr
    grammi
    euro
    volte
    ore
    fori
    buchi
    foto
    settimane
    passanti
  `,
  sizeChart: `
    guida alle taglie
    guida taglie
    tabella taglie
    tabella delle taglie
  `,
  bodyChart: `
    misure corpo
    misure del corpo
    misure corporee
  `,
  cutFor: `
    per circonferenza seno
    per circonferenza vita
    per circonferenza fianchi
  `
}

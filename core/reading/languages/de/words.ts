/** The small words, and those of sizes, cloth and sale, in German. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    maße
    masse
    abmessungen
    messungen
    maßangaben
    masangaben
    gemessen
    vermessen
    messung
    gemessene maße
    nachgemessen
    artikelmaße
    die maße
  `,
  position: `
    unter
    über
    unterhalb
    oberhalb
    entfernt
    überm
    unterm
    weiter
    kürzer als
    länger als
  `,
  from: `
    ab
    von
    vom
    von der
    ab der
    aus
  `,
  letDown: `
    saumzugabe
    zum auslassen am saum
    zum rauslassen
    saumreserve
    kann ausgelassen werden
    noch umgeschlagen
    saum zum auslassen
    zum verlängern
    saum zum rauslassen
    verlängerbar
  `,
  letOut: `
    zum auslassen
    auslassreserve
    nahtreserve
    zum weiten
    kann weiter gemacht werden
    zum herauslassen
  `,
  seamAllowance: 'nahtzugabe',
  ownTape: `
    selbst gemessen
    von mir gemessen
    ich habe gemessen
    habe gemessen
    habe selbst nachgemessen
    nachgemessen
    selbst nachgemessen
    ich messe
    eigene maße
    meine messung
    tatsächlich
    tatsächliche maße
    tatsächlich gemessen
    in echt
  `,
  shopCopy: `
    laut hersteller
    laut herstellerangabe
    herstellerangaben
    herstellerangabe
    laut website
    laut webseite
    laut shop
    laut onlineshop
    angaben des herstellers
    produktbeschreibung
    artikelbeschreibung
    originalbeschreibung
    vom hersteller
    von der website
    laut größentabelle
  `,
  closed: `
    gebunden
    gewickelt
    geschlossen
    zugeknöpft
    zugebunden
    getragen
    geknöpft
  `,
  opened: `
    offen
    geöffnet
    aufgeklappt
    ausgebreitet
    ganz offen
    ungebunden
    aufgeknöpft
  `,
  relaxed: `
    ungedehnt
    entspannt
    nicht gedehnt
    ohne dehnung
    im ruhezustand
    ungespannt
  `,
  stretched: `
    gedehnt
    dehnbar bis
    dehnbar auf
    gestretcht
    bis dehnbar
    ausgezogen
    voll gedehnt
    lässt sich dehnen bis
    gedehnt bis
    dehnt sich bis
  `,
  cuffed: `
    umgekrempelt
    hochgekrempelt
    umgeschlagen
    mit umschlag
    gekrempelt
  `,
  uncuffed: `
    nicht umgekrempelt
    ohne umschlag
    ausgekrempelt
    ungekrempelt
    heruntergekrempelt
  `,
  front: `
    vorne
    vorn
    vorder
    vordere
  `,
  back: `
    hinten
    rücken
    hintere
    rückseite
  `,
  inner: `
    unter dem arm
    unterm arm
    unter den armen
    unter der achsel
    innen
    innenseite
    unterseite
  `,
  including: `
    inkl
    inklusive
    einschließlich
    ohne
    exkl
    samt
  `,
  measures: `
    misst
    messen
    beträgt
    gemessen
    betragen
  `,
  light: `
    der
    die
    das
    dem
    den
    des
    ein
    eine
    einer
    einem
    ist
    sind
    ca
    circa
    etwa
    ungefähr
    ungef
    zirka
    rund ca
    an
    am
    im
    in
    beim
    um
    mit
    von
    und
    je
    jeweils
    hat
    auf
    zur
    zum
    gut
    genau
    knapp
    so
    bei
    also
    nur
    hier
    es
    sie
    gesamt
    oben
    außen
    mitte
    weitesten
    breitester
    stelle
    schmalster
    punkt
    seite
    naht
    bis zum
    inkl
    zusammen
    länge
    gemessene
    beträgt
  `,
  to: `
    bis
    zu
    bis zum
    bis zur
    zum
    zur
    bis zu
  `,
  between: 'zwischen',
  and: `
    und
    sowie
  `,
  or: `
    oder
    bzw
    beziehungsweise
    also
    entspricht
  `,
  size: `
    größe
    gr
    groesse
    größenetikett
    etikett
    laut etikett
    label größe
    konfektionsgröße
    in größe
    grösse
    grösen
    etikettgröße
    steht größe
    angegeben
    kleidergröße
    auf dem etikett
    gr.
    etikett sagt
    im etikett steht
  `,
  region: `
    d
    ger
  `,
  letterSize: 'einheitsgröße',
  age: `
    alter
    jahre alt
  `,
  years: `
    jahre
    monate
    jahren
  `,
  all: `
    alle
    alles
    sämtliche
  `,
  not: `
    kein
    keine
    keinen
    keinerlei
    ohne
    nicht
    nie
    nirgends
    weder
    frei von
  `,
  partLined: `
    halb gefüttert
    halbgefüttert
    teilgefüttert
    teilweise gefüttert
    zur hälfte gefüttert
    halbfutter
    teilfutter
    nur die ärmel gefüttert
    ärmel ungefüttert
  `,
  lining: `
    futter
    innenfutter
    fütterung
    futterstoff
    füllung
    besatz
    ärmelfutter
  `,
  retail: `
    neupreis
    np
    uvp
    ehemals
    gekostet
    kostete
    versand
    porto
    versandkosten
    statt
    ursprünglich
    vb neu
  `,
  price: `
    preis
    vb
    festpreis
    fp
    verkaufe
    für nur
    jetzt
    abzugeben für
    verhandlungsbasis
    möchte
    hätte gern
  `,
  condition: 'zustand',
  conditionWord: `
    sehr
    gut
    guter
    gutem
    guten
    neuwertig
    neuwertiger
    neuwertigem
    getragen
    gebraucht
    gebrauchter
    top
    toller
    super
    einwandfrei
    einwandfreier
    bester
    bestem
    perfekter
    gepflegter
    gepflegtem
    neu
    neuer
    neuem
    wie
    tadellos
    tadellosem
    tadelloser
    einwandfreiem
    hervorragender
    hervorragendem
    absolut
    getragener
  `,
  conditionPhrase: `
    neu mit etikett
    wie neu
    neuwertig
    nie getragen
    ungetragen
    kaum getragen
    einmal getragen
    sehr gut erhalten
    gut erhalten
    sehr gepflegt
  `,
  shell: `
    außen
    oberstoff
    obermaterial
    material
    außenmaterial
    stoff
    hauptmaterial
    außenstoff
  `,
  nightwear: `
    schlafanzug
    nachthemd
    pyjama
    strampler
    schlafsack
  `,
  backPockets: `
    gesäßtaschen
    gesässtaschen
    potaschen
    hintertaschen
    hinteren taschen
    gesäßtasche
  `,
  apart: `
    auseinander
    abstand
    zwischen
  `,
  mended: `
    geflickt
    gestopft
    repariert
    ausgebessert
    genäht worden
    zugenäht
    kunstgestopft
    geflicktes
    gestopftes
    repariertes
    geflickte
    gestopfte
    reparierte
  `,
  but: `
    aber
    außer
    jedoch
    bis auf
  `,
  imitation: `
    kunst
    imitat
    optik
    look
    artig
  `,
  stretch: `
    stretch
    dehnbar
    elastisch
  `,
  half: 'halb'
}

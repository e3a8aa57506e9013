/** What is no measure of the garment, in German: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    schleppe
    schleppenlänge
    futter
    innenfutter
    futterlänge
    kragen
    kragenhöhe
    kragenbreite
    revers
    reversbreite
    tasche
    taschen
    schlitz
    gehschlitz
    reißverschluss
    knopf
    knöpfe
    gürtel
    gürtelschlaufen
    bundhöhe
    umschlag
    kapuze
    saumhöhe
    absatz
    absatzhöhe
    rückenschlitz
    ausschnitt
    ausschnitttiefe
    schleife
    rüsche
    volant
    knopfleiste
    trägerbreite
    band
    spitze
    fransen
    rippbündchen
    kellerfalte
    achsel bis saum
    seitenlänge ab achsel
  `,
  thing: `
    strumpfhose
    strumpfhosen
    strümpfe
    kleiderbügel
    tasche handtasche
    handtasche
    rucksack
    schuhe
    stiefel
    stiefelette
    laptop
    handy
    hut
    mütze
    schal
    tuch
    stoff
    meterware
    vorhang
    decke
    kissen
    koffer
    schaft
    sohle
    absätze
    stoffrest
    geldbeutel
    schleier
    brautschleier
    schnittmuster
    schmuck
    halskette
    ohrringe
    brosche
    handschuhe
    krawatte
    schneiderpuppe
    kleiderstoff
    stoffpaket
    fliege zum binden
    geldbörse
  `,
  height: `
    groß
    körpergröße
    körperhöhe
    größe körper
  `,
  model: `
    model
    modell
    puppe
    schneiderpuppe
    schaufensterpuppe
    ich bin
    ich trage
    sie trägt
    meine maße
    meine größe
    bei mir
    sie ist
    er ist
    an mir
    trägerin
  `,
  fits: `
    passt
    passt bei
    passend für
    passt für
    geeignet für
    ideal für
    würde passen
    passt bis
    für eine
    passt mir
    passt jemandem
    sollte passen
    empfehle
    empfohlen
    für
    fällt aus wie
    dürfte passen
    bis zu
    trägt sich wie
    entspricht
  `,
  parcel: `
    paket
    päckchen
    versand
    verpackung
    karton
    warensendung
    maxibrief
    großbrief
  `,
  elsewhere: `
    extra anzeige
    andere anzeige
    anderer anzeige
    separate anzeige
    eigene anzeige
    separat
    andere auktion
    separat erhältlich
  `,
  nothing: `
    knielang
    knöchellang
    bodenlang
    wadenlang
    hüftlang
    taillenhoch
    hohe taille
    hoher bund
    niedriger bund
    lange ärmel
    kurze ärmel
    langarm
    kurzarm
    dreiviertelarm
    3 4 arm
    3 4 ärmel
    brusttasche
    hosentasche
    gesäßtasche
    seitentasche
    gummibund
    rundhals
    v ausschnitt
    hüfthose
    low waist
    high waist
    lange zeit
    bund mit gummizug
    gummizug im bund
    so lange
    wie lang
  `,
  otherUnit: `
    knöpfe
    taschen
    stück
    paar
    tage
    tag
    wochen
    jahre
    monate
    prozent
    grad
    kg
    gramm
    g
    stunden
    teile
    teilig
    euro
    mal
    loch
    löcher
    gürtelschlaufen
    uhr
    jahr
    den
    liter
    fach
    reihen
    stk
    mal getragen
  `,
  sizeChart: `
    größentabelle
    größenguide
    maßtabelle
  `,
  bodyChart: `
    körpermaße
    körpermaß
  `,
  cutFor: `
    für brustumfang
    für taillenumfang
    für hüftumfang
    für brust
    für taille
    für hüfte
  `
}

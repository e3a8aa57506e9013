/** The small words, and those of sizes, cloth and sale, in Danish. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    mål
    målene
    målt
    tøjets mål
    mål på tøjet
    målt på tøjet
  `,
  position: `
    over
    under
    ovenfor
    nedenfor
  `,
  from: 'fra',
  letDown: `
    kan lægges ned
    til at lægge ned
    søm at lægge ned
  `,
  letOut: `
    kan lægges ud
    til at lægge ud
  `,
  seamAllowance: 'sømrum',
  relaxed: `
    ustrakt
    uden at strække
    ikke strakt
    i hvile
  `,
  stretched: `
    strakt
    strækkes til
    kan strækkes til
    strækker til
    strakt ud
    udstrakt
    strækker sig til
    op til
  `,
  cuffed: `
    med opslag
    opsmøget
  `,
  uncuffed: 'uden opslag',
  front: `
    foran
    front
    forside
    for
  `,
  back: `
    bag
    bagpå
    ryg
    bagside
  `,
  inner: `
    under armen
    under ærmet
    indvendig
    inderside
    indersiden
  `,
  including: `
    inklusiv
    inkl
    ekskl
    uden
  `,
  measures: `
    måler
    er målt
  `,
  light: `
    for
    en
    et
    den
    det
    er
    ca
    cirka
    omkring
    omtrent
    på
    i
    af
    ved
    med
    til
    fra
    og
    har
    om
    pr
    hver
    samlet
    hele
    som
    midt
    over
    plus
    bredeste
    sted
    sømmen
    kanten
    rundt
    lidt
    dens
    der
    målt
    bredest
    ned
    nederst
    øverst
    skulder
    foroven
  `,
  to: `
    til
    ned til
  `,
  between: 'mellem',
  and: `
    og
    samt
  `,
  or: `
    eller
    dvs
  `,
  size: `
    størrelse
    str
    str.
    størrelsen
    mærket
    mærkestørrelse
    label
    i mærket
    mærkat
  `,
  region: `
    dk
    eu
    uk
    us
  `,
  letterSize: `
    one size
    onesize
  `,
  age: 'alder',
  years: `
    år
    måneder
    mdr
  `,
  all: `
    alle
    alt
  `,
  not: `
    ingen
    ikke
    uden
    aldrig
    intet
    ej
    hverken
  `,
  partLined: `
    halvforet
    delvist foret
    halvt foret
  `,
  lining: `
    for
    foer
    fór
    foring
    indertøj
    fyld
  `,
  retail: `
    nypris
    kostede
    købt for
    købspris
    fragt
    porto
    ny pris
    oprindelig pris
    forsendelse
    fra ny
  `,
  price: `
    pris
    sælges
    sælges for
    mp
    mindstepris
    mindste pris
    nu
    bytter ikke
    fast pris
    min pris
    kom med bud
  `,
  condition: `
    stand
    tilstand
  `,
  conditionWord: `
    meget
    god
    fin
    flot
    perfekt
    ny
    nyt
    som
    brugt
    pæn
    i
    super
    rigtig
    næsten
  `,
  conditionPhrase: `
    som ny
    ny med mærke
    helt ny
    aldrig brugt
    brugt en gang
    brugt få gange
    god stand
    meget god stand
    fin stand
    perfekt stand
    næsten som ny
    ubrugt
  `,
  shell: `
    yderstof
    stof
    materiale
    kvalitet
    ydermateriale
    yderside
  `,
  nightwear: `
    nattøj
    natkjole
    pyjamas
  `,
  backPockets: 'baglommer',
  apart: `
    afstand
    imellem
  `,
  mended: `
    repareret
    syet
    stoppet
    lappet
  `,
  but: `
    men
    bortset fra
    undtagen
  `,
  imitation: `
    imiteret
    kunst
    look
    falsk
  `,
  stretch: `
    stretch
    elastisk
  `,
  half: `
    halv
    halvt
  `
}

/** The small words, and those of sizes, cloth and sale, in Norwegian. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    mål
    målene
    målt
    plaggets mål
    plagget måler
  `,
  position: `
    over
    under
    ovenfor
    nedenfor
  `,
  from: 'fra',
  letDown: `
    kan legges ned
    til å legge ned
  `,
  letOut: `
    kan legges ut
    til å legge ut
  `,
  seamAllowance: 'sømmonn',
  relaxed: `
    ustrukket
    uten å strekke
    ikke strukket
    i hvile
  `,
  stretched: `
    strukket
    strekkes til
    kan strekkes til
    strukket ut
    uttøyd
    strekker seg til
    opp til
  `,
  cuffed: `
    med oppbrett
    brettet opp
  `,
  uncuffed: 'uten oppbrett',
  front: `
    foran
    front
    forside
  `,
  back: `
    bak
    rygg
    bakside
  `,
  inner: `
    under armen
    under ermet
    innvendig
    innside
    innsiden
  `,
  including: `
    inkludert
    inkl
    ekskl
    uten
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
    av
    ved
    med
    til
    fra
    og
    har
    om
    pr
    hver
    totalt
    hele
    som
    midt
    over
    pluss
    bredeste
    sted
    sømmen
    kanten
    rundt
    litt
    dens
    der
    målt
    bredest
    ned
    øverst
    oventil
  `,
  to: `
    til
    ned til
  `,
  between: 'mellom',
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
    merket
    merkelapp
    lapp
    i lappen
  `,
  region: `
    no
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
    mnd
  `,
  all: `
    alle
    alt
  `,
  not: `
    ingen
    ikke
    uten
    aldri
    intet
    ei
    verken
  `,
  partLined: `
    halvfôret
    delvis fôret
  `,
  lining: `
    fôr
    innerfôr
    fyll
    fyllstoff
  `,
  retail: `
    nypris
    kostet
    kjøpt for
    frakt
    porto
    ny pris
    opprinnelig pris
    kjøpspris
  `,
  price: `
    pris
    selges
    selges for
    nå
    fast pris
    prisantydning
    gi bud
  `,
  condition: `
    stand
    tilstand
  `,
  conditionWord: `
    meget
    god
    fin
    flott
    perfekt
    ny
    nytt
    som
    brukt
    pen
    i
    super
    veldig
    nesten
  `,
  conditionPhrase: `
    som ny
    ny med lapp
    helt ny
    aldri brukt
    brukt en gang
    brukt få ganger
    god stand
    veldig god stand
    fin stand
    meget god stand
    perfekt stand
    nesten som ny
    ubrukt
  `,
  shell: `
    ytterstoff
    stoff
    materiale
    kvalitet
    yttermateriale
    utside
  `,
  nightwear: `
    nattøy
    nattkjole
    pyjamas
  `,
  backPockets: 'baklommer',
  apart: 'avstand',
  mended: `
    reparert
    sydd
    stoppet
    lappet
  `,
  but: `
    men
    bortsett fra
    unntatt
  `,
  imitation: `
    imitert
    kunst
    look
    falsk
    imitasjon
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

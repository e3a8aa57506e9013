/** The small words, and those of sizes, cloth and sale, in Finnish. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    mitat
    mitta
    mitattu
    mittoja
    vaatteen mitat
  `,
  position: `
    alapuolella
    yläpuolella
  `,
  from: 'alkaen',
  letDown: 'päärmevaraa',
  letOut: 'saumavaraa levittää',
  seamAllowance: 'saumavara',
  relaxed: `
    venyttämättä
    lepotilassa
  `,
  stretched: `
    venytettynä
    venyy
    venytetty
    joustaa
    maksimi
    venyen
  `,
  cuffed: 'käännettynä',
  uncuffed: 'kääntämättä',
  front: `
    edestä
    edessä
    etu
    edestä mitattuna
  `,
  back: `
    takaa
    takana
    selkä
    taka
  `,
  inner: `
    sisä
    sisäpuolelta
    kainalosta
  `,
  including: `
    sisältäen
    ilman
    mukaan lukien
  `,
  measures: `
    on
    mitoiltaan
  `,
  light: `
    noin
    n
    ca
    on
    ja
    se
    tämä
    myös
    koko
    kohdalta
    kohdasta
    leveimmästä
    mitattuna
    mitattu
    yhteensä
    lähes
    vähän
    hieman
    joka
    kanssa
    päältä
    alhaalta
    ylhäältä
    leveimmältä
  `,
  to: `
    asti
    saakka
  `,
  between: 'välillä',
  and: `
    ja
    sekä
  `,
  or: `
    tai
    eli
  `,
  size: `
    koko
    kokoa
    koon
    kokolappu
    lapussa
    merkitty koko
    kokomerkintä
  `,
  region: `
    fi
    eu
    uk
    us
  `,
  letterSize: `
    one size
    yksi koko
  `,
  age: 'ikä',
  years: `
    vuotta
    kk
    v
  `,
  all: 'kaikki',
  not: `
    ei
    ilman
    eikä
    en
  `,
  partLined: `
    osittain vuoritettu
    puolivuori
    osavuori
  `,
  lining: `
    vuori
    täyte
    resori
    vuorikangas
    tikkikangas
  `,
  retail: `
    ovh
    uutena
    ostettu
    maksoi
    ostohinta
    postikulut
    postimaksu
    normaalihinta
    alkuperäinen hinta
    posti
    toimitus
  `,
  price: `
    hinta
    myydään
    myyn
    nyt
    hintapyyntö
    hp
    pyyntö
  `,
  condition: `
    kunto
    kunnossa
    kuntoinen
    kuntoluokitus
  `,
  conditionWord: `
    hyvä
    hyvässä
    erittäin
    erinomainen
    erinomaisessa
    uusi
    uuden
    veroinen
    käytetty
    siisti
    siistissä
    hyväkuntoinen
    loistava
    loistavassa
    todella
  `,
  conditionPhrase: `
    uuden veroinen
    käyttämätön
    uusi
    kuin uusi
    hyvässä kunnossa
    erinomaisessa kunnossa
    erittäin hyvässä kunnossa
    hyväkuntoinen
    uutta vastaava
  `,
  shell: `
    päällinen
    päällikangas
    materiaali
    kangas
    pinta
  `,
  nightwear: `
    yöpaita
    pyjama
  `,
  backPockets: 'takataskut',
  apart: 'väli',
  mended: `
    korjattu
    parsittu
    paikattu
    ommeltu
  `,
  but: `
    mutta
    paitsi
    vain
  `,
  imitation: `
    teko
    jäljitelmä
    keino
  `,
  stretch: `
    jousto
    joustava
    stretch
  `,
  half: 'puoli'
}

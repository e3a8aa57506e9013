/** The small words, and those of sizes, cloth and sale, in Polish. */
import type { AsideRole, WordRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const words: Partial<Record<Exclude<WordRole, AsideRole>, Phrases>> = {
  heading: `
    wymiary
    pomiary
    wymiar
    mierzone
    zmierzone
    mierzona
    mierzony
    wymiarki
  `,
  position: `
    nad
    pod
    powyżej
    poniżej
    ponad
    wyżej
    niżej
  `,
  from: `
    od
    z
  `,
  letDown: `
    zapas na podłożenie
    do odpuszczenia
    zapasu na dole
    można wypuścić
    zapasu do wypuszczenia
    do przedłużenia
    zapasu
    podłożenia do odpuszczenia
    zapasu w podłożeniu
  `,
  letOut: `
    do poszerzenia
    zapasu w szwie
    do wypuszczenia w szwach
    zapasu w szwach
    na poszerzenie
  `,
  seamAllowance: 'zapas szwu',
  ownTape: `
    zmierzone przeze mnie
    mierzone przeze mnie
    sama zmierzyłam
    zmierzyłam
    zmierzyłem
    moje pomiary
    mój pomiar
    rzeczywiste wymiary
    w rzeczywistości
  `,
  shopCopy: `
    według strony
    wg strony
    ze strony
    według producenta
    wg producenta
    opis producenta
    opis ze strony
    wymiary producenta
    opis sklepu
  `,
  closed: `
    zawiązana
    zawiązany
    zawiązane
    zapięta
    zapięty
    zapięte
    po zawiązaniu
    po zapięciu
    związana
  `,
  opened: `
    rozłożona
    rozłożony
    rozłożone
    rozpięta
    rozpięty
    rozwiązana
    po rozłożeniu
    otwarta
  `,
  relaxed: `
    bez rozciągania
    nierozciągnięty
    w spoczynku
    nierozciągnięta
    luźno
    bez naciągania
  `,
  stretched: `
    po rozciągnięciu
    rozciąga się do
    rozciągnięty
    rozciągnięta
    rozciągliwe do
    do rozciągnięcia
    naciągnięty
    po naciągnięciu
    rozciąga się
  `,
  cuffed: `
    z podwinięciem
    podwinięte
    podwinięta
  `,
  uncuffed: `
    bez podwinięcia
    rozwinięte
    rozwinięta
  `,
  front: `
    przód
    z przodu
    przodu
  `,
  back: `
    tył
    z tyłu
    tyłu
  `,
  inner: `
    pod pachą
    od pachy
    wewnętrzna
    wewnątrz
    od wewnątrz
    wewnętrzny
  `,
  including: `
    razem
    wraz
    łącznie
    bez
    włącznie
  `,
  measures: `
    mierzy
    ma szerokości
    wynosi
  `,
  light: `
    i
    z
    w
    na
    do
    od
    ok
    około
    jest
    to
    po
    się
    ma
    przy
    ca
    cm około
    o
    długości
    szerokości
    każdy
    razem
    całość
    dla
    wysokości
    najszerszym
    miejscu
    szwu
    strony
    linii
    ze
    za
    mniej więcej
    po około
    circa
    czyli
    ponad około
    środek
    boku
    strona
  `,
  to: `
    do
    aż do
  `,
  between: 'między',
  and: `
    i
    oraz
  `,
  or: `
    lub
    czyli
    albo
  `,
  size: `
    rozmiar
    rozm
    roz
    metka
    metce
    na metce
    rozmiar z metki
    rozmiarze
    rozmiaru
    r
    na metce rozmiar
    rozmiar na metce
  `,
  region: 'pl',
  letterSize: `
    uniwersalny
    uni
  `,
  age: 'wiek',
  years: `
    lat
    lata
    miesięcy
    rok
  `,
  all: `
    wszystkie
    wszystko
  `,
  not: `
    bez
    brak
    nie
    żadnych
    nigdy
    ani
    żadne
  `,
  partLined: `
    częściowa podszewka
    częściowo na podszewce
    pół podszewki
    do połowy na podszewce
  `,
  lining: `
    podszewka
    podszewki
    wypełnienie
    ściągacze
    wnętrze
  `,
  retail: `
    nowa kosztowała
    cena sklepowa
    wysyłka
    koszt
    oryginalnie
    kupiona za
    kupione za
    cena regularna
    kosztowała
    przesyłka
    kosztowały
    było
    był
    była
    kosztował
  `,
  price: `
    cena
    sprzedam
    za jedyne
    teraz
  `,
  condition: 'stan',
  conditionWord: `
    bardzo
    dobry
    idealny
    nowy
    jak
    perfekcyjny
    używany
    świetny
    bdb
    db
    super
    doskonały
  `,
  conditionPhrase: `
    nowy z metką
    nowa z metką
    nowe z metką
    bardzo dobry stan
    stan bardzo dobry
    stan idealny
    idealny stan
    jak nowy
    jak nowa
    jak nowe
    nienoszona
    nienoszone
    nigdy nie noszona
    nigdy nie noszone
    stan bdb
    dobry stan
    stan dobry
    założona raz
    założone raz
    raz założona
    stan perfekcyjny
  `,
  shell: `
    materiał
    skład
    tkanina wierzchnia
    wierzch
    warstwa zewnętrzna
  `,
  nightwear: `
    piżama
    koszula nocna
    pajacyk
    śpioszki
  `,
  backPockets: `
    tylne kieszenie
    tylnych kieszeni
    tylnymi kieszeniami
    kieszenie z tyłu
  `,
  apart: `
    odstęp
    odległość
    między
  `,
  mended: `
    naprawiony
    naprawiona
    naprawione
    zacerowany
    zacerowana
    zacerowane
    zaszyty
    zaszyta
    zaszyte
    załatana
  `,
  but: `
    ale
    oprócz
    poza
  `,
  imitation: `
    sztuczna
    sztuczne
    imitacja
    eko
    a la
    typu
  `,
  stretch: `
    elastyczna
    elastyczne
    rozciągliwa
    stretch
    elastyczny
    rozciągliwy
  `,
  half: 'pół'
}

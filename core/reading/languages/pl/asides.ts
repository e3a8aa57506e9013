/** What is no measure of the garment, in Polish: details, other things, the model, whom it would fit, names of cuts. */
import type { AsideRole } from '../lexicon.ts'
import type { Phrases } from '../phrases.ts'

export const asides: Partial<Record<AsideRole, Phrases>> = {
  detail: `
    tren
    kołnierz
    kieszeń
    kieszenie
    rozcięcie
    rozporek
    zamek
    suwak
    pasek
    guziki
    guzik
    szlufki
    kaptur
    obcas
    falbana
    kokarda
    koronka
    frędzle
    wysokość paska
    klapy
    klapa
    podszewka
    wysokość kołnierza
    szerokość paska
    lamówka
    wysokość obcasa
    od pachy do dołu
  `,
  thing: `
    torebka
    torba
    plecak
    buty
    kozaki
    botki
    szpilki
    laptop
    telefon
    kapelusz
    czapka
    szalik
    apaszka
    tkanina
    materiał w kawałku
    zasłona
    poduszka
    walizka
    podeszwa
    cholewka
    portfel
    obcasy
    welon
    wykrój
    naszyjnik
    kolczyki
    broszka
    rękawiczki
    krawat
    manekin krawiecki
    materiał
    kupon materiału
  `,
  height: `
    wzrost
    wzrostu
  `,
  model: `
    modelka
    model
    manekin
    mam wzrost
    noszę
    mam
    jestem
    modelka ma
    na modelce
    moje wymiary
    na sobie
    ona ma
    noszę rozmiar
    ważę
    modelki
  `,
  fits: `
    pasuje na
    dobra na
    dobre na
    na osobę
    idealna na
    polecam na
    będzie dobra na
    odpowiednia na
    pasuje do
    dla osoby
    dla osób
    będzie pasować
    polecane na
    dobry na
    odpowiada
    pasować na
    na obwód
  `,
  parcel: `
    paczka
    wysyłka
    paczkomat
    opakowanie
    karton
    gabaryt
    paczki
  `,
  elsewhere: `
    osobna aukcja
    innej aukcji
    osobnej aukcji
    osobnym ogłoszeniu
    sprzedawana osobno
    do kupienia osobno
  `,
  nothing: `
    wysoki stan
    niski stan
    długi rękaw
    krótki rękaw
    bez rękawów
    do kolan
    do kostek
    okrągły dekolt
    dekolt w serek
    rękaw 3 4
    długie rękawy
    krótkie rękawy
    w pasie gumka
    średni stan
    stan bardzo dobry
    stan idealny
    stan dobry
    bardzo dobry stan
    idealny stan
    dobry stan
    stan nowy
    stan jak nowy
    w stanie
    stan używany
    stan perfekcyjny
    golf
    półgolf
    dekolt v
    stan ogólny
    rękaw długi
    rękaw krótki
    stan db
    stan bdb
    długość midi
    długość mini
    długość maxi
  `,
  otherUnit: `
    guziki
    guzików
    kieszenie
    kieszeni
    sztuki
    sztuk
    szt
    para
    pary
    dni
    dzień
    lat
    miesięcy
    procent
    stopni
    kg
    g
    gram
    zł
    pln
    razy
    godzin
    dziury
    zdjęć
    szlufek
  `,
  sizeChart: `
    tabela rozmiarów
    tabeli rozmiarów
  `,
  bodyChart: 'wymiary ciała',
  cutFor: `
    na obwód biustu
    na obwód talii
    na obwód bioder
  `
}

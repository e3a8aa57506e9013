/** What is measured, in Swedish: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      byst
      bröst
      bystmått
      bröstvidd
      byst runt om
      bystvidd
      bröstmått
      bröstomfång
    `,
    'chest flat': `
      armhåla till armhåla
      armhåla
      armhålor
      från armhåla till armhåla
      armhåla armhåla
      mellan armhålorna
      bredd under ärm
      under ärmarna
      ärmhåla till ärmhåla
      bredd armhåla till armhåla
      under armarna
      bystbredd
      bredd mellan armhålorna
      bröstbredd
      bredd över bröst
      ärmhål till ärmhål
      ärmhålan till ärmhålan
      armhålan till armhålan
      bredd under armarna
      halv byst
      under armhålan
      tvärs över bröstet
      bredd armhåla
      bredd bröst
      bredd byst
      tvärs över bysten
      från ärmhål till ärmhål
      bredd under ärmarna
      armhål till armhål
    `,
    waist: `
      midja
      midjemått
      midjevidd
      linning
      midjan
      midje
      midjeomfång
    `,
    'waist flat': `
      midjebredd
      bredd midja
      halv midja
      midja tvärs över
      midjan tvärs över
      tvärs över midjan
      tvärs över midja
      bredd i midjan
      linning tvärs över
      bredd midjan
    `,
    hip: `
      höft
      höfter
      höftmått
      stuss
      höftvidd
      höften
      rumpa
    `,
    'hip flat': `
      höftbredd
      bredd höft
      höft tvärs över
      tvärs över höften
      bredd höfter
      höften tvärs över
      tvärs över höfterna
    `,
    sweep: `
      fållvidd
      kjolvidd
      vidd nedtill
    `,
    bottomEdge: `
      fåll
      nederkant
      bredd nederkant
      nedtill
      bredd nertill
      nertill
      bredd nedtill
      bredd fåll
      nederkanten
      bredd nere
      nere
    `,
    bicep: `
      överarm
      ärmvidd
      ärmbredd
      överarmen
    `,
    cuff: `
      manschett
      handled
      ärmslut vidd
    `,
    'neck weak': 'krage',
    'sleeveLength weak': `
      lång ärm
      långa ärmar
      kort ärm
      korta ärmar
    `,
    neck: `
      halsvidd
      kragvidd
      halsomfång
    `,
    thigh: `
      lår
      lårvidd
      lårbredd
      låret
      lår tvärs över
      bredd lår
    `,
    knee: `
      knä
      knävidd
      knäbredd
    `,
    calf: `
      vad
      vadvidd
    `,
    legOpening: `
      benslut
      benvidd
      benöppning
      nederkant ben
      benvidd nedtill
      ben nedtill
      benbredd
      fotvidd
      benslutet
      ankel
      bensluten
      benvidd nertill
      benvidd nere
      bensluts vidd
      benslut bredd
      nederkant byxben
    `,
    elbow: 'armbåge',
    underbust: `
      under byst
      under bysten
    `,
    armhole: 'ärmhål',
    shoulderWidth: `
      axel till axel
      axelbredd
      axlar
      axelsöm till axelsöm
      från axel till axel
      axel axel
      mellan axlarna
      axel
      bredd axlar
      axlarna
      axelvidd
      axelsöm axelsöm
      bredd axel till axel
      tvärs över axlarna
      bredd över axlarna
    `,
    sleeveLength: `
      ärm
      ärmlängd
      ärmar
      ärmens längd
      ärmen
      armlängd
      ärmlängden
      längd ärm
      ärmarna
    `,
    sleeveUnderarm: `
      innerärm
      ärmlängd insida
      inre ärmlängd
      ärmens insida
      ärm insida
      ärmlängd innersöm
      innerärmlängd
      underärm
      ärmlängd insidan
      insida ärm
    `,
    length: `
      längd
      totallängd
      lång
      rygglängd
      total längd
      ryggens längd
      hel längd
      längd bak
      längd fram
      längden
      hela längden
      rygg längd
      längd rygg
      totala längden
      långa
    `,
    bodyLength: `
      axel till fåll
      klänningslängd
      längd klänning
    `,
    skirtLength: `
      kjollängd
      längd kjol
    `,
    napeToWaist: `
      nacke till midja
      axel till midja
    `,
    backWidth: 'ryggbredd',
    inseam: `
      innerben
      innerbenslängd
      innersöm
      inre benlängd
      insida ben
      innerbenet
      innerlängd
      benlängd inner
      innerbenlängd
      innerbens längd
      benets insida
      inner ben
      benlängd insida
      insida benlängd
      insidan ben
      innersömmen
      grenen till fåll
      innerbenen
      innerbenslängden
    `,
    legLength: `
      benlängd
      längd ben
      benlängden
    `,
    outseam: `
      ytterben
      ytterbenslängd
      yttersöm
      utsida ben
      ytterlängd
      byxlängd
      sidolängd
      ytterbenet
      sidsöm
      benlängd utsida
      ytterbens längd
      längd byxor
      ytterbenlängd
      benlängd ytter
      ytterbenslängden
      yttre benlängd
    `,
    rise: `
      gren
      grenhöjd
      grenmått
      midjehöjd
      grenlängd
      grenen
    `,
    frontRise: `
      gren fram
      framgren
      framgren höjd
      grenhöjd fram
      gren framtill
      främre gren
    `,
    backRise: `
      gren bak
      bakgren
      grenhöjd bak
      bakre gren
      gren baktill
    `,
    strap: `
      axelband
      axelbanden
    `,
    torsoLength: 'bållängd',
    width: `
      bredd
      vidd
      bred
      bredden
    `
  },
  landmarks: {
    shoulder: `
      axel
      axelsöm
      axeln
      axelband
      axelsömmen
      axeltopp
    `,
    neck: `
      krage
      nacke
      hals
      halsringning
      kragen
      nacken
    `,
    armpit: `
      armhåla
      ärmhål
      ärmhåla
      armhålan
      armhål
      ärmhålan
      ärmhålet
    `,
    waist: `
      midja
      linning
      midjan
      linningen
    `,
    hip: `
      höft
      höften
    `,
    crotch: `
      gren
      grenen
    `,
    knee: `
      knä
      knäet
    `,
    hem: `
      fåll
      nederkant
      golv
      ankel
      slut
      fållen
      nederkanten
      nedtill
      ner
      botten
    `,
    cuff: `
      manschett
      handled
      ärmslut
      mudd
      ärmslutet
      muddslut
      ärmens slut
    `,
    elbow: 'armbåge',
    bust: 'byst',
    top: 'topp'
  },
  basis: {
    flat: `
      plant
      mätt plant
      plan
      tvärs över
      rakt över
      liggande
      liggandes
      liggande plant
      platt
      mätt liggande
      söm till söm
      enkel bredd
      sida till sida
      rakt av
      utlagt
      mätt platt
      plant liggande
      utlagd
      på bredden
      mätta plant
      dubbelvikt
      från sida till sida
      från söm till söm
      mätta liggande
      mätt rakt över
      plagget liggande
    `,
    around: `
      runt om
      omkrets
      runtom
      runt
      hela vägen runt
      total omkrets
      totalt
      rundmått
    `,
    doubled: `
      x2
      x 2
      gånger 2
      gånger två
      dubbelt
      2x
      dubbla
    `,
    double: `
      dubblera
      ska dubblas
      multiplicera med 2
      gångra med 2
      dubbleras
    `
  },
  units: {
    in: `
      tum
      inch
      inches
    `,
    cm: `
      cm
      centimeter
    `,
    mm: `
      mm
      millimeter
    `,
    m: `
      m
      meter
    `,
    ft: 'fot'
  },
  numbers: {
    'två': 2,
    tre: 3,
    fyra: 4,
    fem: 5,
    sex: 6,
    'åtta': 8,
    tio: 10,
    tolv: 12,
    femton: 15,
    tjugo: 20,
    trettio: 30,
    fyrtio: 40,
    femtio: 50
  }
}

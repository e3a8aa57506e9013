/** The garment in German: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        jeans
        jeanshose
        schlagjeans
        bluejeans
        denimhose
        mom jeans
        röhrenjeans
      `
    },
    {
      kind: 'trousers',
      phrases: `
        palazzo
        hose
        hosen
        stoffhose
        anzughose
        wollhose
        leinenhose
        cordhose
        lederhose
        chino
        chinohose
        jogginghose
        leggings
        culotte
        bundfaltenhose
        marlenehose
        schlaghose
        reithose
        skihose
        trainingshose
        palazzohose
        cargohose
        pyjamahose
        schlafanzughose
      `
    },
    {
      kind: 'shorts',
      phrases: `
        shorts
        kurze hose
        kurze lederhose
        kurze hosen
        kurze jeans
        kurze jeanshose
        lederhose kurz
        kniebundhose kurz
        bermuda
        bermudas
        hotpants
        jeansshorts
      `
    },
    {
      kind: 'skirt',
      phrases: `
        röcke
        rock
        minirock
        maxirock
        midirock
        bleistiftrock
        tellerrock
        faltenrock
        wollrock
        lederrock
        jeansrock
        plisseerock
        wickelrock
        kilt
      `
    },
    {
      kind: 'dress',
      phrases: `
        kleider
        hängerkleid
        kleid
        sommerkleid
        abendkleid
        maxikleid
        midikleid
        minikleid
        hemdblusenkleid
        etuikleid
        strickkleid
        wickelkleid
        brautkleid
        cocktailkleid
        dirndl
        ballkleid
        blusenkleid
        hemdkleid
        jeanskleid
        leinenkleid
        trägerkleid
        kostümkleid
        tunika kleid
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        jumpsuit
        overall
        latzhose
        einteiler
        strampler
      `
    },
    {
      kind: 'shirt',
      phrases: `
        hemd
        bluse
        seidenbluse
        flanellhemd
        jeanshemd
        oberhemd
        trachtenhemd
        trachtenbluse
        tunika
        leinenhemd
        leinenbluse
        holzfällerhemd
        overshirt
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        shirt
        tshirt
        t shirt
        top
        oberteil
        langarmshirt
        poloshirt
        trägertop
        unterhemd
        polo
        longsleeve
        korsett
        corsage
        bustier
      `
    },
    {
      kind: 'jumper',
      phrases: `
        pullover
        pulli
        strickpullover
        strickjacke
        cardigan
        sweatshirt
        hoodie
        rollkragenpullover
        wollpullover
        kapuzenpullover
        strickpulli
        norwegerpullover
        kaschmirpullover
        sweater
        troyer
        pullunder
      `
    },
    {
      kind: 'jacket',
      phrases: `
        sakko
        blazer
        anzug
        anzugjacke
        smoking
        kostüm
        hosenanzug
        jackett
        tweedsakko
        frack
        janker
        trachtenjanker
        kostümjacke
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        jacke
        jeansjacke
        lederjacke
        bomberjacke
        trachtenjacke
        cordjacke
        blouson
        bikerjacke
        bolero
        fliegerjacke
        wolljacke
        samtjacke
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        wachsjacke
        mäntel
        mantel
        wollmantel
        trenchcoat
        parka
        daunenjacke
        daunenmantel
        winterjacke
        wintermantel
        regenjacke
        regenmantel
        anorak
        skijacke
        steppjacke
        pelzmantel
        lodenmantel
        softshelljacke
        windjacke
        übergangsjacke
        warnjacke
        motorradjacke
        fleecejacke
        ledermantel
        dufflecoat
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        weste
        gilet
        anzugweste
        steppweste
        trachtenweste
        daunenweste
        strickweste
      `
    },
    {
      kind: 'other',
      phrases: `
        bademantel
        cape
        poncho
        nachthemd
        badeanzug
        bikini
        kimono
        morgenmantel
        schlafanzug
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        gefüttert
        mit futter
        komplett gefüttert
        innenfutter
        vollständig gefüttert
        ganz gefüttert
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        ungefüttert
        nicht gefüttert
        ohne futter
        kein futter
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        kurzarm
        kurze ärmel
        kurzärmelig
        kurzärmlig
        dreiviertelarm
        3 4 arm
        3 4 ärmel
        ärmellos
        halbarm
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        gummibund
        elastischer bund
        gummizug
        bund mit gummizug
        dehnbarer bund
        gummizug im bund
        bund elastisch
        gummi im bund
        elastischem bund
      `
    },
    {
      fact: { fact: 'workingCuffButtons', value: true },
      phrases: `
        knöpfbare ärmel
        echte knopflöcher
        aufknöpfbare ärmel
        durchgeknöpfte ärmel
        echte ärmelknöpfe
        echten ärmelknöpfen
        echten ärmelknöpfe
        funktionierende ärmelknöpfe
        funktionierenden ärmelknöpfen
        ärmelknöpfe zum öffnen
        ärmelknöpfe lassen sich öffnen
        ärmel knöpfbar
        ärmel aufknöpfbar
        echte ärmelschlitze
        echten ärmelschlitzen
        offene ärmelschlitze
      `
    },
    {
      fact: { fact: 'workingCuffButtons', value: false },
      phrases: `
        falsche ärmelknöpfe
        falschen ärmelknöpfen
        blinde ärmelknöpfe
        ärmelknöpfe nur zierde
        ärmelknöpfe nicht zu öffnen
        ärmelknöpfe lassen sich nicht öffnen
        zierknöpfe am ärmel
        zierknöpfe an den ärmeln
        ärmel nicht knöpfbar
        blinde ärmelschlitze
      `
    },
    {
      fact: { fact: 'backSeam', value: true },
      phrases: `
        rückennaht
        gesäßnaht
        mittelnaht hinten
        rückenmittelnaht
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'abnäher'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        bleistiftrock
        gerader rock
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        ausgestellt
        a linie
        ausgestellter rock
        a-linie
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'circle' },
      phrases: 'tellerrock'
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        faltenrock
        plisseerock
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: `
        originalsaum
        original saum
        ungekürzt
      `
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        seitlicher reißverschluss
        reißverschluss hinten
        reißverschluss seitlich
        reißverschluss an der seite
        seitenreißverschluss
        reißverschluss im rücken
      `
    },
    {
      fact: { fact: 'opens', value: ['hem'] },
      phrases: `
        rückenschlitz
        seitenschlitze
        rückenschlitze
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        gehschlitz
        gehfalte
      `
    }
  ],
  uses: {
    protective: `
      warnschutz
      warnjacke
      warnweste
      schutzkleidung
      flammhemmend
      flammschutz
      protektoren
      motorradjacke mit protektoren
      schnittschutz
      schnittschutzhose
      feuerfest
    `,
    child: `
      kinder
      mädchen
      jungen
      baby
      kind
      kleinkind
      kinderkleid
      kinderhose
      kinderjacke
    `,
    'child-sleepwear': `
      kinderschlafanzug
      kinderpyjama
      babyschlafanzug
      strampler
    `,
    'medical-compression': `
      kompressionsstrümpfe
      kompressionsstrumpf
      medizinische kompression
      stützstrümpfe
    `
  },
  whose: {
    women: `
      für damen
      für frauen
      damenmode
      damengröße
    `,
    men: `
      für herren
      für männer
      herrenmode
      herrengröße
    `,
    'women named': `
      damen
      frauen
    `,
    'men named': `
      herren
      männer
    `,
    both: `
      unisex
      damen und herren
      herren und damen
      damen oder herren
      herren oder damen
      für damen und herren
      für herren und damen
    `
  },
  faults: [
    {
      mending: ['re-line-pocket'],
      phrases: `
        loch in der tasche
        in der tasche ein loch
        loch in einer tasche
        löcher in den taschen
        loch im taschenfutter
        taschenfutter kaputt
        taschenfutter gerissen
      `
    },
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        mottenloch
        mottenlöcher
        mottenfraß
        mottenschaden
      `
    },
    {
      mending: ['patch'],
      phrases: `
        loch
        löcher
        löchlein
        riss
        risse
        gerissen
        brandloch
      `
    },
    {
      mending: ['clean'],
      phrases: `
        fleck
        flecken
        verfärbung
        verfärbungen
        fleckchen
        schmutz
        verschmutzt
        verschmutzung
        riecht
        muffig
        stockflecken
        vergilbt
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        knopf fehlt
        fehlender knopf
        ein knopf fehlt
        knöpfe fehlen
        es fehlt ein knopf
        fehlt ein knopf
      `
    },
    {
      mending: ['sew-shank'],
      phrases: `
        knopf ist locker
        ein knopf ist locker
        loser knopf
        knopf ist lose
        knopf lose
        knopf locker
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        naht offen
        offene naht
        naht aufgegangen
        saum offen
        naht gerissen
        futter gerissen
        naht ist offen
        saum aufgegangen
        offener saum
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        reißverschluss defekt
        reißverschluss kaputt
        reißverschluss klemmt
        defekter reißverschluss
        kaputter reißverschluss
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        gummi ausgeleiert
        gummizug ausgeleiert
        bund ausgeleiert
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        pilling
        knötchen
        fusseln
      `
    },
    {
      mending: ['dye'],
      phrases: `
        verblasst
        ausgeblichen
        verwaschen
        ausgewaschen
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        abgewetzt
        schrammen
        kratzer
      `
    },
    {
      mending: [],
      phrases: `
        gebrauchsspuren
        tragespuren
        mangel
        mängel
        fadenzieher
        beschädigt
        beschädigung
        makel
      `
    }
  ]
}

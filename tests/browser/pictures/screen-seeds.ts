/** Invented people and things, written as rows as the pages themselves write them, in English and in German. */
import type { Page } from 'playwright-core'

type Language = 'en' | 'de'

const AT = '2026-10-12T10:00:00.000Z'
const base = (id: string) => ({ id, device: 'pictures', revision: 1, createdAt: AT, updatedAt: AT, deletedAt: null })
const BODY = {
  waistbandGirth: 750,
  hipGirth: 1000,
  thighGirth: 580,
  insideLegLength: 800,
  bustGirth: 960,
  shoulderWidth: 430,
  armLength: 610
}

/** Writes rows straight into the tables; pages see them once they are loaded anew. */
export const writeRows = (page: Page, rows: Readonly<Record<string, readonly object[]>>): Promise<void> =>
  page.evaluate(
    (all) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('seam-reckoner')
        opening.onerror = () => fail(opening.error)
        opening.onsuccess = () => {
          const writing = opening.result.transaction(Object.keys(all), 'readwrite')
          for (const [table, some] of Object.entries(all)) for (const row of some) writing.objectStore(table).put(row)
          writing.oncomplete = () => {
            opening.result.close()
            done()
          }
          writing.onerror = () => fail(writing.error)
        }
      }),
    rows
  )

export const rowsOf = (page: Page, table: string): Promise<Record<string, unknown>[]> =>
  page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((done, fail) => {
        const opening = indexedDB.open('seam-reckoner')
        opening.onerror = () => fail(opening.error)
        opening.onsuccess = () => {
          const all = opening.result.transaction(name).objectStore(name).getAll()
          all.onsuccess = () => {
            opening.result.close()
            done(all.result)
          }
        }
      }),
    table
  )

/** Somebody who sews to level 3 and can take work to a tailor whose prices are not known yet. */
export function somebody(language: Language) {
  return {
    people: [
      {
        ...base('p1'),
        name: 'Wren',
        units: 'cm',
        currency: language === 'de' ? 'EUR' : 'GBP',
        fit: 'as-cut',
        means: { level: 3, tailor: true, hourWorth: 12 }
      }
    ],
    settings: [{ ...base('settings'), theme: 'system', personId: 'p1' }],
    bodyMeasurements: Object.entries(BODY).map(([measure, mm]) => ({
      ...base(`m-${measure}`),
      personId: 'p1',
      measure,
      mm,
      stated: String(mm / 10),
      takenOn: '2026-10-12'
    }))
  }
}

export const ownGarments = (language: Language) => ({
  garmentsOwned: [
    {
      ...base('g1'),
      personId: 'p1',
      name: language === 'de' ? 'Graue Sonntagshose' : 'Grey Sunday trousers',
      kind: 'trousers',
      measures: [
        { point: 'waist', mm: 770, stated: language === 'de' ? '38,5 flat' : '38.5 flat' },
        { point: 'hip', mm: 1050, stated: language === 'de' ? '52,5 flat' : '52.5 flat' },
        { point: 'inseam', mm: 790, stated: '79' }
      ],
      favourite: true,
      notes: ''
    },
    {
      ...base('g2'),
      personId: 'p1',
      name: language === 'de' ? 'Blaues Arbeitshemd' : 'Blue work shirt',
      kind: 'shirt',
      measures: [{ point: 'chest', mm: 1080, stated: '54 flat' }],
      favourite: false,
      notes: ''
    }
  ]
})

interface Listing {
  title: string
  text: string
}
/** Pages that are read: one for each state of an answer. */
export const LISTINGS: Record<string, Record<Language, Listing>> = {
  'wears': {
    en: {
      title: 'Grey flannel trousers',
      text: 'Unlined, wool. Laid flat: waist 38.5 cm, hip 53 cm, thigh 31 cm, leg opening 20 cm. Inside leg 80 cm. £18.'
    },
    de: {
      title: 'Graue Flanellhose',
      text:
        'Ungefüttert, Wolle. Flach gemessen: Bundweite 38,5 cm, Hüfte 53 cm, Oberschenkel ' +
        '31 cm, Beinweite unten 20 cm. Innenbeinlänge 80 cm. 18 €.'
    }
  },
  'alters': {
    en: {
      title: 'Brown wool trousers with turn-ups',
      text: 'Laid flat: waist 41 cm, hip 53 cm, thigh 32 cm, leg opening 21 cm. Inside leg 84 cm. 100% wool. £24 plus £3.90 postage.'
    },
    de: {
      title: 'Braune Wollhose mit Umschlag',
      text:
        'Flach gemessen: Bundweite 41 cm, Hüfte 53 cm, Oberschenkel 32 cm, Beinweite ' +
        'unten 21 cm. Innenbeinlänge 84 cm. 100 % Wolle. 24 € zzgl. 3,90 € Versand.'
    }
  },
  'tailor': {
    en: {
      title: 'Tailored tweed jacket, fully lined, working cuffs, in a herringbone of moss, rust and oat',
      text:
        'Laid flat: chest 54 cm, waist 51 cm. Shoulder to shoulder 45.5 cm, sleeve ' +
        '66 cm, length 74 cm. Working buttonholes at the cuffs. 100% wool. £45.'
    },
    de: {
      title: 'Sakko aus Tweed, ganz gefüttert, mit echten Ärmelknöpfen, Fischgrat in Moos, Rost und Hafer',
      text:
        'Flach gemessen: Brust 54 cm, Taille 47 cm. Schulterbreite 45,5 cm, Ärmel ' +
        '66 cm, Länge 74 cm. Knopflöcher am Ärmel zum Öffnen. 100 % Wolle. 45 €.'
    }
  },
  'close': {
    en: {
      title: 'Indigo jeans, straight leg',
      text: 'Rigid cotton denim. Laid flat: waist 38 cm, hip 51 cm, thigh 31 cm, leg opening 19 cm. Inside leg 80 cm. £18.50.'
    },
    de: {
      title: 'Jeans indigo, gerades Bein',
      text:
        'Fester Denim aus Baumwolle. Flach gemessen: Bundweite 38 cm, Hüfte 51,5 cm, ' +
        'Oberschenkel 31 cm, Beinweite unten 19 cm. Innenbeinlänge 80 cm. 18,50 €.'
    }
  },
  'leave': {
    en: { title: 'Cotton shirt, sky blue', text: 'Laid flat: chest 44 cm. Shoulders 38 cm, sleeve 56 cm, length 68 cm. €8.' },
    de: { title: 'Hemd himmelblau', text: 'Flach gemessen: Brust 44 cm. Schulterbreite 38 cm, Ärmel 56 cm, Länge 68 cm. 8 £.' }
  },
  'untold': {
    en: { title: 'Plum wool skirt, size 12', text: 'Straight wool skirt in good order, size 12 on the label. £9.50.' },
    de: { title: 'Pflaumenblauer Wollrock, Größe 40', text: 'Gerader Wollrock, gut erhalten, Größe 40. 9,50 €.' }
  },
  'ask': {
    en: { title: 'Wool trousers', text: 'Wool. Waist 41 cm flat. Please ask for more. £9.' },
    de: { title: 'Wollhose', text: 'Wolle. Bundweite 41 cm flach. Weitere Maße auf Anfrage. 9 €.' }
  },
  'slip': {
    en: { title: 'Moss moleskin trousers', text: 'Laid flat: waist 27 cm, hip 53 cm, thigh 32 cm. Inside leg 80 cm. £14.' },
    de: {
      title: 'Moleskinhose in Moos',
      text: 'Flach gemessen: Bundweite 27 cm, Hüfte 53 cm, Oberschenkel 32 cm. Innenbeinlänge 80 cm. 14 €.'
    }
  },
  'kind': {
    en: { title: 'Lovely thing from a drawer', text: 'Worn twice. Width 40 cm, height 60 cm. £5.' },
    de: { title: 'Schönes Stück aus der Schublade', text: 'Zweimal getragen. Breite 40 cm, Höhe 60 cm. 5 €.' }
  },
  'sizes': {
    en: {
      title: 'Linen trousers in two sizes',
      text: 'Size S: waist 78 cm, hips 96 cm\nSize M: waist 84 cm, hips 102 cm\nInside leg of both 78 cm. £20.'
    },
    de: {
      title: 'Leinenhose in zwei Größen',
      text: 'Größe S: Bundweite 78 cm, Hüfte 96 cm\nGröße M: Bundweite 84 cm, Hüfte 102 cm\nInnenbeinlänge beider 78 cm. 20 €.'
    }
  },
  'several': {
    en: {
      title: 'Two-piece suit in charcoal wool',
      text: 'Jacket: chest 53 cm flat, shoulders 45 cm, sleeve 64 cm. Trousers: waist 40 cm flat, hip 53 cm flat, inside leg 79 cm. £60.'
    },
    de: {
      title: 'Anzug aus anthrazitfarbener Wolle',
      text: 'Sakko: Brust 53 cm flach, Schulterbreite 45 cm, Ärmel 64 cm. Hose: Bundweite 40 cm flach, Hüfte 53 cm flach, Innenbeinlänge 79 cm. 60 €.'
    }
  },
  'doubtful': {
    en: {
      title: 'Rust needlecord trousers',
      text:
        'Needlecord. Waist 15.5 flat, hips 21, thigh 12.5, inside leg 31, hem ' +
        '8. Rise 11 at the front. I am 178 tall. Small hole at the knee. £16.'
    },
    de: {
      title: 'Feincordhose in Rost',
      text:
        'Feincord. Bundweite 42, Hüfte 54, Oberschenkel 33, Innenbeinlänge 900 cm, ' +
        'Saum 21. Leibhöhe 27 vorn. Ich bin 178 groß. Kleines Loch am Knie. 16 €.'
    }
  },
  'dress': {
    en: {
      title: 'Green dress, fitted',
      text: 'Fitted green dress, lined, side zip. Laid flat: chest 47 cm, waist 39 cm, hip 52 cm. Shoulders 41 cm, length 104 cm. Viscose. £26.'
    },
    de: {
      title: 'Grünes Kleid, tailliert',
      text:
        'Tailliertes grünes Kleid, gefüttert, Reißverschluss an der Seite. Flach gemessen: Brust ' +
        '47 cm, Taille 39 cm, Hüfte 52 cm. Schulterbreite 41 cm, Länge 104 cm. Viskose. 26 €.'
    }
  },
  'empty': { en: { title: '', text: '' }, de: { title: '', text: '' } }
}

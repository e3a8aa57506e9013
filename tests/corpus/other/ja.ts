/** Japanese. */
import { aside, type Case, type Expected, m } from '../case.ts'

const ja = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `ja: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'ja', ...expect }
})

export const japanese: Case[] = [
  ja('glued', 'no space and no unit anywhere: bare figures are centimetres', 'ネルシャツ 紺', '肩幅45身幅52着丈70袖丈60', {
    kind: 'shirt',
    structure: 'woven',
    colour: 'navy',
    measures: [
      m('shoulderWidth', '45', 'cm length list'),
      m('chest', '52', 'cm flat list'),
      m('bodyLength', '70', 'cm length list'),
      m('sleeveLength', '60', 'cm length list')
    ]
  }),
  ja('full width', 'full-width figures and ㎝ keep their places', 'スカート', 'ウエスト：６４㎝　総丈：８０ｃｍ', {
    kind: 'skirt',
    measures: [
      { ...m('waist', '６４㎝', 'cm around judged', { value: 64 }), place: { text: '６４㎝', nth: 1, value: 64, unit: 'cm' } },
      { ...m('skirtLength', '８０ｃｍ', 'cm length', { value: 80 }), place: { text: '８０ｃｍ', nth: 1, value: 80, unit: 'cm' } }
    ]
  }),
  ja('half-width kana', 'letters with their marks apart', 'ﾜﾝﾋﾟｰｽ', 'ﾊﾞｽﾄ92cm ｳｴｽﾄ周囲74cm 着丈105cm', {
    kind: 'dress',
    measures: [m('chest', '92cm', 'cm around judged'), m('waist', '74cm', 'cm around'), m('bodyLength', '105cm', 'cm length')]
  }),
  ja(
    'faults',
    'what is not there is told behind it; a size of a fault is no measure',
    'レディース ウールコート 黒',
    'Mサイズ。左袖に1cmほどの虫食い穴があります。シミ、毛玉、汚れはありません。',
    {
      kind: 'coat',
      fibres: [['wool', null]],
      colour: 'black',
      whose: 'women',
      sizeLabels: ['M'],
      faults: ['左袖に1cmほどの虫食い穴があります'],
      mending: ['darn', 'treat-pests'],
      leftAside: [aside('detail', '1cm', 'cm')]
    },
    true
  ),
  ja(
    'prices',
    'what was paid, what is asked, the postage',
    'メンズ ジャケット',
    '昨年12,000円で購入しました。3千円でお譲りします。送料520円。',
    { kind: 'jacket', made: { tailored: false }, whose: 'men', price: { amount: 3000, currency: 'JPY' } },
    true
  ),
  ja('outer and lining', 'the cloth is the outer one', 'コート', '表地：毛80% ナイロン20% 裏地：キュプラ100%', {
    kind: 'coat',
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    made: { lined: true }
  }),
  ja(
    'the model',
    'the figures of somebody’s body',
    'ワンピース',
    'モデル：身長165cm B80 W60 H86\n着丈105cm',
    {
      kind: 'dress',
      measures: [m('bodyLength', '105cm', 'cm length')],
      leftAside: [aside('model', '165cm', 'cm'), aside('model', '80'), aside('model', '60'), aside('model', '86')]
    },
    true
  ),
  ja(
    'as labelled',
    'a sentence that ends by saying that it is a label’s',
    'ワイシャツ 白',
    '首回り39 裄丈82の表記です。身幅55',
    {
      kind: 'shirt',
      colour: 'white',
      measures: [m('chest', '55', 'cm flat list')],
      leftAside: [aside('fits-advice', '39'), aside('fits-advice', '82')]
    },
    true
  ),
  ja('how it is cut', 'facets in words', 'ハイウエスト ワイドパンツ', '股上32cm 股下70cm', {
    kind: 'trousers',
    cut: { rise: 'high', leg: 'wide' },
    measures: [m('frontRise', '32cm', 'cm length'), m('inseam', '70cm', 'cm length')]
  })
]

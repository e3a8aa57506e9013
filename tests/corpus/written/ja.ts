/** Texts in the manner of Japanese listings. */
import type { WrittenCase } from './written-case.ts'

export const japanese: WrittenCase[] = [
  {
    id: 'ja-w01',
    class: 'compact',
    lang: 'ja',
    title: 'ネルシャツ チェック メンズ M',
    text: 'サイズM\n肩幅45身幅52着丈70袖丈60\n平置き採寸のため多少の誤差はご了承ください。\n綿100%\n2,480円 送料込み',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '45', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 2480, currency: 'JPY' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-w02',
    class: 'headings',
    lang: 'ja',
    title: 'ウール混チェスターコート ネイビー 38',
    text: '【サイズ】38\n【実寸】着丈：98cm / 肩幅：42cm / 身幅：53cm / 袖丈：61cm\n【素材】表地：毛80% ナイロン20%　裏地：キュプラ100%\n総裏仕立て\n¥9,800',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '98cm', value: 98, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    aside: ['38'],
    price: { amount: 9800, currency: 'JPY' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full'
  },
  {
    id: 'ja-w03',
    class: 'flat-told',
    lang: 'ja',
    title: 'テーパードスラックス グレー 古着',
    text: 'ウエスト 38cm\n股上 27cm\n股下 71cm\nワタリ 31cm\n裾幅 17cm\n※平置き実寸\nポリエステル65％　綿35％',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '27cm', value: 27, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '31cm', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '17cm', value: 17, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['polyester', 65],
      ['cotton', 35]
    ],
    cut: { leg: 'tapered' }
  },
  {
    id: 'ja-w04',
    class: 'full-width',
    lang: 'ja',
    title: 'プリーツスカート ロング丈 ベージュ',
    text: 'ウエスト６４ｃｍ（ゴム）　スカート丈８０ｃｍ\n裏地あり\nフリーサイズ',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '６４ｃｍ', value: 64, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '８０ｃｍ', value: 80, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ja-w05',
    class: 'model-and-new-price',
    lang: 'ja',
    title: '花柄ワンピース 半袖 膝丈 レディース',
    text: 'バスト 92cm ウエスト 74cm ヒップ 100cm 着丈 105cm 袖丈 22cm\nモデル身長165cm Mサイズ着用\n定価12,000円で購入しました。3,500円でお譲りします。',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '92cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '74cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '100cm', value: 100, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '105cm', value: 105, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22cm', value: 22, unit: 'cm', basis: 'length' }
    ],
    aside: ['165cm'],
    price: { amount: 3500, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-w06',
    class: 'size-pair',
    lang: 'ja',
    title: 'デニムパンツ ストレート W32 L34 濃紺',
    text: '表記サイズ W32 L34\n実寸ウエスト約41cm、股下約80cm、股上約28cm、わたり約30cm、裾幅約20.5cm\n色落ちあり、穴や破れはありません。\n綿98% ポリウレタン2%\n税込4,290円',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '41cm', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '80cm', value: 80, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '28cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '20.5cm', value: 20.5, unit: 'cm', basis: 'flat' }
    ],
    aside: ['32', '34'],
    price: { amount: 4290, currency: 'JPY' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'ja-w07',
    class: 'half-width-kana',
    lang: 'ja',
    title: 'ﾆｯﾄ ｶｰﾃﾞｨｶﾞﾝ 黒',
    text: 'ﾊﾞｽﾄ 88㎝\n着丈 58㎝\n袖丈 55㎝\nｱｸﾘﾙ50% ｳｰﾙ50%\n1800円',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '88㎝', value: 88, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '58㎝', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '55㎝', value: 55, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1800, currency: 'JPY' },
    fibres: [
      ['acrylic', 50],
      ['wool', 50]
    ]
  },
  {
    id: 'ja-w08',
    class: 'raglan',
    lang: 'ja',
    title: 'ラグランスウェット パーカー グレー L',
    text: '裄丈83 身幅60 着丈66（平置き）\nラグランのため肩幅は測れません。\n裏起毛 綿80％ ポリエステル20％\n3千円（送料込）',
    kind: 'jumper',
    measures: [
      { point: 'sleeveFromCentreBack', text: '83', value: 83, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '60', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 3000, currency: 'JPY' },
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ]
  },
  {
    id: 'ja-w09',
    class: 'man-yen',
    lang: 'ja',
    title: '本革ライダースジャケット ブラック',
    text: '身幅 約48センチ 肩幅 約42センチ 着丈 約60センチ 袖丈 約62センチ\n裏地：ポリエステル100%\n牛革\n1万2千円でお願いします。送料別',
    kind: 'jacket',
    measures: [
      { point: 'chest', text: '48センチ', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '42センチ', value: 42, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '60センチ', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62センチ', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12000, currency: 'JPY' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ja-w10',
    class: 'slashes',
    lang: 'ja',
    title: 'オックスフォードシャツ 白 ボタンダウン',
    text: '肩幅/身幅/着丈/袖丈：44/54/73/61（cm）\nコットン100%\n状態：目立った傷や汚れなし',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '44', value: 44, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '73', value: 73, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-w11',
    class: 'around-told',
    lang: 'ja',
    title: 'タイトスカート 黒 ストレッチ',
    text: 'ウエスト周囲 68cm\nヒップ周囲 90cm\n総丈 62cm\n裏地なし',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '90cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [],
    lined: 'none'
  },
  {
    id: 'ja-w12',
    class: 'relaxed-stretched',
    lang: 'ja',
    title: 'イージーパンツ ウエストゴム リネン',
    text: 'ウエスト：平置き33cm（ゴム、最大43cm）\nヒップ：104cm\n股上：30cm\n股下：66cm\n麻55% レーヨン45%',
    kind: 'trousers',
    measures: [
      { point: 'hip', text: '104cm', value: 104, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['linen', 55],
      ['viscose', 45]
    ]
  },
  {
    id: 'ja-w13',
    class: 'suit',
    lang: 'ja',
    title: 'スーツ上下 チャコールグレー A5',
    text: 'ジャケット\n着丈72 肩幅44 身幅50 袖丈60\nパンツ\nウエスト39 股上25 股下74 裾幅19\n毛100% 背抜き',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '72', of: 'jacket', value: 72, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '44', of: 'jacket', value: 44, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '50', of: 'jacket', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', of: 'jacket', value: 60, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '39', of: 'trousers', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '25', of: 'trousers', value: 25, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '74', of: 'trousers', value: 74, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '19', of: 'trousers', value: 19, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [['wool', 100]],
    lined: 'half'
  },
  {
    id: 'ja-w14',
    class: 'vest',
    lang: 'ja',
    title: '中綿ベスト カーキ',
    text: '着丈（襟除く）63cm　身幅55cm　アームホール27cm\n表地 ナイロン100%　中綿 ポリエステル100%\n定価8,900円→2,900円',
    kind: 'waistcoat',
    measures: [
      { point: 'bodyLength', text: '63cm', value: 63, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'armhole', text: '27cm', value: 27, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 2900, currency: 'JPY' },
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ja-w15',
    class: 'not-measures',
    lang: 'ja',
    title: 'バンドTシャツ 90年代 XL',
    text: '1995年製 シングルステッチ\nサイズ表記 XL\n身幅58cm 着丈74cm 肩幅52cm 袖丈23cm\n首元に1cmほどの穴が2箇所あります。\n5,980円',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '52cm', value: 52, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '23cm', value: 23, unit: 'cm', basis: 'length' }
    ],
    aside: ['1cm'],
    price: { amount: 5980, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-w16',
    class: 'sentences',
    lang: 'ja',
    title: 'リネンのブラウス オフホワイト',
    text: 'ふんわりしたブラウスです。身幅は約56cm、着丈は約61cm、袖丈は約40cmです。肩幅は約45cmで、少し落ち感があります。\n2回着用、自宅保管です。即購入OKです。',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '56cm', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '40cm', value: 40, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '45cm', value: 45, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['linen', null]]
  },
  {
    id: 'ja-w17',
    class: 'jumpsuit',
    lang: 'ja',
    title: 'オールインワン サロペット デニム',
    text: '総丈 128cm（肩紐含まず）\n身幅 48cm\nウエスト 45cm\n股下 62cm\n裾幅 24cm\n平置きの実寸です',
    kind: 'jumpsuit',
    measures: [
      { point: 'bodyLength', text: '128cm', value: 128, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '48cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '45cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '24cm', value: 24, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-w18',
    class: 'no-garment',
    lang: 'ja',
    title: 'トートバッグ キャンバス',
    text: '縦35cm 横40cm マチ12cm\n持ち手45cm\n綿100%\n1,200円',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['35cm', '40cm'],
    price: { amount: 1200, currency: 'JPY' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-w19',
    class: 'shorts',
    lang: 'ja',
    title: 'ハーフパンツ チノ素材 ショートパンツ',
    text: 'ウエスト40cm（片面） 股上29 股下22 裾幅29 総丈51\n綿100%',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '29', value: 29, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '22', value: 22, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '29', nth: 2, value: 29, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '51', value: 51, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-w20',
    class: 'sweep',
    lang: 'ja',
    title: 'シフォンマキシワンピース ノースリーブ',
    text: '胸囲 88cm / 胴囲 72cm / 着丈 130cm / 裾周り 210cm\n裏地付き（スカート部分のみ）\nポリエステル100％\n￥4,200（税込）',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '88cm', value: 88, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72cm', value: 72, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '130cm', value: 130, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '210cm', value: 210, unit: 'cm', basis: 'around' }
    ],
    price: { amount: 4200, currency: 'JPY' },
    fibres: [['polyester', 100]],
    cut: { sleeve: 'sleeveless', dressLength: 'maxi' }
  },
  {
    id: 'ja-w21',
    class: 'postage',
    lang: 'ja',
    title: 'ボーダーカットソー 長袖',
    text: '身幅：46\n着丈：60\n袖丈：56\n肩幅：38\n単位はcmです\n1,500円＋送料210円',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '46', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '56', value: 56, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1500, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-w22',
    class: 'collar',
    lang: 'ja',
    title: 'ドレスシャツ 青 長袖 39-82',
    text: '首回り39 裄丈82 の表記です。\n実寸：身幅53cm、肩幅46cm、着丈79cm、袖丈60cm、袖口11cm\nボタンが1つ取れています。',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '79cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '11cm', value: 11, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-x01',
    class: 'heading-columns',
    lang: 'ja',
    title: 'コーデュロイジャケット ブラウン メンズ',
    text: '■サイズ\n着丈：68センチ\n身幅：55センチ\n肩幅：47センチ\n袖丈：59センチ（肩の縫い目から）\n■素材\n綿98％、ポリウレタン2％　裏地なし\n■状態\n左袖に小さなシミがありますが、着用時は目立ちません。\n5,500円',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '68センチ', value: 68, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '55センチ', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '47センチ', value: 47, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '59センチ', value: 59, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 5500, currency: 'JPY' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ],
    lined: 'none'
  },
  {
    id: 'ja-x02',
    class: 'waist-custom',
    lang: 'ja',
    title: 'センタープレスパンツ 黒 レディース',
    text: 'ウエスト76 ヒップ98 股上26 股下68 もも幅29 裾幅18\nポリエステル64% レーヨン33% ポリウレタン3%',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '76', value: 76, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '98', value: 98, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '26', value: 26, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '29', value: 29, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '18', value: 18, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['polyester', 64],
      ['viscose', 33],
      ['elastane', 3]
    ]
  },
  {
    id: 'ja-x03',
    class: 'wool-coat',
    lang: 'ja',
    title: 'ロングコート レディース 9号 ベージュ',
    text: '9AR表示。総丈110、肩幅39、バスト96、袖丈58。\nカシミヤ10% 毛90%。裏地キュプラ100%。\n定価58,000円 → 12,800円',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '39', value: 39, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '96', value: 96, unit: 'cm', basis: 'around' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    aside: ['9'],
    price: { amount: 12800, currency: 'JPY' },
    fibres: [
      ['cashmere', 10],
      ['wool', 90]
    ],
    lined: 'full'
  },
  {
    id: 'ja-x04',
    class: 'model-block',
    lang: 'ja',
    title: 'ニットワンピース リブ ロング',
    text: '【モデル着用】\n身長160cm B80 W60 H86\n【サイズ】\n着丈118cm 身幅42cm 肩幅35cm 袖丈56cm\nアクリル70% ポリエステル30%\n2,980円(送料込み)',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '118cm', value: 118, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '35cm', value: 35, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '56cm', value: 56, unit: 'cm', basis: 'length' }
    ],
    aside: ['160cm', '80', '60', '86'],
    price: { amount: 2980, currency: 'JPY' },
    fibres: [
      ['acrylic', 70],
      ['polyester', 30]
    ]
  },
  {
    id: 'ja-x05',
    class: 'apron-skirt',
    lang: 'ja',
    title: 'デニムスカート 台形 ミニ',
    text: 'ウエスト：約70cm\nヒップ：約92cm\nスカート丈：約42cm\n生地はしっかりめの綿100％。伸縮性なし。\nお値段1,800円です',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '70cm', value: 70, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '92cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '42cm', value: 42, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1800, currency: 'JPY' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-x06',
    class: 'parcel',
    lang: 'ja',
    title: 'ワッフルカーディガン 杢グレー',
    text: '肩幅 約50cm 身幅 約58cm 着丈 約66cm 袖丈 約54cm\n綿60％ポリエステル40％\n畳んで30×25×3cmほどの袋でお送りします。\n¥2,200',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '50cm', value: 50, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '58cm', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' }
    ],
    aside: ['30', '25'],
    price: { amount: 2200, currency: 'JPY' },
    fibres: [
      ['cotton', 60],
      ['polyester', 40]
    ]
  },
  {
    id: 'ja-x07',
    class: 'tee-numbers',
    lang: 'ja',
    title: 'ポロシャツ 紺 半袖 L',
    text: 'サイズ：L\n・着丈 71cm\n・身幅 54cm\n・肩幅 46cm\n・袖丈 23cm\n素材：ポリエステル100％（ドライ）\n3回ほど着用。',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '54cm', value: 54, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46cm', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '23cm', value: 23, unit: 'cm', basis: 'length' }
    ],
    aside: ['3'],
    price: null,
    fibres: [['polyester', 100]]
  },
  {
    id: 'ja-x08',
    class: 'front-back',
    lang: 'ja',
    title: '後ろが長いシアーシャツ',
    text: '着丈 前65cm 後72cm\n身幅 60cm\n裄丈 78cm\nナイロン100%',
    kind: 'shirt',
    measures: [
      { point: 'bodyLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '60cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '78cm', value: 78, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ja-x09',
    class: 'drop',
    lang: 'ja',
    title: 'ダウンジャケット 黒 M',
    text: '身幅：60cm 着丈：65cm 裄丈：86cm\n表地：ナイロン100% 中綿：ダウン90% フェザー10%\n袖口に5mm程度の穴あり（補修済み）\n即決 7,700円',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '60cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '65cm', value: 65, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '86cm', value: 86, unit: 'cm', basis: 'length' }
    ],
    aside: ['5mm'],
    price: { amount: 7700, currency: 'JPY' },
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ja-x10',
    class: 'inch',
    lang: 'ja',
    title: 'リーバイス風 ブーツカットジーンズ',
    text: '表記W30×L32\nウエスト実寸39cm（平置き）、股下79cm、裾幅23cm、股上25cm\n綿100\nあまり穿いていません。¥3,600',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '39cm', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '79cm', value: 79, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '23cm', value: 23, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '25cm', value: 25, unit: 'cm', basis: 'length' }
    ],
    aside: ['30', '32'],
    price: { amount: 3600, currency: 'JPY' },
    fibres: [['cotton', 100]],
    cut: { leg: 'bootcut' }
  },
  {
    id: 'ja-x11',
    class: 'camisole',
    lang: 'ja',
    title: 'キャミソール サテン 白',
    text: '身幅38cm\n着丈（肩紐除く）45cm\n肩紐の長さ18cm（調節可）\nポリエステル100％\n800円',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '45cm', value: 45, unit: 'cm', basis: 'length' },
      { point: 'strap', text: '18cm', value: 18, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 800, currency: 'JPY' },
    fibres: [['polyester', 100]]
  },
  {
    id: 'ja-x12',
    class: 'waistcoat',
    lang: 'ja',
    title: 'スーツベスト ジレ グレー',
    text: '着丈54cm 身幅46cm 肩幅33cm\n表：ウール100% 裏：ポリエステル100%\n1500円、送料は別途かかります',
    kind: 'waistcoat',
    measures: [
      { point: 'bodyLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '33cm', value: 33, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1500, currency: 'JPY' },
    fibres: [['wool', 100]],
    lined: 'full'
  },
  {
    id: 'ja-y01',
    class: 'brackets-how',
    lang: 'ja',
    title: 'スキッパーシャツ 白 レディース',
    text: '身幅：約５２ｃｍ（脇下から脇下）\n着丈：約６４ｃｍ（後ろ襟の付け根から）\n袖丈：約４５ｃｍ（肩先から）\n肩幅：約４６ｃｍ\n綿70%麻30%\n値段は2500円で、送料はこちらで負担します。',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '５２ｃｍ', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '６４ｃｍ', value: 64, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '４５ｃｍ', value: 45, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '４６ｃｍ', value: 46, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 2500, currency: 'JPY' },
    fibres: [
      ['cotton', 70],
      ['linen', 30]
    ]
  },
  {
    id: 'ja-y02',
    class: 'table',
    lang: 'ja',
    title: 'サーマルロンT グレー',
    text: 'サイズ | 着丈 | 身幅 | 肩幅 | 袖丈\nM | 66 | 49 | 43 | 60\n※単位cm、平置き\n綿100%',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '43', value: 43, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-y03',
    class: 'letters',
    lang: 'ja',
    title: 'ガウチョパンツ 黒 W68 H100',
    text: 'W68cm H100cm 股上32cm 股下52cm 裾幅38cm\nウエスト後ろゴム\nポリエステル100％ 裏地なし',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '100cm', value: 100, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '32cm', value: 32, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '52cm', value: 52, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '38cm', value: 38, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [['polyester', 100]],
    lined: 'none'
  },
  {
    id: 'ja-y04',
    class: 'elastic',
    lang: 'ja',
    title: '総ゴムスカート 花柄 膝丈',
    text: 'ウエスト 約30cm（平置き・最大44cmまで伸びます）\n総丈 約62cm\nレーヨン100%\n1,000円（値下げ不可）',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1000, currency: 'JPY' },
    fibres: [['viscose', 100]]
  },
  {
    id: 'ja-y05',
    class: 'mixed-latin',
    lang: 'ja',
    title: 'NYLON ジャケット size L',
    text: 'SIZE：L\n肩幅:48 身幅:59 着丈:70 袖丈:62\nmaterial：ナイロン100％\ncolor：ブラック\nprice：¥6,500',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '48', value: 48, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '59', value: 59, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '62', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 6500, currency: 'JPY' },
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ja-y06',
    class: 'two-colours',
    lang: 'ja',
    title: 'パイル地ショートパンツ 子供 120',
    text: '120サイズ\nウエスト 26cm（ゴム） 総丈 34cm 股下 12cm\n男の子 夏用\n500円',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '26cm', value: 26, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '34cm', value: 34, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '12cm', value: 12, unit: 'cm', basis: 'length' }
    ],
    aside: ['120'],
    price: { amount: 500, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-y07',
    class: 'old-price',
    lang: 'ja',
    title: 'ツイードジャケット ノーカラー',
    text: '購入時3万円ほどしました。\n肩幅38cm 身幅45cm 着丈54cm 袖丈56cm\n毛60％アクリル30％ナイロン10％、裏地ポリエステル100％\n5,000円→4,200円に下げました',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '38cm', value: 38, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '54cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '56cm', value: 56, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 4200, currency: 'JPY' },
    fibres: [
      ['wool', 60],
      ['acrylic', 30],
      ['polyamide', 10]
    ],
    lined: 'full'
  },
  {
    id: 'ja-y08',
    class: 'sentence',
    lang: 'ja',
    title: 'レザースカート ブラック',
    text: 'ウエストは平置きで34cm、ヒップ45cm、丈は55cmです。本革で裏地はありません。新品同様です。',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '45cm', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '55cm', value: 55, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [],
    lined: 'none'
  },
  {
    id: 'ja-y09',
    class: 'no-kind-in-title',
    lang: 'ja',
    title: '80s USA製 ヴィンテージ ネイビー L',
    text: 'ナイロンの薄手ジャケットです。\n着丈66 身幅62 裄丈85\nジップの動きは良好。\n8,800円',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '62', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '85', value: 85, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 8800, currency: 'JPY' },
    fibres: [['polyamide', null]]
  },
  {
    id: 'ja-y10',
    class: 'polo-knit',
    lang: 'ja',
    title: 'サマーニット 五分袖 ミント',
    text: '着丈57cm\n身幅46cm（伸びます）\n袖丈33cm\n綿55% アクリル45%\n色違いで白も出品しています。1枚1,400円',
    kind: 'jumper',
    measures: [
      { point: 'bodyLength', text: '57cm', value: 57, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '33cm', value: 33, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1400, currency: 'JPY' },
    fibres: [
      ['cotton', 55],
      ['acrylic', 45]
    ]
  },
  {
    id: 'ja-z01',
    class: 'kids-size',
    lang: 'ja',
    title: 'キッズ ダウンベスト 130',
    text: 'サイズ130 身幅42cm 着丈50cm\n表地・裏地ポリエステル100% 中綿ダウン70% フェザー30%\n1,500円',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '50cm', value: 50, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1500, currency: 'JPY' },
    fibres: [['polyester', 100]]
  },
  {
    id: 'ja-z02',
    class: 'tight-row',
    lang: 'ja',
    title: 'ロングカーディガン 黒 美品',
    text: '肩幅38/着丈90/身幅45/袖丈60（平置き素人採寸cm）アクリル100 一度着用のみ 送料込2000円',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '90', value: 90, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 2000, currency: 'JPY' },
    fibres: [['acrylic', 100]]
  },
  {
    id: 'ja-z03',
    class: 'pants-variants',
    lang: 'ja',
    title: 'ベイカーパンツ オリーブ',
    text: '(平置き)\nウエスト幅:42cm\n前股上:31cm\n後股上:42cm\n股下:69cm\nわたり:34cm\n裾口:21cm\nコットン100％\n価格:4800円',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '69cm', value: 69, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '21cm', value: 21, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 4800, currency: 'JPY' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-z04',
    class: 'skirt-set',
    lang: 'ja',
    title: 'ツーピース ジャケット スカート フォーマル 黒',
    text: 'ジャケット：肩幅37 身幅46 着丈55 袖丈57\nスカート：ウエスト66 ヒップ92 丈62\nポリエステル100%',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '37', of: 'jacket', value: 37, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46', of: 'jacket', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55', of: 'jacket', value: 55, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '57', of: 'jacket', value: 57, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '66', of: 'skirt', value: 66, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '92', of: 'skirt', value: 92, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '62', of: 'skirt', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['polyester', 100]]
  },
  {
    id: 'ja-z05',
    class: 'polite',
    lang: 'ja',
    title: 'チェックのプリーツスカート',
    text: 'ご覧いただきありがとうございます。\nウエストは平置きで約33cm、丈は約72cmでございます。\n素材はウール70％、ポリエステル30％です。裏地もしっかり付いております。\nお値段は3,200円(送料込み)です。',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 3200, currency: 'JPY' },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    lined: 'full'
  },
  {
    id: 'ja-z06',
    class: 'arm',
    lang: 'ja',
    title: 'ブラウス パフスリーブ ドット',
    text: '着丈55 肩幅34 バスト90 袖丈24 袖口まわり28\n綿100%\n780円',
    kind: 'shirt',
    measures: [
      { point: 'bodyLength', text: '55', value: 55, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '34', value: 34, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '90', value: 90, unit: 'cm', basis: 'around' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '28', value: 28, unit: 'cm', basis: 'around' }
    ],
    price: { amount: 780, currency: 'JPY' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-z07',
    class: 'hoodie-zip',
    lang: 'ja',
    title: 'ジップアップパーカー ネイビー XL 裏起毛',
    text: 'XLサイズ 着丈72cm 身幅62cm 肩幅54cm 袖丈61cm ゆったりめ\n薄い毛玉あり、袖口のリブに汚れあり\n希望価格2,400円→2,000円',
    kind: 'jumper',
    measures: [
      { point: 'bodyLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '62cm', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '54cm', value: 54, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '61cm', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 2000, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-z08',
    class: 'wedding',
    lang: 'ja',
    title: 'ロングドレス ネイビー 結婚式',
    text: '総丈(脇から)110cm、バスト86cm(ストレッチ)、ウエスト68cm、ヒップ88cm\n後ろファスナー、裏地付き\nサイズ表記 9号',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '86cm', value: 86, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '88cm', value: 88, unit: 'cm', basis: 'around' }
    ],
    price: null,
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ja-z09',
    class: 'inches',
    lang: 'ja',
    title: '501タイプ デニム 後染め',
    text: '表記 W33 L36\n実寸 ウエスト(約)42cm 前股上(約)30cm 股下(約)76cm 腿幅(約)31cm 裾幅(約)21cm\n裾上げされています。\n3980円(税込)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '76cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '31cm', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '21cm', value: 21, unit: 'cm', basis: 'flat' }
    ],
    aside: ['33', '36'],
    price: { amount: 3980, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-z10',
    class: 'knit-vest',
    lang: 'ja',
    title: 'アーガイル ニットベスト メンズ M',
    text: '身幅 48cm／着丈 62cm／肩幅 38cm\nウール100%　虫食いなし　¥1,980',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38cm', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1980, currency: 'JPY' },
    fibres: [['wool', 100]]
  },
  {
    id: 'ja-q01',
    class: 'hanten',
    lang: 'ja',
    title: 'スカジャン リバーシブル 虎刺繍',
    text: '着丈 62cm\n身幅 57cm\n裄丈 83cm\nアセテート、綿\n両面使えます。リブに1cmほどの虫食いがあります。\n14,800円 送料込み 即購入可',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '62cm', value: 62, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '83cm', value: 83, unit: 'cm', basis: 'length' }
    ],
    aside: ['1cm'],
    price: { amount: 14800, currency: 'JPY' },
    fibres: [
      ['acetate', null],
      ['cotton', null]
    ]
  },
  {
    id: 'ja-q02',
    class: 'two-values',
    lang: 'ja',
    title: 'スウェットパンツ グレー',
    text: 'ウエスト35cm(最大52cm) 総丈98cm 股上30cm 股下68cm 裾幅11cm(リブ)\n綿80%ポリエステル20%',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '35cm', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '98cm', value: 98, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '68cm', value: 68, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '11cm', value: 11, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ]
  },
  {
    id: 'ja-q03',
    class: 'talk',
    lang: 'ja',
    title: '母のワンピース 80年代',
    text: '母が若い頃に着ていたものです。サイズは表記がないのですが、わたし(158cm)で膝下くらいでした。\n肩幅40 バスト96 ウエスト72 着丈110くらいです。\n肩パッド入り。後ろファスナー。ポリエステルだと思います。\n2500円',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '96', value: 96, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72', value: 72, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' }
    ],
    aside: ['158cm'],
    price: { amount: 2500, currency: 'JPY' },
    fibres: [['polyester', null]]
  },
  {
    id: 'ja-q04',
    class: 'list-comma',
    lang: 'ja',
    title: 'ショート丈ブルゾン',
    text: 'サイズ：肩幅44、身幅55、袖丈60、着丈58。単位はセンチ。\n色：カーキ。素材：ナイロン。\n税込3,300円＋送料',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '44', value: 44, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '55', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 3300, currency: 'JPY' },
    fibres: [['polyamide', null]]
  },
  {
    id: 'ja-q05',
    class: 'overalls',
    lang: 'ja',
    title: 'サロペットスカート コーデュロイ',
    text: '総丈105cm(肩紐最長時) ウエスト76cm 裾幅62cm\n綿100％',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '105cm', value: 105, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '76cm', value: 76, unit: 'cm', basis: 'around' },
      { point: 'sweep', text: '62cm', value: 62, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [['cotton', 100]]
  },
  {
    id: 'ja-q06',
    class: 'shipping-first',
    lang: 'ja',
    title: '半袖シャツ アロハ柄',
    text: '送料無料 1,999円\n身幅57cm着丈72cm肩幅48cm袖丈25cm レーヨン100%',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '57cm', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '48cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '25cm', value: 25, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 1999, currency: 'JPY' },
    fibres: [['viscose', 100]]
  },
  {
    id: 'ja-q07',
    class: 'no-garment',
    lang: 'ja',
    title: 'ウールマフラー チェック',
    text: '約180cm×30cm\nカシミヤ10% ウール90%\n980円',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['180cm'],
    price: { amount: 980, currency: 'JPY' },
    fibres: [
      ['cashmere', 10],
      ['wool', 90]
    ]
  },
  {
    id: 'ja-q08',
    class: 'size-up',
    lang: 'ja',
    title: 'テーラードジャケット ベージュ レディース 38',
    text: 'サイズ38(M相当)\n肩幅39.5cm 身幅48cm 着丈68cm 袖丈58.5cm\n背抜きではなく総裏です\n麻100% 裏地:ポリエステル100%\n3,800円',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '39.5cm', value: 39.5, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '48cm', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '68cm', value: 68, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58.5cm', value: 58.5, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 3800, currency: 'JPY' },
    fibres: [['linen', 100]],
    lined: 'full'
  },
  {
    id: 'ja-k01',
    class: 'kind-beside',
    lang: 'ja',
    title: 'リブタンク デニムやスカートにも合わせやすい',
    text: '身幅36 着丈58\n綿95% ポリウレタン5%\nワンピースのインナーにもおすすめです',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['cotton', 95],
      ['elastane', 5]
    ]
  },
  {
    id: 'ja-k02',
    class: 'kind-like',
    lang: 'ja',
    title: 'スカート見えキュロット 黒',
    text: 'ウエスト68 総丈60 股下30',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '68', value: 68, unit: 'cm', basis: 'around' },
      { point: 'outseam', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '30', value: 30, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-k03',
    class: 'kind-like',
    lang: 'ja',
    title: 'ジャケット風カーディガン ツイード調',
    text: '肩幅40 身幅47 着丈55 袖丈57',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '47', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55', value: 55, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '57', value: 57, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-k04',
    class: 'kind-in-text',
    lang: 'ja',
    title: '古着 90s 黒 M',
    text: 'フロントジップのフリースです。スラックスにもデニムにも合います。\n身幅58 着丈66 裄丈82',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '58', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '82', value: 82, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-k05',
    class: 'set',
    lang: 'ja',
    title: 'トップスとスカートのセット 花柄',
    text: 'トップス：身幅45 着丈55\nスカート：ウエスト66 総丈75',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '45', of: 'knit-top', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55', of: 'knit-top', value: 55, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '66', of: 'skirt', value: 66, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '75', of: 'skirt', value: 75, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-k06',
    class: 'coat-dress',
    lang: 'ja',
    title: 'コートワンピース ダブルボタン ネイビー',
    text: '肩幅38 バスト92 着丈100 袖丈58',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '92', value: 92, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '100', value: 100, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ja-k07',
    class: 'cloth',
    lang: 'ja',
    title: 'ウール生地 はぎれ チェック',
    text: '幅148cm 長さ90cm\n毛100%\n1,000円',
    kind: null,
    noGarment: true,
    measures: [],
    price: { amount: 1000, currency: 'JPY' },
    fibres: [['wool', 100]]
  },
  {
    id: 'ja-k08',
    class: 'shoes',
    lang: 'ja',
    title: 'レザーローファー 24cm コートに',
    text: '24cm ヒール3cm\n本革\n3,000円',
    kind: null,
    noGarment: true,
    measures: [],
    price: { amount: 3000, currency: 'JPY' },
    fibres: []
  }
]

/** More texts in the manner of Japanese listings, by another hand. */
import type { WrittenCase } from './written-case.ts'

export const moreJapanese: WrittenCase[] = [
  {
    id: 'ja-001',
    class: 'compact',
    lang: 'ja',
    title: '90s プリントTシャツ 半袖 フェード',
    text: 'ご覧いただきありがとうございます😊\n90年代頃のプリントTeeです。いい感じに色落ちしてます✨\n\n着丈68/身幅52/肩幅46/袖丈20(cm)\n※平置き 素人採寸です\n\n首元に少しヨレ、裾に1mm程の小穴1つ(画像4枚目)\n即購入OK🙆‍♀️ 送料込み 2,800円\n170cm 62kgの者がゆったり着れました',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '20', value: 20, unit: 'cm', basis: 'length' }
    ],
    aside: ['170cm', '1mm'],
    price: { amount: 2800, currency: 'JPY' },
    fibres: [],
    cut: { sleeve: 'short' }
  },
  {
    id: 'ja-002',
    class: 'full-width',
    lang: 'ja',
    title: 'ヴィンテージ　デニムパンツ　ストレート　Ｗ３２　Ｌ３１',
    text: '【サイズ】\n表記　Ｗ３２　Ｌ３１\nウエスト：４０ｃｍ\n股上：３０．５ｃｍ\n股下：７５ｃｍ\nワタリ：３１ｃｍ\n裾幅：２０ｃｍ\n【素材】綿１００％\n【状態】Ｂ　右膝に薄いシミあり。目立つダメージはありません。ボタンフライ、赤耳ではないです。\n【価格】３，９８０円（税込）\n※採寸は平置きで行っています。多少の誤差はご了承ください。',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '４０ｃｍ', value: 40, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '３０．５ｃｍ', value: 30.5, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '７５ｃｍ', value: 75, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '３１ｃｍ', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '２０ｃｍ', value: 20, unit: 'cm', basis: 'flat' }
    ],
    aside: ['３２', '３１'],
    price: { amount: 3980, currency: 'JPY' },
    fibres: [['cotton', 100]],
    cut: { leg: 'straight' }
  },
  {
    id: 'ja-003',
    class: 'cm-sign',
    lang: 'ja',
    title: 'ステンカラーコート ラグランスリーブ ウール混 ネイビー',
    text: '70年代のものと思われるステンカラーコート。\nラグランなので肩幅はありません。\n\n身幅 62㎝\n裄丈 84.5㎝\n着丈(襟下から) 104㎝\n袖口周り 31㎝\n\n表地:毛80% ナイロン20%\n裏地:キュプラ100%（総裏です）\n\n右ポケット口にスレ有、ボタン1個欠品。\nお値段 1万2千円でお願いします。送料は別途着払い1,200円位です。',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '62㎝', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '84.5㎝', value: 84.5, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '104㎝', value: 104, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '31㎝', value: 31, unit: 'cm', basis: 'around' }
    ],
    aside: ['1,200'],
    price: { amount: 12000, currency: 'JPY' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan' }
  },
  {
    id: 'ja-004',
    class: 'centi',
    lang: 'ja',
    title: '昭和レトロ 花柄ワンピース 七分袖 ひざ下丈',
    text: '昭和レトロなお花柄のワンピースです🌼後ろファスナー、共布ベルト付き。\n\nサイズ表記はありませんが9号くらいだと思います\n(参考 9号 B83 W64 H91)\n\n総丈(肩から裾まで) 112センチ\nバスト 92センチ\nウエスト 71センチ\nヒップ フリー\n肩幅 37センチ\n袖丈 38センチ\n\n素材の表示がないのですが、手触りからポリエステルかと。\n裏地はスカート部分のみ付いています。\n古いものですので完璧を求める方はご遠慮ください🙇‍♀️',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '112センチ', value: 112, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '92センチ', value: 92, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '71センチ', value: 71, unit: 'cm', basis: 'around' },
      { point: 'shoulderWidth', text: '37センチ', value: 37, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '38センチ', value: 38, unit: 'cm', basis: 'length' }
    ],
    aside: ['83', '64', '91'],
    price: null,
    fibres: [['polyester', null]],
    lined: 'half',
    cut: { sleeve: 'three-quarter' }
  },
  {
    id: 'ja-005',
    class: 'range',
    lang: 'ja',
    title: '総ゴム フレアスカート ロング ミモレ丈 チェック',
    text: '●ウエスト(ゴム)平置き 32～40cm\n●スカート丈 76cm\n●裾幅 88cm\n●ポリエステル65% レーヨン35%　裏地 ポリエステル100%\n●表記サイズ 38\n裏地あり、透けません。ニットやブーツと合わせて可愛いです♪\n定価15,400円→現在 2,200円 (まとめ買い2点目から100円引き)',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '32～40cm', value: 36, unit: 'cm', basis: 'flat', low: 32, high: 40 },
      { point: 'skirtLength', text: '76cm', value: 76, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '88cm', value: 88, unit: 'cm', basis: 'flat' }
    ],
    aside: ['38', '15,400'],
    price: { amount: 2200, currency: 'JPY' },
    fibres: [
      ['polyester', 65],
      ['viscose', 35]
    ],
    lined: 'full',
    cut: { silhouette: 'flared', dressLength: 'midi' }
  },
  {
    id: 'ja-006',
    class: 'second-garment',
    lang: 'ja',
    title: '3つボタン スーツ 上下セット 紺ストライプ A5',
    text: 'クリーニング済み、着用数回のスーツです。A5(身長170 ウエスト80)表記\n\n〈ジャケット〉\n肩幅 約44cm\n身幅 約51.5cm\n着丈 約74cm\n袖丈 約59cm\n〈スラックス〉\nウエスト 約40cm(アジャスター、詰め出し±3cm)\n股上 約26cm\n股下 約73cm\nわたり幅 約31cm\n裾幅 約20.5cm ダブル仕上げ\nいずれも平置き採寸。\n\n毛100% (裏地 背抜き ポリエステル)\n8800円 送料無料',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '44cm', value: 44, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '51.5cm', value: 51.5, unit: 'cm', basis: 'flat', of: 'jacket' },
      { point: 'bodyLength', text: '74cm', value: 74, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '40cm', value: 40, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '26cm', value: 26, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'inseam', text: '73cm', value: 73, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'thigh', text: '31cm', value: 31, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'legOpening', text: '20.5cm', value: 20.5, unit: 'cm', basis: 'flat', of: 'trousers' }
    ],
    aside: ['170', '80', '±3cm'],
    price: { amount: 8800, currency: 'JPY' },
    fibres: [['wool', 100]],
    lined: 'half'
  },
  {
    id: 'ja-007',
    class: 'around-told',
    lang: 'ja',
    title: 'リネン混 タック ワイドパンツ ベージュ',
    text: '試着のみの美品です。\n\nウエスト一周 約78cm\nヒップ一周 約106cm\nもも周り 約68cm\n裾周り 約54cm\n股上 約31cm\n総丈 約99cm\n\n麻55% 綿45%\nハイウエストで脚長に見えます。デニムやスカート派の方にもおすすめ😆',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '78cm', value: 78, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '106cm', value: 106, unit: 'cm', basis: 'around' },
      { point: 'thigh', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'legOpening', text: '54cm', value: 54, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '99cm', value: 99, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['linen', 55],
      ['cotton', 45]
    ],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'ja-008',
    class: 'relaxed-stretched',
    lang: 'ja',
    title: 'リブニット タートルネック プルオーバー',
    text: '【採寸(平置き)】身幅38cm（伸ばすと52cm） 着丈58cm 裄丈74cm 袖口幅8cm 裾幅36cm\n【素材】毛70％ アクリル20％ ナイロン10％\n【カラー】モカ系\n【状態】袖に毛玉少々、ネームタグカット済み\n以前¥4,500で出していましたが ¥3,300に値下げしました！これ以上のお値引きはご容赦下さい',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '38cm', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '74cm', value: 74, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '8cm', nth: 3, value: 8, unit: 'cm', basis: 'flat' },
      { point: 'hem', text: '36cm', value: 36, unit: 'cm', basis: 'flat' }
    ],
    aside: ['4,500'],
    price: { amount: 3300, currency: 'JPY' },
    fibres: [
      ['wool', 70],
      ['acrylic', 20],
      ['polyamide', 10]
    ]
  },
  {
    id: 'ja-009',
    class: 'kimono',
    lang: 'ja',
    title: '正絹 小紋 着物 袷 からし色',
    text: '身丈(肩から) 158cm  裄 64.5cm  袖丈 49cm\n前幅 24cm 後幅 30cm\n正絹、胴裏・八掛付きの袷です。\n衿に薄いヤケ、しつけ糸は取れています。\nリメイク用にも◎ 一千五百円 送料は実費',
    kind: 'other',
    measures: [
      { point: 'bodyLength', text: '158cm', value: 158, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '64.5cm', value: 64.5, unit: 'cm', basis: 'length' }
    ],
    aside: ['49cm'],
    price: { amount: 1500, currency: 'JPY' },
    fibres: [['silk', 100]],
    lined: 'full'
  },
  {
    id: 'ja-010',
    class: 'not-measures',
    lang: 'ja',
    title: '本革 ショルダーバッグ キャメル レトロ',
    text: '縦26cm 横34cm マチ11cm\n肩紐 約78〜120cm (5段階調節)\n牛革、内側は合皮でべたつきなし。A4は入りません💦 ワンピースにもデニムにも合います。\n4500円',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['26cm', '34cm', '11cm'],
    price: { amount: 4500, currency: 'JPY' },
    fibres: []
  },
  {
    id: 'ja-011',
    class: 'glued',
    lang: 'ja',
    title: 'USA製 ワークシャツ 長袖 シャンブレー',
    text: 'サイズ16-16 1/2(L相当)\n肩幅48cm身幅60cm袖丈59cm着丈82cm(襟含まず77cm)首回り42cm\nコットン１００\n着用モデル174cm65kgオーバーサイズ気味\n6,600yen+tax ※表示は税抜 送料全国一律700円',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '48cm', value: 48, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '60cm', value: 60, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '82cm', value: 82, unit: 'cm', basis: 'length' },
      { point: 'neck', text: '42cm', value: 42, unit: 'cm', basis: 'around' }
    ],
    aside: ['174cm', '16-16 1/2'],
    price: { amount: 6600, currency: 'JPY' },
    fibres: [['cotton', 100]],
    cut: { sleeve: 'long', closeness: 'oversized' }
  },
  {
    id: 'ja-012',
    class: 'dungarees',
    lang: 'ja',
    title: 'ヒッコリー オーバーオール サロペット 34インチ表記',
    text: '◆表記:W34 (実寸とは違います)\n◆平置き実寸\nウエスト　48\nヒップ　56\n股上(前中心ウエスト切替から)　31\n股下　70\nワタリ　34.5\nすそ幅　24\n総丈(胸当て上から)　122\n単位はセンチです。\n◆綿\nペイント跡が数か所ありますが味と思える方に🙏\n5千円ポッキリ！',
    kind: 'jumpsuit',
    measures: [
      { point: 'waist', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31', value: 31, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34.5', value: 34.5, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '24', value: 24, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '122', value: 122, unit: 'cm', basis: 'length' }
    ],
    aside: ['34'],
    price: { amount: 5000, currency: 'JPY' },
    fibres: [['cotton', null]]
  }
]

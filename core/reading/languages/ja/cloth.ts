/** Cloth in Japanese: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      綿
      コットン
      木綿
      オーガニックコットン
      綿素材
      純綿
    `,
    wool: `
      毛
      ウール
      羊毛
      メリノウール
      ラムウール
      新毛
      純毛
      メリノ
      バージンウール
    `,
    linen: `
      麻
      リネン
      亜麻
      本麻
    `,
    silk: `
      絹
      シルク
      正絹
    `,
    viscose: `
      レーヨン
      ビスコース
      ヴィスコース
    `,
    polyester: `
      ポリエステル
      ポリ
    `,
    polyamide: `
      ナイロン
      ポリアミド
    `,
    elastane: `
      ポリウレタン
      エラスタン
      スパンデックス
      ライクラ
      スパン
    `,
    acrylic: 'アクリル',
    cashmere: `
      カシミヤ
      カシミア
    `,
    modal: `
      モダール
      モダル
    `,
    lyocell: `
      リヨセル
      テンセル
    `,
    acetate: `
      アセテート
      トリアセテート
    `,
    cupro: `
      キュプラ
      ベンベルグ
    `,
    mohair: `
      モヘヤ
      モヘア
    `,
    alpaca: 'アルパカ',
    angora: 'アンゴラ',
    hemp: `
      ヘンプ
      大麻
    `,
    ramie: `
      ラミー
      苧麻
    `,
    camel: `
      キャメル毛
      駱駝
    `,
    down: '羽毛'
  },
  structures: {
    woven: `
      布帛
      デニム地
      コーデュロイ
      ブロード
      ツイル
      フランネル
      ネル
      シャンブレー
      オックスフォード
      サッカー
      ギャバジン
      ヒッコリー
    `,
    knit: `
      ニット
      編み
      ジャージー
      天竺
      裏毛
      スウェット地
      カットソー生地
      ケーブル編み
      リブ編み
      かぎ針編み
    `,
    leather: `
      レザー
      本革
      牛革
      羊革
      豚革
      革
      ラムレザー
      カウレザー
      馬革
      鹿革
      ムートン
    `
  },
  traits: {
    rigid: `
      伸縮性なし
      伸縮なし
      ストレッチなし
      伸縮性 なし
      伸縮性 は ありません
      リジッド
    `,
    denim: `
      デニム
      ジーンズ
      シャンブレー
      ヒッコリー
    `,
    pile: `
      コーデュロイ
      ベロア
      ベルベット
      別珍
      コール天
      ボア
    `,
    check: `
      チェック
      チェック柄
      タータンチェック
      ギンガムチェック
      千鳥格子
      グレンチェック
      格子
    `,
    stripe: `
      ストライプ
      ボーダー
      縞
      ピンストライプ
    `,
    sheer: `
      シフォン
      シースルー
      チュール
      オーガンジー
      透け感
      シアー
    `,
    slippery: 'サテン',
    beaded: `
      ビーズ
      スパンコール
      ラインストーン
    `,
    pleated: 'プリーツ',
    suede: `
      スエード
      スウェード
    `,
    vinyl: `
      合皮
      合成皮革
      フェイクレザー
      エナメル
      人工皮革
      pvc
    `,
    coated: `
      オイルド
      コーティング
      ワックス
    `,
    silk: `
      シルク
      絹
    `,
    taffeta: 'タフタ'
  },
  colours: {
    black: `
      黒
      ブラック
      墨黒
      黒色
    `,
    white: `
      白
      ホワイト
      白色
    `,
    grey: `
      グレー
      灰色
      グレイ
      チャコール
      チャコールグレー
      杢グレー
    `,
    navy: `
      紺
      ネイビー
      濃紺
      紺色
    `,
    blue: `
      青
      ブルー
      水色
      サックス
      サックスブルー
      インディゴ
      ライトブルー
      青色
    `,
    teal: `
      ターコイズ
      青緑
    `,
    green: `
      緑
      グリーン
      カーキ
      オリーブ
      深緑
      緑色
      モスグリーン
    `,
    red: `
      赤
      レッド
      朱
      赤色
    `,
    burgundy: `
      ワインレッド
      ボルドー
      えんじ
      エンジ
      バーガンディ
      ワイン
    `,
    pink: `
      ピンク
      桃色
      サーモンピンク
    `,
    purple: `
      紫
      パープル
      ラベンダー
    `,
    orange: `
      オレンジ
      橙
      テラコッタ
    `,
    yellow: `
      黄色
      イエロー
      からし色
      マスタード
      黄
    `,
    brown: `
      茶
      ブラウン
      茶色
      焦げ茶
      モカ
      キャメル
      こげ茶
    `,
    beige: `
      ベージュ
      サンドベージュ
      グレージュ
    `,
    cream: `
      クリーム
      アイボリー
      オフホワイト
      生成り
      生成
    `,
    gold: `
      ゴールド
      金色
    `,
    silver: `
      シルバー
      銀色
    `
  }
}

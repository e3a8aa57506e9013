/** How sellers name the cut, in Japanese. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      ローライズ
      股上浅め
      浅め股上
      ローウエスト
    `,
    mid: 'ミッドライズ',
    high: `
      ハイウエスト
      ハイライズ
      股上深め
      深め股上
    `
  },
  leg: {
    skinny: 'スキニー',
    slim: `
      スリム
      スリムフィット
    `,
    straight: 'ストレート',
    tapered: 'テーパード',
    bootcut: 'ブーツカット',
    flared: `
      フレア
      ベルボトム
      フレアパンツ
      フレア パンツ
    `,
    wide: `
      ワイド
      ワイドパンツ
      ワイド パンツ
      バギー
      ガウチョ
    `,
    legging: `
      レギンス
      スパッツ
    `,
    jogger: `
      ジョガー
      ジョガー パンツ
    `,
    barrel: `
      バレル
      サルエル
    `,
    relaxed: `
      ルーズフィット
      リラックスフィット
    `
  },
  legLength: {
    cropped: `
      クロップド
      クロップドパンツ
      七分丈
      7 分丈
      八分丈
    `,
    ankle: `
      アンクル丈
      九分丈
      アンクル
    `
  },
  silhouette: {
    pencil: `
      タイト スカート
      ペンシル
      タイト
    `,
    'a-line': `
      aライン
      台形
      A ライン
    `,
    flared: `
      フレア スカート
      フレア
    `,
    gathered: `
      ギャザー
      ギャザー スカート
    `,
    circle: 'サーキュラー',
    pleated: 'プリーツ',
    wrap: `
      巻き スカート
      ラップ
      カシュクール
      巻きスカート
    `,
    'shirt-dress': `
      シャツ ワンピース
      シャツワンピ
    `,
    empire: 'エンパイア',
    bodycon: 'ボディコン'
  },
  dressLength: {
    mini: `
      ミニ
      ミニ丈
    `,
    knee: `
      膝丈
      ひざ丈
    `,
    'below-knee': `
      ひざ下丈
      膝下丈
    `,
    midi: `
      ミディ
      ミディ丈
      ミモレ丈
      ミモレ
    `,
    maxi: `
      マキシ
      マキシ丈
    `,
    ankle: 'くるぶし丈'
  },
  closeness: {
    fitted: `
      タイトシルエット
      タイトめ
      ぴったりめ
      ぴったり着られ
      ぴったり着られます
    `,
    slim: 'スリムフィット',
    relaxed: `
      ゆったり
      ルーズ
      ゆったりめ
      ゆったりシルエット
    `,
    oversized: `
      オーバーサイズ
      ビッグシルエット
      オーバーサイズ気味
      ビッグサイズ
    `
  },
  sleeve: {
    sleeveless: `
      ノースリーブ
      袖なし
      スリーブレス
    `,
    cap: 'フレンチスリーブ',
    short: '半袖',
    elbow: `
      五分袖
      5 分袖
    `,
    'three-quarter': `
      七分袖
      7 分袖
    `,
    long: '長袖',
    balloon: `
      バルーンスリーブ
      バルーン袖
      パフスリーブ
    `
  },
  shoulder: {
    raglan: `
      ラグラン
      ラグランスリーブ
    `,
    drop: `
      ドロップショルダー
      落ち感ショルダー
      肩落ち
    `,
    dolman: `
      ドルマン
      ドルマンスリーブ
    `
  },
  topLength: {
    cropped: `
      クロップド丈
      ショート丈
      クロップド
    `,
    longline: 'ロング丈'
  }
}

/** Japanese, as private sellers write it. */
import { asides } from './ja/asides.ts'
import { cloth } from './ja/cloth.ts'
import { amounts, cues } from './ja/cues.ts'
import { cut } from './ja/cut.ts'
import { garments } from './ja/garments.ts'
import { measures } from './ja/measures.ts'
import { words } from './ja/words.ts'
import type { Lexicon } from './lexicon.ts'

export const ja: Lexicon = {
  language: 'ja',
  endings: [],
  scripts: { kana: 1, han: 0.7 },
  unspaced: true,
  verbLast: true,
  bareUnit: 'cm',
  common: `
    です
    ます
    ました
    の
    は
    が
    を
    に
    で
    と
    も
    や
    から
    まで
    など
    こちら
    商品
    送料
    着用
    実寸
    採寸
    平置き
    古着
    美品
    状態
    素材
    表記
    自宅保管
    購入
    出品
    発送
    即購入
    可
    値下げ
    新品
    未使用
    中古
    写真
    画像
    確認
    願います
    お願い
    お願いします
    お願い致します
    いただき
    いただきます
    ください
    下さい
    ご了承
    ご了承ください
    ご覧
    ありがとう
    ありがとうございます
    と思います
    思います
    くらい
    ぐらい
    程度
    ほど
    ため
    ので
    けど
    ですが
    とても
    かなり
    すごく
    可愛い
    かわいい
    綺麗
    きれい
    きれいめ
    おしゃれ
    オシャレ
    春
    夏
    秋
    冬
    春夏
    秋冬
    季節
    年代
    ヴィンテージ
    ビンテージ
    レトロ
    昭和
    ブランド
    タグ
    洗濯
    クリーニング
    済み
    済
    誤差
    多少
    若干
    素人
    素人採寸
    神経質
    方
    遠慮
    お控え
    カラー
    色味
    生地
    薄手
    厚手
    デザイン
    シンプル
    カジュアル
    人気
    定番
    おすすめ
    オススメ
    丈夫
    面白い
    大人気
    上品
    フォーマル
    通勤
    オフィス
    即
    最後
    値段
    価格
    即決
    個人
    コメント
    プロフィール
    必読
    返品
    不可
    匿名
    配送
    匿名配送
    まとめ買い
    着心地
    肌触り
    手触り
    暖かい
    涼しい
    羽織
    一枚
    一着
    大きい
    小さい
    大きめ
    小さめ
    ゆったり
    ぴったり
    フィット
    感
    系
    風
    的
    製
    年
    月
    日
    枚
    着
    点
    個
    回
    円
  `,
  currencies: {
    JPY: `
      円
      圓
      yen
      jpy
      日本円
    `,
    CNY: `
      人民元
      人民币
      元
    `
  },
  ...measures,
  words: { ...asides, ...words },
  ...garments,
  ...cloth,
  cut,
  cues,
  amounts
}

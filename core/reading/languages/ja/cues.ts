/** Single words that tip a rule of the reader, in Japanese, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  paid: `
    購入
    買いました
    購入した
    購入しました
    買った
    購入品
    出品していた
    出していました
  `,
  with: `
    付き
    込み
  `,
  counted: '含む',
  width: '幅',
  at: 'に',
  frontInName: '前',
  backInName: `
    後ろ
    後
  `,
  besideFigureOnly: '全体',
  girthOrWidth: '幅',
  upright: '高さ',
  actually: '実寸',
  besideGarment: `
    に
    と
    や
    にも
    付き
    合わせ
    合わせて
    用
    の方
  `,
  liningName: `
    裏地
    裏
    中綿
    中わた
    別布
    配色
    リブ
    リブ部分
    袖裏
    充填物
    詰め物
    中身
    部分使い
  `,
  ofCloth: `
    は
    が
  `,
  besideGarmentBehind: `
    に
    にも
    へ
    へも
    としても
    として
    用
    派
    など
    でも
    見え
    みたい
    との
  `,
  kindInPassing: `
    ニット
    デニム
    スウェット
    トップス
    ボトムス
    アウター
    ジャージ
    セットアップ
    スーツ
    ボトム
    タンク
    コーデ
  `,
  paleLook: `
    色落ち
    フェード
  `,
  notYet: '必要',
  pure: `
    正絹
    純毛
    純綿
    純
  `,
  betweenFibres: `
    と
    混
  `,
  besideShares: `
    混
    混紡
  `,
  feelsLike: 'ような',
  hem: '裾',
  ofTheBack: `
    後ろ
    背中
  `,
  seamOrCentre: `
    中心
    縫い目
  `,
  toLetOut: '出し',
  backSeam: '背縫い',
  extra: '追加',
  onTop: `
    別途
    プラス
  `,
  postageApart: `
    別
    別途
  `,
  excluded: `
    別
    別途
  `,
  letsGo: `
    お譲り
    お譲りします
    販売
  `,
  postage: '送料',
  postIncluded: `
    込み
    込
    無料
    込みです
  `,
  priceName: `
    価格
    値段
    お値段
    販売価格
  `,
  chinese: `
    宽
    码
    裤
    这
    买
    卖
    长度
  `,
  tag: `
    タグ
    表記
  `,
  womensBegins: 'レディース',
  mensBegins: 'メンズ',
  forOne: `
    用
    の
  `,
  collarSize: `
    首回り
    首周り
    ネック
  `,
  denim: `
    デニム
    ジーンズ
  `,
  inside: `
    内側
    中
  `,
  beside: `
    付近
    周辺
  `,
  pocket: 'ポケット',
  pocketLining: `
    裏地
    袋布
  `,
  imitated: 'フェイク',
  percent: 'パーセント',
  money: '円',
  verb: `
    は
    が
  `,
  the: 'この',
  unbounded: 'フリー',
  inch: 'インチ',
  from: 'から',
  wide: '幅',
  anyGarment: 'どんな',
  measureVerb: `
    測りました
    採寸
  `,
  forWhom: `
    メンズ
    レディース
  `,
  traitInProse: 'シルク',
  doubled: '二倍',
  sizeWord: 'サイズ',
  otherProperty: '年齢',
  sizeBehind: `
    サイズ
    号
    表記
    寸
  `
}

export const amounts: Amounts = {
  multiple: {
    '万': 10000,
    '千': 1000,
    '百': 100,
    '十': 10
  },
  sum: {
    '一': 1,
    '二': 2,
    '三': 3,
    '四': 4,
    '五': 5,
    '六': 6,
    '七': 7,
    '八': 8,
    '九': 9
  }
}

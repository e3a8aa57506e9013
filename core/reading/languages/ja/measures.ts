/** What is measured, in Japanese: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      バスト
      胸回り
      胸周り
      胸まわり
      胸
      バスト寸
      チェスト
    `,
    'chest flat': `
      身幅
      身巾
      胸幅
      脇下
      脇下 幅
      バスト幅
      脇 脇
      両脇
      脇下 身幅
      前身幅
      身はば
      みはば
      脇 から 脇
      脇下 から 脇下
      胸巾
      横幅 脇下
      身幅 脇下
    `,
    'chest around': '胸囲',
    waist: `
      ウエスト
      ウェスト
      胴
      ウエスト寸
      w寸
    `,
    'waist around': `
      胴囲
      総ウエスト
      ウエスト総ゴム周囲
    `,
    'waist flat': `
      ウエスト幅
      ウェスト幅
      ウエスト巾
      胴幅
    `,
    hip: `
      ヒップ
      お尻
      腰回り
      腰まわり
      腰周り
      お尻周り
    `,
    'hip flat': `
      ヒップ幅
      腰幅
      ヒップ巾
    `,
    bottomEdge: `
      裾
      すそ
      裾口
    `,
    'bottomEdge flat': `
      裾幅
      すそ幅
      裾巾
      裾はば
      裾口幅
      裾の幅
    `,
    sweep: '裾広がり',
    bicep: `
      腕回り
      腕周り
      二の腕
    `,
    'bicep flat': `
      袖幅
      腕幅
      そで幅
      袖巾
    `,
    cuff: `
      袖口
      カフス
    `,
    'cuff flat': `
      袖口幅
      袖口巾
    `,
    neck: `
      首回り
      首周り
      首まわり
      襟回り
      襟周り
      ネック
      首廻り
      ネック寸
    `,
    thigh: `
      もも
      太もも
      太腿
      もも寸
      モモ
      腿
    `,
    'thigh flat': `
      モモ幅
      太腿幅
      ワタリ
      わたり
      渡り
      ワタリ幅
      わたり幅
      渡り幅
      もも幅
      太もも幅
      腿幅
      ワタリ巾
      わたり巾
      股幅
      もも巾
    `,
    knee: `
      膝
      ひざ
    `,
    'knee flat': `
      膝幅
      ひざ幅
      膝巾
    `,
    calf: 'ふくらはぎ',
    'calf flat': 'ふくらはぎ幅',
    elbow: '肘',
    underbust: `
      アンダーバスト
      胸下
    `,
    armhole: `
      アームホール
      袖ぐり
      袖刳り
    `,
    'armhole flat': 'アームホール幅',
    shoulderWidth: `
      肩幅
      肩巾
      肩はば
      かたはば
      肩 から 肩
    `,
    sleeveLength: `
      袖丈
      袖
      そで丈
      腕丈
      袖の長さ
      袖長
      肩 から 袖口
      肩 から 袖先
      スリーブ
    `,
    sleeveFromCentreBack: `
      裄丈
      裄
      ゆき丈
      ゆきたけ
      ゆき
      桁丈
      ユキ丈
      首 から 袖口
      首 から 袖先
      背中心 から 袖口
      襟中心 から 袖口
    `,
    sleeveUnderarm: `
      袖下丈
      袖下
      脇下袖丈
      内袖丈
      脇 から 袖口
      袖丈 脇下
      脇下 から 袖口
    `,
    length: `
      総丈
      全長
      全丈
      丈
      総丈約
      長さ
      後ろ丈
      前後丈
      丈の長さ
      総着丈
      縦の長さ
    `,
    bodyLength: `
      着丈
      身丈
      きたけ
      後着丈
      後ろ着丈
      背丈総
      着丈後ろ
      前着丈
      肩 から 裾
      襟 から 裾
      首 から 裾
      ワンピース丈
      コート丈
      背中心着丈
    `,
    skirtLength: `
      スカート丈
      スカート 総丈
    `,
    napeToWaist: '背丈',
    backWidth: `
      背幅
      背巾
    `,
    inseam: `
      股下
      またした
      股下丈
      内股
      インシーム
    `,
    outseam: `
      パンツ丈
      脇丈
      パンツ総丈
      外股
      ズボン丈
      総丈 脇
      アウトシーム
    `,
    legLength: 'レングス',
    frontRise: `
      股上
      またがみ
      前股上
      ライズ
      前 股上
    `,
    backRise: `
      後股上
      後ろ股上
      後ろ 股上
      後 股上
      バックライズ
    `,
    torsoLength: '股ぐり丈',
    strap: `
      肩紐丈
      ストラップ丈
      肩紐の長さ
    `,
    width: `
      横幅
      巾
    `
  },
  landmarks: {
    shoulder: `
      肩
      肩先
    `,
    neck: `
      首
      襟下
      衿下
      襟
      衿
      背中心
      襟ぐり
      首元
      後ろ中心
      襟元
      首の付け根
      襟付け
      襟中心
      バックネック
    `,
    armpit: `
      脇
      脇下
      袖付け
    `,
    waist: `
      ウエスト
      腰
    `,
    hip: 'ヒップ',
    crotch: '股',
    knee: `
      膝
      ひざ
    `,
    hem: `
      裾
      裾先
      裾まで
    `,
    cuff: `
      袖口
      袖先
      手首
    `,
    elbow: '肘',
    bust: `
      胸
      バスト
    `,
    top: `
      上端
      胸当て上
      一番上
      胸当て 上
    `
  },
  basis: {
    flat: `
      平置き
      平置
      片面
      平台
      平置き実寸
      平置き採寸
      平らに置いて
      平置き時
      片側
      半周
      平面
      平らな状態
      平置き寸法
      置き採寸
      直線距離
      端から端
      平置きで
    `,
    around: `
      周囲
      一周
      回り
      周り
      まわり
      1 周
      周
      ぐるり
      全周
      廻り
      円周
      囲
      総周り
      約周囲
    `,
    doubled: `
      x2
      x 2
      二倍
      2 倍
      ×2
    `,
    double: `
      2 倍 して ください
      倍 に して ください
      2 倍 して 下さい
      2 倍 して
    `
  },
  units: {
    in: `
      インチ
      吋
      inch
      inches
    `,
    cm: `
      cm
      センチ
      センチメートル
      ㎝
      ㌢
      ｾﾝﾁ
    `,
    mm: `
      mm
      ミリ
      ミリメートル
      ㎜
    `,
    m: `
      m
      メートル
    `,
    ft: 'フィート'
  },
  numbers: {
    '二': 2,
    '三': 3
  }
}

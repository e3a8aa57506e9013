/** Single words that tip a rule of the reader, in Korean, and words of amounts. What each role means: cue-roles.ts. */
import type { Amounts, Cues } from '../cue-roles.ts'

export const cues: Cues = {
  paid: `
    구매
    구매했어요
    구매한
    구입
    구입했어요
    구매했습니다
    구입한
    샀어요
    산
    주고
    구입했습니다
    올렸던
    올렸다가
    올렸는데
    올려놨던
    짜리
  `,
  with: '포함',
  counted: '포함',
  width: `
    단면
    너비
    폭
    넓이
  `,
  at: '에',
  frontInName: '앞',
  backInName: `
    뒤
    등
  `,
  besideFigureOnly: '전체',
  girthOrWidth: `
    너비
    폭
  `,
  upright: '높이',
  actually: '실측',
  besideGarment: `
    에
    랑
    이랑
    와
    과
    코디
    용
    도
  `,
  liningName: `
    안감
    충전재
    충전제
    배색
    속감
    내피
    솜
  `,
  ofCloth: `
    은
    는
    이
  `,
  besideGarmentBehind: `
    에
    에도
    에다
    용
    처럼
    으로도
    로도
    랑
    랑도
    이랑
    이랑도
    와도
    과도
    하고도
  `,
  kindInPassing: `
    니트
    데님
    상의
    하의
    아우터
    셋업
    정장
    세트
    트레이닝
    수트
    슈트
    나시
  `,
  paleLook: '워싱',
  notYet: '필요',
  pure: `
    순
    순면
    순모
  `,
  betweenFibres: `
    와
    과
    혼방
    이랑
  `,
  besideShares: `
    혼방
    블렌드
  `,
  feelsLike: '같은',
  hem: '밑단',
  ofTheBack: `
    뒤
    등
  `,
  seamOrCentre: `
    중심
    솔기
  `,
  toLetOut: '늘림',
  extra: '추가',
  onTop: `
    별도
    플러스
  `,
  postageApart: '별도',
  excluded: `
    별도
    미포함
  `,
  letsGo: `
    판매
    판매합니다
    팔아요
    팝니다
    내놔요
    드려요
  `,
  postage: `
    택배비
    배송비
    택배
    배송
    택배비는
  `,
  postIncluded: `
    포함
    무료
  `,
  postPaid: `
    택포
    무배
    반택포
    무료배송
  `,
  priceName: `
    가격
    판매가
    희망가
  `,
  haggled: `
    네고
    택포
    무배
    에눌
  `,
  tag: `
    라벨
    택
    표기
  `,
  womensBegins: '여성',
  mensBegins: '남성',
  forOne: `
    용
    의
  `,
  denim: `
    데님
    청바지
  `,
  inside: `
    안쪽
    안
  `,
  beside: `
    근처
    옆
  `,
  pocket: `
    주머니
    포켓
  `,
  pocketLining: `
    안감
    속감
  `,
  imitated: `
    페이크
    인조
  `,
  percent: `
    퍼센트
    프로
  `,
  money: '원',
  verb: `
    은
    는
  `,
  the: '이',
  unbounded: '프리',
  inch: '인치',
  from: `
    에서
    부터
  `,
  wide: '너비',
  anyGarment: '어떤',
  measureVerb: `
    잰
    쟀습니다
  `,
  forWhom: `
    남성
    여성
  `,
  doubled: '두배',
  sizeWord: '사이즈',
  sizeBehind: `
    사이즈
    호
  `
}

export const amounts: Amounts = {
  multiple: {
    '만': 10000,
    '천': 1000,
    '백': 100,
    '십': 10
  },
  sum: {
    '일': 1,
    '이': 2,
    '삼': 3,
    '사': 4,
    '오': 5,
    '육': 6,
    '칠': 7,
    '팔': 8,
    '구': 9
  }
}

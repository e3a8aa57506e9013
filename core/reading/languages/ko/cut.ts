/** How sellers name the cut, in Korean. */
import type { CutWords } from '../cut-words.ts'

export const cut: CutWords = {
  rise: {
    low: `
      로우라이즈
      로우웨이스트
    `,
    mid: '미드라이즈',
    high: `
      하이웨이스트
      하이웨스트
      하이라이즈
    `
  },
  leg: {
    skinny: '스키니',
    slim: `
      슬림 핏
      슬림핏
      슬림
    `,
    straight: `
      스트레이트
      일자
      일자핏
      일자 핏
    `,
    tapered: '테이퍼드',
    bootcut: '부츠컷',
    flared: `
      나팔
      플레어 팬츠
      플레어
    `,
    wide: `
      와이드
      통바지
      와이드핏
    `,
    legging: '레깅스',
    jogger: '조거',
    barrel: `
      배럴
      벌룬 팬츠
    `,
    relaxed: `
      릴렉스 핏
      루즈핏
    `
  },
  legLength: {
    cropped: `
      크롭 팬츠
      7부
      칠부
      7 부
      8 부
    `,
    ankle: `
      9부
      9 부
    `
  },
  silhouette: {
    pencil: `
      H라인
      h라인
      펜슬
    `,
    'a-line': `
      A라인
      a라인
    `,
    flared: '플레어',
    pleated: `
      플리츠
      주름 치마
    `,
    wrap: `
      랩 스커트
      랩 원피스
      랩
    `,
    'shirt-dress': '셔츠 원피스',
    bodycon: '바디콘',
    gathered: `
      캉캉
      티어드
      개더
    `
  },
  dressLength: {
    mini: '미니',
    knee: `
      무릎 길이
      무릎 기장
    `,
    midi: `
      미디
      미디 기장
    `,
    maxi: `
      맥시
      롱 원피스
      롱원피스
      롱스커트
      롱 스커트
    `
  },
  closeness: {
    slim: `
      슬림 핏
      슬림핏
    `,
    relaxed: `
      릴렉스
      루즈핏
      여유핏
      여유있게
      세미 오버핏
    `,
    oversized: `
      오버핏
      오버사이즈
      박시
      박시핏
    `,
    fitted: `
      타이트
      타이트핏
    `
  },
  sleeve: {
    sleeveless: `
      민소매
      나시
    `,
    short: `
      반팔
      반소매
    `,
    'three-quarter': `
      7부 소매
      칠부 소매
      7 부 소매
    `,
    long: `
      긴팔
      긴소매
    `,
    balloon: `
      퍼프 소매
      벌룬 소매
      퍼프
    `
  },
  shoulder: {
    raglan: `
      래글런
      라글란
      래글란
      raglan
    `,
    drop: `
      드롭숄더
      드랍 숄더
    `
  },
  topLength: {
    cropped: '크롭',
    longline: '롱 기장'
  }
}

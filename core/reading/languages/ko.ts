/** Korean, as private sellers write it. */
import { asides } from './ko/asides.ts'
import { cloth } from './ko/cloth.ts'
import { amounts, cues } from './ko/cues.ts'
import { cut } from './ko/cut.ts'
import { garments } from './ko/garments.ts'
import { measures } from './ko/measures.ts'
import { words } from './ko/words.ts'
import type { Lexicon } from './lexicon.ts'

export const ko: Lexicon = {
  language: 'ko',
  endings: [],
  scripts: { hangul: 1 },
  unspaced: true,
  verbLast: true,
  bareUnit: 'cm',
  common: `
    입니다
    이에요
    예요
    은
    는
    이
    가
    을
    를
    의
    에
    도
    와
    과
    랑
    로
    으로
    에서
    이고
    하고
    하며
    인데
    합니다
    했습니다
    했어요
    해요
    하세요
    해주세요
    드립니다
    드려요
    판매
    판매합니다
    판매해요
    구매
    문의
    직거래
    택배
    상태
    실측
    사이즈
    정도
    약간
    조금
    거의
    아주
    정말
    너무
    그냥
    입었습니다
    입었어요
    입던
    착용
    착용감
    잘
    어울려요
    어울림
    예뻐요
    이뻐요
    좋아요
    좋습니다
    좋은
    깨끗
    깨끗해요
    깨끗합니다
    세탁
    드라이
    드라이클리닝
    보관
    제품
    상품
    옷
    브랜드
    빈티지
    구제
    색상
    컬러
    사진
    참고
    네고
    사절
    가능
    불가
    환불
    교환
    오차
    있을 수
    있습니다
    수
    있을
    년대
    여름
    겨울
    봄
    가을
    간절기
    데일리
    코디
    오버핏
    정사이즈
    남여공용
    새상품
    미착용
    감사합니다
    편하게
    연락
    쪽지
    채팅
    두께감
    두께
    신축성
    원단
    재질
    소재
    디자인
    스타일
    핏
    부분
    쪽
    사용감
    정품
    직접
    제가
    저는
    그리고
    입니다만
    여기
    우체국
    편의점
    반값택배
    예쁜
    귀여운
    이상
    이하
    원래
    처음
    한번
    두번
    기준
    단위
    전체
    상세
    아래
    확인
    제품입니다
    거예요
    것
    때
    만
    까지
    부터
    여유있게
    추천
    핏감
    기장감
    따뜻해요
    시원해요
    얇아요
    두꺼워요
    일부
    화면
    수선
    라인
  `,
  currencies: {
    KRW: `
      원
      krw
      won
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

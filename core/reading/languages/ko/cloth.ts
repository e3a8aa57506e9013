/** Cloth in Korean: fibres, how it is woven or knitted, its nature, its colours. */
import type { Lexicon } from '../lexicon.ts'

export const cloth: Pick<Lexicon, 'fibres' | 'structures' | 'traits' | 'colours'> = {
  fibres: {
    cotton: `
      면
      코튼
      순면
      오가닉 코튼
    `,
    wool: `
      울
      모
      양모
      메리노 울
      램스울
      메리노울
      순모
      램스 울
    `,
    linen: `
      린넨
      마
      리넨
      아마
    `,
    silk: `
      실크
      견
    `,
    viscose: `
      레이온
      비스코스
      인견
    `,
    polyester: `
      폴리에스터
      폴리에스테르
      폴리
      폴리에스텔
    `,
    polyamide: `
      나일론
      폴리아미드
    `,
    elastane: `
      폴리우레탄
      스판
      스판덱스
      엘라스테인
      엘라스탄
    `,
    acrylic: '아크릴',
    cashmere: `
      캐시미어
      캐시미아
    `,
    modal: '모달',
    lyocell: `
      텐셀
      리오셀
      라이오셀
    `,
    acetate: `
      아세테이트
      트리아세테이트
    `,
    cupro: `
      큐프라
      벰베르그
    `,
    mohair: '모헤어',
    alpaca: '알파카',
    angora: '앙고라',
    hemp: `
      헴프
      대마
    `,
    ramie: `
      모시
      저마
    `,
    camel: `
      낙타털
      카멜모
    `,
    down: `
      오리솜털
      거위솜털
      솜털
      구스다운
      덕다운
    `
  },
  structures: {
    woven: `
      직물
      데님 원단
      코듀로이
      트윌
      골덴
      플란넬
      옥스포드
      시어서커
    `,
    knit: `
      니트
      편직
      저지 원단
      다이마루
      골지
      케이블
    `,
    leather: `
      가죽
      소가죽
      양가죽
      천연 가죽
      천연가죽
      리얼 가죽
      램스킨
      스웨이드
    `
  },
  traits: {
    rigid: `
      신축성 없음
      신축성 없어요
      신축성 없습니다
      비스판
      논스판
      리지드
    `,
    denim: `
      데님
      청바지
      청자켓
    `,
    pile: `
      코듀로이
      벨벳
      골덴
      벨로아
    `,
    check: `
      체크
      체크 무늬
      하운드투스
      깅엄
      타탄
      글렌 체크
    `,
    stripe: `
      스트라이프
      줄무늬
      단가라
    `,
    sheer: `
      시스루
      쉬폰
      시폰
      망사
      오간자
    `,
    slippery: `
      새틴
      공단
    `,
    beaded: `
      비즈
      스팽글
      큐빅
    `,
    pleated: '플리츠',
    suede: '스웨이드',
    vinyl: `
      레자
      인조 가죽
      인조가죽
      페이크 레더
      에코 레더
      비건 레더
    `,
    coated: `
      코팅
      왁스드
    `,
    silk: '실크',
    taffeta: '타프타'
  },
  colours: {
    black: `
      검정
      블랙
      검은색
      검정색
    `,
    white: `
      흰색
      화이트
      하양
      흰
    `,
    grey: `
      회색
      그레이
      차콜
      멜란지
    `,
    navy: `
      남색
      네이비
      곤색
    `,
    blue: `
      파랑
      블루
      하늘색
      파란색
      연청
      중청
      진청
      소라색
      스카이블루
    `,
    teal: `
      청록
      터콰이즈
    `,
    green: `
      초록
      그린
      카키
      올리브
      초록색
      민트
    `,
    red: `
      빨강
      레드
      빨간색
    `,
    burgundy: `
      버건디
      와인
      와인색
    `,
    pink: `
      핑크
      분홍
      분홍색
    `,
    purple: `
      보라
      퍼플
      보라색
      라벤더
    `,
    orange: `
      오렌지
      주황
      주황색
    `,
    yellow: `
      노랑
      옐로우
      노란색
      머스타드
    `,
    brown: `
      갈색
      브라운
      밤색
      모카
      카멜
    `,
    beige: `
      베이지
      샌드
    `,
    cream: `
      크림
      아이보리
      오트밀
      오프화이트
    `,
    gold: `
      골드
      금색
    `,
    silver: `
      실버
      은색
    `
  }
}

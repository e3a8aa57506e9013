/** The garment in Korean: its kind, how it is made, what it is for, what is wrong with it. */
import type { Lexicon } from '../lexicon.ts'

export const garments: Pick<Lexicon, 'kinds' | 'made' | 'uses' | 'whose' | 'faults'> = {
  kinds: [
    {
      kind: 'jeans',
      phrases: `
        청바지
        데님 팬츠
        데님 바지
        진
        데님
        스키니 진
        와이드 데님
        흑청 바지
        연청 바지
        데님 진
        중청 바지
      `
    },
    {
      kind: 'trousers',
      phrases: `
        바지
        슬랙스
        팬츠
        면바지
        치노 팬츠
        카고 팬츠
        카고 바지
        와이드 팬츠
        레깅스
        조거 팬츠
        트레이닝 바지
        추리닝 바지
        코듀로이 팬츠
        골덴 바지
        정장 바지
        정장 팬츠
        린넨 바지
        린넨 팬츠
        배기 팬츠
        와이드 슬랙스
        부츠컷 팬츠
        트레이닝 팬츠
        긴바지
        츄리닝 바지
        기모 레깅스
        와이드 바지
        츄리닝
        하의
        스웨트 팬츠
      `
    },
    {
      kind: 'shorts',
      phrases: `
        반바지
        숏 팬츠
        숏팬츠
        하프 팬츠
        버뮤다 팬츠
        핫팬츠
        쇼츠
        데님 반바지
        5부 바지
        큐롯
      `
    },
    {
      kind: 'skirt',
      phrases: `
        스커트
        치마
        롱 스커트
        미니 스커트
        미디 스커트
        플리츠 스커트
        청치마
        데님 스커트
        랩 스커트
        플레어 스커트
        미니스커트
        롱스커트
        테니스 스커트
        캉캉 스커트
        H라인 스커트
        A라인 스커트
        치마바지
        플리츠 치마
      `
    },
    {
      kind: 'dress',
      phrases: `
        원피스
        드레스
        롱 원피스
        미니 원피스
        셔츠 원피스
        니트 원피스
        뷔스티에 원피스
        웨딩 드레스
        롱원피스
        나시 원피스
        파티 드레스
        미디 원피스
        린넨 원피스
        랩 원피스
        멜빵 원피스
        멜빵 치마
        투피스 원피스
        티셔츠 원피스
      `
    },
    {
      kind: 'jumpsuit',
      phrases: `
        점프수트
        점프슈트
        멜빵 바지
        멜빵바지
        오버롤
        오버올
        올인원
        멜빵 팬츠
        커버올 점프수트
        서스펜더 팬츠
      `
    },
    {
      kind: 'shirt',
      phrases: `
        셔츠
        블라우스
        남방
        와이셔츠
        체크 셔츠
        데님 셔츠
        린넨 셔츠
        옥스포드 셔츠
        하와이안 셔츠
        반팔 셔츠
        긴팔 셔츠
        튜닉
        체크 남방
        청남방
        셔츠 자켓
        오버 셔츠
        플란넬 셔츠
        워크 셔츠
        드레스 셔츠
        실크 블라우스
        청셔츠
        남방 셔츠
        패턴 셔츠
      `
    },
    {
      kind: 'knit-top',
      phrases: `
        티셔츠
        반팔 티
        긴팔 티
        반팔티
        긴팔티
        티
        맨투맨 티
        나시
        민소매
        탑
        폴로 티
        카라티
        카라 티
        피케 티셔츠
        폴로 셔츠
        롱슬리브
        크롭 티
        크롭티
        반팔 티셔츠
        긴팔 티셔츠
        럭비 티
        럭비 셔츠
        나시티
        뷔스티에
        끈나시
        피케 셔츠
        저지 유니폼
        유니폼
        축구 저지
        크롭탑
      `
    },
    {
      kind: 'jumper',
      phrases: `
        니트
        스웨터
        가디건
        맨투맨
        후드 티
        후드티
        후드 집업
        후드집업
        후드
        후디
        폴라 티
        목폴라 니트
        조끼 니트
        니트 조끼
        니트 가디건
        니트 베스트
        스웻셔츠
        스웨트셔츠
        집업
        후리스
        플리스
        울 니트
        케이블 니트
        꽈배기 니트
        캐시미어 니트
        후드 맨투맨
        풀오버
        스웨트 셔츠
        반집업
        아노락 후드
        볼레로 가디건
        기모 후드
        후리스 집업
      `
    },
    {
      kind: 'jacket',
      phrases: `
        블레이저
        정장
        정장 자켓
        수트
        슈트
        테일러드 자켓
        마이
        정장 세트
        셋업
        수트 셋업
        양복
        턱시도
        정장 셋업
        콤비 자켓
        트위드 자켓
        정장 재킷
        테일러드 재킷
        수트 자켓
        싱글 자켓
        더블 자켓
        노카라 자켓
      `,
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases: `
        자켓
        재킷
        점퍼
        잠바
        청자켓
        데님 자켓
        가죽 자켓
        라이더 자켓
        바람막이
        항공 점퍼
        야구 점퍼
        스타디움 자켓
        블루종
        봄버 자켓
        무스탕
        트러커 자켓
        야상
        윈드브레이커
        코치 자켓
        아노락
        워크 자켓
        트랙 탑
        저지
        바시티 자켓
        스웨이드 자켓
        가죽 재킷
        데님 재킷
        청재킷
        라이더 재킷
        볼레로
        스카잔
        커버올
        스타쟌
        트랙 자켓
        가죽자켓
      `,
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases: `
        코트
        트렌치
        롱 코트
        트렌치 코트
        트렌치코트
        더블 코트
        떡볶이 코트
        더플 코트
        더플코트
        발마칸 코트
        발마칸
        체스터 코트
        피코트
        패딩
        롱 패딩
        숏 패딩
        롱패딩
        숏패딩
        패딩 점퍼
        다운 자켓
        다운 점퍼
        파카
        파카 자켓
        핸드메이드 코트
        울 코트
        하프 코트
        우비
        레인 코트
        모피
        밍크 코트
        퍼 자켓
        맥 코트
        무스탕 코트
        다운 파카
        경량 패딩
        로브 코트
        오버 코트
        판초
        발마칸코트
        롱코트
      `
    },
    {
      kind: 'waistcoat',
      phrases: `
        조끼
        베스트
        패딩 조끼
        패딩 베스트
        정장 조끼
        다운 조끼
        다운 베스트
        경량 패딩 조끼
        경량 조끼
        데님 조끼
        가죽 조끼
        플리스 조끼
        수트 베스트
        오리털 패딩 조끼
        오리털 조끼
        경량 패딩 베스트
        낚시 조끼
      `
    },
    {
      kind: 'other',
      phrases: `
        망토
        케이프
        속바지
        슬립
        수영복
        비키니
        잠옷
        파자마
        속옷
        한복
        브라
        가운
        래쉬가드
        저고리
        두루마기
        래시가드
        팬티
      `
    }
  ],
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: `
        안감 있음
        안감 있어요
        안감 있습니다
        안감
        안감있음
        풀 안감
        안감 있는
        안감 처리
        전체 안감
      `
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: `
        안감 없음
        안감 없어요
        안감 없습니다
        안감없음
        노 안감
        홑겹
        안감 없이
        안감 없는
        안감 없고
      `
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases: `
        반팔
        민소매
        나시
        5부 소매
      `
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases: `
        허리 밴딩
        밴딩 허리
        허리밴딩
        허리 고무줄
        고무줄 허리
        뒷밴딩
        뒷 밴딩
        밴딩
        허리 밴드
        고무줄 바지
      `
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: '다트'
    },
    {
      fact: { fact: 'skirtShape', value: 'straight' },
      phrases: `
        H라인 스커트
        펜슬 스커트
        h라인
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases: `
        플레어 스커트
        A라인 스커트
      `
    },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases: `
        플리츠 스커트
        주름 치마
        주름치마
      `
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases: '오리지널 밑단'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases: `
        옆지퍼
        뒷지퍼
        사이드 지퍼
        콘솔 지퍼
        옆 지퍼
        뒤 지퍼
        뒷 지퍼
      `
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases: `
        뒤 트임
        뒷트임
        옆트임
        사이드 슬릿
        앞트임
        뒷 트임
        옆 트임
      `
    }
  ],
  uses: {
    protective: `
      형광 안전
      방염
      안전 조끼
    `,
    child: `
      아동
      키즈
      유아
      아기
      여아
      남아
      어린이
      베이비
      아동복
      주니어
    `,
    'child-sleepwear': `
      아동 잠옷
      유아 잠옷
      아기 내복
    `,
    'medical-compression': `
      의료용 압박
      압박 스타킹
    `
  },
  whose: {
    women: `
      여성용
      여성 의류
      여자 옷
    `,
    men: `
      남성용
      남성 의류
      남자 옷
    `,
    'women named': `
      여성
      여자
      우먼
    `,
    'men named': `
      남성
      남자
      맨
    `,
    both: `
      남녀공용
      남여공용
      유니섹스
      공용
      남녀 공용
    `
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: `
        좀먹음
        좀 먹은
        벌레 먹은
        좀벌레
      `
    },
    {
      mending: ['patch'],
      phrases: `
        구멍
        찢어짐
        찢김
        찢어진
        작은 구멍
        빵꾸
        구멍이
        뜯김
        해짐
        헤짐
        해진
      `
    },
    {
      mending: ['clean'],
      phrases: `
        오염
        얼룩
        이염
        때
        누런
        황변
        변색
        자국
        냄새
      `
    },
    {
      mending: ['replace-button'],
      phrases: `
        단추 없음
        단추 하나 없음
        단추 떨어짐
        단추 분실
        단추 1 개 없음
        단추 1 개 분실
        단추 하나 없어요
      `
    },
    {
      mending: ['close-seam'],
      phrases: `
        실밥
        올 풀림
        올풀림
        터짐
        튿어짐
        박음질 터짐
        솔기 터짐
        뜯어짐
      `
    },
    {
      mending: ['replace-zip'],
      phrases: `
        지퍼 고장
        지퍼 불량
        지퍼 뻑뻑
      `
    },
    {
      mending: ['replace-elastic'],
      phrases: `
        고무줄 늘어남
        밴딩 늘어남
      `
    },
    {
      mending: ['de-pill'],
      phrases: `
        보풀
        필링
        보풀이
      `
    },
    {
      mending: ['dye'],
      phrases: `
        물빠짐
        색바램
        탈색
        빛바램
        물 빠짐
      `
    },
    {
      mending: ['polish-leather'],
      phrases: `
        까짐
        스크래치
        가죽 까짐
        벗겨짐
      `
    },
    {
      mending: [],
      phrases: `
        하자
        사용감
        늘어남
        목늘어남
        흠
        생활감
        주름
        번들거림
        기스
        생활 하자
        미세 하자
        구김
      `
    }
  ]
}

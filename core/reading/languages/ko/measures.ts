/** What is measured, in Korean: points and places on the garment, how a figure was taken, units. */
import type { Lexicon } from '../lexicon.ts'

export const measures: Pick<Lexicon, 'points' | 'letters' | 'landmarks' | 'basis' | 'units' | 'numbers'> = {
  points: {
    chest: `
      가슴
      품
      버스트
      바스트
    `,
    'chest flat': `
      가슴 단면
      가슴 너비
      가슴 폭
      가슴 넓이
      겨드랑이 단면
      겨드랑이 너비
      품 단면
      겨드랑이에서 겨드랑이
      암홀 에서 암홀
    `,
    'chest around': '가슴 둘레',
    waist: `
      허리
      웨이스트
    `,
    'waist flat': `
      허리 단면
      허리 너비
      허리 폭
      허리 넓이
    `,
    'waist around': '허리 둘레',
    hip: `
      엉덩이
      힙
    `,
    'hip flat': `
      엉덩이 단면
      힙 단면
      엉덩이 너비
      힙 너비
      엉덩이 폭
      골반 단면
    `,
    'hip around': `
      엉덩이 둘레
      힙 둘레
    `,
    bottomEdge: `
      밑단
      밑단 둘레
    `,
    'bottomEdge flat': `
      밑단 단면
      밑단 너비
      밑단 폭
      밑단 넓이
      밑통
      밑통 단면
      도련
      단 폭
    `,
    bicep: `
      팔통
      소매통
      팔뚝
    `,
    'bicep flat': `
      소매 단면
      소매통 단면
      팔통 단면
      소매 너비
      소매 폭
    `,
    'bicep around': `
      팔 둘레
      소매 둘레
    `,
    cuff: `
      소매 부리
      소맷부리
      소매 밑단
      커프스
    `,
    'cuff flat': `
      소매 부리 단면
      소매 밑단 단면
      손목 단면
    `,
    'cuff around': '손목 둘레',
    'neck around': `
      목 둘레
      넥 둘레
    `,
    'neck weak': '목',
    thigh: '허벅지',
    'thigh flat': `
      허벅지 단면
      허벅지 너비
      허벅지 폭
      허벅 단면
    `,
    'thigh around': '허벅지 둘레',
    'knee flat': '무릎 단면',
    calf: '종아리',
    'calf flat': '종아리 단면',
    elbow: '팔꿈치',
    underbust: '밑가슴 둘레',
    'underbust flat': '밑가슴 단면',
    armhole: `
      암홀
      암홀 직선
    `,
    'armhole flat': '암홀 단면',
    'armhole around': '암홀 둘레',
    shoulderWidth: `
      어깨
      어깨 너비
      어깨 단면
      어깨 길이
      어깨 넓이
      어깨 폭
      숄더
    `,
    sleeveLength: `
      소매
      소매 길이
      팔 길이
      팔
      소매 기장
      소매 장
    `,
    sleeveFromCentreBack: `
      화장
      화장 길이
      목 에서 소매
      화장기장
    `,
    sleeveUnderarm: `
      안소매
      소매 안쪽 길이
      겨드랑이 소매
    `,
    length: `
      총장
      총 기장
      총 길이
      기장
      뒷 총장
      뒤 총장
      앞 총장
      전체 길이
      전체 기장
      길이
      전장
      옷 길이
    `,
    bodyLength: `
      상의 기장
      옷길이
      등 기장
      뒷 기장
      원피스 길이
      원피스 기장
    `,
    skirtLength: `
      치마 길이
      스커트 길이
      치마 기장
      스커트 기장
    `,
    napeToWaist: '등 길이',
    backWidth: `
      등 너비
      등 폭
      뒷품
    `,
    inseam: `
      안기장
      인심
      인심 길이
      안 기장
      안쪽 기장
      안쪽 길이
      밑아래
      다리 안쪽
      인시임
    `,
    outseam: `
      바깥 기장
      바지 길이
      바지 기장
      아웃심
      바깥 길이
    `,
    legLength: '다리 길이',
    rise: `
      밑위
      밑위 길이
    `,
    frontRise: `
      앞밑위
      앞 밑위
      밑위 앞
    `,
    backRise: `
      뒷밑위
      뒤밑위
      뒤 밑위
      밑위 뒤
      뒷 밑위
    `,
    strap: `
      끈 길이
      어깨끈 길이
    `,
    width: `
      단면
      너비
      통
    `
  },
  landmarks: {
    shoulder: `
      어깨
      어깨선
    `,
    neck: `
      목
      카라
      뒷목
      넥
    `,
    armpit: '겨드랑이',
    waist: '허리',
    hip: '엉덩이',
    crotch: '가랑이',
    knee: '무릎',
    hem: `
      밑단
      단
    `,
    cuff: `
      소매 끝
      손목
    `,
    elbow: '팔꿈치',
    bust: '가슴',
    top: '맨위'
  },
  basis: {
    flat: `
      단면
      평면
      반둘레
      눕혀서
      바닥에 놓고
      펼쳐서
      단면으로
      단면 기준
    `,
    around: `
      둘레
      전체 둘레
      한바퀴
      총둘레
    `,
    doubled: `
      x2
      x 2
      곱하기 2
      2 배
    `,
    double: `
      2 배 해주세요
      곱하기 2 해주세요
    `
  },
  units: {
    in: `
      인치
      inch
      inches
    `,
    cm: `
      cm
      센치
      센티
      센티미터
      센치미터
      ㎝
    `,
    mm: `
      mm
      미리
      밀리미터
      ㎜
    `,
    m: `
      m
      미터
    `,
    ft: '피트'
  },
  numbers: {
    '두': 2,
    '세': 3
  }
}

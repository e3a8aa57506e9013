/** More texts in the manner of Korean listings, by another hand. */
import type { WrittenCase } from './written-case.ts'

export const moreKorean: WrittenCase[] = [
  {
    id: 'ko-001',
    class: 'compact',
    lang: 'ko',
    title: '90년대 프린팅 반팔 티셔츠 L',
    text: '상태 좋아요 목늘어남 거의 없음 ㅎㅎ\n총장 70 어깨 50 가슴 56 소매 22\n(단면/cm, 1~2cm 오차 있음)\n면 100\n1.8만원 택배비 3500원 별도 / 직거래는 합정',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '50', value: 50, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '22', value: 22, unit: 'cm', basis: 'length' }
    ],
    aside: ['3500'],
    price: { amount: 18000, currency: 'KRW' },
    fibres: [['cotton', 100]],
    cut: { sleeve: 'short' }
  },
  {
    id: 'ko-002',
    class: 'plain',
    lang: 'ko',
    title: '빈티지 스트레이트 데님 팬츠 32/30',
    text: '표기 32/30 이지만 실측 확인해주세요!\n\n허리단면 40.5cm\n밑위 30cm\n엉덩이단면 53cm\n허벅지단면 31cm\n밑단단면 21cm\n총장 103cm\n\n버튼플라이고 뒷주머니 살짝 해짐 있어요\n모델 키 178 몸무게 68 허리 30 착용\n가격 2만5천원 (원래 4만원에 올렸던 거 내렸습니다)',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '40.5cm', value: 40.5, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30cm', value: 30, unit: 'cm', basis: 'length' },
      { point: 'hip', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '31cm', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '21cm', value: 21, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '103cm', value: 103, unit: 'cm', basis: 'length' }
    ],
    aside: ['32', '178', '4만원'],
    price: { amount: 25000, currency: 'KRW' },
    fibres: [],
    cut: { leg: 'straight' }
  },
  {
    id: 'ko-003',
    class: 'raglan',
    lang: 'ko',
    title: '발마칸 코트 래글런 100-105 울 블렌드',
    text: '▪ SIZE (단면 / cm)\n어깨 Raglan\n화장 84\n가슴 65.5\n총장(카라제외) 109\n밑단 71\n\n▪ 겉감 모 70 나일론 30 / 안감 폴리에스터 100\n▪ 105 사이즈까지 여유있게 착용 가능합니다\n▪ 소매 안쪽 안감에 작은 구멍, 수선해서 보내드려요\n79,000원',
    kind: 'coat',
    measures: [
      { point: 'sleeveFromCentreBack', text: '84', value: 84, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '65.5', value: 65.5, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '109', value: 109, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '71', value: 71, unit: 'cm', basis: 'flat' }
    ],
    aside: ['100-105'],
    price: { amount: 79000, currency: 'KRW' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full',
    cut: { shoulder: 'raglan', closeness: 'relaxed' }
  },
  {
    id: 'ko-004',
    class: 'around-told',
    lang: 'ko',
    title: '꽃무늬 롱원피스 55 사이즈',
    text: '사이즈 55 (66반까지는 무리)\n어깨 37cm\n가슴둘레 92cm\n허리둘레 74cm\n팔길이 57cm\n총길이 118cm\n겉감: 폴리 95% 폴리우레탄 5% 안감: 폴리 100%\n속치마까지 안감 있어서 안 비쳐요 뒷지퍼예요\n청자켓이랑 입으면 넘 예뻐요💐 2만원!!',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '37cm', value: 37, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '92cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '74cm', value: 74, unit: 'cm', basis: 'around' },
      { point: 'sleeveLength', text: '57cm', value: 57, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '118cm', value: 118, unit: 'cm', basis: 'length' }
    ],
    aside: ['55'],
    price: { amount: 20000, currency: 'KRW' },
    fibres: [
      ['polyester', 95],
      ['elastane', 5]
    ],
    lined: 'half',
    cut: { dressLength: 'maxi' }
  },
  {
    id: 'ko-005',
    class: 'range',
    lang: 'ko',
    title: '밴딩 플리츠 스커트 블랙',
    text: '허리(밴딩) 33~40 / 힙 51 / 총길이 80 / 밑단 92\n단위 cm 단면으로 잰 거예요\n주름 안 풀렸고 보풀 없어요. 니트랑도 블라우스랑도 잘 어울림\n15,000원 배송비 포함',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33~40', value: 36.5, unit: 'cm', basis: 'flat', low: 33, high: 40 },
      { point: 'hip', text: '51', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '80', value: 80, unit: 'cm', basis: 'length' },
      { point: 'sweep', text: '92', value: 92, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 15000, currency: 'KRW' },
    fibres: [],
    cut: { silhouette: 'pleated' }
  },
  {
    id: 'ko-006',
    class: 'second-garment',
    lang: 'ko',
    title: '남성 정장 셋업 (자켓+바지) 네이비',
    text: '결혼식때 한번 입고 드라이 후 보관\n\n[자켓] 어깨 45 가슴 53 소매 61 기장 73\n[바지] 허리 41 밑위 27 허벅지 31 밑단 19 총장 101\n전부 단면 cm\n\n울 100%, 자켓 안감 있음\n구매가 38만원 / 판매가 9만원 / 네고 사절',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '45', value: 45, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'chest', text: '53', value: 53, unit: 'cm', basis: 'flat', of: 'jacket' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'bodyLength', text: '73', value: 73, unit: 'cm', basis: 'length', of: 'jacket' },
      { point: 'waist', text: '41', value: 41, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'frontRise', text: '27', value: 27, unit: 'cm', basis: 'length', of: 'trousers' },
      { point: 'thigh', text: '31', value: 31, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'legOpening', text: '19', value: 19, unit: 'cm', basis: 'flat', of: 'trousers' },
      { point: 'outseam', text: '101', value: 101, unit: 'cm', basis: 'length', of: 'trousers' }
    ],
    aside: ['38만원'],
    price: { amount: 90000, currency: 'KRW' },
    fibres: [['wool', 100]],
    lined: 'full'
  },
  {
    id: 'ko-007',
    class: 'glued',
    lang: 'ko',
    title: '케이블 니트 가디건',
    text: '어깨46가슴단면58소매60총장67.5(cm)\n울70 아크릴30 두께감 있어요\n단추 하나 다른걸로 교체되어 있습니다 ㅠ\n3.5만 무배',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '46', value: 46, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '58', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '67.5', value: 67.5, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 35000, currency: 'KRW' },
    fibres: [
      ['wool', 70],
      ['acrylic', 30]
    ]
  },
  {
    id: 'ko-008',
    class: 'plain',
    lang: 'ko',
    title: '와이드 슬랙스 차콜 투턱',
    text: '🚩실측\n허리 38.5\n엉덩이 55\n허벅지 35\n밑위 앞 32 뒤 41\n인심 72\n밑단 27\n총장 103\n🚩컨디션\nA급, 무릎 살짝 번들거림\n🚩소재\n폴리 65 레이온 33 스판 2\n🚩가격\n33,000\n하이웨스트로 입으시면 이뻐요 (슬림핏 아님!!)',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '38.5', value: 38.5, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '55', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '35', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32', value: 32, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '41', value: 41, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '72', value: 72, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '27', value: 27, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '103', value: 103, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 33000, currency: 'KRW' },
    fibres: [
      ['polyester', 65],
      ['viscose', 33],
      ['elastane', 2]
    ],
    cut: { leg: 'wide', rise: 'high' }
  },
  {
    id: 'ko-009',
    class: 'not-measures',
    lang: 'ko',
    title: '캔버스 운동화 270',
    text: '270mm 정사이즈 / 발볼 10.5cm / 굽 3cm\n청바지 반바지 다 잘 어울려요\n박스 없음, 밑창 살짝 닳음\n만오천원 택포',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['270mm', '10.5cm', '3cm'],
    price: { amount: 15000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-010',
    class: 'fill-aside',
    lang: 'ko',
    title: '오리털 패딩 조끼 105 카키',
    text: '겉감 나일론 100 안감 나일론 100 충전재 오리솜털 80 깃털 20\n가슴단면 61cm 총장 66cm 어깨너비 45cm 암홀단면 28cm\n키 180에 75kg 제가 입던거구요 지퍼 부드럽게 잘 올라갑니다\n정가 159,000원짜리 4만원에 내놔요~ 택배 4천원',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '61cm', value: 61, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66cm', value: 66, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '45cm', value: 45, unit: 'cm', basis: 'length' },
      { point: 'armhole', text: '28cm', value: 28, unit: 'cm', basis: 'flat' }
    ],
    aside: ['180', '159,000', '105'],
    price: { amount: 40000, currency: 'KRW' },
    fibres: [['polyamide', 100]],
    lined: 'full'
  }
]

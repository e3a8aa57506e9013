/** Texts in the manner of Korean listings. */
import type { WrittenCase } from './written-case.ts'

export const korean: WrittenCase[] = [
  {
    id: 'ko-w01',
    class: 'compact',
    lang: 'ko',
    title: '체크 셔츠 남방 L',
    text: '총장70/어깨45/가슴52/소매60\n면 100%\n상태 좋아요 하자 없습니다\n15,000원 택포',
    kind: 'shirt',
    measures: [
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '45', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 15000, currency: 'KRW' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ko-w02',
    class: 'labels',
    lang: 'ko',
    title: '울 블렌드 롱 코트 네이비',
    text: '사이즈 M\n어깨너비 42cm\n가슴단면 53cm\n소매길이 60cm\n총기장 105cm\n겉감 울 70% 나일론 30%\n안감 폴리에스터 100%\n가격 4만5천원',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '105cm', value: 105, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 45000, currency: 'KRW' },
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    lined: 'full'
  },
  {
    id: 'ko-w03',
    class: 'trousers',
    lang: 'ko',
    title: '와이드 슬랙스 블랙 28',
    text: '허리단면 36 / 엉덩이단면 49 / 허벅지단면 31 / 밑위 29 / 밑단단면 24 / 총장 101\n실측 사이즈이며 1~2cm 오차 있을 수 있습니다',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'thigh', text: '31', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '29', value: 29, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '24', value: 24, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '101', value: 101, unit: 'cm', basis: 'length' }
    ],
    aside: ['1~2cm'],
    price: null,
    fibres: [],
    cut: { leg: 'wide' }
  },
  {
    id: 'ko-w04',
    class: 'around-told',
    lang: 'ko',
    title: '플리츠 롱 스커트 베이지 (여성)',
    text: '허리둘레 68cm, 총길이 82cm\n안감 있음\n2만원',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'skirtLength', text: '82cm', value: 82, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 20000, currency: 'KRW' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ko-w05',
    class: 'model',
    lang: 'ko',
    title: '꽃무늬 원피스 반팔 미디',
    text: '가슴둘레 90cm 허리둘레 72cm 기장 112cm\n모델 키 168cm, S 착용\n정가 89,000원에 구매했어요. 3만원에 판매합니다',
    kind: 'dress',
    measures: [
      { point: 'chest', text: '90cm', value: 90, unit: 'cm', basis: 'around' },
      { point: 'waist', text: '72cm', value: 72, unit: 'cm', basis: 'around' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    aside: ['168cm'],
    price: { amount: 30000, currency: 'KRW' },
    fibres: [],
    cut: { dressLength: 'midi' }
  },
  {
    id: 'ko-w06',
    class: 'jeans',
    lang: 'ko',
    title: '스트레이트 데님 팬츠 청바지 32',
    text: '표기 사이즈 32\n허리 41 밑위 28 허벅지 30.5 밑단 20 총장 103\n단면 기준입니다\n면 98% 폴리우레탄 2%\n3.5만',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '41', value: 41, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28', value: 28, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '30.5', value: 30.5, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '20', value: 20, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '103', value: 103, unit: 'cm', basis: 'length' }
    ],
    aside: ['32'],
    price: { amount: 35000, currency: 'KRW' },
    fibres: [
      ['cotton', 98],
      ['elastane', 2]
    ]
  },
  {
    id: 'ko-w07',
    class: 'spaced',
    lang: 'ko',
    title: '캐시미어 니트 가디건 아이보리',
    text: '어깨 단면 38 가슴 단면 48 소매 길이 57 총 길이 58\n캐시미어 10 울 90\n보풀 약간 있습니다',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '57', value: 57, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['cashmere', 10],
      ['wool', 90]
    ]
  },
  {
    id: 'ko-w08',
    class: 'raglan',
    lang: 'ko',
    title: '후드 맨투맨 그레이 XL',
    text: '화장 84 가슴 62 총장 68 (단면, cm)\n기모 안감\n5만원 (배송비 별도 4천원)',
    kind: 'jumper',
    measures: [
      { point: 'sleeveFromCentreBack', text: '84', value: 84, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '62', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 50000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-w09',
    class: 'particles',
    lang: 'ko',
    title: '린넨 블라우스 화이트',
    text: '어깨는 40cm, 가슴은 단면으로 51cm, 총장은 60cm 정도이고 소매는 45cm예요.\n두 번 입었습니다. 오염이나 구멍은 없습니다.',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '40cm', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '60cm', value: 60, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '45cm', value: 45, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['linen', null]]
  },
  {
    id: 'ko-w10',
    class: 'suit',
    lang: 'ko',
    title: '남성 정장 세트 차콜',
    text: '상의(자켓) : 어깨 45 가슴 51 소매 61 총장 73\n하의(바지) : 허리 39 밑위 26 허벅지 30 밑단 18.5 총장 100\n울 100%',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '45', of: 'jacket', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '51', of: 'jacket', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '61', of: 'jacket', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '73', of: 'jacket', value: 73, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '39', of: 'trousers', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '26', of: 'trousers', value: 26, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '30', of: 'trousers', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '18.5', of: 'trousers', value: 18.5, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '100', of: 'trousers', value: 100, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', 100]]
  },
  {
    id: 'ko-w11',
    class: 'tshirt',
    lang: 'ko',
    title: '반팔 티셔츠 프린팅 블랙',
    text: '1. 총장 71cm\n2. 어깨 50cm\n3. 가슴 55cm\n4. 소매 22cm\n목 늘어남 없음\n9천원',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '71cm', value: 71, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '50cm', value: 50, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '55cm', value: 55, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '22cm', value: 22, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 9000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-w12',
    class: 'padding',
    lang: 'ko',
    title: '경량 패딩 조끼 카키',
    text: '가슴단면 56, 총장 64, 암홀단면 27\n겉감 나일론 100 / 충전재 솜털 80 깃털 20',
    kind: 'waistcoat',
    measures: [
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '64', value: 64, unit: 'cm', basis: 'length' },
      { point: 'armhole', text: '27', value: 27, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ko-w13',
    class: 'skirt',
    lang: 'ko',
    title: '데님 미니스커트',
    text: '허리단면 34.5cm\n힙단면 46cm\n총기장 40cm\n정품 / 1회 착용\n1.2만원',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34.5cm', value: 34.5, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '46cm', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '40cm', value: 40, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-w14',
    class: 'shorts',
    lang: 'ko',
    title: '린넨 반바지 베이지 밴딩',
    text: '허리 32~42 (밴딩) / 허벅지 33 / 밑위 31 / 밑단 31 / 기장 48\n단면 실측\n마 55 면 45',
    kind: 'shorts',
    measures: [
      { point: 'waist', text: '32~42', value: 37, unit: 'cm', basis: 'flat', low: 32, high: 42 },
      { point: 'thigh', text: '33', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31', value: 31, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '31', nth: 2, value: 31, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '48', value: 48, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['linen', 55],
      ['cotton', 45]
    ]
  },
  {
    id: 'ko-w15',
    class: 'not-measures',
    lang: 'ko',
    title: '빈티지 가죽 자켓',
    text: '90년대 제품이고 라벨 100 사이즈입니다\n어깨 47 가슴 57 소매 61 총장 66\n소매 끝에 2cm 정도 까짐 있습니다\n소가죽\n7만',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '47', value: 47, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '57', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' }
    ],
    aside: ['100', '2cm'],
    price: { amount: 70000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-w16',
    class: 'jumpsuit',
    lang: 'ko',
    title: '점프수트 멜빵바지 데님',
    text: '총장 130 / 가슴단면 47 / 허리단면 43 / 안기장 64 / 밑단 23',
    kind: 'jumpsuit',
    measures: [
      { point: 'bodyLength', text: '130', value: 130, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '47', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '43', value: 43, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '64', value: 64, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '23', value: 23, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ko-w17',
    class: 'no-garment',
    lang: 'ko',
    title: '캔버스 토트백',
    text: '가로 38cm 세로 34cm 폭 11cm\n끈 길이 60cm\n1만원',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['38cm', '34cm'],
    price: { amount: 10000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-w18',
    class: 'retail',
    lang: 'ko',
    title: '실크 블라우스 퍼플',
    text: '정가 12만원 → 판매가 3만8천원\n가슴 49 어깨 37 소매 58 총장 62\n실크 100%',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '37', value: 37, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '62', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 38000, currency: 'KRW' },
    fibres: [['silk', 100]]
  },
  {
    id: 'ko-w19',
    class: 'leggings',
    lang: 'ko',
    title: '기모 레깅스 블랙 프리사이즈',
    text: '허리단면 30cm(최대 45cm) 밑위 28cm 총장 88cm\n폴리에스테르 92% 스판 8%',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '28cm', value: 28, unit: 'cm', basis: 'length' },
      { point: 'outseam', text: '88cm', value: 88, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['polyester', 92],
      ['elastane', 8]
    ],
    cut: { leg: 'legging' }
  },
  {
    id: 'ko-w20',
    class: 'won-sign',
    lang: 'ko',
    title: '트렌치 코트 베이지 여성 55',
    text: '어깨 40 / 가슴 52 / 허리 48 / 소매 59 / 총장 102\n₩48,000\n안감 반 있음',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '52', value: 52, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '102', value: 102, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 48000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-x01',
    class: 'numbers',
    lang: 'ko',
    title: '코듀로이 자켓 브라운 L',
    text: '* 실측 *\n총장 : 70\n어깨 : 48\n가슴(단면) : 58\n소매 : 61\n안감 없음, 면 100%\n왼쪽 소매에 작은 얼룩 있어요\n28,000원(배송비 포함)',
    kind: 'jacket',
    measures: [
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '48', value: 48, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '58', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '61', value: 61, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 28000, currency: 'KRW' },
    fibres: [['cotton', 100]],
    lined: 'none'
  },
  {
    id: 'ko-x02',
    class: 'trousers-around',
    lang: 'ko',
    title: '슬랙스 블랙 여성 S',
    text: '허리 둘레 68cm / 힙 둘레 92cm / 밑위 26cm / 안기장 70cm / 밑단 17cm\n폴리 64 레이온 33 스판 3',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '68cm', value: 68, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '92cm', value: 92, unit: 'cm', basis: 'around' },
      { point: 'frontRise', text: '26cm', value: 26, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '70cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '17cm', value: 17, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['polyester', 64],
      ['viscose', 33],
      ['elastane', 3]
    ]
  },
  {
    id: 'ko-x03',
    class: 'coat',
    lang: 'ko',
    title: '핸드메이드 롱코트 베이지 66',
    text: '어깨 41cm\n가슴 51cm\n소매 59cm\n총장 112cm\n울 90 캐시미어 10\n안감 없는 핸드메이드예요\n정가 39만8천원 / 판매가 8만원',
    kind: 'coat',
    measures: [
      { point: 'shoulderWidth', text: '41cm', value: 41, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '51cm', value: 51, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59cm', value: 59, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '112cm', value: 112, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 80000, currency: 'KRW' },
    fibres: [
      ['wool', 90],
      ['cashmere', 10]
    ],
    lined: 'none'
  },
  {
    id: 'ko-x04',
    class: 'model',
    lang: 'ko',
    title: '골지 니트 원피스 롱',
    text: '피팅모델 키 165 44사이즈\n총길이 118 어깨 34 가슴 38 소매 58 암홀 18\n아크릴 70 폴리에스터 30\n가격은 1만 8천원이에요',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '118', value: 118, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '34', value: 34, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '38', value: 38, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'armhole', text: '18', value: 18, unit: 'cm', basis: 'flat' }
    ],
    aside: ['165', '44'],
    price: { amount: 18000, currency: 'KRW' },
    fibres: [
      ['acrylic', 70],
      ['polyester', 30]
    ]
  },
  {
    id: 'ko-x05',
    class: 'skirt',
    lang: 'ko',
    title: '미니 스커트 체크',
    text: '허리 34 힙 45 기장 40\n옆지퍼 안감 있어요\n7천원',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '34', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '45', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '40', value: 40, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 7000, currency: 'KRW' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ko-x06',
    class: 'commas',
    lang: 'ko',
    title: '오버핏 후드집업 멜란지그레이',
    text: '가슴 65, 총장 70, 어깨 62, 소매 55\n면60% 폴리40%\n소매 시보리 약간 늘어남\n2.2만원 택배비 별도',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '65', value: 65, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70', value: 70, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '62', value: 62, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '55', value: 55, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 22000, currency: 'KRW' },
    fibres: [
      ['cotton', 60],
      ['polyester', 40]
    ],
    cut: { closeness: 'oversized' }
  },
  {
    id: 'ko-x07',
    class: 'polo',
    lang: 'ko',
    title: '피케 셔츠 반팔 네이비 100',
    text: '사이즈 100\n어깨너비 45cm, 가슴너비 53cm, 총길이 70cm, 소매길이 22cm\n3회 착용',
    kind: 'knit-top',
    measures: [
      { point: 'shoulderWidth', text: '45cm', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '53cm', value: 53, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '70cm', value: 70, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '22cm', value: 22, unit: 'cm', basis: 'length' }
    ],
    aside: ['100', '3'],
    price: null,
    fibres: []
  },
  {
    id: 'ko-x08',
    class: 'jeans-pair',
    lang: 'ko',
    title: '부츠컷 청바지 27',
    text: '허리단면36.5 밑위24 허벅지단면27 밑단단면23 총장104\n면 92 폴리 6 스판 2\n₩19,000',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '36.5', value: 36.5, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '24', value: 24, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '27', value: 27, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '23', value: 23, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '104', value: 104, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 19000, currency: 'KRW' },
    fibres: [
      ['cotton', 92],
      ['polyester', 6],
      ['elastane', 2]
    ],
    cut: { leg: 'bootcut' }
  },
  {
    id: 'ko-x09',
    class: 'camisole',
    lang: 'ko',
    title: '새틴 나시 화이트',
    text: '가슴단면 39 총기장 46(끈 제외)\n폴리에스터100\n5000원',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '39', value: 39, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '46', value: 46, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 5000, currency: 'KRW' },
    fibres: [['polyester', 100]]
  },
  {
    id: 'ko-x10',
    class: 'down',
    lang: 'ko',
    title: '숏패딩 블랙 M',
    text: '가슴 62 총장 63 화장 87\n겉감:나일론100% 충전재:거위털80% 깃털20%\n소매에 5mm 정도 구멍 수선했습니다\n9만9천원',
    kind: 'coat',
    measures: [
      { point: 'chest', text: '62', value: 62, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '63', value: 63, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '87', value: 87, unit: 'cm', basis: 'length' }
    ],
    aside: ['5mm'],
    price: { amount: 99000, currency: 'KRW' },
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ko-y01',
    class: 'dots',
    lang: 'ko',
    title: '빈티지 옥스포드 셔츠 블루',
    text: '어깨42.가슴50.소매58.총장64\n상태 최상 / 면100\n가격 12000',
    kind: 'shirt',
    measures: [
      { point: 'shoulderWidth', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '50', value: 50, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '64', value: 64, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 12000, currency: 'KRW' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ko-y02',
    class: 'dashes',
    lang: 'ko',
    title: '무스탕 자켓 브라운',
    text: '어깨-45 가슴-56 소매-60 총장-68\n속감 울 100, 겉 양가죽\n15만원 네고 가능',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '45', value: 45, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 150000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-y03',
    class: 'joint',
    lang: 'ko',
    title: '스트라이프 긴팔티',
    text: '실측(cm) 총장/어깨/가슴/소매 = 66/42/49/59\n면95 스판5\n만원에 가져가세요',
    kind: 'knit-top',
    measures: [
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '49', value: 49, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '59', value: 59, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 10000, currency: 'KRW' },
    fibres: [
      ['cotton', 95],
      ['elastane', 5]
    ]
  },
  {
    id: 'ko-y04',
    class: 'rises',
    lang: 'ko',
    title: '카고 팬츠 카키 L',
    text: '허리 단면 42(밴딩, 늘려서 50)\n밑위 32, 뒷밑위 42\n허벅지 36\n인심 74\n밑단 25\n나일론 100%\n구매가 9.8만 판매가 4.5만',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '42', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '32', value: 32, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '42', value: 42, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'inseam', text: '74', value: 74, unit: 'cm', basis: 'length' },
      { point: 'legOpening', text: '25', value: 25, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 45000, currency: 'KRW' },
    fibres: [['polyamide', 100]]
  },
  {
    id: 'ko-y05',
    class: 'skirt-long',
    lang: 'ko',
    title: '트위드 스커트',
    text: '허리36 힙48 총장58\n안감O 뒷지퍼\n모 60 폴리 40\n18000원',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 18000, currency: 'KRW' },
    fibres: [
      ['wool', 60],
      ['polyester', 40]
    ]
  },
  {
    id: 'ko-y06',
    class: 'children',
    lang: 'ko',
    title: '아동 원피스 110 여아',
    text: '총장 58cm 가슴단면 30cm 어깨 24cm\n면 100%\n7,000원 택배비 3,000원',
    kind: 'dress',
    measures: [
      { point: 'bodyLength', text: '58cm', value: 58, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '30cm', value: 30, unit: 'cm', basis: 'flat' },
      { point: 'shoulderWidth', text: '24cm', value: 24, unit: 'cm', basis: 'length' }
    ],
    aside: ['3,000'],
    price: { amount: 7000, currency: 'KRW' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ko-y07',
    class: 'sentences',
    lang: 'ko',
    title: '롱 트렌치 베이지',
    text: '총장은 115이고 어깨는 43, 가슴단면은 56 정도 나와요. 소매는 래글런이라 화장으로 79입니다. 안감 있고 벨트 포함이에요. 5만5천원에 정리합니다.',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '115', value: 115, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '43', value: 43, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '56', value: 56, unit: 'cm', basis: 'flat' },
      { point: 'sleeveFromCentreBack', text: '79', value: 79, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 55000, currency: 'KRW' },
    fibres: [],
    lined: 'full'
  },
  {
    id: 'ko-y08',
    class: 'words-price',
    lang: 'ko',
    title: '램스울 니트 조끼',
    text: '가슴 48 총장 58 어깨 37\n램스울 80 나일론 20\n가격은 이만오천원입니다',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '37', value: 37, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 25000, currency: 'KRW' },
    fibres: [
      ['wool', 80],
      ['polyamide', 20]
    ]
  },
  {
    id: 'ko-y09',
    class: 'no-garment',
    lang: 'ko',
    title: '가죽 크로스백 브라운',
    text: '가로 22 세로 15 폭 7\n끈 최대 120cm\n3만5천원',
    kind: null,
    noGarment: true,
    measures: [],
    price: { amount: 35000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-z01',
    class: 'tight',
    lang: 'ko',
    title: '롱 가디건 블랙',
    text: '어깨38/총장92/가슴45/소매60 단면cm 아크릴100 1회착용 2만 택포',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' },
      { point: 'bodyLength', text: '92', value: 92, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 20000, currency: 'KRW' },
    fibres: [['acrylic', 100]]
  },
  {
    id: 'ko-z02',
    class: 'pants',
    lang: 'ko',
    title: '퍼티그 팬츠 올리브',
    text: '허리단면 : 42cm\n앞밑위 : 31cm\n뒷밑위 : 42cm\n안기장 : 69cm\n허벅지단면 : 34cm\n밑단 : 21cm\n코튼 100%\n가격: 48,000',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '42cm', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '31cm', value: 31, unit: 'cm', basis: 'length' },
      { point: 'backRise', text: '42cm', value: 42, unit: 'cm', basis: 'length' },
      { point: 'inseam', text: '69cm', value: 69, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '34cm', value: 34, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '21cm', value: 21, unit: 'cm', basis: 'flat' }
    ],
    price: { amount: 48000, currency: 'KRW' },
    fibres: [['cotton', 100]]
  },
  {
    id: 'ko-z03',
    class: 'set',
    lang: 'ko',
    title: '투피스 자켓 스커트 블랙',
    text: '자켓: 어깨37 가슴46 총장55 소매57\n스커트: 허리33 힙46 총장62\n폴리100',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '37', of: 'jacket', value: 37, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '46', of: 'jacket', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55', of: 'jacket', value: 55, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '57', of: 'jacket', value: 57, unit: 'cm', basis: 'length' },
      { point: 'waist', text: '33', of: 'skirt', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'hip', text: '46', of: 'skirt', value: 46, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '62', of: 'skirt', value: 62, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['polyester', 100]]
  },
  {
    id: 'ko-z04',
    class: 'polite',
    lang: 'ko',
    title: '체크 플리츠 스커트',
    text: '안녕하세요 허리는 단면으로 33cm이고 길이는 72cm 정도 됩니다.\n소재는 울 70% 폴리에스터 30%이며 안감도 있습니다.\n가격은 택배비 포함 32,000원입니다.',
    kind: 'skirt',
    measures: [
      { point: 'waist', text: '33cm', value: 33, unit: 'cm', basis: 'flat' },
      { point: 'skirtLength', text: '72cm', value: 72, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 32000, currency: 'KRW' },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    lined: 'full'
  },
  {
    id: 'ko-z05',
    class: 'puff',
    lang: 'ko',
    title: '퍼프 블라우스 도트',
    text: '총장55 어깨34 가슴45 소매24 소매부리단면14\n면100\n7,800',
    kind: 'shirt',
    measures: [
      { point: 'bodyLength', text: '55', value: 55, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '34', value: 34, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '45', value: 45, unit: 'cm', basis: 'flat' },
      { point: 'sleeveLength', text: '24', value: 24, unit: 'cm', basis: 'length' },
      { point: 'cuff', text: '14', value: 14, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [['cotton', 100]]
  },
  {
    id: 'ko-z06',
    class: 'knit-vest',
    lang: 'ko',
    title: '아가일 니트 조끼 M',
    text: '가슴단면 48 총장 62 어깨 38\n울 100% 벌레먹은 곳 없음\n1만9천8백원',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '62', value: 62, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '38', value: 38, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 19800, currency: 'KRW' },
    fibres: [['wool', 100]]
  },
  {
    id: 'ko-z07',
    class: 'denim',
    lang: 'ko',
    title: '501 데님 33',
    text: '표기 33/36\n실측 허리42 밑위30 허벅지31 밑단21 총장104\n수선된 제품입니다\n39,000원',
    kind: 'jeans',
    measures: [
      { point: 'waist', text: '42', value: 42, unit: 'cm', basis: 'flat' },
      { point: 'frontRise', text: '30', value: 30, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '31', value: 31, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '21', value: 21, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '104', value: 104, unit: 'cm', basis: 'length' }
    ],
    aside: ['33', '36'],
    price: { amount: 39000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-z08',
    class: 'coat',
    lang: 'ko',
    title: '떡볶이 코트 네이비 여성',
    text: '총기장 92 / 어깨 40 / 가슴둘레 104 / 소매기장 60\n모70 폴리30 누빔 안감\n단추 하나 분실\n6만',
    kind: 'coat',
    measures: [
      { point: 'bodyLength', text: '92', value: 92, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '104', value: 104, unit: 'cm', basis: 'around' },
      { point: 'sleeveLength', text: '60', value: 60, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 60000, currency: 'KRW' },
    fibres: [
      ['wool', 70],
      ['polyester', 30]
    ],
    lined: 'full'
  },
  {
    id: 'ko-q01',
    class: 'two-values',
    lang: 'ko',
    title: '조거 팬츠 그레이',
    text: '허리35(최대52) 총장98 밑위30 허벅지32 밑단11(시보리)\n면80 폴리20',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '35', value: 35, unit: 'cm', basis: 'flat' },
      { point: 'outseam', text: '98', value: 98, unit: 'cm', basis: 'length' },
      { point: 'frontRise', text: '30', value: 30, unit: 'cm', basis: 'length' },
      { point: 'thigh', text: '32', value: 32, unit: 'cm', basis: 'flat' },
      { point: 'legOpening', text: '11', value: 11, unit: 'cm', basis: 'flat' }
    ],
    price: null,
    fibres: [
      ['cotton', 80],
      ['polyester', 20]
    ]
  },
  {
    id: 'ko-q02',
    class: 'talk',
    lang: 'ko',
    title: '엄마 원피스 80년대',
    text: '엄마가 젊었을때 입던거예요 사이즈 표기 없고 제가 158인데 무릎 밑까지 와요\n어깨 40 가슴 48 허리 36 총장 110\n뽕 들어있고 뒷지퍼예요\n2.5만원',
    kind: 'dress',
    measures: [
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'waist', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '110', value: 110, unit: 'cm', basis: 'length' }
    ],
    aside: ['158'],
    price: { amount: 25000, currency: 'KRW' },
    fibres: []
  },
  {
    id: 'ko-q03',
    class: 'scarf',
    lang: 'ko',
    title: '울 머플러 체크',
    text: '180cm x 30cm\n캐시미어 10% 울 90%\n9,800원',
    kind: null,
    noGarment: true,
    measures: [],
    aside: ['180cm'],
    price: { amount: 9800, currency: 'KRW' },
    fibres: [
      ['cashmere', 10],
      ['wool', 90]
    ]
  },
  {
    id: 'ko-q04',
    class: 'shipping',
    lang: 'ko',
    title: '하와이안 셔츠 반팔',
    text: '무료배송 19,900원\n가슴57 총장72 어깨48 소매25 레이온 100%',
    kind: 'shirt',
    measures: [
      { point: 'chest', text: '57', value: 57, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '72', value: 72, unit: 'cm', basis: 'length' },
      { point: 'shoulderWidth', text: '48', value: 48, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '25', value: 25, unit: 'cm', basis: 'length' }
    ],
    price: { amount: 19900, currency: 'KRW' },
    fibres: [['viscose', 100]]
  },
  {
    id: 'ko-q05',
    class: 'around',
    lang: 'ko',
    title: '정장 바지 34',
    text: '허리 둘레 86cm\n엉덩이 둘레 104cm\n허벅지 둘레 64cm\n밑단 둘레 42cm\n총 길이 103cm\n모 100%',
    kind: 'trousers',
    measures: [
      { point: 'waist', text: '86cm', value: 86, unit: 'cm', basis: 'around' },
      { point: 'hip', text: '104cm', value: 104, unit: 'cm', basis: 'around' },
      { point: 'thigh', text: '64cm', value: 64, unit: 'cm', basis: 'around' },
      { point: 'legOpening', text: '42cm', value: 42, unit: 'cm', basis: 'around' },
      { point: 'outseam', text: '103cm', value: 103, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['wool', 100]]
  },
  {
    id: 'ko-q06',
    class: 'jacket-size',
    lang: 'ko',
    title: '린넨 자켓 베이지 여성 66',
    text: '66(M) 사이즈\n어깨 39.5 가슴 48 총장 68 소매 58.5\n린넨 100% 안감 폴리 100%\n38000',
    kind: 'jacket',
    measures: [
      { point: 'shoulderWidth', text: '39.5', value: 39.5, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '48', value: 48, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '68', value: 68, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '58.5', value: 58.5, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [['linen', 100]],
    lined: 'full'
  },
  {
    id: 'ko-k01',
    class: 'kind-beside',
    lang: 'ko',
    title: '골지 나시 청바지나 치마에 다 잘 어울려요',
    text: '가슴36 총장58\n면95 스판5',
    kind: 'knit-top',
    measures: [
      { point: 'chest', text: '36', value: 36, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '58', value: 58, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: [
      ['cotton', 95],
      ['elastane', 5]
    ]
  },
  {
    id: 'ko-k02',
    class: 'kind-in-text',
    lang: 'ko',
    title: '빈티지 90s 블랙 M',
    text: '집업 후리스예요. 슬랙스에도 데님에도 잘 어울립니다\n가슴58 총장66 화장82',
    kind: 'jumper',
    measures: [
      { point: 'chest', text: '58', value: 58, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '66', value: 66, unit: 'cm', basis: 'length' },
      { point: 'sleeveFromCentreBack', text: '82', value: 82, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ko-k03',
    class: 'kind-like',
    lang: 'ko',
    title: '자켓 느낌 트위드 가디건',
    text: '어깨40 가슴47 총장55 소매57',
    kind: 'jumper',
    measures: [
      { point: 'shoulderWidth', text: '40', value: 40, unit: 'cm', basis: 'length' },
      { point: 'chest', text: '47', value: 47, unit: 'cm', basis: 'flat' },
      { point: 'bodyLength', text: '55', value: 55, unit: 'cm', basis: 'length' },
      { point: 'sleeveLength', text: '57', value: 57, unit: 'cm', basis: 'length' }
    ],
    price: null,
    fibres: []
  },
  {
    id: 'ko-k04',
    class: 'shoes',
    lang: 'ko',
    title: '가죽 로퍼 240 슬랙스에 딱',
    text: '발볼 9 굽 3\n3만원',
    kind: null,
    noGarment: true,
    measures: [],
    price: { amount: 30000, currency: 'KRW' },
    fibres: []
  }
]

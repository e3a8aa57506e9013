/** Korean. */
import { aside, type Case, type Expected, m } from '../case.ts'

const ko = (name: string, teaches: string, title: string, text: string, expect: Expected, trap?: true): Case => ({
  name: `ko: ${name}`,
  teaches,
  ...(trap ? { trap } : {}),
  listing: { title, text },
  expect: { language: 'ko', ...expect }
})

export const korean: Case[] = [
  ko('glued', 'no space and no unit anywhere', '체크 셔츠', '어깨46가슴단면58소매60총장71.5', {
    kind: 'shirt',
    traits: ['check'],
    measures: [
      m('shoulderWidth', '46', 'cm length list'),
      m('chest', '58', 'cm flat list'),
      m('sleeveLength', '60', 'cm length list'),
      m('bodyLength', '71.5', 'cm length list')
    ]
  }),
  ko('spaced', 'the same names with spaces; around', '원피스', '가슴 둘레 90cm, 허리 단면 36cm, 총 기장 112cm', {
    kind: 'dress',
    measures: [m('chest', '90cm', 'cm around'), m('waist', '36cm', 'cm flat'), m('bodyLength', '112cm', 'cm length')]
  }),
  ko('particles', 'small words glued to the names', '블라우스', '어깨는 40cm이고 총장은 60cm 정도예요.', {
    kind: 'shirt',
    measures: [m('shoulderWidth', '40cm', 'cm length'), m('bodyLength', '60cm', 'cm length')]
  }),
  ko(
    'faults',
    'what is not there is told behind it',
    '남성 울 코트 네이비 L',
    '왼쪽 소매에 구멍 하나 있어요. 보풀이나 오염은 없습니다.',
    {
      kind: 'coat',
      fibres: [['wool', null]],
      colour: 'navy',
      whose: 'men',
      sizeLabels: ['L'],
      faults: ['왼쪽 소매에 구멍 하나 있어요'],
      mending: ['patch']
    },
    true
  ),
  ko(
    'prices',
    'ten thousands; what it cost when new; the postage',
    '니트 가디건',
    '정가 12만원\n판매가 3만5천원 (택배비 4천원)',
    { kind: 'jumper', structure: 'knit', price: { amount: 35000, currency: 'KRW' } },
    true
  ),
  ko('a price in words', 'no digit in it', '스커트', '만오천원에 팔아요', { kind: 'skirt', price: { amount: 15000, currency: 'KRW' } }),
  ko('outer and lining', 'shares without a sign', '코트', '겉감 울 70 나일론 30 / 안감 폴리 100', {
    kind: 'coat',
    fibres: [
      ['wool', 70],
      ['polyamide', 30]
    ],
    made: { lined: true }
  }),
  ko(
    'the model',
    'the figures of somebody’s body',
    '와이드 슬랙스',
    '모델 키 168cm, S 착용\n총장 101cm',
    {
      kind: 'trousers',
      cut: { leg: 'wide' },
      measures: [m('outseam', '101cm', 'cm length')],
      leftAside: [aside('model', '168cm', 'cm')]
    },
    true
  )
]

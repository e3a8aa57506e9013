/** What is usual where a person's language is spoken, as far as it is plain. Pure: the language comes from the caller. */
import { table } from '../../core/ids/table.ts'
import type { Units } from '../../core/length.ts'

const regionOf = (language: string): string => {
  try {
    return new Intl.Locale(language).region ?? ''
  } catch {
    return ''
  }
}

/** Regions that measure bodies in inches. */
const INCHES = new Set(['US', 'LR', 'MM'])
/** Without a region centimetres. */
export const unitsUsual = (language: string): Units => (INCHES.has(regionOf(language)) ? 'in' : 'cm')

/** ISO 4217 by ISO 3166-1 region: those where one currency is plain. */
const CURRENCIES = table<string>({
  GB: 'GBP',
  US: 'USD',
  CA: 'CAD',
  AU: 'AUD',
  NZ: 'NZD',
  ZA: 'ZAR',
  IN: 'INR',
  JP: 'JPY',
  CH: 'CHF',
  SE: 'SEK',
  NO: 'NOK',
  DK: 'DKK',
  PL: 'PLN',
  CZ: 'CZK',
  HU: 'HUF',
  RO: 'RON',
  IS: 'ISK',
  TR: 'TRY',
  UA: 'UAH',
  KR: 'KRW',
  CN: 'CNY',
  HK: 'HKD',
  TW: 'TWD',
  SG: 'SGD',
  TH: 'THB',
  MY: 'MYR',
  PH: 'PHP',
  ID: 'IDR',
  VN: 'VND',
  BR: 'BRL',
  MX: 'MXN',
  AR: 'ARS',
  CL: 'CLP',
  CO: 'COP',
  IL: 'ILS',
  AE: 'AED',
  SA: 'SAR',
  EG: 'EGP',
  MA: 'MAD',
  KE: 'KES',
  NG: 'NGN'
})
const EURO = new Set('AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK'.split(' '))
/** The region that a language is spoken in most, where it names none itself: `sv` is Sweden; not for English, Spanish or Arabic. */
const likelyRegion = (language: string): string => {
  try {
    const locale = new Intl.Locale(language)
    return locale.region ?? (WIDE.has(locale.language) ? '' : (locale.maximize().region ?? ''))
  } catch {
    return ''
  }
}
/** Languages of many countries: which of them is anybody's guess. */
const WIDE = new Set(['en', 'es', 'pt', 'ar', 'zh', 'fr'])
/** '' where the language names no region, or one that is not in the table. */
export function currencyUsual(language: string): string {
  const region = likelyRegion(language)
  return EURO.has(region) ? 'EUR' : (CURRENCIES[region] ?? '')
}

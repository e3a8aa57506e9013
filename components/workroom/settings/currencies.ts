/** The currencies that may be chosen, by their own names in the language of the pages. Codes: ISO 4217. */
const CODES =
  'EUR GBP USD CAD AUD NZD CHF SEK NOK DKK ISK PLN CZK HUF RON TRY UAH ' +
  'ZAR INR JPY KRW CNY HKD TWD SGD THB MYR PHP IDR VND BRL MXN ARS CLP COP ILS AED SAR EGP MAD KES NGN'

/** Each with its code first, so that typing the code finds it; the one that is set stands among them whatever it is. */
export function currencyRows(language: string, set: string): { code: string; name: string }[] {
  const codes = CODES.split(' ')
  const all = set === '' || codes.includes(set) ? codes : [set, ...codes]
  const names = new Intl.DisplayNames(language, { type: 'currency' })
  return all.map((code) => ({ code, name: nameOf(names, code) }))
}

function nameOf(names: Intl.DisplayNames, code: string): string {
  try {
    return names.of(code) ?? code
  } catch {
    // three letters that are none, typed before they were chosen from a list
    return code
  }
}

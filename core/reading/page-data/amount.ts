/** A number as structured data writes it. */

/** Above zero; a string may have a comma, a currency sign or a thousands mark. Null for anything else. */
export function amountOf(value: unknown): number | null {
  if (typeof value === 'number') return Number.isFinite(value) && value > 0 ? value : null
  if (typeof value !== 'string' || value.length > 40) return null
  const digits = value.replace(/[^\d.,]/g, '')
  const last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','))
  const cents = last >= 0 && digits.length - last - 1 <= 2
  const amount = Number(cents ? `${digits.slice(0, last).replace(/[.,]/g, '')}.${digits.slice(last + 1)}` : digits.replace(/[.,]/g, ''))
  return digits !== '' && Number.isFinite(amount) && amount > 0 ? amount : null
}

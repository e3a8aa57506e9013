/** What a person typed into a field, as a figure or as the code of what is wrong with it. Nothing typed is never zero. */
import { type LengthUnit, parseLength } from '../../core/length.ts'

export type Typed<T> = { ok: true; value: T } | { ok: false; problem: string }

/** A length in mm; a bare number takes the unit of the page. */
export function typedLength(typed: string, unit: LengthUnit): Typed<number> {
  const parsed = parseLength(typed, unit)
  return parsed.ok ? { ok: true, value: parsed.mm } : { ok: false, problem: `workroom.length.${parsed.problem}` }
}

/** A difference in mm, below 0 with a minus before it; 0 is a figure, nothing typed is null. */
export function typedDifference(typed: string, unit: LengthUnit, mostMm: number): Typed<number | null> {
  const text = typed.trim()
  if (text === '') return { ok: true, value: null }
  const [, minus = '', size = ''] = /^([-−+]?)\s*(.*)$/s.exec(text) ?? []
  const parsed = parseLength(size, unit)
  if (!parsed.ok) return parsed.problem === 'zero' ? { ok: true, value: 0 } : { ok: false, problem: `workroom.length.${parsed.problem}` }
  if (parsed.mm > mostMm) return { ok: false, problem: 'workroom.length.too-large' }
  return { ok: true, value: minus === '' || minus === '+' ? parsed.mm : -parsed.mm }
}

/** A limit in mm; 0 is one (never), nothing typed is null (the default stands). */
export function typedLimit(typed: string, unit: LengthUnit): Typed<number | null> {
  if (typed.trim() === '') return { ok: true, value: null }
  const parsed = parseLength(typed, unit)
  if (parsed.ok) return { ok: true, value: parsed.mm }
  return parsed.problem === 'zero' ? { ok: true, value: 0 } : { ok: false, problem: `workroom.length.${parsed.problem}` }
}

const MOST_MONEY = 1_000_000

/** An amount of money, or null for nothing typed. */
export function typedMoney(typed: string): Typed<number | null> {
  const text = typed.replace(/\s/g, '')
  if (text === '') return { ok: true, value: null }
  if (/^[-−]/.test(text)) return { ok: false, problem: 'workroom.money.negative' }
  if (!/^\d{1,9}(?:[.,]\d{1,2})?$/.test(text)) return { ok: false, problem: 'workroom.money.not-a-number' }
  const value = Number(text.replace(',', '.'))
  return value > MOST_MONEY ? { ok: false, problem: 'workroom.money.too-large' } : { ok: true, value }
}

/** An amount as it stands in its field. */
export const moneyTyped = (amount: number | null): string =>
  amount === null ? '' : Number.isInteger(amount) ? String(amount) : amount.toFixed(2)

/** An ISO date that exists and is not after today. */
export function typedDate(typed: string, today: string): Typed<string> {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(typed)) return { ok: false, problem: 'workroom.date.not-a-date' }
  const time = Date.parse(`${typed}T00:00:00Z`)
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== typed) return { ok: false, problem: 'workroom.date.not-a-date' }
  return typed > today ? { ok: false, problem: 'workroom.date.to-come' } : { ok: true, value: typed }
}

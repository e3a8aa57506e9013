import { deviceId, type Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'

/** Makes the stamps of this browser: the only place that asks a clock and a source of chance for the records. */
export async function stampsOf(records: Records): Promise<() => Stamp> {
  const newId = () => crypto.randomUUID()
  const device = await deviceId(records, newId)
  return () => ({ now: new Date().toISOString(), newId, device })
}

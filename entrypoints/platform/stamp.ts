import { deviceId, type Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'

const newId = (): string => crypto.randomUUID()
const stampsFor = (device: string) => (): Stamp => ({ now: new Date().toISOString(), newId, device })

/** Makes the stamps of this browser: the only place that asks a clock and a source of chance for the records. */
export const stampsOf = async (records: Records): Promise<() => Stamp> => stampsFor(await deviceId(records, newId))

/** Stamps of this page alone, where the browser's own id can't be kept. */
export const newStamps = (): (() => Stamp) => stampsFor(newId())

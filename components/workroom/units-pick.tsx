/** The units that a person measures in. */
import type { Units } from '../../core/length.ts'
import { Pick } from '../pick.tsx'
import { useWords } from '../words.tsx'

const UNITS: readonly Units[] = ['cm', 'in']
export function useUnitOptions(): { value: Units; label: string }[] {
  const { t } = useWords()
  return UNITS.map((value) => ({ value, label: t(`workroom.unit.${value}`) }))
}

export function UnitsPick({ units, onUnits }: { units: Units; onUnits: (units: Units) => void }) {
  const { t } = useWords()
  return <Pick label={t('body.units')} options={useUnitOptions()} value={units} onPick={onUnits} />
}

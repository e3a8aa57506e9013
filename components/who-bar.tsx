/** The bar at the head: the name of the house, whose body and which fit, and the garment it is set beside. */
import type { Fit } from '../core/wearer/body.ts'
import { FITS } from '../core/wearer/body.ts'
import { HouseMark } from './house-mark.tsx'
import { useWords } from './words.tsx'

export interface Who {
  people: readonly { id: string; name: string }[]
  personId: string | null
  fit: Fit
  /** Garments of this person that are liked and are of the kind in front. */
  favourites: readonly { id: string; name: string }[]
  favouriteId: string | null
}
export interface WhoBarProps {
  who: Who
  onWho: (personId: string, fit: Fit) => void
  onFavourite: (favouriteId: string | null) => void
}

export function WhoBar({ who, onWho, onFavourite }: WhoBarProps) {
  const { t } = useWords()
  return (
    <header class="bar">
      <span class="name">
        <HouseMark />
        {t('house.name')}
      </span>
      {who.people.length > 0 && <WhoSelect who={who} onWho={onWho} />}
      {who.favourites.length > 0 && (
        <select
          class="small beside"
          aria-label={t('who.beside')}
          value={who.favouriteId ?? ''}
          onChange={(event) => onFavourite(event.currentTarget.value === '' ? null : event.currentTarget.value)}
        >
          <option value="">{t('who.body-alone')}</option>
          {who.favourites.map(({ id, name }) => (
            <option key={id} value={id}>
              {t('who.beside-garment', { name })}
            </option>
          ))}
        </select>
      )}
    </header>
  )
}

function WhoSelect({ who, onWho }: Pick<WhoBarProps, 'who' | 'onWho'>) {
  const { t } = useWords()
  const choices = who.people.map(({ id, name }) => ({ id, name, options: FITS.map((fit) => ({ fit, value: JSON.stringify([id, fit]) })) }))
  const chosen = choices.find(({ id }) => id === who.personId)?.options.find(({ fit }) => fit === who.fit)
  return (
    <select
      class="small"
      aria-label={t('who.body-and-fit')}
      value={chosen?.value ?? ''}
      onChange={(event) => {
        for (const { id, options } of choices) {
          const option = options.find(({ value }) => value === event.currentTarget.value)
          if (option !== undefined) onWho(id, option.fit)
        }
      }}
    >
      {choices.map(({ id, name, options }) => (
        <optgroup key={id} label={name}>
          {options.map(({ fit, value }) => (
            <option key={value} value={value}>
              {t('who.name-and-fit', { name, fit })}
            </option>
          ))}
        </optgroup>
      ))}
    </select>
  )
}

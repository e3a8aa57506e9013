/** What a listing looks like: its own picture where the person gave it one, else its garment drawn to scale. */
import { viewsOf } from '../../../core/worksheet/outline/outline-geometry.ts'
import { Outline } from '../../outline/outline.tsx'
import { useWords } from '../../words.tsx'
import type { ListingShown } from '../shown.ts'
import { planOf } from './listing-order.ts'

export function ListingThumb({ listing }: { listing: ListingShown }) {
  const { t } = useWords()
  const { picture = null, now, kind } = listing
  if (picture !== null)
    return <img class="wr-shot" src={picture} alt={t('picture.of', { title: listing.title || t('wishlist.untitled') })} />
  const plan = planOf(listing)
  return (
    <Outline
      kind={kind ?? 'other'}
      points={Object.fromEntries(now?.gaps.map(({ point, garmentMm }) => [point, garmentMm]) ?? [])}
      plan={plan}
      view={viewsOf(plan?.alterations ?? [])[0] ?? 'front'}
      size="small"
    />
  )
}

/** A link to a part of the help, from any page. Popup and panel open the workroom in a tab of its own; inside the workroom the part changes. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { useWords } from './words.tsx'

/** The parts of the help, in their order, by the words in their addresses: `#help/tape`. */
export const HELP_TOPICS = ['steps', 'tape', 'answers', 'levels', 'measure-a-garment', 'measure-yourself', 'words'] as const
export type HelpTopic = (typeof HELP_TOPICS)[number]

/** The address of the page that has the help; '' where it is this one. */
export const HelpPlace = createContext('/workroom.html')

export const helpAddress = (place: string, topic?: HelpTopic): string => `${place}#help${topic === undefined ? '' : `/${topic}`}`

export interface HelpLinkProps {
  /** Left out: the help from its beginning. */
  topic?: HelpTopic
}

export function HelpLink({ topic }: HelpLinkProps) {
  const { t } = useWords()
  const place = useContext(HelpPlace)
  const elsewhere = place === '' ? {} : { target: '_blank', rel: 'noreferrer' }
  return (
    <a class="help-link" href={helpAddress(place, topic)} {...elsewhere}>
      {t(topic === undefined ? 'help.link' : `help.link.${topic}`)}
    </a>
  )
}

/** The popup: reads the page in front when it opens. */
import '../../components/tokens.css'
import '../../components/look.css'
import { readListing } from '../../core/reading/read-listing.ts'
import { frontTab, readTab } from '../capture/capture-tab.ts'
import { type PageProps, startPage } from '../view/page-start.tsx'
import { ReadHere, type SeenHere } from './read-here.tsx'

/** The page is read while the records are opened: neither waits for the other. */
async function readFront(): Promise<SeenHere | null> {
  const tab = await frontTab()
  return tab === null ? null : { windowId: tab.windowId, seen: await readTab(tab) }
}

const front = readFront()
// while the browser asks the page and opens the records: the first text takes longest, since phrases are put together as they are met
setTimeout(() => readListing({ title: 'Wool trousers', text: 'Waist 40 cm laid flat, inside leg 78 cm. In good condition, size 12.' }))
await startPage((props: PageProps) => <ReadHere {...props} front={front} />, 'popup.title')

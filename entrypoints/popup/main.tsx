/** The popup: reads the page in front when it opens. */
import '../../components/tokens.css'
import '../../components/look.css'
import { startPage } from '../view/page-start.tsx'
import { ReadHere } from './read-here.tsx'

await startPage(ReadHere, 'popup.title')

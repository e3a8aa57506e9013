/** The side panel: beside the pages of one window. */
import '../../components/tokens.css'
import '../../components/look.css'
import { startPage } from '../view/page-start.tsx'
import { BesidePages } from './beside-pages.tsx'

await startPage(BesidePages, 'panel.title')

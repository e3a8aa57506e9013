/** The workroom: everything that is kept. The same page inside the extension and as a plain web page. */
import '../../components/tokens.css'
import '../../components/look.css'
import '../../components/workroom/workroom.css'
import { startPage } from '../view/page-start.tsx'
import { Workroom } from './workroom.tsx'

await startPage(Workroom, 'house.name', 'workroom')

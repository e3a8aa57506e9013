/** `npm run test:faults`: the long form of tests/browser/faults.test.ts. FAULTS_ACKNOWLEDGED and FAULTS_RANDOM say how many kills. */
import { spawnSync } from 'node:child_process'
import { inRoot, ROOT } from '../../../entrypoints/companion/places.mjs'

const env = { FAULTS_ACKNOWLEDGED: '200', FAULTS_RANDOM: '50', ...process.env }
const asked = [inRoot('node_modules/vitest/vitest.mjs'), 'run', '--project', 'browser', 'tests/browser/faults.test.ts']
process.exitCode = spawnSync(process.execPath, asked, { cwd: ROOT, env, stdio: 'inherit' }).status ?? 1

/** Runs a bench once per argument in processes of its own, as many at a time as there are cores; each prints what it found as JSON. */
import { spawn } from 'node:child_process'
import { availableParallelism } from 'node:os'

/** The argument this process was started with by `sideBySide`; undefined in the process that asks. */
export const myShare = (): string | undefined => process.env.BENCH_SHARE

export async function sideBySide<T>(file: string, shares: readonly string[]): Promise<T[]> {
  const found: T[] = []
  const waiting = [...shares.entries()]
  const hand = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) found[next[0]] = await once<T>(file, next[1])
  }
  await Promise.all(Array.from({ length: availableParallelism() }, hand))
  return found
}

function once<T>(file: string, share: string): Promise<T> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...process.execArgv, file], {
      env: { ...process.env, BENCH_SHARE: share },
      stdio: ['ignore', 'pipe', 'inherit']
    })
    let printed = ''
    child.stdout.on('data', (chunk) => {
      printed += chunk
    })
    child.on('error', reject)
    child.on('close', (code) => (code === 0 ? resolve(JSON.parse(printed) as T) : reject(new Error(`${file} ${share} ended with ${code}`))))
  })
}

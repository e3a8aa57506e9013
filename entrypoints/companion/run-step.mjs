import { spawn } from 'node:child_process'

/**
 * Runs a program to its end. Its output is shown only when it fails, or where `show` says so.
 * @param {string} program
 * @param {string[]} args
 * @param {{ cwd?: string, env?: NodeJS.ProcessEnv, show?: boolean }} [options]
 * @returns {Promise<{ code: number, output: string }>}
 */
export function runStep(program, args, options = {}) {
  return new Promise((done) => {
    /** @type {string[]} */
    const output = []
    const child = spawn(program, args, {
      cwd: options.cwd,
      env: options.env ?? process.env,
      stdio: ['ignore', options.show ? 'inherit' : 'pipe', options.show ? 'inherit' : 'pipe']
    })
    child.stdout?.on('data', (chunk) => output.push(String(chunk)))
    child.stderr?.on('data', (chunk) => output.push(String(chunk)))
    child.on('error', (error) => done({ code: 127, output: error.message }))
    child.on('close', (code) => done({ code: code ?? 1, output: output.join('') }))
  })
}

/**
 * Ends the program with a sentence that says what to do next.
 * @param {string} sentence
 * @returns {never}
 */
export function stopWith(sentence) {
  console.error(sentence)
  process.exit(1)
}

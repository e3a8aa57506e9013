/** Where things stand in the project folder, and the ports they are served on. */
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../..', import.meta.url))
/** @param {string} path */
export const inRoot = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url))

/** Records belong to the address, so it is always the same: 28¾, a waist. Below every system's range for passing connections. */
export const WORKROOM_PORT = 28750

/** @typedef {'chrome' | 'firefox' | 'workroom'} Part */
/** @type {Record<Part, string>} */
export const BUILT = { chrome: inRoot('.output/chrome-mv3'), firefox: inRoot('.output/firefox-mv3'), workroom: inRoot('dist/workroom') }

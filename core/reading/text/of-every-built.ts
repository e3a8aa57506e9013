/** What all languages have together. A build puts its worked-out value in place of this module (entrypoints/companion/languages-apart.ts). */
export { OF_EVERY } from './lexicons.ts'

/**
 * English, which is always there. This is how the core runs by itself; in what is built for a browser english-apart.ts takes its place, where
 * what only the workroom says is a file of its own.
 */
import { en } from './en/index.ts'

/** Whose words are spoken from the beginning. */
export const AT_FIRST: 'answers' | 'workroom' = 'workroom'
export const ENGLISH: Readonly<Record<string, string>> = en
/** What is not among them yet. */
export const englishOfWorkroom = async (): Promise<Record<string, Record<string, string>>> => ({})

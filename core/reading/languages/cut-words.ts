/** How a language names the cut: phrases by facet and value. */
import type { FACETS, Facet } from '../../ids/cut.ts'
import type { Phrases } from './phrases.ts'

export type CutWords = { [F in Facet]?: { [V in (typeof FACETS)[F][number]]?: Phrases } }

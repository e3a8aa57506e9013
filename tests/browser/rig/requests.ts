/** The browser's own record of its network requests: written below anything a page can see or hide. */
import { readFileSync } from 'node:fs'

export interface RequestSeen {
  url: string
  /** The origin that asked, "not an origin" for the person or the browser itself. */
  initiator: string
}

interface NetLog {
  events: { params?: { url?: string; initiator?: string } }[]
}

export function requestsIn(file: string): RequestSeen[] {
  const log: NetLog = JSON.parse(readFileSync(file, 'utf8'))
  return log.events.flatMap(({ params }) =>
    params?.url !== undefined && params.initiator !== undefined ? [{ url: params.url, initiator: params.initiator }] : []
  )
}

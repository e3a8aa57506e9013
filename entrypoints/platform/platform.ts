/** What a page may ask of the place it runs in. Kept small: the workroom runs with or without an extension around it. */
export interface Platform {
  /** Records belong to an origin: each page says at its head which one it stands in. */
  where: 'extension' | 'companion'
  /** Brings the workroom forward, at a part of it (`body`, `kept`…) where one is named. */
  openWorkroom(part?: string): Promise<void>
}

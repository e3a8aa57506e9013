/** The builder makes this type from the list of pages; the house checks types without a build, so it stands here. */
declare module 'wxt/browser' {
  interface WxtRuntime {
    getURL(path: string): string
  }
}

export {}

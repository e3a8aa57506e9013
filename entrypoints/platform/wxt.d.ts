/** The builder makes these types from the list of pages and the manifest's strings; the house checks types without a build, so they stand here. */
declare module 'wxt/browser' {
  interface WxtRuntime {
    getURL(path: string): string
  }
  interface WxtI18n {
    getMessage(name: 'readTheseMeasurements'): string
  }
}

export {}

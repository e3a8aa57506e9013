/** Put in by the build: see entrypoints/companion/engine.mjs. */
declare const __ENGINE__: string | undefined

/** Which engine answers are worked out by here. */
export const ENGINE = typeof __ENGINE__ === 'string' ? __ENGINE__ : 'unbuilt'

import { fileURLToPath } from 'node:url'
import preact from '@preact/preset-vite'
import type { Plugin } from 'vite'
import { defineConfig } from 'wxt'
import { engineMark } from './entrypoints/companion/engine.mjs'
import { languagesApart } from './entrypoints/companion/languages-apart.ts'
import { licences } from './entrypoints/companion/licences.mjs'

/** Fixes the extension's id in Chromium, so that records stay when the folder moves. The private half was never kept. */
const PUBLIC_KEY =
  'MIIBIjANBgkqhkiG9w0BAQEFAAOCAQ8AMIIBCgKCAQEAtTFNpULqVpoeH5HOcIwkF8xxIB/Nv8C0FJMEQ3W3WVMT4j/eMuBzbTmjhayET82srP1Y84rk2b6TWc1g8j+KG4Pc7v+J47ryB4PQxF2pyMoZk1F8ojWLnpbzgbi/ShS5puj/ZNzNDPNo//rTmADw4MlrQthuUShtOd6JuU0lgTFFOIwBUzQ5gjWlMMS21JsrhfkTDTRInUpYBhsY+NaRC+JIVI3caT8XcKoPB/mgN14p54tldZOiZGlC4biLr9ItAs/RlMWE6jcI9ZMs5jw1R3Z3jskVOVq34UDXpLhm3Vg74FKz7QZxml+Trgyfc2/1Z7c1Hyadg04CTQNrpolhtQIDAQAB'

/** Fixes the extension's id in Firefox; shaped like an address, and no address. */
const GECKO_ID = 'seam-reckoner@work-table.invalid'

/** Nothing is fetched, sent, framed or run that is not in the package. */
const CONTENT_SECURITY_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'none'; form-action 'none'; base-uri 'none'"

/** Chromium gives promises and says what is wrong by itself: there the polyfill would only be loaded, in every page that is read too. */
const withoutPolyfill: Plugin = {
  name: 'without-polyfill',
  enforce: 'pre',
  resolveId: (source) => (source === '@wxt-dev/webextension-polyfill/browser' ? BROWSER_ITSELF : null)
}
const BROWSER_ITSELF = fileURLToPath(new URL('./node_modules/wxt/dist/browser.mjs', import.meta.url))

export default defineConfig({
  srcDir: '.',
  entrypointsDir: 'entrypoints',
  publicDir: 'public',
  imports: false,
  manifestVersion: 3,
  // one behaviour of messages and promises in Firefox too
  modules: ['@wxt-dev/webextension-polyfill'],
  webExt: { disabled: true },
  // without the polyfill, which would fetch
  vite: ({ browser }) => ({
    define: { __ENGINE__: JSON.stringify(engineMark()) },
    plugins: [languagesApart(), ...(browser === 'firefox' ? [] : [withoutPolyfill]), preact(), licences()],
    worker: { format: 'es', plugins: () => [languagesApart()] },
    build: { modulePreload: { polyfill: false } }
  }),
  manifest: ({ browser }) => ({
    name: '__MSG_extensionName__',
    description: '__MSG_extensionDescription__',
    default_locale: 'en',
    // what is looked at in a private window is not to be kept, so nothing is read there
    incognito: 'not_allowed',
    // no host permissions: a page is read when the person asks, and only then
    permissions: ['activeTab', 'contextMenus', 'scripting', ...(browser === 'firefox' ? [] : ['sidePanel'])],
    // opens the popup on the page in front, as a click on the button does
    commands: {
      _execute_action: { suggested_key: { default: 'Alt+Shift+M' }, description: '__MSG_readThisPage__' },
      // reads the page and opens the panel; entrypoints/background knows it by this name
      'read-this-page': { suggested_key: { default: 'Alt+Shift+K' }, description: '__MSG_readBesideThePage__' }
    },
    content_security_policy: { extension_pages: CONTENT_SECURITY_POLICY },
    ...(browser === 'firefox'
      ? {
          browser_specific_settings: {
            gecko: { id: GECKO_ID, strict_min_version: '140.0', data_collection_permissions: { required: ['none'] } },
            gecko_android: { strict_min_version: '142.0' }
          }
        }
      : {
          key: PUBLIC_KEY,
          minimum_chrome_version: '120'
        })
  })
})

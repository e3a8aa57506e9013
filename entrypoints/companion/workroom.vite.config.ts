/** The workroom as a plain folder of files with relative paths: served by `npm start`, or put on a host of one's own. */
import { fileURLToPath } from 'node:url'
import preact from '@preact/preset-vite'
import { defineConfig, type Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { engineMark } from './engine.mjs'
import { languagesApart } from './languages-apart.ts'
import { licences } from './licences.mjs'
import { PAGE_POLICY } from './policy.mjs'

/** What the service worker that works offline is made of; it is bundled apart. */
const SERVICE_WORKERS = ['workbox-core', 'workbox-precaching', 'workbox-routing', 'workbox-strategies']

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** The policy travels with the folder, whoever serves it; the mark is the page's sign in a tab. */
const headOfPage: Plugin = {
  name: 'head-of-page',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY }, injectTo: 'head-prepend' },
    { tag: 'link', attrs: { rel: 'icon', href: './icons/mark.svg' }, injectTo: 'head' }
  ]
}

export default defineConfig({
  root: at('../workroom'),
  base: './',
  define: { __ENGINE__: JSON.stringify(engineMark()) },
  publicDir: at('../../public'),
  resolve: {
    alias: [{ find: /^(\.\.?\/)+platform\/extension\.ts$/, replacement: at('../platform/page.ts') }]
  },
  build: { outDir: at('../../dist/workroom'), emptyOutDir: true, modulePreload: { polyfill: false }, assetsInlineLimit: 0 },
  worker: { format: 'es', plugins: () => [languagesApart()] },
  plugins: [
    languagesApart(),
    preact(),
    licences(SERVICE_WORKERS),
    headOfPage,
    VitePWA({
      registerType: 'autoUpdate',
      injectRegister: 'script',
      manifest: {
        name: 'Seam Reckoner: workroom',
        short_name: 'Seam Reckoner',
        description: 'Bodies, garments and kept listings, on this machine only.',
        lang: 'en-GB',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#F6F8F4',
        theme_color: '#E7EAE6',
        icons: [
          { src: 'icons/mark.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icons/128.png', sizes: '128x128', type: 'image/png' },
          { src: 'icons/512.png', sizes: '512x512', type: 'image/png' }
        ]
      },
      workbox: { globPatterns: ['**/*.{html,js,css,svg,png,webmanifest}'], inlineWorkboxRuntime: true, sourcemap: false }
    })
  ]
})

/** What the workroom page may do where it is a plain web page. A copy stands in the page itself; these are the headers. */

const COMMON = "default-src 'none'; img-src 'self' data: blob:; font-src 'self'; form-action 'none'; base-uri 'none'"

/** Nothing is requested but the page's own files. */
export const PAGE_POLICY = `${COMMON}; script-src 'self'; style-src 'self'; connect-src 'none'; manifest-src 'self'; worker-src 'self'`

/** The worker that keeps the page for use without a server has to fetch those same files once. */
export const WORKER_POLICY = `${COMMON}; script-src 'self'; connect-src 'self'`

/** @type {Record<string, string>} */
export const SAFE_HEADERS = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
  'Cache-Control': 'no-cache'
}

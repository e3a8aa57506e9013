/**
 * A short mark of a text: equal texts have equal marks, and unlike ones, as far as 64 bits tell, unlike marks. It keeps no secret.
 * Two runs of multiply and shift, as in MurmurHash3's finish (public domain), each with its own constants.
 */
export function markOf(text: string): string {
  let [a, b] = [0xdeadbeef, 0x41c6ce57]
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    a = Math.imul(a ^ code, 2654435761)
    b = Math.imul(b ^ code, 1597334677)
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909)
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909)
  return `${(a >>> 0).toString(36)}.${(b >>> 0).toString(36)}`
}

/** The scripts whose words may stand without spaces between them, by the codes of their letters. */

export type Script = 'han' | 'kana' | 'hangul'

/** The script of a UTF-16 unit; null: its words are parted by spaces, or it is no letter. 々 and ー go with what they stand behind. */
export function scriptOf(code: number): Script | null {
  if (code < 0x1100) return null
  if (code >= 0x4e00 && code <= 0x9fff) return 'han'
  if (code >= 0xac00 && code <= 0xd7a3) return 'hangul'
  if ((code >= 0x3041 && code <= 0x3096) || (code >= 0x30a1 && code <= 0x30fa) || (code >= 0x30fc && code <= 0x30fe)) return 'kana'
  if (code === 0x3005 || (code >= 0x3400 && code <= 0x4dbf) || (code >= 0xf900 && code <= 0xfaff)) return 'han'
  return code <= 0x11ff || (code >= 0x3131 && code <= 0x318e) ? 'hangul' : null
}

export const isUnspaced = (code: number): boolean => scriptOf(code) !== null

/** Is it of the rounded one of the two forms of kana, in which small words and endings are written? */
export const isHiragana = (code: number): boolean => code >= 0x3041 && code <= 0x3096

/** ㎝, ㎜, ㎏, ㌢: a unit in one character. */
export const isSquaredUnit = (code: number): boolean => code >= 0x3300 && code <= 0x33df

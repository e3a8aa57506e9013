/**
 * How wide words come out on paper, before any browser has set them: advance widths of the common sans serif (Arial, Helvetica, Liberation Sans alike),
 * in thousandths of its size, with a tenth to spare for a wider face.
 */
const WIDTHS: [RegExp, number][] = [
  [/[ijl'’|]/, 222],
  [/[ ft.,:;!()/I-]/, 333],
  [/[mM@%]/, 889],
  [/[wA-Z“”]/, 722],
  [/[⅛¼⅜½⅝¾⅞]/, 834]
]
const PLAIN = 556
const SPARE = 1.1

/** The width of words at a size, mm. */
export function textWidth(text: string, size: number): number {
  let thousandths = 0
  for (const letter of text) thousandths += WIDTHS.find(([letters]) => letters.test(letter))?.[1] ?? PLAIN
  return (SPARE * thousandths * size) / 1000
}

/** Words broken into lines no wider than `room`; a single word that is wider stands alone. */
export function wrapped(text: string, size: number, room: number): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, size) > room) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return line === '' ? lines : [...lines, line]
}

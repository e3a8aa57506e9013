/** A file is read in pieces, and its text is what it is read whole. */
import { expect, test, vi } from 'vitest'
import { textOfFile } from '../../../entrypoints/workroom/backup-file.ts'

test('characters that lie across two pieces are whole; a mark of the byte order and a broken end are as the browser has them', async () => {
  // two bytes, three and four to a character, so that the bounds of pieces fall within some
  const long = 'é“👗'.repeat(1_000_000)
  for (const parts of [[long], ['a', long], ['ab', long], ['\ufeff{}'], [''], ['x', new Uint8Array([0xf0, 0x9f])]]) {
    const file = new File(parts, 'backup.json')
    expect((await textOfFile(file)) === (await file.text())).toBe(true)
  }
})

test('a file that the browser can’t read is told as empty', async () => {
  const error = vi.spyOn(console, 'error').mockImplementation(() => undefined)
  const file = new File(['{}'], 'backup.json')
  vi.spyOn(file, 'slice').mockImplementation(() => {
    throw new DOMException('gone', 'NotReadableError')
  })
  expect(await textOfFile(file)).toBe('')
  expect(error).toHaveBeenCalledOnce()
  vi.restoreAllMocks()
})

/** A picture from a file, made small enough to be kept with its listing. It never leaves this machine. */
import { PICTURE_MOST_CHARACTERS } from '../../core/records/schemas.ts'

/** The longest edge, px. */
const LONGEST = 640
/** What a picture may weigh, bytes; as text it grows by a third. */
const MOST_BYTES = 80_000
/** Tried one after another until it is light enough: how fine it is painted, and how large. */
const STEPS = [
  { quality: 0.82, share: 1 },
  { quality: 0.65, share: 1 },
  { quality: 0.6, share: 0.75 },
  { quality: 0.5, share: 0.5 }
] as const

export type PictureRead = { ok: true; picture: string } | { ok: false; problem: 'picture.no-picture' | 'picture.too-heavy' }

/** The size that a picture is painted at: its longest edge no longer than asked, never larger than it is. px. */
export function paintedSize(width: number, height: number, longest = LONGEST): { width: number; height: number } {
  const share = Math.min(1, longest / Math.max(width, height, 1))
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) }
}

/** Reads and shrinks a file. Never throws on a strange one. */
export async function pictureFrom(file: Blob): Promise<PictureRead> {
  let bitmap: ImageBitmap
  try {
    bitmap = await createImageBitmap(file)
  } catch {
    // no picture, or of a kind that this browser can't read
    return { ok: false, problem: 'picture.no-picture' }
  }
  try {
    for (const { quality, share } of STEPS) {
      const picture = await painted(bitmap, LONGEST * share, quality)
      if (picture !== null && picture.length <= PICTURE_MOST_CHARACTERS) return { ok: true, picture }
    }
    return { ok: false, problem: 'picture.too-heavy' }
  } finally {
    bitmap.close()
  }
}

/** As a data address; null where it is still too heavy. */
async function painted(bitmap: ImageBitmap, longest: number, quality: number): Promise<string | null> {
  const { width, height } = paintedSize(bitmap.width, bitmap.height, longest)
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d')
  if (pen === null) return null
  // a JPEG has no clear ground
  pen.fillStyle = '#ffffff'
  pen.fillRect(0, 0, width, height)
  pen.drawImage(bitmap, 0, 0, width, height)
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality))
  return blob === null || blob.size > MOST_BYTES ? null : dataAddress(blob)
}

const dataAddress = (blob: Blob): Promise<string | null> =>
  new Promise((done) => {
    const reader = new FileReader()
    reader.onload = () => done(typeof reader.result === 'string' ? reader.result : null)
    reader.onerror = () => done(null)
    reader.readAsDataURL(blob)
  })

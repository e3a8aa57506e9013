import type { Platform } from './platform.ts'

/** A plain web page: the workroom is already here, so only the part changes. */
export const platform: Platform = {
  where: 'companion',
  async openWorkroom(part) {
    location.hash = part ?? ''
  }
}

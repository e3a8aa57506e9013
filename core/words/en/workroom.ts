/** English: the workroom, and the browser's own menu. */
export const workroom = {
  'menu.read': 'Read these measurements'
} as const

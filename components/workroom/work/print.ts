/** Prints one part of the page: the sheet, the templates or the docket, on the paper chosen. The page is marked while it prints; look.css hides the rest. */
export type Printed = 'sheet' | 'templates' | 'docket'

export function printed(what: Printed, paper: 'A4' | 'Letter'): void {
  const root = document.documentElement
  root.dataset.print = what
  root.dataset.paper = paper
  addEventListener(
    'afterprint',
    () => {
      delete root.dataset.print
      delete root.dataset.paper
    },
    { once: true }
  )
  print()
}

/** What `npm start` prints. It runs before anything is installed, so its words stand here and not in the core's message modules. */

/** @param {{ workroom: string, shop: string }} at */
export const addresses = ({ workroom, shop }) => `Workroom   ${workroom}
Demo shop  ${shop}`

/** @param {{ chrome: string, firefox: string }} built */
export const loading = ({ chrome, firefox }) => `Load the extension into Chromium, or a browser of its family:
  1. Open chrome://extensions and turn on "Developer mode".
  2. Press "Load unpacked" and choose the folder ${chrome}
  3. Open a listing in the demo shop and press the Seam Reckoner button (Alt+Shift+M).
Load it into Firefox, until Firefox is closed:
  1. Open about:debugging#/runtime/this-firefox
  2. Press "Load Temporary Add-on" and choose the file ${firefox}
  3. Open a listing in the demo shop and press the Seam Reckoner button (Alt+Shift+M).
The extension keeps its records in its own workroom: press its button, then "Workroom". The address above keeps records of its own.`

export const howToEnd = 'Ctrl+C ends this.'

/** @param {string} browser */
export const opened = (browser) => `Opened ${browser} with the extension loaded; its profile is kept.`

export const otherFolder =
  'The workroom there is served from another copy of this project. End that one with Ctrl+C and run npm start here to see this copy.'

/** @param {number} port */
export const portTaken = (port) => `Another program holds port ${port} of 127.0.0.1.
End it, or choose another port with: npm start -- --port ${port + 10}
Mind: the workroom's records belong to its address. At another port it begins without them, and they are found again only at this one.`

export const badPort = 'After --port stands a number from 1024 to 65534, for example: npm start -- --port 28760'

/** @param {string} option */
export const badOption = (option) =>
  `There is no option ${option}. There are two: --port NUMBER and --once (build, print the addresses, end).`

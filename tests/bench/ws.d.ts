/** As much of the socket as the bench uses. */
declare module 'ws' {
  export default class WebSocket {
    constructor(address: string)
    on(event: 'open' | 'message', done: (data: { toString: () => string }) => void): void
    send(text: string): void
    close(): void
  }
}

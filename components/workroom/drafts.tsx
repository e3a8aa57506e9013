/** What is half typed in a form stays while another part of the workroom is looked at: the workroom holds it, the form takes it up again. */
import { createContext } from 'preact'
import { useContext, useRef, useState } from 'preact/hooks'

/** Whether what was handed on is saved. */
export type Saved = Promise<boolean>

/** Hands a form's content on and tells once it is saved; a second press while it is being saved is none, and what is typed stays till then. */
export function useSend<T>(send: (fields: T) => Saved, saved: () => void): (fields: T) => void {
  const sending = useRef(false)
  return (fields) => {
    if (sending.current) return
    sending.current = true
    void Promise.resolve(send(fields)).then((done) => {
      sending.current = false
      if (done) saved()
    })
  }
}

/** Goes on once it is saved, and hands on whether it was. */
export const whenSaved = (saved: Saved, goOn: () => void): Saved =>
  saved.then((done) => {
    if (done) goOn()
    return done
  })

/** By form; null: nothing is held, and a form that goes away takes its text with it. */
export const DraftsHeld = createContext<Map<string, unknown> | null>(null)

export interface Draft<T> {
  typed: T
  type: (typed: T) => void
  /** Saved or given up: the form begins anew. */
  drop: () => void
}

/** The state of one form under a name of its own. A form whose name changes must be drawn anew. */
export function useDraft<T>(name: string, begin: T): Draft<T> {
  const held = useContext(DraftsHeld)
  // only this hook writes under the name, and with this type
  const [typed, setTyped] = useState<T>(() => (held?.has(name) === true ? (held.get(name) as T) : begin))
  return {
    typed,
    type(next) {
      held?.set(name, next)
      setTyped(next)
    },
    drop() {
      held?.delete(name)
      setTyped(begin)
    }
  }
}

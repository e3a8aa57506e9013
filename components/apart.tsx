/** A part of a page that stands apart: where drawing it fails, it alone is replaced, and it is tried again when it is about something else. */
import { Component, type ComponentChildren } from 'preact'

export interface ApartProps {
  /** What the part is about: an address, a listing and its state. Where this changes the part is drawn anew. */
  of: string
  /** What stands in its place. */
  broken: (detail: string) => ComponentChildren
  children: ComponentChildren
}

interface ApartState {
  error: unknown
  of: string
}

export class Apart extends Component<ApartProps, ApartState> {
  override state: ApartState = { error: null, of: this.props.of }

  static override getDerivedStateFromProps({ of }: ApartProps, state: ApartState): ApartState | null {
    return of === state.of ? null : { error: null, of }
  }

  override componentDidCatch(error: unknown): void {
    console.error(error)
    this.setState({ error: error ?? new Error('nothing was thrown') })
  }

  override render({ broken, children }: ApartProps, { error }: ApartState): ComponentChildren {
    if (error === null) return children
    return broken(error instanceof Error ? error.message : String(error))
  }
}

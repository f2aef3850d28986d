import { Component, type ReactNode } from 'react'
import { saveAs } from '../state/fileActions.ts'
import { undo } from '../state/workbookStore.ts'
import { failureWords as words } from '../words/failure.ts'

interface FailureGuardProps {
  readonly children: ReactNode
}

interface FailureGuardState {
  readonly message: string | null
}

/**
 * Stands in for the window when drawing it fails: the work itself is not lost by that. It says so, saves it elsewhere,
 * and tries again, with or without the last step.
 */
export class FailureGuard extends Component<FailureGuardProps, FailureGuardState> {
  override state: FailureGuardState = { message: null }

  static getDerivedStateFromError(error: unknown): FailureGuardState {
    return { message: error instanceof Error ? error.message : String(error) }
  }

  private readonly again = (): void => this.setState({ message: null })

  override render(): ReactNode {
    const { message } = this.state
    if (message === null) return this.props.children
    return (
      <main className="start" role="alert">
        <div className="startSheet">
          <h1>{words.title}</h1>
          <p className="lead">{words.text}</p>
          <p className="soft">{words.reason(message)}</p>
          <div className="buttons">
            <button type="button" className="main" onClick={() => void saveAs()}>
              {words.saveAs}
            </button>
            <button type="button" onClick={this.again}>
              {words.again}
            </button>
            <button
              type="button"
              onClick={() => {
                undo()
                this.again()
              }}
            >
              {words.undoAndAgain}
            </button>
          </div>
        </div>
      </main>
    )
  }
}

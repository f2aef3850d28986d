import { Component, type ReactNode, useEffect, useRef } from 'react'
import { saveAs, useDirty, useFile } from '../state/fileActions.ts'
import { undo, useWorkbook } from '../state/workbookStore.ts'
import { failureWords as words } from '../words/failure.ts'

interface FailureGuardProps {
  readonly children: ReactNode
}

interface FailureGuardState {
  readonly message: string | null
}

/** Stands in for what it holds when drawing that fails: the work itself is not lost by it. */
export class FailureGuard extends Component<FailureGuardProps, FailureGuardState> {
  override state: FailureGuardState = { message: null }

  static getDerivedStateFromError(error: unknown): FailureGuardState {
    return { message: error instanceof Error ? error.message : String(error) }
  }

  private readonly again = (): void => this.setState({ message: null })

  override render(): ReactNode {
    const { message } = this.state
    return message === null ? this.props.children : <Failure message={message} again={this.again} />
  }
}

interface FailureProps {
  readonly message: string
  readonly again: () => void
}

/** Says that the window failed, saves the work elsewhere, and tries again, with or without the last step. */
function Failure({ message, again }: FailureProps): ReactNode {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  const hasWorkbook = useWorkbook((state) => state.workbook !== null)
  const fileName = useFile((state) => state.fileName)
  const trouble = useFile((state) => state.trouble)
  const dirty = useDirty()
  return (
    <main className="start">
      <div className="startSheet">
        <div role="alert">
          <h1 ref={heading} tabIndex={-1}>
            {words.title}
          </h1>
          <p className="lead">{words.text}</p>
          <p className="soft">{words.reason(message)}</p>
        </div>
        <p role="status">
          {trouble === null ? (hasWorkbook && !dirty ? words.saved(fileName) : null) : trouble.message}
        </p>
        <div className="buttons">
          <button type="button" className="main" disabled={!hasWorkbook} onClick={() => void saveAs()}>
            {words.saveAs}
          </button>
          <button type="button" onClick={again}>
            {words.again}
          </button>
          <button
            type="button"
            onClick={() => {
              undo()
              again()
            }}
          >
            {words.undoAndAgain}
          </button>
        </div>
      </div>
    </main>
  )
}

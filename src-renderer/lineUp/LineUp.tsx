import { type DragEvent, type KeyboardEvent, type ReactNode, useState } from 'react'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import {
  copyIdOf,
  duplicateDesign,
  moveDesign,
  removeDesign,
  renameDesign,
} from '#shared/workbook/commands/workbookCommands.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { Actions } from '../fields/Actions.tsx'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { type DerivedDesign, useDerived, useSelectedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { selectDesign, toggleHidden, useView } from '../state/viewStore.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'

/** The designs side by side with the three figures that compare them. */
export function LineUp(): ReactNode {
  const all = useDerived()
  const selected = useSelectedDesign()
  const [dragged, setDragged] = useState<string | null>(null)
  const dropOn = (index: number): void => {
    const from = all.findIndex(({ design }) => design.id === dragged)
    if (dragged !== null && from >= 0) run(moveDesign(dragged, index - from))
    setDragged(null)
  }
  return (
    <aside className="left" aria-label="Line-up">
      <h2>Line-up</h2>
      <ol className="lineUp">
        {all.map((derived, index) => (
          <DesignCard
            key={derived.design.id}
            derived={derived}
            index={index}
            last={all.length - 1}
            on={derived.design.id === selected?.design.id}
            onDrag={() => setDragged(derived.design.id)}
            onDrop={() => dropOn(index)}
          />
        ))}
      </ol>
      <button type="button" className="add" onClick={() => useDialog.setState({ open: 'newDesign' })}>
        Add a design…
      </button>
    </aside>
  )
}

interface DesignCardProps {
  readonly derived: DerivedDesign
  readonly index: number
  readonly last: number
  readonly on: boolean
  readonly onDrag: () => void
  readonly onDrop: () => void
}

function DesignCard({ derived, index, last, on, onDrag, onDrop }: DesignCardProps): ReactNode {
  const { design, tables, series } = derived
  const hidden = useView((state) => state.hidden.has(design.id))
  const unit = useSettings((settings) => settings.unit)
  const [renaming, setRenaming] = useState(false)
  const { byFingering, tubeMm } = tables.summary
  const keys = (event: KeyboardEvent): void => {
    const by = event.altKey ? { ArrowUp: -1, ArrowDown: 1 }[event.key] : undefined
    if (by !== undefined) {
      event.preventDefault()
      run(moveDesign(design.id, by))
    } else if (event.key === 'F2') setRenaming(true)
    else if (event.key === 'Delete') run(removeDesign(design.id))
  }
  const drag = {
    draggable: !renaming,
    onDragStart: (event: DragEvent) => {
      event.dataTransfer.effectAllowed = 'move'
      onDrag()
    },
    onDragOver: (event: DragEvent) => event.preventDefault(),
    onDrop,
  }
  return (
    <li className={`card${on ? ' on' : ''}${hidden ? ' hiddenDesign' : ''}`} {...drag}>
      <div className="cardHead">
        <SeriesMark series={series} />
        <span className="cardTools">
          <button
            type="button"
            className="quiet"
            aria-pressed={!hidden}
            aria-label={`Show the curve of ${design.name}`}
            title={hidden ? 'Show the curve' : 'Hide the curve'}
            onClick={() => toggleHidden(design.id)}
          >
            {hidden ? 'show' : 'hide'}
          </button>
          <Actions
            label={`More for ${design.name}`}
            items={[
              { text: 'Rename', keys: 'F2', act: () => setRenaming(true) },
              { text: 'Duplicate', act: () => duplicate(design.id) },
              { text: 'Move up', keys: 'Alt+↑', off: index === 0, act: () => run(moveDesign(design.id, -1)) },
              {
                text: 'Move down',
                keys: 'Alt+↓',
                off: index === last,
                act: () => run(moveDesign(design.id, 1)),
              },
              { text: 'Delete', keys: 'Del', act: () => run(removeDesign(design.id)) },
            ]}
          />
        </span>
      </div>
      {renaming ? (
        <TextField
          label="Design name"
          labelHidden
          autoFocus
          value={design.name}
          take={(name) => tryRun(renameDesign(design.id, name))}
          onDone={() => setRenaming(false)}
        />
      ) : (
        <button
          type="button"
          className="cardName"
          aria-current={on}
          onClick={() => selectDesign(design.id)}
          onDoubleClick={() => setRenaming(true)}
          onKeyDown={keys}
        >
          {design.name === '' ? 'Without a name' : design.name}
        </button>
      )}
      <dl>
        <dt>rms</dt>
        <dd>{plainFigure(byFingering.rmsCents, 1)}</dd>
        <dt>largest</dt>
        <dd>{signedCents(byFingering.largestCents)}</dd>
        <dt>tube</dt>
        <dd>{unit === 'mm' ? `${plainFigure(tubeMm / 1000, 2)} m` : lengthText(tubeMm, 'in', 1)}</dd>
      </dl>
    </li>
  )
}

function duplicate(designId: string): void {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return
  const copyId = copyIdOf(workbook, designId)
  run(duplicateDesign(designId, copyId))
  selectDesign(copyId)
}

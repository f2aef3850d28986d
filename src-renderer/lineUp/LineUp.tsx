import {
  type DragEvent,
  type KeyboardEvent,
  memo,
  type ReactNode,
  useCallback,
  useRef,
  useState,
} from 'react'
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
import { Mark } from '../help/Mark.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { type DerivedDesign, useDerived, useSelectedDesign } from '../state/derived.ts'
import { runOrSay } from '../state/runOrSay.ts'
import { useSettings } from '../state/settings.ts'
import { useFollowing } from '../state/useFollowing.ts'
import { selectDesign, toggleHidden, useView } from '../state/viewStore.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { lineUpWords as words } from '../words/lineUp.ts'
import { WorkbookNotes } from './WorkbookNotes.tsx'

/** The designs side by side with the three figures that compare them. */
export function LineUp(): ReactNode {
  // The curve under the hand goes first; the figures of the cards follow.
  const present = useDerived()
  const all = useFollowing(present, present.map(({ design }) => design.id).join(' '))
  const selected = useSelectedDesign()
  const dragged = useRef<string>(null)
  const drag = useCallback((designId: string) => {
    dragged.current = designId
  }, [])
  const dropOn = useCallback((index: number) => {
    const designs = useWorkbook.getState().workbook?.designs ?? []
    const from = designs.findIndex(({ id }) => id === dragged.current)
    if (from >= 0) run(moveDesign(designs[from]!.id, index - from))
    dragged.current = null
  }, [])
  return (
    <aside className="left" aria-label={words.title}>
      <h2 className="withMark">{words.title}</h2>
      <Mark id="rms" />
      <ol className="lineUp">
        {all.map((derived, index) => (
          <DesignCard
            key={derived.design.id}
            derived={derived}
            index={index}
            last={all.length - 1}
            on={derived.design.id === selected?.design.id}
            onDrag={drag}
            onDrop={dropOn}
          />
        ))}
      </ol>
      <button type="button" className="add" onClick={() => useDialog.setState({ open: 'newDesign' })}>
        {words.addDesign}
      </button>
      <WorkbookNotes />
    </aside>
  )
}

interface DesignCardProps {
  readonly derived: DerivedDesign
  readonly index: number
  readonly last: number
  readonly on: boolean
  readonly onDrag: (designId: string) => void
  readonly onDrop: (index: number) => void
}

const DesignCard = memo(function DesignCard(props: DesignCardProps): ReactNode {
  const { derived, index, last, on, onDrag, onDrop } = props
  const { design, tables, series } = derived
  const hidden = useView((state) => state.hidden.has(design.id))
  const unit = useSettings((settings) => settings.unit)
  const [renaming, setRenaming] = useState(false)
  const startRenaming = useCallback(() => setRenaming(true), [])
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
      onDrag(design.id)
    },
    onDragOver: (event: DragEvent) => event.preventDefault(),
    onDrop: () => onDrop(index),
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
            aria-label={words.showCurveOf(design.name)}
            title={hidden ? words.showCurve : words.hideCurve}
            onClick={() => toggleHidden(design.id)}
          >
            {hidden ? words.show : words.hide}
          </button>
          <CardActions
            designId={design.id}
            name={design.name}
            first={index === 0}
            last={index === last}
            onRename={startRenaming}
          />
        </span>
      </div>
      {renaming ? (
        <TextField
          label={words.designName}
          labelHidden
          autoFocus
          value={design.name}
          take={(name) => (name.trim() === '' ? words.nameWanted : tryRun(renameDesign(design.id, name)))}
          onDone={() => setRenaming(false)}
        />
      ) : (
        <button
          type="button"
          className="cardName"
          title={design.name}
          aria-current={on}
          onClick={() => selectDesign(design.id)}
          onDoubleClick={() => setRenaming(true)}
          onKeyDown={keys}
        >
          {design.name === '' ? words.nameless : design.name}
        </button>
      )}
      <dl>
        <dt>{words.rms}</dt>
        <dd>{plainFigure(byFingering.rmsCents, 1)}</dd>
        <dt>{words.largest}</dt>
        <dd>{signedCents(byFingering.largestCents)}</dd>
        <dt>{words.tube}</dt>
        <dd>{unit === 'mm' ? `${plainFigure(tubeMm / 1000, 2)} m` : lengthText(tubeMm, 'in', 1)}</dd>
      </dl>
    </li>
  )
})

interface CardActionsProps {
  readonly designId: string
  readonly name: string
  readonly first: boolean
  readonly last: boolean
  readonly onRename: () => void
}

/** Drawn anew only when the design's name or place changes. */
const CardActions = memo(function CardActions(props: CardActionsProps): ReactNode {
  const { designId, name, first, last, onRename } = props
  return (
    <Actions
      label={words.moreFor(name)}
      items={[
        { text: words.rename, keys: 'F2', act: onRename },
        { text: words.duplicate, act: () => duplicate(designId) },
        { text: words.moveUp, keys: 'Alt+↑', off: first, act: () => run(moveDesign(designId, -1)) },
        { text: words.moveDown, keys: 'Alt+↓', off: last, act: () => run(moveDesign(designId, 1)) },
        { text: words.remove, keys: 'Del', act: () => run(removeDesign(designId)) },
      ]}
    />
  )
})

function duplicate(designId: string): void {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return
  const copyId = copyIdOf(workbook, designId)
  if (runOrSay(duplicateDesign(designId, copyId))) selectDesign(copyId)
}

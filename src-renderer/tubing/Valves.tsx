import { memo, type ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'
import { ordinal } from '#shared/valves/systems/parts.ts'
import type { Valve } from '#shared/valves/valve.ts'
import { setFingerings } from '#shared/workbook/commands/designCommands.ts'
import {
  addLoop,
  addValve,
  moveValve,
  removeValve,
  renameValve,
  setValveDrop,
} from '#shared/workbook/commands/valveCommands.ts'
import { mostValves } from '#shared/workbook/schemaParts.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { Actions } from '../fields/Actions.tsx'
import { Choice } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { Mark } from '../help/Mark.tsx'
import { runOrSay } from '../state/runOrSay.ts'
import { run } from '../state/workbookStore.ts'
import { valveWords as words } from '../words/tubing.ts'

/** The valves of a design: name, nominal drop, order; and which fingerings it uses. */
export function Valves({ design, openMm }: { readonly design: Design; readonly openMm: number }): ReactNode {
  const { valves } = design
  const add = (): void => {
    const ids = valves.map(({ id }) => id)
    const id = freshNumber(ids)
    const semitones = [2, 1, 3, 5, 7][valves.length] ?? 1
    const loop = {
      id: freshLoopId(design, `L${id}`),
      name: ordinal(valves.length),
      lengthMm: loopForDropMm(openMm, semitones),
      pressed: [id],
    }
    runOrSay(addValve(design.id, { id, semitones }, loop))
  }
  return (
    <>
      <h3 className="withMark">{words.title}</h3>
      <Mark id="nominalDrop" />
      <ValveList designId={design.id} valves={valves} />
      <div className="rowButtons">
        <button
          type="button"
          className="add"
          disabled={valves.length >= mostValves}
          title={valves.length >= mostValves ? words.noMore(mostValves) : undefined}
          onClick={add}
        >
          {words.add}
        </button>
        <button
          type="button"
          className="add"
          onClick={() =>
            runOrSay(
              addLoop(design.id, {
                id: freshLoopId(design, 'loop'),
                lengthMm: 0,
                pressed: valves[0] ? [valves[0].id] : [],
              }),
            )
          }
        >
          {words.addLoop}
        </button>
      </div>
      <FingeringsInUse designId={design.id} valves={valves} fingerings={design.fingerings} />
    </>
  )
}

interface ValveListProps {
  readonly designId: string
  readonly valves: readonly Valve[]
}

/** Drawn anew only when a valve changes, not with every loop that is dragged. */
const ValveList = memo(function ValveList({ designId, valves }: ValveListProps): ReactNode {
  return (
    <ul className="valves">
      {valves.map((valve, index) => (
        <li key={index.toString()}>
          <TextField
            label={words.nameOf(index + 1)}
            labelHidden
            className="valveId"
            value={valve.id}
            take={(name) => tryRun(renameValve(designId, valve.id, name))}
          />
          <NumberField
            label={words.dropOf(valve.id)}
            labelHidden
            value={valve.semitones}
            digits={Number.isInteger(valve.semitones) ? 0 : 2}
            unit={Math.abs(valve.semitones) === 1 ? words.semitone : words.semitones}
            by={1}
            width={4}
            help={words.dropHelp}
            take={(semitones) => tryRun(setValveDrop(designId, valve.id, semitones))}
          />
          <Actions
            label={words.moreFor(valve.id)}
            items={[
              { text: words.moveUp, off: index === 0, act: () => run(moveValve(designId, valve.id, -1)) },
              {
                text: words.moveDown,
                off: index === valves.length - 1,
                act: () => run(moveValve(designId, valve.id, 1)),
              },
              { text: words.remove, act: () => run(removeValve(designId, valve.id)) },
            ]}
          />
        </li>
      ))}
    </ul>
  )
})

interface FingeringsInUseProps extends ValveListProps {
  readonly fingerings: Design['fingerings']
}

const FingeringsInUse = memo(function FingeringsInUse(props: FingeringsInUseProps): ReactNode {
  const { designId, valves } = props
  const kind = fingeringKind(props)
  const options = [
    { value: 'all', text: words.everyCombination(plainFigure(2 ** valves.length, 0)) },
    { value: 'single', text: words.oneAtATime },
    ...(kind === 'list' ? [{ value: 'list', text: words.ownList }] : []),
  ]
  return (
    <Choice
      label={words.fingerings}
      value={kind}
      options={options}
      take={(value) => {
        if (value === 'all') run(setFingerings(designId, 'all'))
        if (value === 'single') run(setFingerings(designId, singles(valves)))
      }}
    />
  )
})

function singles(valves: readonly Valve[]): readonly { readonly pressed: readonly string[] }[] {
  return [{ pressed: [] }, ...valves.map(({ id }) => ({ pressed: [id] }))]
}

function fingeringKind({ fingerings, valves }: FingeringsInUseProps): string {
  if (fingerings === undefined || fingerings === 'all') return 'all'
  const single =
    fingerings.length === valves.length + 1 && fingerings.every(({ pressed }) => pressed.length <= 1)
  return single ? 'single' : 'list'
}

function freshNumber(taken: readonly string[]): string {
  let number = taken.length + 1
  while (taken.includes(String(number))) number++
  return String(number)
}

function freshLoopId(design: Design, wanted: string): string {
  const taken = new Set(design.loops.map(({ id }) => id))
  let id = wanted
  for (let number = 2; taken.has(id); number++) id = `${wanted} ${number}`
  return id
}

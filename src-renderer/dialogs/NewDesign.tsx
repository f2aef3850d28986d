import { type ReactNode, useState } from 'react'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import { noteName } from '#shared/pitch/noteName.ts'
import { nearestMidi, targetHz } from '#shared/pitch/reference.ts'
import { fundamentalHz, openLengthMm } from '#shared/tubing/openRoute.ts'
import { type System, systemOf, systems } from '#shared/valves/systems/systems.ts'
import { replaceSystem } from '#shared/workbook/commands/designCommands.ts'
import { addDesign } from '#shared/workbook/commands/workbookCommands.ts'
import { designOpenLengthMm } from '#shared/workbook/instrumentOf.ts'
import { designFromSystem, emptyWorkbook, freshId } from '#shared/workbook/newWorkbook.ts'
import { Choice } from '../fields/Choice.tsx'
import { LengthField } from '../fields/LengthField.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { TextField } from '../fields/TextField.tsx'
import { useSelectedDesign } from '../state/derived.ts'
import { startWorkbook } from '../state/fileActions.ts'
import { runOrSay } from '../state/runOrSay.ts'
import { useSettings } from '../state/settings.ts'
import { selectDesign } from '../state/viewStore.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { newDesignWords as words } from '../words/dialogs.ts'
import { Dialog } from './Dialog.tsx'
import { closeDialog } from './dialogStore.ts'

/** Fundamentals that a design may have, Hz. */
const [lowestHz, highestHz] = [10, 2000]

/** Chooses a system, a key and a length; fills the loops in. Serves a new workbook and a further design. */
export function NewDesign({ inNewWorkbook }: { readonly inNewWorkbook: boolean }): ReactNode {
  const present = useWorkbook((state) => state.workbook)
  const workbook = inNewWorkbook || present === null ? emptyWorkbook('') : present
  const like = useSelectedDesign()
  const [systemId, setSystemId] = useState('plain-3')
  const [hz, setHz] = useState(
    inNewWorkbook || like === null ? 43.6535 : like.design.instrument.fundamentalHz,
  )
  const [transposition, setTransposition] = useState(
    inNewWorkbook ? 0 : (like?.instrument.transposition ?? 0),
  )
  const [name, setName] = useState('')
  const system = systemOf(systemId) ?? systems[0]!
  const speed = speedOfSound(workbook.air)
  const ownName = inNewWorkbook ? words.workbookOf(keyOf(hz)) : system.name

  const create = (): void => {
    const typed = name.trim()
    const title = inNewWorkbook || typed === '' ? system.name : typed
    const id = freshId(
      title,
      workbook.designs.map((design) => design.id),
    )
    const data = inNewWorkbook || like === null ? {} : like.design.instrument
    const instrument = { ...data, fundamentalHz: hz, transposition }
    const design = designFromSystem(workbook, system, instrument, id, title)
    if (inNewWorkbook) {
      startWorkbook(
        { ...workbook, name: typed === '' ? ownName : typed, designs: [design] },
        { unsaved: true },
      )
    } else if (runOrSay(addDesign(design))) selectDesign(id)
    else return
    closeDialog()
  }

  return (
    <Dialog title={inNewWorkbook ? words.newWorkbook : words.addDesign} onClose={closeDialog} wide>
      <form
        className="newDesign"
        onSubmit={(event) => {
          event.preventDefault()
          // What was refused is not passed over: its message stands beside it.
          const slip = event.currentTarget.querySelector<HTMLElement>('[aria-invalid=true]')
          if (slip === null) create()
          else slip.focus()
        }}
      >
        <SystemList systemId={systemId} onChoose={setSystemId} />
        <div className="instrumentChoice">
          <KeyChoice hz={hz} a4Hz={workbook.reference.a4Hz} onChoose={setHz} />
          <NumberField
            label={words.fundamental}
            value={hz}
            digits={2}
            atLeast={lowestHz}
            atMost={highestHz}
            units={['Hz']}
            unit="Hz"
            take={(value) => taken(() => setHz(value))}
          />
          <LengthField
            label={words.length}
            lengthMm={openLengthMm(speed, hz)}
            atLeast={openLengthMm(speed, highestHz)}
            atMost={openLengthMm(speed, lowestHz)}
            take={(mm) => taken(() => setHz(within(fundamentalHz(speed, mm))))}
          />
          <p className="soft help">{words.sameThing(workbook.air.temperatureC)}</p>
          <NumberField
            label={words.transposition}
            value={transposition}
            digits={0}
            atLeast={-60}
            atMost={60}
            unit={words.semitones}
            help={words.transpositionHelp}
            take={(value) =>
              Number.isInteger(value)
                ? taken(() => setTransposition(value))
                : words.wholeExpected(String(value))
            }
          />
          <TextField
            label={words.name}
            value={name}
            placeholder={ownName}
            take={(value) => taken(() => setName(value))}
          />
          <div className="buttons">
            <button type="submit" className="main">
              {inNewWorkbook ? words.createWorkbook : words.createDesign}
            </button>
            <button type="button" onClick={closeDialog}>
              {words.cancel}
            </button>
          </div>
        </div>
      </form>
    </Dialog>
  )
}

/** What an instrument of a fundamental is said to be in. */
function keyOf(hz: number): string {
  return noteName(nearestMidi(hz, 440), 'flats').replace(/[\d−]+$/, '')
}

/** A fundamental from a length at the bound may stray by a rounding. */
function within(hz: number): number {
  return Math.min(highestHz, Math.max(lowestHz, hz))
}

function taken(act: () => void): null {
  act()
  return null
}

interface SystemListProps {
  readonly systemId: string
  readonly onChoose: (id: string) => void
}

/** Every system, by family, each with the sentence that says how the air runs. */
function SystemList({ systemId, onChoose }: SystemListProps): ReactNode {
  const families = Object.keys(words.families) as System['family'][]
  return (
    <div className="systems">
      {families.map((family) => (
        <fieldset key={family}>
          <legend>{words.families[family]}</legend>
          {systems
            .filter((system) => system.family === family)
            .map(({ id, name, description }) => (
              <label key={id} className={id === systemId ? 'system on' : 'system'}>
                <input
                  type="radio"
                  name="system"
                  value={id}
                  checked={id === systemId}
                  data-first={id === systemId ? '' : undefined}
                  onChange={() => onChoose(id)}
                />
                <span>
                  <b>{name}</b>
                  <small>{description}</small>
                </span>
              </label>
            ))}
        </fieldset>
      ))}
    </div>
  )
}

interface KeyChoiceProps {
  readonly hz: number
  readonly a4Hz: number
  readonly onChoose: (hz: number) => void
}

/** The open fundamental as a note: what an instrument is said to be in, and its octave. */
function KeyChoice({ hz, a4Hz, onChoose }: KeyChoiceProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const midi = nearestMidi(hz, a4Hz)
  const octave = Math.floor(midi / 12)
  const equal = { a4Hz, temperament: { kind: 'equal' } } as const
  const pick = (next: number): void => onChoose(targetHz(next, equal))
  return (
    <div className="together">
      <Choice
        label={words.key}
        value={String(midi % 12)}
        options={Array.from({ length: 12 }, (_, i) => ({
          value: String(i),
          text: noteName(60 + i, spelling).replace('4', ''),
        }))}
        take={(value) => pick(12 * octave + Number(value))}
      />
      <Choice
        label={words.octave}
        value={String(octave - 1)}
        options={[-1, 0, 1, 2, 3, 4, 5].map((number) => ({
          value: String(number),
          text: number < 0 ? `−${-number}` : String(number),
        }))}
        take={(value) => pick(12 * (Number(value) + 1) + (midi % 12))}
      />
    </div>
  )
}

/** Gives the selected design another system, its loops filled in anew. */
export function ChangeSystem(): ReactNode {
  const selected = useSelectedDesign()
  const workbook = useWorkbook((state) => state.workbook)
  const [systemId, setSystemId] = useState('compensating-4')
  if (selected === null || workbook === null) return null
  const system = systemOf(systemId) ?? systems[0]!
  const change = (): void => {
    run(
      replaceSystem(
        selected.design.id,
        system.name,
        system.build(designOpenLengthMm(workbook, selected.design)),
      ),
    )
    closeDialog()
  }
  return (
    <Dialog title={words.changeTitle(selected.design.name)} onClose={closeDialog} wide>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          change()
        }}
      >
        <SystemList systemId={systemId} onChoose={setSystemId} />
        <p className="soft help">{words.changeText}</p>
        <div className="buttons">
          <button type="submit" className="main">
            {words.change(system.name.toLowerCase())}
          </button>
          <button type="button" onClick={closeDialog}>
            {words.cancel}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

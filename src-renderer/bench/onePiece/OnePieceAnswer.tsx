import { type ReactNode, useState } from 'react'
import type { FromOnePiece, OnePiece } from '#shared/bench/fromOnePiece.ts'
import { centsBetween } from '#shared/pitch/cents.ts'
import { noteName } from '#shared/pitch/noteName.ts'
import { nearestMidi, targetHz } from '#shared/pitch/reference.ts'
import { briefFigure, lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import { tryRun } from '../../fields/refusal.ts'
import type { DerivedDesign } from '../../state/derived.ts'
import { useSettings } from '../../state/settings.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { onePieceTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { onePieceWords } from '../../words/benchOnePiece.ts'
import { titles } from '../../words/tableHeadings.ts'

interface OnePieceAnswerProps {
  readonly derived: DerivedDesign
  readonly answer: FromOnePiece
  readonly piece: OnePiece
}

/** The open length that follows, the note, and each valve's loop taken alone. */
export function OnePieceAnswer({ derived, answer, piece }: OnePieceAnswerProps): ReactNode {
  const { unit, spelling } = useSettings()
  const a4Hz = useWorkbook((state) => state.workbook?.reference.a4Hz) ?? 440
  const length = (mm: number): string => lengthText(mm, unit)
  const midi = nearestMidi(answer.fundamentalHz, a4Hz)
  const noteHz = targetHz(midi, { a4Hz, temperament: { kind: 'equal' } })
  const cents = signedCents(centsBetween(noteHz, answer.fundamentalHz))
  const timesLoop = piece.kind === 'loop' ? plainFigure(answer.openLengthMm / piece.lengthMm, 2) : null
  return (
    <div className="jobResult">
      <p className="answer">
        {onePieceWords.answer(
          length(answer.openLengthMm),
          timesLoop,
          plainFigure(answer.fundamentalHz, 2),
          noteName(midi, spelling),
          cents,
          briefFigure(a4Hz, 1),
        )}
      </p>
      <TableOut
        name={titles.onePiece}
        table={() => onePieceTable(derived.design, answer, (id) => plainLoop(derived, id)?.lengthMm, unit)}
      />
      <table className="figures">
        <caption>{onePieceWords.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{onePieceWords.columns.valve}</th>
            <th scope="col">{onePieceWords.columns.semitones}</th>
            <th scope="col">{onePieceWords.columns.loop}</th>
            <th scope="col">{onePieceWords.columns.inDesign}</th>
          </tr>
        </thead>
        <tbody>
          {derived.design.valves.map(({ id, semitones }) => (
            <tr key={id}>
              <th scope="row">{id}</th>
              <td>{briefFigure(semitones, 2)}</td>
              <td>
                <b>{length(answer.loopsMm[id] ?? 0)}</b>
              </td>
              <td>{designLoop(derived, id, length)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <TakePiece derived={derived} answer={answer} />
    </div>
  )
}

/** The loop that a valve alone switches in. */
function plainLoop(
  { design }: DerivedDesign,
  valveId: string,
): DerivedDesign['design']['loops'][number] | undefined {
  return design.loops.find(
    ({ pressed, released }) =>
      pressed.length === 1 && pressed[0] === valveId && (released ?? []).length === 0,
  )
}

function designLoop(derived: DerivedDesign, valveId: string, length: (mm: number) => string): string {
  const loop = plainLoop(derived, valveId)
  return loop === undefined ? '—' : length(loop.lengthMm)
}

function TakePiece({ derived, answer }: Pick<OnePieceAnswerProps, 'derived' | 'answer'>): ReactNode {
  const [message, setMessage] = useState<string | null>(null)
  const { design } = derived
  const take = (withLoops: boolean): void => {
    const loops = design.valves.flatMap(({ id }) => {
      const loop = plainLoop(derived, id)
      const lengthMm = answer.loopsMm[id] ?? 0
      return loop === undefined || lengthMm <= 0 ? [] : [[loop.id, lengthMm] as const]
    })
    const loopsMm = withLoops ? Object.fromEntries(loops) : {}
    const name = withLoops ? onePieceWords.takeLoopsStep : onePieceWords.takeOpenStep
    setMessage(tryRun(takeIntoDesign(name, design.id, { loopsMm, fundamentalHz: answer.fundamentalHz })))
  }
  return (
    <>
      <div className="jobButtons">
        <button type="button" onClick={() => take(false)}>
          {onePieceWords.takeOpen}
        </button>
        <button type="button" onClick={() => take(true)}>
          {onePieceWords.takeLoops}
        </button>
      </div>
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
    </>
  )
}

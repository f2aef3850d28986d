import type { ReactNode } from 'react'
import { fromOnePiece, type OnePiece } from '#shared/bench/fromOnePiece.ts'
import { lengthSlips } from '#shared/bench/slips/lengthSlips.ts'
import { Segments } from '../../fields/Choice.tsx'
import { type DerivedDesign, useSelectedDesign } from '../../state/derived.ts'
import { selectDesign } from '../../state/viewStore.ts'
import { onePieceWords } from '../../words/benchOnePiece.ts'
import { DesignChoice } from '../DesignChoice.tsx'
import { Likely } from '../Findings.tsx'
import { OnePieceAnswer } from './OnePieceAnswer.tsx'
import { OnePieceFields } from './OnePieceFields.tsx'
import { type OnePieceTyped, useOnePiece } from './onePieceStore.ts'

/** The whole instrument from the one piece that could be measured. */
export function OnePiecePage(): ReactNode {
  const derived = useSelectedDesign()
  const typed = useOnePiece()
  if (derived === null) return null
  const values = withDefaults(typed, derived)
  const piece = pieceOf(values)
  const openMm = derived.tables.mainSlide.nominalOpenMm
  const answer =
    piece === null ? null : fromOnePiece(piece, derived.design.valves, derived.instrument.speedOfSoundMps)
  return (
    <>
      <header className="jobHead">
        <h1>{onePieceWords.title}</h1>
      </header>
      <div className="jobColumns onePiece">
        <div className="jobFields fields">
          <DesignChoice designId={derived.design.id} take={selectDesign} />
          <Segments
            label={onePieceWords.measured}
            value={values.kind}
            options={[
              { value: 'loop', text: onePieceWords.kinds.loop },
              { value: 'bore', text: onePieceWords.kinds.bore },
              { value: 'fundamental', text: onePieceWords.kinds.fundamental },
            ]}
            take={(kind) => useOnePiece.setState({ kind })}
          />
          <OnePieceFields values={values} derived={derived} />
          <Likely messages={answer === null ? [] : slipsOf(values, answer.openLengthMm, openMm)} />
        </div>
        {answer === null ? (
          <p className="empty">{onePieceWords.nothing}</p>
        ) : (
          <OnePieceAnswer derived={derived} answer={answer} piece={piece!} />
        )}
      </div>
    </>
  )
}

/** What was typed, with the design's own figures where nothing was. */
export type OnePieceValues = { readonly [K in keyof OnePieceTyped]: NonNullable<OnePieceTyped[K]> } & {
  readonly semitones: number
}

function withDefaults(typed: OnePieceTyped, { design, tables }: DerivedDesign): OnePieceValues {
  const openMm = tables.mainSlide.nominalOpenMm
  const dropping = design.valves.filter(({ semitones }) => semitones > 0)
  const valve = dropping.find(({ id }) => id === typed.valveId) ?? dropping[0]
  const loop = design.loops.find(
    ({ pressed, released }) =>
      pressed.length === 1 && pressed[0] === valve?.id && (released ?? []).length === 0,
  )
  const boreMm = typed.boreMm ?? design.instrument.boreLengthMm ?? openMm
  return {
    kind: typed.kind,
    valveId: valve?.id ?? '',
    semitones: valve?.semitones ?? 0,
    loopMm: typed.loopMm ?? loop?.lengthMm ?? 0,
    boreMm,
    correctionMm: typed.correctionMm ?? openMm - (design.instrument.boreLengthMm ?? openMm),
    fundamentalHz: typed.fundamentalHz ?? design.instrument.fundamentalHz,
  }
}

/** The piece, when an open length above 0 follows from it. */
function pieceOf(values: OnePieceValues): OnePiece | null {
  const { kind, loopMm, semitones, boreMm, correctionMm, fundamentalHz } = values
  if (kind === 'loop') return loopMm > 0 && semitones > 0 ? { kind, lengthMm: loopMm, semitones } : null
  if (kind === 'bore') return boreMm + correctionMm > 0 ? { kind, boreLengthMm: boreMm, correctionMm } : null
  return fundamentalHz > 0 ? { kind, fundamentalHz } : null
}

/** What was typed may have been meant otherwise when the design it is for is of quite another length. */
function slipsOf(
  { kind, loopMm, boreMm }: OnePieceValues,
  foundMm: number,
  openMm: number,
): readonly string[] {
  const offCents = 1200 * Math.log2(foundMm / openMm)
  if (kind === 'fundamental' || Math.abs(offCents) < 100) return []
  const typedMm = kind === 'loop' ? loopMm : boreMm
  return lengthSlips('piece', typedMm, (typedMm * openMm) / foundMm).map(({ message }) => message)
}

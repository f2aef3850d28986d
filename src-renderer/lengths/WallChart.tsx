import { type ReactNode, useState } from 'react'
import { createPortal } from 'react-dom'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import type { SlideMovement } from '#shared/solve/slideMovement.ts'
import { bridge } from '../bridge/bridge.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { wallWords } from '../words/lengthsSlides.ts'
import { fingeringWords } from './shownFingerings.ts'
import { slideName } from './slideName.ts'

interface WallChartProps {
  readonly derived: DerivedDesign
  readonly movements: readonly SlideMovement[]
  readonly ofProposal: boolean
  readonly onClose: () => void
}

/** The movements in type that is read across a room, shown as they will be printed. */
export function WallChart({ derived, movements, ofProposal, onClose }: WallChartProps): ReactNode {
  const weights = useLengths((state) => state.weights)
  const [trouble, setTrouble] = useState<string | null>(null)
  const rows = movements.filter(isMoved).filter(({ name }) => weights.get(name) !== 0)
  const leftOut = movements.filter(isMoved).filter(({ name }) => weights.get(name) === 0)
  const print = async (to: 'printer' | 'pdf'): Promise<void> => {
    const root = document.documentElement
    root.dataset.print = 'wallChart'
    try {
      const name = wallWords.fileName(derived.design.name)
      const answer = await bridge.print({ to, paper: 'A4', landscape: true, name })
      setTrouble(answer.kind === 'failed' ? answer.message : null)
    } finally {
      delete root.dataset.print
    }
  }
  const sheet = <WallSheet derived={derived} rows={rows} leftOut={leftOut} ofProposal={ofProposal} />
  return (
    <Dialog title={wallWords.title} onClose={onClose} wide>
      <div className="wallPreview">{sheet}</div>
      {trouble === null ? null : (
        <p className="slip" role="alert">
          {trouble}
        </p>
      )}
      <div className="buttons">
        <button type="button" className="main" onClick={() => void print('printer')}>
          {wallWords.print}
        </button>
        {bridge.form === 'desktop' ? (
          <button type="button" onClick={() => void print('pdf')}>
            {wallWords.pdf}
          </button>
        ) : null}
        <button type="button" onClick={onClose}>
          {wallWords.close}
        </button>
      </div>
      {createPortal(<div className="wallPrint">{sheet}</div>, document.body)}
    </Dialog>
  )
}

/** A movement that a hand can make: half a millimetre and more. */
const leastMoveMm = 0.5

function isMoved({ moves }: SlideMovement): boolean {
  return moves.some(({ outMm }) => Math.abs(outMm) >= leastMoveMm)
}

function WallSheet({
  derived,
  rows,
  leftOut,
  ofProposal,
}: {
  readonly derived: DerivedDesign
  readonly rows: readonly SlideMovement[]
  /** Fingerings that do not count, though slides would be moved for them. */
  readonly leftOut: readonly SlideMovement[]
  readonly ofProposal: boolean
}): ReactNode {
  return (
    <article className="wallSheet">
      <h3>{wallWords.heading(derived.design.name)}</h3>
      {ofProposal ? <p>{wallWords.ofProposal}</p> : null}
      {rows.length === 0 ? (
        <p className="wallNone">{leftOut.length === 0 ? wallWords.noneMoved : wallWords.noneCounted}</p>
      ) : null}
      <ul>
        {rows.map((row) => (
          <li key={row.name}>
            <b>{fingeringWords(row.name)}</b>
            <span className="wallMoves">
              {row.moves
                .filter(({ outMm }) => Math.abs(outMm) >= leastMoveMm)
                .map(({ slide, outMm }) => (
                  <span key={slide}>
                    {slideName(derived, slide)} <WallLength outMm={outMm} />
                  </span>
                ))}
            </span>
            <i>{Math.abs(row.leftCents) < 1 ? '' : wallWords.left(signedCents(row.leftCents, 0))}</i>
          </li>
        ))}
      </ul>
      {rows.length === 0 ? null : <p>{wallWords.othersNotMoved}</p>}
      {leftOut.length === 0 ? null : (
        <p>{wallWords.notCounted(leftOut.map(({ name }) => fingeringWords(name)).join(', '))}</p>
      )}
    </article>
  )
}

/** A movement as it is called across a room: to a millimetre, or to a sixteenth of an inch as a decimal. */
function WallLength({ outMm }: { readonly outMm: number }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const size = Math.abs(outMm)
  const figure = plainFigure(size / unitMm(unit), unit === 'mm' ? 0 : 2)
  return (
    <>
      {outMm > 0 ? wallWords.out : wallWords.in} <strong>{figure}</strong> {unit}
    </>
  )
}

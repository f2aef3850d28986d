import type { ReactNode } from 'react'
import { lengthFigure } from '../fields/LengthField.tsx'
import { useSettings } from '../state/settings.ts'
import { loopTableWords } from '../words/lengthsLoops.ts'

interface ChangeCellsProps {
  readonly nowMm: number
  readonly proposedMm: number | null
  /** What is proposed in words or figures of its own; the length when absent. */
  readonly proposed?: ReactNode
  readonly held?: boolean
}

/** A proposed length, the change of tube and the movement of a slide, which is half of that. */
export function ChangeCells({ nowMm, proposedMm, proposed, held }: ChangeCellsProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  if (proposedMm === null) return [<Empty key="to" />, <Empty key="tube" />, <Empty key="slide" />]
  const changeMm = proposedMm - nowMm
  return (
    <>
      <td className="proposed">
        {proposed ?? lengthFigure(proposedMm, unit)}
        {held ? <span className="mark">{loopTableWords.atBound}</span> : null}
      </td>
      <td>{signedLength(changeMm, unit)}</td>
      <td>{signedLength(changeMm / 2, unit)}</td>
    </>
  )
}

function Empty(): ReactNode {
  return <td className="none">·</td>
}

/** A change of length with its sign; what rounds to nothing has none. */
export function signedLength(changeMm: number, unit: 'mm' | 'in', digits = 1): string {
  const figure = lengthFigure(changeMm, unit, digits)
  return changeMm > 0 && /[1-9]/.test(figure) ? `+${figure}` : figure
}

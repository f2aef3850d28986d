import type { ReactNode } from 'react'
import type { Bore } from '#shared/workbook/bore.ts'
import type { BoreInput } from '#shared/workbook/boreInput.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { Fold } from '../../fields/Fold.tsx'
import { boreWords } from '../../words/bore.ts'
import type { BoreAnswer } from '../../worker/boreAnswer.ts'
import { FitPanel } from './FitPanel.tsx'

export interface FitProps {
  readonly design: Design
  readonly bore: Bore
  readonly input: BoreInput
  readonly answer: BoreAnswer | null
}

/** The fit of a bore to its targets, opened when it is wanted. */
export function FitFold(props: FitProps): ReactNode {
  return (
    <Fold title={boreWords.fit} hint={boreWords.fitHint}>
      {() => <FitPanel {...props} />}
    </Fold>
  )
}

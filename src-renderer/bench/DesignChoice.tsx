import type { ReactNode } from 'react'
import { Choice } from '../fields/Choice.tsx'
import { useWorkbook } from '../state/workbookStore.ts'
import { benchWords } from '../words/bench.ts'

interface DesignChoiceProps {
  readonly designId: string
  readonly take: (designId: string) => void
}

/** Which design a job is for. One that has gone stays named until another is chosen. */
export function DesignChoice({ designId, take }: DesignChoiceProps): ReactNode {
  const designs = useWorkbook((state) => state.workbook?.designs) ?? []
  const known = designs.map(({ id, name }) => ({ value: id, text: name }))
  const gone = known.some(({ value }) => value === designId)
    ? []
    : [{ value: designId, text: benchWords.notInWorkbook(designId) }]
  return <Choice label={benchWords.design} value={designId} options={[...gone, ...known]} take={take} />
}

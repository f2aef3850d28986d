import type { ReactNode } from 'react'
import { bridge } from '../../bridge/bridge.ts'
import { Segments } from '../../fields/Choice.tsx'
import { printingWords } from '../../words/benchPrinting.ts'
import { useBench } from '../benchStore.ts'
import { printSheet } from './paper.ts'

interface PrintButtonsProps {
  readonly name: string
  /** What is printed, where it is not the sheet that lies ready. */
  readonly print?: (to: 'printer' | 'pdf', name: string) => Promise<void>
  readonly texts?: { readonly print: string; readonly pdf: string }
}

/** Prints the job's sheet, or something else. A browser offers the PDF in its own print dialog. */
export function PrintButtons({
  name,
  print = printSheet,
  texts = printingWords,
}: PrintButtonsProps): ReactNode {
  const paper = useBench((state) => state.paper)
  return (
    <>
      <button
        type="button"
        className={texts === printingWords ? 'main' : undefined}
        onClick={() => void print('printer', name)}
      >
        {texts.print}
      </button>
      {bridge.form === 'desktop' ? (
        <button type="button" onClick={() => void print('pdf', name)}>
          {texts.pdf}
        </button>
      ) : null}
      <Segments
        label={printingWords.paper}
        value={paper}
        options={[
          { value: 'A4', text: printingWords.papers.A4 },
          { value: 'Letter', text: printingWords.papers.Letter },
        ]}
        take={(value) => useBench.setState({ paper: value })}
      />
    </>
  )
}

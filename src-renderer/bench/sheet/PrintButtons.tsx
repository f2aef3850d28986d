import type { ReactNode } from 'react'
import { bridge } from '../../bridge/bridge.ts'
import { Segments } from '../../fields/Choice.tsx'
import { useBench } from '../benchStore.ts'
import { printSheet } from './paper.ts'

interface PrintButtonsProps {
  readonly name: string
  /** What is printed, where it is not the sheet that lies ready. */
  readonly print?: (to: 'printer' | 'pdf', name: string) => Promise<void>
  readonly texts?: { readonly print: string; readonly pdf: string }
}

const sheetTexts = { print: 'Print sheet', pdf: 'Sheet as PDF' }

/** Prints the job's sheet, or something else. A browser offers the PDF in its own print dialog. */
export function PrintButtons({ name, print = printSheet, texts = sheetTexts }: PrintButtonsProps): ReactNode {
  const paper = useBench((state) => state.paper)
  return (
    <>
      <button
        type="button"
        className={texts === sheetTexts ? 'main' : undefined}
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
        label="Paper"
        labelHidden
        value={paper}
        options={[
          { value: 'A4', text: 'A4' },
          { value: 'Letter', text: 'Letter' },
        ]}
        take={(value) => useBench.setState({ paper: value })}
      />
    </>
  )
}

import type { ReactNode } from 'react'
import { bridge } from '../../bridge/bridge.ts'
import { Segments } from '../../fields/Choice.tsx'
import { useBench } from '../benchStore.ts'
import { printSheet } from './paper.ts'

/** Prints the job's sheet. A browser offers the PDF in its own print dialog. */
export function PrintButtons({ name }: { readonly name: string }): ReactNode {
  const paper = useBench((state) => state.paper)
  return (
    <>
      <button type="button" className="main" onClick={() => void printSheet('printer', name)}>
        Print sheet
      </button>
      {bridge.form === 'desktop' ? (
        <button type="button" onClick={() => void printSheet('pdf', name)}>
          Sheet as PDF
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

import { type ReactNode, useMemo } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { HarmonicRow } from '#shared/tuning/harmonicSeries.ts'
import { Fold } from '../../fields/Fold.tsx'
import type { DerivedDesign } from '../../state/derived.ts'
import { useSettings } from '../../state/settings.ts'
import { harmonicsTable } from '../../tables/picturesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { harmonicWords, partWords, pictureWords } from '../../words/pictures.ts'
import { PictureFrame } from '../PictureFrame.tsx'
import { PictureHead } from '../PictureHead.tsx'
import { HarmonicsPicture } from './HarmonicsPicture.tsx'
import { harmonicRowsOf } from './harmonicRowsOf.ts'

/** The harmonic series of the open route against the tempered scale. */
export function HarmonicsPage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { design } = derived
  const rows = useMemo(() => harmonicRowsOf(derived), [derived])
  return (
    <>
      <PictureHead part="harmonics" />
      <PictureFrame
        name={pictureWords.fileOf(partWords.harmonics.name, design.name)}
        least={660}
        draw={(width) => <HarmonicsPicture design={design.name} rows={rows} width={width} />}
      />
      <Fold title={pictureWords.figures} hint={pictureWords.figuresHint}>
        {() => <HarmonicsTable design={design.name} rows={rows} />}
      </Fold>
    </>
  )
}

interface HarmonicsTableProps {
  readonly design: string
  readonly rows: readonly HarmonicRow[]
}

function HarmonicsTable({ design, rows }: HarmonicsTableProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const { columns, tableOf, foot } = harmonicWords
  return (
    <div className="tableFrame">
      <TableOut name={tableOf(design)} table={() => harmonicsTable(design, rows, spelling)} />
      <table className="figures pictureTable">
        <caption className="unseen">{tableOf(design)}</caption>
        <thead>
          <tr>
            {Object.values(columns).map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.harmonic}>
              <th scope="row">{row.harmonic}</th>
              <td>{plainFigure(row.hz, 2)}</td>
              <td>{plainFigure(row.intervalCents, 1)}</td>
              <td>{signedCents(row.centsFromScale)}</td>
              <td>{noteName(row.midi, spelling)}</td>
              <td>{signedCents(row.errorCents)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft">{foot}</p>
    </div>
  )
}

import { type ReactNode, useMemo } from 'react'
import { briefFigure, signedCents } from '#shared/quantity/figures.ts'
import type { TubeRuler } from '#shared/tuning/tubeRuler.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import { Segments } from '../../fields/Choice.tsx'
import { Fold } from '../../fields/Fold.tsx'
import { lengthFigure } from '../../fields/LengthField.tsx'
import type { DerivedDesign } from '../../state/derived.ts'
import { useSettings } from '../../state/settings.ts'
import { useView } from '../../state/viewStore.ts'
import { rulerTable } from '../../tables/picturesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { partWords, pictureWords, rulerWords as words } from '../../words/pictures.ts'
import { isNothing } from '../company/companySteps.ts'
import { PictureFrame } from '../PictureFrame.tsx'
import { PictureHead } from '../PictureHead.tsx'
import { usePressed } from '../picturesStore.ts'
import { RulerPicture } from './RulerPicture.tsx'
import { rulerOf } from './rulerOf.ts'

/** For each fingering the tube it has against the tube it needs. */
export function RulerPage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const which = useView((state) => state.which)
  const pressed = usePressed(derived)
  const { design, tables } = derived
  const ruler = useMemo(() => rulerOf(derived, which), [derived, which])
  const fits = ruler.rows.every(({ missingMm }) => isNothing(missingMm))
  const whole = which === 'all' ? tables.combinations.length : ruler.rows.length
  return (
    <>
      <PictureHead part="ruler" look={fits ? words.lookFits : undefined}>
        <Segments
          label={words.which}
          labelHidden
          value={which}
          options={[
            { value: 'usual', text: words.usual },
            { value: 'all', text: words.all },
          ]}
          take={(value) => useView.setState({ which: value })}
        />
      </PictureHead>
      <PictureFrame
        name={pictureWords.fileOf(partWords.ruler.name, design.name)}
        draw={(width) => (
          <RulerPicture design={design.name} ruler={ruler} width={width} marked={fingeringName(pressed)} />
        )}
      />
      {ruler.rows.length < whole ? <p className="soft">{words.onlySome(ruler.rows.length, whole)}</p> : null}
      <Fold title={pictureWords.figures} hint={pictureWords.figuresHint}>
        {() => <RulerTable design={design.name} ruler={ruler} />}
      </Fold>
    </>
  )
}

interface RulerTableProps {
  readonly design: string
  readonly ruler: TubeRuler
}

function RulerTable({ design, ruler }: RulerTableProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { columns } = words
  const withUnit = new Set<string>([columns.has, columns.needs, columns.missing])
  return (
    <div className="tableFrame">
      <TableOut name={words.tableOf(design)} table={() => rulerTable(design, ruler, unit)} />
      <table className="figures pictureTable">
        <caption className="unseen">{words.tableOf(design)}</caption>
        <thead>
          <tr>
            {Object.values(columns).map((column) => (
              <th key={column} scope="col" className={column === columns.loops ? 'wide' : undefined}>
                {withUnit.has(column) ? `${column}, ${unit}` : column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ruler.rows.map((row) => (
            <tr key={row.fingering}>
              <th scope="row">{row.fingering}</th>
              <td>{briefFigure(row.semitones, 2)}</td>
              <td className="wide">{row.pieces.map(({ name }) => name).join(', ')}</td>
              <td>{lengthFigure(row.lengthMm, unit)}</td>
              <td>{lengthFigure(row.requiredLengthMm, unit)}</td>
              <td>{lengthFigure(row.missingMm, unit)}</td>
              <td>{signedCents(row.errorCents)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

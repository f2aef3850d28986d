import { memo, type ReactNode, useMemo } from 'react'
import type { FingeringModes } from '#shared/bore/fingeringModes.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import type { Inks } from '../../curves/inkOfTheme.ts'
import { PictureOut } from '../../picture/PictureOut.tsx'
import type { KeyEntry } from '../../picture/pictureKey.ts'
import { svgElement as element } from '../../picture/svgElement.ts'
import { useSettings } from '../../state/settings.ts'
import { modelsTable } from '../../tables/boreTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import { useBoreView } from '../boreStore.ts'
import { ModelsPicture } from './ModelsPicture.tsx'
import { largestDifference, modelsColumns } from './modelsColumns.ts'
import { Scrolling } from './Scrolling.tsx'

interface ModelsViewProps {
  readonly designName: string
  readonly modes: readonly FingeringModes[]
}

/** Both models side by side for every fingering, and in words where they differ most. */
export const ModelsView = memo(function ModelsView({ designName, modes }: ModelsViewProps): ReactNode {
  const { firstMode, lastMode, against } = useBoreView()
  const bandCents = useSettings((settings) => settings.bandCents)
  const columns = useMemo(
    () => modelsColumns(modes, [firstMode, lastMode], against),
    [modes, firstMode, lastMode, against],
  )
  const numbers = Array.from({ length: lastMode - firstMode + 1 }, (_, i) => firstMode + i)
  const most = largestDifference(modes, [firstMode, lastMode])
  return (
    <>
      <PictureOut name={boreTitles.models(designName)} keyOf={modelsKey}>
        <ModelsPicture
          columns={columns}
          modes={numbers}
          against={against}
          bandCents={bandCents}
          label={boreWords.modelsLabel(columns.length)}
        />
      </PictureOut>
      <p className="chartKey">
        <span>
          <svg width="30" height="12" aria-hidden="true" className="boreKey">
            <path className="lengthModel" d="M1 6H29" />
          </svg>{' '}
          {boreWords.lengthModelKey}
        </span>
        <span>
          <svg width="30" height="12" aria-hidden="true" className="boreKey">
            <path className="boreLine" d="M1 9L15 4L29 7" />
            <circle className="boreMark" cx="15" cy="5" r="3.6" />
          </svg>{' '}
          {boreWords.boreKey}
        </span>
        <span>
          <svg width="10" height="12" aria-hidden="true" className="boreKey">
            <circle className="boreMark shallow" cx="5" cy="6" r="2" />
          </svg>{' '}
          {boreWords.shallowKey}
        </span>
      </p>
      {most === null ? null : (
        <p className="modelsSays">
          {boreWords.differMost(most.fingering, most.mode, signedCents(most.cents))}
        </p>
      )}
    </>
  )
})

/** The key as it is drawn above a saved picture. */
function modelsKey(inks: Inks): readonly KeyEntry[] {
  const blue = inks.ofSeries(0)
  const mark = { fill: blue, stroke: inks.paper }
  const shallow = { fill: inks.paper, stroke: blue }
  const line = { fill: 'none', stroke: blue, 'stroke-width': 1.4 }
  return [
    {
      name: boreWords.lengthModelKey,
      sample: (x, y) => element('path', { d: `M${x} ${y}h36`, stroke: inks.brass, 'stroke-width': 3.5 }),
    },
    {
      name: boreWords.boreKey,
      sample: (x, y) =>
        element('path', { d: `M${x} ${y + 3}l18 -5l18 3`, ...line }) +
        element('circle', { cx: x + 18, cy: y - 2, r: 3.6, ...mark }),
    },
    {
      name: boreWords.shallowKey,
      sample: (x, y) => element('circle', { cx: x + 18, cy: y, r: 2, ...shallow }),
    },
  ]
}

/** Both models as figures: a row for each fingering. */
export const ModelsTable = memo(function ModelsTable({ designName, modes }: ModelsViewProps): ReactNode {
  const { firstMode, lastMode } = useBoreView()
  const numbers = Array.from({ length: lastMode - firstMode + 1 }, (_, i) => firstMode + i)
  return (
    <>
      <TableOut
        name={boreTitles.models(designName)}
        table={() => modelsTable(designName, modes, [firstMode, lastMode])}
      />
      <Scrolling label={boreWords.modelsCaption} className="tableScroll">
        <table className="figures boreFigures models">
          <caption>{boreWords.modelsCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{boreWords.fingering}</th>
              <th scope="col">{boreWords.lengthModel}</th>
              {numbers.map((mode) => (
                <th scope="col" key={mode}>
                  {boreWords.modeNumber(mode)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {modes.map(({ fingering, modes: own }) => (
              <tr key={fingering}>
                <th scope="row">{fingering}</th>
                <td>{centsOr(own.find((each) => each.errorCents !== null)?.lengthModelErrorCents)}</td>
                {numbers.map((number) => {
                  const mode = own[number - 1]
                  return (
                    <td key={number} className={mode?.errorCents == null ? 'none' : undefined}>
                      {centsOr(mode?.errorCents)}
                      {mode?.differenceCents == null ? null : <i>{signedCents(mode.differenceCents)}</i>}
                    </td>
                  )
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </>
  )
})

function centsOr(cents: number | null | undefined): string {
  return cents === null || cents === undefined ? '·' : signedCents(cents)
}

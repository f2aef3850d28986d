import type { ReactNode } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { allEqualSlip } from '#shared/bench/slips/pitchSlips.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { fitTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { benchWords } from '../../words/bench.ts'
import { readingsWords } from '../../words/benchReadings.ts'
import { tableWords } from '../../words/table.ts'
import { titles } from '../../words/tableHeadings.ts'
import { keyOfJob, useJob } from '../benchStore.ts'
import { Findings } from '../Findings.tsx'
import { JobHead } from '../JobHead.tsx'
import { NothingYet } from '../NothingYet.tsx'
import { PrintButtons } from '../sheet/PrintButtons.tsx'
import { ReadingsSheet } from '../sheet/ReadingsSheet.tsx'
import { Answers } from './Answers.tsx'
import { PasteRows } from './PasteRows.tsx'
import { ReadingsChart } from './ReadingsChart.tsx'
import { ReadingsFields } from './ReadingsFields.tsx'
import { ReadingsTable } from './ReadingsTable.tsx'
import { sortedRemarks } from './remarkOrder.ts'
import { TakeFit } from './TakeFit.tsx'
import { useFit } from './useFit.ts'

/** From a tuner to lengths: readings on the left, what they say on the right, what speaks against it first. */
export function ReadingsPage(): ReactNode {
  const workbook = useWorkbook((state) => state.workbook)
  const readings = useJob('readings')
  if (workbook === null || readings === null) return <NothingYet list="readings" />
  return <ReadingsJobPage key={keyOfJob('readings', readings.id)} workbook={workbook} readings={readings} />
}

interface ReadingsJobPageProps {
  readonly workbook: Workbook
  readonly readings: BenchReadings
}

function ReadingsJobPage({ workbook, readings }: ReadingsJobPageProps): ReactNode {
  const { placed, fit } = useFit(workbook, readings)
  const design = placed.kind === 'placed' ? placed.design : null
  const fitted = fit?.kind === 'fitted' ? fit : null
  const used = readings.rows.filter(({ leaveOut }) => leaveOut !== true).map(({ cents }) => cents)
  const equal = allEqualSlip('rows', used)?.message
  return (
    <>
      <JobHead list="readings" name={readings.id} notes={readings.notes} />
      <div className="jobColumns readings">
        <div className="jobFields">
          <ReadingsFields readings={readings} />
          {design === null ? null : (
            <>
              <ReadingsTable workbook={workbook} readings={readings} design={design} fit={fitted} />
              <PasteRows workbook={workbook} readings={readings} design={design} />
            </>
          )}
        </div>
        <div className="jobResult">
          {placed.kind === 'unplaced' ? (
            <Findings title={readingsWords.cannot} messages={[benchWords.gone[placed.field]]} />
          ) : null}
          {fit?.kind === 'refused' ? (
            <Findings title={readingsWords.cannot} messages={fit.findings.map(({ message }) => message)} />
          ) : null}
          {fit === null && placed.kind === 'placed' ? (
            <p className="empty">{readingsWords.noReadings}</p>
          ) : null}
          {fitted !== null && design !== null ? (
            <Fitted readings={readings} design={design} fit={fitted} equal={equal} />
          ) : null}
        </div>
      </div>
      {fitted !== null && design !== null ? (
        <ReadingsSheet workbook={workbook} readings={readings} design={design} fit={fitted} />
      ) : null}
    </>
  )
}

interface FittedProps {
  readonly readings: BenchReadings
  readonly design: Design
  readonly fit: ReadingsFit
  readonly equal: string | undefined
}

function Fitted({ readings, design, fit, equal }: FittedProps): ReactNode {
  const { grave, mild } = sortedRemarks(fit)
  const unit = useSettings((settings) => settings.unit)
  return (
    <>
      <Findings
        title={readingsWords.beforeCutting}
        messages={equal === undefined ? grave : [equal, ...grave]}
      />
      <Answers fit={fit} design={design} />
      <TableOut
        name={titles.fit(readings.id)}
        label={tableWords.fit}
        table={() => fitTable(readings.id, fit, design, unit)}
      />
      <ReadingsChart readings={readings} fit={fit} />
      <Findings title={readingsWords.toKnow} messages={mild} mild />
      <TakeFit fit={fit} design={design} />
      <div className="jobButtons">
        <PrintButtons name={readings.id} />
      </div>
    </>
  )
}

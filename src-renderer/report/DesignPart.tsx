import type { ReactNode } from 'react'
import { briefFigure, lengthText, plainFigure } from '#shared/quantity/figures.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { Fact } from '../bench/sheet/Fact.tsx'
import { today } from '../bench/sheet/today.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { loopsTable } from '../tables/loopsTable.ts'
import { reportWords as words } from '../words/report.ts'
import { targetWords } from '../words/strip.ts'
import { PaperTable } from './PaperTable.tsx'

/** What the report is of, and what everything in it is measured against. */
export function ReportHead({ workbook }: { readonly workbook: Workbook }): ReactNode {
  const { notes } = workbook
  return (
    <header>
      <h1>{words.heading(workbook.name)}</h1>
      <dl className="sheetFacts">
        <Fact name={words.date}>{today()}</Fact>
        <ReferenceFacts workbook={workbook} />
        {notes === undefined || notes === '' ? null : <Fact name={words.notes}>{notes}</Fact>}
      </dl>
    </header>
  )
}

/** Pitch, temperament and air: every figure on paper goes by them. */
export function ReferenceFacts({ workbook: { reference, air } }: { readonly workbook: Workbook }): ReactNode {
  const { temperament, a4Hz } = reference
  const key = 'key' in temperament ? ` ${targetWords.on} ${temperament.key}` : ''
  const humidity = plainFigure(100 * air.relativeHumidity, 0)
  const degrees = (celsius: number): string => `${briefFigure(celsius, 1)} °C`
  return (
    <>
      <Fact name={words.reference}>{briefFigure(a4Hz, 1)} Hz</Fact>
      <Fact name={words.temperament}>{`${targetWords.temperaments[temperament.kind]}${key}`}</Fact>
      <Fact name={words.air}>{`${degrees(air.temperatureC)}, ${humidity} %`}</Fact>
      {air.playingTemperatureC === undefined ? null : (
        <Fact name={words.played}>{degrees(air.playingTemperatureC)}</Fact>
      )}
    </>
  )
}

/** A design's instrument, valves and loops. */
export function DesignPart({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { design, tables } = derived
  const valves = design.valves.map(({ id, semitones }) => words.semitones(id, briefFigure(semitones, 2)))
  return (
    <section className="reportDesign">
      <h2>{design.name}</h2>
      <dl className="sheetFacts">
        <Fact name={words.fundamental}>{`${plainFigure(design.instrument.fundamentalHz, 2)} Hz`}</Fact>
        <Fact name={words.openLength}>{lengthText(tables.mainSlide.openMm, unit)}</Fact>
        <Fact name={words.valves}>{valves.length === 0 ? words.noValves : valves.join(', ')}</Fact>
      </dl>
      {design.loops.length === 0 ? (
        <p>{words.noLoops}</p>
      ) : (
        <PaperTable table={{ ...loopsTable(design, unit), title: words.loops }} />
      )}
    </section>
  )
}

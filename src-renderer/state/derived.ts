import { useMemo } from 'react'
import type { Instrument } from '#shared/tuning/instrument.ts'
import { type TuningTables, tuningTables } from '#shared/tuning/tables.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import { airWarnings, designWarnings } from '#shared/workbook/sanity/sanityWarnings.ts'
import type { Warning } from '#shared/workbook/sanity/warning.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useView } from './viewStore.ts'
import { useWorkbook } from './workbookStore.ts'

/** A design with all that is derived from it. */
export interface DerivedDesign {
  readonly design: Design
  readonly instrument: Instrument
  readonly tables: TuningTables
  /** Its place in the line-up, which gives its colour, dash and marker. */
  readonly series: number
}

interface Derivation {
  readonly air: Workbook['air']
  readonly reference: Workbook['reference']
  readonly series: number
  readonly derived: DerivedDesign
}

/** Values are immutable, so a design that is the same object has the same tables. */
const known = new WeakMap<Design, Derivation>()

/** The tables of a design, computed once for each value of design, air and targets. */
export function derive(workbook: Workbook, design: Design, series: number): DerivedDesign {
  const { air, reference } = workbook
  const present = known.get(design)
  if (present?.air === air && present.reference === reference && present.series === series)
    return present.derived
  const instrument = instrumentOf(workbook, design)
  const derived = { design, instrument, tables: tuningTables(instrument), series }
  known.set(design, { air, reference, series, derived })
  return derived
}

/** Every design of the open workbook, derived, in the line-up's order. */
export function useDerived(): readonly DerivedDesign[] {
  const workbook = useWorkbook((state) => state.workbook)
  return useMemo(
    () => workbook?.designs.map((design, series) => derive(workbook, design, series)) ?? [],
    [workbook],
  )
}

/** The designs whose curves are shown. */
export function useVisible(): readonly DerivedDesign[] {
  const all = useDerived()
  const hidden = useView((state) => state.hidden)
  return useMemo(() => all.filter(({ design }) => !hidden.has(design.id)), [all, hidden])
}

/** The selected design; the first one when none is selected or the selected one is gone. */
export function useSelectedDesign(): DerivedDesign | null {
  const all = useDerived()
  const designId = useView((state) => state.designId)
  return all.find(({ design }) => design.id === designId) ?? all[0] ?? null
}

/** What looks like a slip in the workbook's air and in one design. */
export function useWarnings({ design, tables, series }: DerivedDesign): readonly Warning[] {
  const air = useWorkbook((state) => state.workbook?.air)
  const ofAir = useMemo(() => (air === undefined ? [] : airWarnings(air)), [air])
  const ofDesign = useMemo(() => designWarnings(design, tables, series), [design, tables, series])
  return useMemo(() => [...ofAir, ...ofDesign], [ofAir, ofDesign])
}

import { create } from 'zustand'

/** Parts of the report, in the order in which they are offered. */
export const reportParts = [
  'designs',
  'comparison',
  'curves',
  'pictures',
  'combinations',
  'chart',
  'bore',
  'bench',
] as const
export type ReportPart = (typeof reportParts)[number]

/** The parts that are ticked, kept while the program runs. Pictures are for a class, and not for a bench. */
export const useReport = create<{ readonly parts: ReadonlySet<ReportPart> }>()(() => ({
  parts: new Set(reportParts.filter((part) => part !== 'pictures')),
}))

/** Ticks a part, or takes the tick away. */
export function tickPart(part: ReportPart, isTicked: boolean): void {
  useReport.setState(({ parts }) => {
    const next = new Set(parts)
    if (isTicked) next.add(part)
    else next.delete(part)
    return { parts: next }
  })
}

import { type HarmonicRow, harmonicSeries } from '#shared/tuning/harmonicSeries.ts'
import type { DerivedDesign } from '../../state/derived.ts'

/** Harmonics drawn: to the sixteenth at least, so that all the known ones are there, and no more than fit. */
const [fewest, most] = [16, 24]

/** The harmonics of the open route, beside the scale on its fundamental. */
export function harmonicRowsOf({ instrument, tables }: DerivedDesign): readonly HarmonicRow[] {
  const highest = Math.min(most, Math.max(fewest, instrument.harmonics[1]))
  return harmonicSeries(instrument, tables.mainSlide.openMm, highest)
}

import type { InCompany } from '#shared/tuning/inCompany.ts'
import { companyWords as words } from '../../words/pictures.ts'

/** The tube that one set of valves has and needs. */
export interface CompanyRow {
  readonly name: string
  readonly lengthMm: number
  readonly requiredLengthMm: number
  readonly errorCents: number
}

/** Each set of valves by itself, and the fingering without its further loops. */
export function companyRows(apart: InCompany): readonly CompanyRow[] {
  const { open, alone, company, together, furtherMm } = apart
  const named = [alone, company].map((row) => ({ ...row, name: row.fingering }))
  const before: CompanyRow = {
    name: words.before(together.fingering),
    lengthMm: together.lengthMm - furtherMm,
    requiredLengthMm: together.requiredLengthMm,
    errorCents: apart.errorBeforeCents,
  }
  return [
    { ...open, name: words.openRow },
    ...named,
    ...(furtherMm > 0 && apart.gone.length === 0 ? [before] : []),
    { ...together, name: together.fingering },
  ]
}

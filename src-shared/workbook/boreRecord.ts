import { prepareBody } from '../bore/body.ts'
import { describeFingerings, type FingeringModes } from '../bore/fingeringModes.ts'
import { accepted, type BoreResult, refused } from '../bore/refusal.ts'
import type { SliceReport } from '../bore/slicing.ts'
import { nameInValveOrder } from '../valves/fingering.ts'
import { fingeringsOf } from '../valves/fingerings.ts'
import { type BoreInput, boreInput, refusalInFile } from './boreInput.ts'
import type { Design, Workbook } from './workbook.ts'

/** What the resonances of a design's bore are, fingering by fingering. */
export interface DesignModes {
  readonly design: Design
  readonly input: BoreInput
  readonly fingerings: readonly FingeringModes[]
  readonly slicing: SliceReport
}

/** The record of the headless `bore` command. Numbers are unrounded. */
export interface BoreRecord {
  readonly designs: readonly {
    readonly id: string
    readonly fingerings: readonly BoreFingeringRecord[]
  }[]
}

/** One fingering's modes in lists: what stands at `[n − 1]` belongs to mode n. */
export interface BoreFingeringRecord {
  readonly fingering: string
  readonly peaksHz: readonly number[]
  /** |Z| at the peaks, Pa·s/m³. */
  readonly heights: readonly number[]
  /** f/n against the fingering's own nominal fundamental; `null` when there are fewer than two modes to fit it to. */
  readonly equivalentFundamentalCents: readonly (number | null)[]
  /** The open route's modes lowered by the ratio of the lengths; `null` for a mode that the open route has not. */
  readonly lengthModelHz: readonly (number | null)[]
}

/**
 * The modes of a design's bore, to mode 16: of every fingering of the design, or of the one named, its valves in
 * whatever order. What cannot be reckoned is refused with its path in the file.
 *
 * @param index the design's place in the workbook
 * @example designModes(workbook, 0, '1-2')
 */
export function designModes(workbook: Workbook, index: number, only?: string): BoreResult<DesignModes> {
  const design = workbook.designs[index]
  const at = `designs[${index}]`
  const whole = design === undefined ? null : boreInput(workbook, design)
  if (design?.bore === undefined || whole === null) return refused(`${at}.bore`, 'nothing', 'a bore')
  const input = only === undefined ? whole : withOnly(whole, nameInValveOrder(only, idsOf(design)))
  if (input.fingerings.length === 0 && only !== undefined)
    return refused(`${at}.fingerings`, only, 'a fingering of the design')
  const found = modesOf(input)
  if (!found.ok) return { ok: false, refusal: refusalInFile(found.refusal, workbook.air, design.bore, at) }
  return accepted({ design, input, ...found.value })
}

/**
 * Whether a design has a fingering of that name, its valves in whatever order.
 *
 * @example hasFingering(design, '2-1') // true where 1-2 is one
 */
export function hasFingering(design: Design, typed: string): boolean {
  const name = nameInValveOrder(typed, idsOf(design))
  return fingeringsOf(design.valves, design.fingerings ?? 'all').some((each) => each.name === name)
}

function idsOf({ valves }: Design): readonly string[] {
  return valves.map(({ id }) => id)
}

function withOnly(input: BoreInput, only: string): BoreInput {
  return { ...input, fingerings: input.fingerings.filter(({ fingering }) => fingering === only) }
}

function modesOf(input: BoreInput): BoreResult<Pick<DesignModes, 'fingerings' | 'slicing'>> {
  const body = prepareBody(input.sections, input.conditions)
  if (!body.ok) return body
  const described = describeFingerings(body.value, input.open, input.fingerings)
  if (!described.ok) return described
  return accepted({ fingerings: described.value, slicing: body.value.slicing })
}

/**
 * The headless record of some designs' modes.
 *
 * @example boreRecord([modes]).designs[0]?.fingerings[0]?.peaksHz
 */
export function boreRecord(designs: readonly DesignModes[]): BoreRecord {
  return {
    designs: designs.map(({ design, fingerings }) => ({
      id: design.id,
      fingerings: fingerings.map(fingeringRecord),
    })),
  }
}

function fingeringRecord({ fingering, modes }: FingeringModes): BoreFingeringRecord {
  return {
    fingering,
    peaksHz: modes.map(({ hz }) => hz),
    heights: modes.map(({ heightPaSPerM3 }) => heightPaSPerM3),
    equivalentFundamentalCents: modes.map(({ equivalentFundamentalCents }) => equivalentFundamentalCents),
    lengthModelHz: modes.map(({ lengthModelHz }) => lengthModelHz),
  }
}

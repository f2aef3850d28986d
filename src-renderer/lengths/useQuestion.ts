import { useMemo } from 'react'
import { chosenProblem } from '#shared/solve/lengthChoices.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import type { LengthRefusal } from '#shared/solve/lengthRefusal.ts'
import type { MovableSlide } from '#shared/solve/slideMovement.ts'
import { type BoreInput, boreInput } from '#shared/workbook/boreInput.ts'
import type { WorkbookAir } from '#shared/workbook/workbook.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { type LengthsState, useLengths } from '../state/lengthsStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { designToSolve, movedSlides } from './played.ts'

/** What the solver is asked about one design. */
export interface Question {
  readonly derived: DerivedDesign
  readonly problem: LengthProblem
  /** Slides whose reach is counted; none unless that was chosen. */
  readonly counted: readonly MovableSlide[]
  /** The bore whose resonances are aimed at; `null` when it is the lengths. */
  readonly bore: BoreInput | null
}

export type Asked = Question | { readonly refusals: readonly LengthRefusal[] }

type Chosen = Pick<
  LengthsState,
  'aim' | 'objective' | 'openFree' | 'openEnds' | 'weights' | 'freedoms' | 'moved' | 'reachCounts'
>

/** The question about a design under the page's choices. */
export function questionOf(derived: DerivedDesign, chosen: Chosen, air: WorkbookAir | undefined): Asked {
  const { id } = derived.design
  const { lowestMm, highestMm } = chosen.openEnds
  const counted = chosen.reachCounts ? movedSlides(derived, chosen.moved.get(id)) : []
  const problem = chosenProblem(designToSolve(derived), {
    objective: chosen.objective,
    open: chosen.openFree
      ? {
          kind: 'free',
          ...(lowestMm === undefined ? {} : { lowestChangeMm: lowestMm }),
          ...(highestMm === undefined ? {} : { highestChangeMm: highestMm }),
        }
      : { kind: 'held' },
    freedoms: chosen.freedoms.get(id) ?? new Map(),
    weights: chosen.weights,
    slides: counted,
  })
  const bore = chosen.aim === 'lengths' || air === undefined ? null : boreInput({ air }, derived.design)
  return 'refusals' in problem ? problem : { derived, problem, counted, bore }
}

/** The questions about some designs, the same objects while nothing in them changes. */
export function useQuestions(designs: readonly DerivedDesign[]): readonly Asked[] {
  const air = useWorkbook((state) => state.workbook?.air)
  const aim = useLengths((state) => state.aim)
  const objective = useLengths((state) => state.objective)
  const openFree = useLengths((state) => state.openFree)
  const openEnds = useLengths((state) => state.openEnds)
  const weights = useLengths((state) => state.weights)
  const freedoms = useLengths((state) => state.freedoms)
  const moved = useLengths((state) => state.moved)
  const reachCounts = useLengths((state) => state.reachCounts)
  return useMemo(() => {
    const chosen = { aim, objective, openFree, openEnds, weights, freedoms, moved, reachCounts }
    return designs.map((derived) => questionOf(derived, chosen, air))
  }, [designs, air, aim, objective, openFree, openEnds, weights, freedoms, moved, reachCounts])
}

import type { FittedLoop, ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { type SlideMove, slideMove } from '#shared/bench/readings/slideMove.ts'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { readingsWords as words } from '../../words/benchReadings.ts'

/** What the readings say of one loop, in words. */
export interface AnswerRow {
  readonly loop: string
  /** How far it is off, or how long it is where no length is wanted. */
  readonly off: string
  /** How sure that is. */
  readonly doubt: string
  /** `nothing`: there is nothing to change; `doubtful`: it may be nothing; `clear` otherwise. */
  readonly kind: 'clear' | 'doubtful' | 'nothing'
  readonly slide: string | null
  readonly newLoop: string | null
  readonly firstCut: string | null
}

/** Lengths below this are shown as nothing, mm. */
const leastShownMm = 0.05

/** A row for each loop that the readings settle. No length is given to cut while the readings contradict each other. */
export function answerRows(fit: ReadingsFit, design: Design, unit: 'mm' | 'in'): readonly AnswerRow[] {
  const figure = (mm: number): string => lengthFigure(mm, unit)
  const isHeld = cutsAreHeld(fit)
  return Object.entries(fit.loops).map(([id, loop]) => {
    const name = loopNamed(design.loops, id)
    const { targetMm, changeMm, changeStandardErrorMm: errorMm, firstCutMm } = loop
    if (targetMm === null || changeMm === null || errorMm === null || firstCutMm === null)
      return {
        loop: name,
        off: words.is(figure(loop.value)),
        doubt: figure(loop.standardError),
        kind: 'clear',
        slide: null,
        newLoop: null,
        firstCut: null,
      }
    const kind = kindOf(changeMm, errorMm)
    const move = slideMove(changeMm, slideOf(design, id))
    const isNothing = kind === 'nothing'
    return {
      loop: name,
      off: isNothing ? words.nothing : words.offBy(figure(Math.abs(changeMm)), changeMm < 0),
      doubt: figure(errorMm),
      kind,
      slide: isNothing || isHeld ? null : words.slideMove(figure(move.movementMm), move.way),
      newLoop: isNothing || isHeld ? null : figure(targetMm),
      firstCut: isNothing || isHeld ? null : figure(firstCutMm),
    }
  })
}

/** Whether a reading is so far off, or they disagree so much, that nothing should be cut by them. */
export function cutsAreHeld({ remarks }: ReadingsFit): boolean {
  return remarks.some(({ kind }) => ['farOff', 'disagree', 'notConverged', 'negativeLength'].includes(kind))
}

function kindOf(changeMm: number, errorMm: number): AnswerRow['kind'] {
  if (Math.abs(changeMm) < leastShownMm) return 'nothing'
  return Math.abs(changeMm) <= 2 * errorMm ? 'doubtful' : 'clear'
}

function slideOf(design: Design, id: string) {
  return design.loops.find((each) => each.id === id)?.slide
}

/** What does not fit into the rows: slides that cannot do it all, lengths exact for their own fingering, the open length. */
export function answerSentences(fit: ReadingsFit, design: Design, unit: 'mm' | 'in'): readonly string[] {
  const { openLengthMm: open, loops, harmonicOffsetsCents, referenceHarmonic } = fit
  const text = (mm: number): string => lengthText(mm, unit)
  const ofLoops = Object.entries(loops).flatMap(([id, loop]) => {
    const name = loopNamed(design.loops, id)
    return [...leftOver(name, loop, slideMoveOf(design, id, loop), text), ...exact(name, loop, text)]
  })
  const openSentence =
    open === null ? words.openUnsettled : words.open(text(open.value), text(open.standardError))
  const offsets = Object.entries(harmonicOffsetsCents)
    .filter(([harmonic]) => Number(harmonic) !== referenceHarmonic)
    .map(([harmonic, { value, standardError }]) =>
      words.offset(harmonic, signedCents(value), plainFigure(standardError, 1), referenceHarmonic),
    )
  const isDoubtful = Object.values(loops).some(
    ({ changeMm, changeStandardErrorMm }) =>
      changeMm !== null && kindOf(changeMm, changeStandardErrorMm ?? 0) === 'doubtful',
  )
  return [
    ...(isDoubtful ? [words.takeMore] : []),
    ...(cutsAreHeld(fit) ? [words.cutsHeld] : ofLoops),
    openSentence,
    ...offsets,
  ]
}

function slideMoveOf(design: Design, id: string, { changeMm }: FittedLoop): SlideMove | null {
  return changeMm === null ? null : slideMove(changeMm, slideOf(design, id))
}

/** What a slide that has not room enough leaves to do; tube to take off is given short by what a first cut spares. */
function leftOver(
  name: string,
  { targetMm, firstCutMm }: FittedLoop,
  move: SlideMove | null,
  text: (mm: number) => string,
): readonly string[] {
  if (move === null || move.leftMm < leastShownMm || targetMm === null || firstCutMm === null) return []
  const isAtEnd = move.movementMm < leastShownMm
  const start = isAtEnd
    ? words.slideAtEnd(name, move.way)
    : words.slideHas(name, text(move.movementMm), move.way)
  if (move.way === 'out') return [words.andAdd(start, text(move.leftMm))]
  const sureMm = move.leftMm - (firstCutMm - targetMm)
  return [words.andTakeOff(start, text(move.leftMm), sureMm < leastShownMm ? null : text(sureMm))]
}

function exact(
  name: string,
  { targetMm, exactMm }: FittedLoop,
  text: (mm: number) => string,
): readonly string[] {
  if (targetMm === null || exactMm === null || text(exactMm) === text(targetMm)) return []
  return [words.exactWouldBe(name, text(exactMm))]
}

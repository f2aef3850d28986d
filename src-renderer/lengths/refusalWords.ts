import type { LengthAnswer } from '#shared/solve/lengthAnswer.ts'
import type { LengthRefusal } from '#shared/solve/lengthRefusal.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { lengthRefusalWords } from '../words/lengthsVerdict.ts'

/** What an answer has to be told in words: why there are no lengths, or what to know about them. */
export function answerWords(answer: LengthAnswer, derived: DerivedDesign): readonly string[] {
  if (answer.status === 'refused') return refusalWords(answer.refusals, derived)
  if (answer.status === 'programFailed') {
    return [lengthRefusalWords.programFailed(answer.reason)]
  }
  return [
    ...(answer.status === 'stopped' ? [lengthRefusalWords.stopped] : []),
    ...answer.undetermined.map((id) => lengthRefusalWords.undetermined(loopName(derived, id))),
  ]
}

/** Refusals in plain sentences, each once. */
export function refusalWords(refusals: readonly LengthRefusal[], derived: DerivedDesign): readonly string[] {
  return [...new Set(refusals.map((refusal) => sentence(refusal, derived)))]
}

function sentence({ kind, path, found, expected }: LengthRefusal, derived: DerivedDesign): string {
  const part = partOf(path, derived)
  switch (kind) {
    case 'nothingFree':
      return lengthRefusalWords.nothingFree
    case 'allWeightsZero':
      return lengthRefusalWords.allWeightsZero
    case 'boundsContradict':
      return lengthRefusalWords.boundsContradict(part, shortened(found), shortened(expected))
    case 'tiedInCircle':
      return lengthRefusalWords.tiedInCircle(capital(part))
    case 'routeVanishes':
      return lengthRefusalWords.routeVanishes(part, shortened(found), expected)
    case 'notSounded':
      return aimWords.notSounded(shortened(found), shortened(expected))
    case 'outOfRange':
      return path.endsWith('.reach')
        ? lengthRefusalWords.reachOutOfRange(part, shortened(found), shortened(expected))
        : lengthRefusalWords.other(capital(part), shortened(found), shortened(expected))
    default:
      return lengthRefusalWords.other(capital(part), shortened(found), expected)
  }
}

/** What a path within the problem is called on the page. */
function partOf(path: string, derived: DerivedDesign): string {
  const [, list, index] = /^(loops|rows)\[(\d+)\]/.exec(path) ?? []
  if (list === 'loops') return loopName(derived, derived.design.loops[Number(index)]?.id ?? '')
  if (list === 'rows') return rowName(derived, Number(index))
  return path.startsWith('open') ? lengthRefusalWords.openNote : lengthRefusalWords.design
}

/** The problem's rows are the design's fingerings, unless the open one had to be put before them. */
function rowName({ tables: { fingerings } }: DerivedDesign, index: number): string {
  const name = fingerings.some((each) => each.name === '0') ? fingerings[index]?.name : undefined
  return name === undefined
    ? lengthRefusalWords.aFingering
    : name === '0'
      ? lengthRefusalWords.openNote
      : lengthRefusalWords.fingering(name)
}

/** A loop as it is called on the page. */
export function loopName({ design }: DerivedDesign, loopId: string): string {
  return loopNamed(design.loops, loopId)
}

/** Numbers in a refusal are unrounded; a tenth is what a sentence needs. A path at its end is for programs. */
function shortened(text: string): string {
  return text
    .replace(/, because of .*$/, '')
    .replace(/-?\d+\.\d+/g, (figure) => Number(figure).toFixed(1))
    .replace(/-(?=\d)/g, '−')
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

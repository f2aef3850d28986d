import type { LengthAnswer } from '#shared/solve/lengthAnswer.ts'
import type { LengthRefusal } from '#shared/solve/lengthRefusal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { aimWords } from '../words/lengthsAim.ts'

/** What an answer has to be told in words: why there are no lengths, or what to know about them. */
export function answerWords(answer: LengthAnswer, derived: DerivedDesign): readonly string[] {
  if (answer.status === 'refused') return refusalWords(answer.refusals, derived)
  if (answer.status === 'programFailed') {
    return [`The linear programs gave no answer (${answer.reason}). The least rms may still be had.`]
  }
  const stopped =
    'The search ran out of steps: these are the best lengths found, perhaps not the best there are.'
  return [
    ...(answer.status === 'stopped' ? [stopped] : []),
    ...answer.undetermined.map(
      (id) =>
        `No counted fingering says how long ${loopName(derived, id)} should be: it stays as near as may be.`,
    ),
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
      return 'Nothing is free. Free a loop, or the open note.'
    case 'allWeightsZero':
      return 'Every fingering is left out. Count at least one.'
    case 'boundsContradict':
      return `The bounds of ${part} contradict each other: found at most ${shortened(found)} mm, expected ${shortened(expected)} mm.`
    case 'tiedInCircle':
      return `${capital(part)} is tied in a circle. A tie must end at a loop that is free or held.`
    case 'routeVanishes':
      return `These choices leave ${part} no tube at all: found ${shortened(found)}, expected ${expected}.`
    case 'notSounded':
      return aimWords.notSounded(shortened(found), shortened(expected))
    case 'outOfRange':
      return path.endsWith('.reach')
        ? `The slides' travel is more than the route of ${part} holds: found ${shortened(found)}, expected ${shortened(expected)}.`
        : `${capital(part)}: found ${shortened(found)}, expected ${shortened(expected)}.`
    default:
      return `${capital(part)}: found ${shortened(found)}, expected ${expected}.`
  }
}

/** What a path within the problem is called on the page. */
function partOf(path: string, derived: DerivedDesign): string {
  const [, list, index] = /^(loops|rows)\[(\d+)\]/.exec(path) ?? []
  if (list === 'loops') return loopName(derived, derived.design.loops[Number(index)]?.id ?? '')
  if (list === 'rows') return rowName(derived, Number(index))
  return path.startsWith('open') ? 'the open note' : 'the design'
}

/** The problem's rows are the design's fingerings, unless the open one had to be put before them. */
function rowName({ tables: { fingerings } }: DerivedDesign, index: number): string {
  const name = fingerings.some((each) => each.name === '0') ? fingerings[index]?.name : undefined
  return name === undefined ? 'a fingering' : name === '0' ? 'the open note' : `fingering ${name}`
}

/** A loop as it is called on the page. */
export function loopName({ design }: DerivedDesign, loopId: string): string {
  const loop = design.loops.find(({ id }) => id === loopId)
  return loop?.name ?? loop?.id ?? loopId
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

import { ascending } from './ascending.ts'
import { compensating } from './compensating.ts'
import { compensatingDouble, fullDouble } from './double.ts'
import { cutOff, independentByCombination, independentByStep } from './independent.ts'
import type { SystemParts } from './parts.ts'
import { plain, plainWithLongValves } from './plain.ts'

/** A valve system to start from. */
export interface System {
  readonly id: string
  readonly name: string
  /** One sentence: how the air runs. */
  readonly description: string
  readonly family: 'plain' | 'compensating' | 'double' | 'independent' | 'historic'
  /** Valves and loops for an instrument of this effective open length, mm. */
  readonly build: (openLengthMm: number) => SystemParts
}

/** The systems a new design may start from, in the order they are offered. Everything is editable afterwards. */
export const systems: readonly System[] = [
  {
    id: 'plain-2',
    name: 'Plain, two valves',
    description: 'A whole tone and a semitone; one loop a valve.',
    family: 'plain',
    build: (openLengthMm) => plain(openLengthMm, [2, 1]),
  },
  {
    id: 'plain-3',
    name: 'Plain, three valves',
    description: 'One loop a valve; loops pressed together are simply added.',
    family: 'plain',
    build: (openLengthMm) => plain(openLengthMm, [2, 1, 3]),
  },
  {
    id: 'plain-4',
    name: 'Plain, four valves',
    description: 'Three valves and a fourth of a perfect fourth.',
    family: 'plain',
    build: (openLengthMm) => plain(openLengthMm, [2, 1, 3, 5]),
  },
  {
    id: 'plain-5',
    name: 'Plain, five valves',
    description: 'Four valves and a long whole tone, made for the company of the fourth.',
    family: 'plain',
    build: (openLengthMm) => plainWithLongValves(openLengthMm, [2, 1, 3, 5], [2]),
  },
  {
    id: 'plain-6',
    name: 'Plain, six valves',
    description: 'Four valves, a long whole tone and a long semitone, made for the company of the fourth.',
    family: 'plain',
    build: (openLengthMm) => plainWithLongValves(openLengthMm, [2, 1, 3, 5], [2, 1]),
  },
  {
    id: 'compensating-3',
    name: 'Compensating, three valves',
    description: 'The third valve sends the air through further loops of the first and second.',
    family: 'compensating',
    build: (openLengthMm) => compensating(openLengthMm, [2, 1, 3], 3),
  },
  {
    id: 'compensating-4',
    name: 'Compensating, four valves',
    description: 'The fourth valve sends the air through further loops of the other three.',
    family: 'compensating',
    build: (openLengthMm) => compensating(openLengthMm, [2, 1, 3, 5], 4),
  },
  {
    id: 'compensating-3-plain-4',
    name: 'Compensating block of three, plain fourth',
    description: 'The third valve compensates the first two; the fourth is a plain loop.',
    family: 'compensating',
    build: (openLengthMm) => compensating(openLengthMm, [2, 1, 3, 5], 3),
  },
  {
    id: 'double',
    name: 'Double, full',
    description: 'A change valve T, a fourth apart, and a set of loops on each side.',
    family: 'double',
    build: (openLengthMm) => fullDouble(openLengthMm, [2, 1, 3], 5),
  },
  {
    id: 'double-compensating',
    name: 'Double, compensating',
    description: 'The short side’s loops serve both sides; the long side adds a little to each.',
    family: 'double',
    build: (openLengthMm) => compensatingDouble(openLengthMm, [2, 1, 3], 5),
  },
  {
    id: 'independent-step',
    name: 'Independent, a loop a step',
    description: 'Six valves, used one at a time: nothing is added up.',
    family: 'independent',
    build: (openLengthMm) => independentByStep(openLengthMm, [1, 2, 3, 4, 5, 6]),
  },
  {
    id: 'independent-combination',
    name: 'Independent, a loop a combination',
    description: 'Each combination of three valves opens a loop of its own.',
    family: 'independent',
    build: (openLengthMm) => independentByCombination(openLengthMm, [2, 1, 3]),
  },
  {
    id: 'cut-off',
    name: 'Cut-off, six valves',
    description: 'Open is the longest route; each valve cuts tube off, one valve at a time.',
    family: 'historic',
    build: (openLengthMm) => cutOff(openLengthMm, 6),
  },
  {
    id: 'ascending-3',
    name: 'Ascending third',
    description: 'The third valve takes a whole tone of tube out of the open route.',
    family: 'historic',
    build: (openLengthMm) => ascending(openLengthMm, [2, 1], 2),
  },
  {
    id: 'early-2',
    name: 'Early order, semitone first',
    description: 'Two valves; the first is the semitone, the second the whole tone.',
    family: 'historic',
    build: (openLengthMm) => plain(openLengthMm, [1, 2]),
  },
]

/** The system of that id; `undefined` when there is none. */
export function systemOf(id: string): System | undefined {
  return systems.find((system) => system.id === id)
}

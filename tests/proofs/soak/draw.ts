import type { Gate, Loop } from '#shared/valves/loop.ts'
import type { SystemParts } from '#shared/valves/systems/parts.ts'
import { systems } from '#shared/valves/systems/systems.ts'
import type { BenchList } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import { designFromSystem, freshId } from '#shared/workbook/newWorkbook.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import type { Chance } from '../chance.ts'
import { hostileNames } from '../hostile/hostileValues.ts'

/** One in so many arguments is one that no window would give. */
const wildOneIn = 12
const wildNumbers = [Number.NaN, Number.POSITIVE_INFINITY, -1, 0, -0, 1e-320, 1e308, 0.5, 64.5]

/** Draws arguments for commands out of a workbook: most fit it, some do not. */
export class Draw {
  readonly chance: Chance
  readonly workbook: Workbook

  constructor(chance: Chance, workbook: Workbook) {
    this.chance = chance
    this.workbook = workbook
  }

  wild(): boolean {
    return this.chance.below(wildOneIn) === 0
  }

  number(low: number, high: number): number {
    return this.wild() ? this.chance.of(wildNumbers) : low + (high - low) * this.chance.share()
  }

  whole(low: number, high: number): number {
    return this.wild() ? this.chance.of(wildNumbers) : low + this.chance.below(high - low + 1)
  }

  name(): string {
    return this.wild()
      ? this.chance.of(hostileNames)
      : this.chance.of(['Bass', 'third', 'long', 'כן', '👩‍🔧']) + this.chance.below(100)
  }

  flag(): boolean {
    return this.chance.share() < 0.5
  }

  /** A value, or nothing, for what may be left out. */
  perhaps<T>(value: T): T | undefined {
    return this.chance.share() < 0.25 ? undefined : value
  }

  design(): Design {
    return this.workbook.designs.length === 0 ? this.newDesign() : this.chance.of(this.workbook.designs)
  }

  designId(): string {
    return this.wild() ? 'nobody' : this.design().id
  }

  newDesign(): Design {
    const taken = this.workbook.designs.map(({ id }) => id)
    const id = this.wild() ? (taken[0] ?? 'first') : freshId('design', taken)
    return designFromSystem(this.workbook, this.chance.of(systems), { fundamentalHz: 43.654 }, id)
  }

  parts(): SystemParts {
    return this.chance.of(systems).build(this.number(1000, 4000))
  }

  loop({ loops }: Design): Loop {
    return loops.length === 0 || this.wild() ? this.newLoop(this.design()) : this.chance.of(loops)
  }

  newLoop(design: Design): Loop {
    const taken = design.loops.map(({ id }) => id)
    const id = this.wild() ? (taken[0] ?? 'L') : freshId('loop', taken)
    return { id, lengthMm: this.number(0, 400), ...this.gate(design) }
  }

  gate(design: Design): Gate {
    const pressed = this.pressed(design)
    return this.flag() ? { pressed } : { pressed, released: this.pressed(design) }
  }

  valveId({ valves }: Design): string {
    return valves.length === 0 || this.wild() ? 'nobody' : this.chance.of(valves).id
  }

  pressed(design: Design): readonly string[] {
    const ids = design.valves.map(({ id }) => id).filter(() => this.chance.share() < 0.4)
    return this.wild() ? [...ids, this.name()] : ids
  }

  jobId(list: BenchList): string {
    const jobs: readonly { readonly id: string }[] = jobsOf(this.workbook, list)
    return jobs.length === 0 || this.wild() ? 'nobody' : this.chance.of(jobs).id
  }
}

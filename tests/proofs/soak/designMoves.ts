import type { Command } from '#shared/workbook/commands/command.ts'
import * as designs from '#shared/workbook/commands/designCommands.ts'
import * as lengths from '#shared/workbook/commands/lengthCommands.ts'
import * as taking from '#shared/workbook/commands/takeIntoDesign.ts'
import { takeLoops } from '#shared/workbook/commands/takeLoops.ts'
import * as valves from '#shared/workbook/commands/valveCommands.ts'
import type { Draw } from './draw.ts'

/** Makes a command with arguments that are drawn. */
export type Move = (draw: Draw) => Command

const onLoop =
  (command: (designId: string, loop: ReturnType<Draw['loop']>, draw: Draw) => Command): Move =>
  (draw) => {
    const design = draw.design()
    return command(draw.wild() ? 'nobody' : design.id, draw.loop(design), draw)
  }

/** Every command on a design, its valves and its loops, by the name of its function. */
export const designMoves: Readonly<Record<string, Move>> = {
  setInstrument: (draw) => {
    const id = draw.designId()
    return draw.chance.of([
      () => designs.setInstrument(id, 'fundamentalHz', draw.number(20, 200)),
      () => designs.setInstrument(id, 'boreLengthMm', draw.perhaps(draw.number(500, 4000))),
      () => designs.setInstrument(id, 'boreDiameterMm', draw.perhaps(draw.number(9, 20))),
      () => designs.setInstrument(id, 'transposition', draw.perhaps(draw.whole(-24, 24))),
      () => designs.setInstrument(id, 'harmonics', draw.perhaps([draw.whole(1, 4), draw.whole(4, 16)])),
      () =>
        designs.setInstrument(
          id,
          'harmonicOffsetsCents',
          draw.perhaps({ [draw.whole(1, 12)]: draw.number(-20, 20) }),
        ),
    ])()
  },
  setHarmonicOffset: (draw) =>
    designs.setHarmonicOffset(draw.designId(), draw.whole(1, 16), draw.chance.of([0, draw.number(-20, 20)])),
  setMainSlidePosition: (draw) =>
    designs.setMainSlidePosition(
      draw.designId(),
      draw.perhaps({ outMm: draw.number(0, 20), travelMm: draw.number(0, 60) }),
    ),
  moveMainSlide: (draw) => designs.moveMainSlide(draw.designId(), draw.number(0, 20)),
  setFingerings: (draw) => {
    const design = draw.design()
    const some = [
      { pressed: [] },
      { pressed: draw.pressed(design) },
      { pressed: draw.pressed(design), semitones: draw.whole(1, 9) },
    ]
    return designs.setFingerings(design.id, draw.flag() ? 'all' : some)
  },
  chooseFingering: (draw) => {
    const design = draw.design()
    const choice = { pressed: draw.pressed(design), harmonic: draw.whole(1, 12) }
    return designs.chooseFingering(design.id, draw.whole(20, 90), draw.perhaps(choice) ?? null)
  },
  replaceSystem: (draw) => designs.replaceSystem(draw.designId(), draw.name(), draw.parts()),
  setOpenDetuning: (draw) =>
    lengths.setOpenDetuning(draw.designId(), draw.chance.of([0, draw.number(-30, 30)])),
  takeLoops: (draw) => {
    const design = draw.design()
    const rows = design.loops.slice(0, 3).map(({ id, name }, line) => ({
      line,
      name: draw.wild() ? draw.name() : (name ?? id),
      lengthMm: draw.number(20, 500),
      ...(draw.flag() ? {} : draw.gate(design)),
    }))
    return takeLoops(design.id, rows, draw.chance.of(['added', 'added', 'replaced']))
  },
  takeIntoDesign: (draw) => {
    const { id, loops } = draw.design()
    const loopsMm = Object.fromEntries(loops.slice(1).map((loop) => [loop.id, draw.number(20, 500)]))
    const more = draw.flag()
      ? {}
      : {
          fundamentalHz: draw.number(20, 200),
          boreLengthMm: draw.number(500, 4000),
          harmonicOffsetsCents: { '3': draw.number(-9, 9) },
          openDetuningCents: draw.chance.of([0, draw.number(-20, 20)]),
        }
    return taking.takeIntoDesign(draw.name(), id, { loopsMm, ...more })
  },
  addValve: (draw) => {
    const design = draw.design()
    const id = draw.wild() ? draw.name() : `v${design.valves.length + 1}`
    const valve = { id, semitones: draw.number(1, 6) }
    return draw.flag()
      ? valves.addValve(design.id, valve)
      : valves.addValve(design.id, valve, { ...draw.newLoop(design), pressed: [id] })
  },
  setValveDrop: (draw) => {
    const design = draw.design()
    return valves.setValveDrop(design.id, draw.valveId(design), draw.number(0.5, 7))
  },
  renameValve: (draw) => {
    const design = draw.design()
    return valves.renameValve(
      design.id,
      draw.valveId(design),
      draw.wild() ? draw.name() : `n${draw.chance.below(50)}`,
    )
  },
  moveValve: (draw) => {
    const design = draw.design()
    return valves.moveValve(design.id, draw.valveId(design), draw.whole(-3, 3))
  },
  removeValve: (draw) => {
    const design = draw.design()
    return valves.removeValve(design.id, draw.valveId(design))
  },
  addLoop: (draw) => {
    const design = draw.design()
    return valves.addLoop(design.id, draw.newLoop(design))
  },
  removeLoop: onLoop((id, loop) => valves.removeLoop(id, loop)),
  setLoopLength: onLoop((id, loop, draw) => valves.setLoopLength(id, loop, draw.number(0, 600))),
  renameLoop: onLoop((id, loop, draw) => valves.renameLoop(id, loop, draw.chance.of(['', draw.name()]))),
  setGate: (draw) => {
    const design = draw.design()
    return valves.setGate(design.id, draw.loop(design), draw.gate(design))
  },
  setLoopDiameter: onLoop((id, loop, draw) =>
    valves.setLoopDiameter(id, loop, draw.perhaps(draw.number(8, 20))),
  ),
  setLoopBendRadius: onLoop((id, loop, draw) =>
    valves.setLoopBendRadius(id, loop, draw.perhaps(draw.number(12, 40))),
  ),
  moveLoopSlide: onLoop((id, loop, draw) => valves.moveLoopSlide(id, loop, draw.number(0, 20))),
  setLoopTravel: onLoop((id, loop, draw) => valves.setLoopTravel(id, loop, draw.number(0, 60))),
}

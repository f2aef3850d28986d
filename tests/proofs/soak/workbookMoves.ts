import type { BenchList } from '#shared/workbook/bench.ts'
import * as bench from '#shared/workbook/commands/benchCommands.ts'
import * as readings from '#shared/workbook/commands/readingCommands.ts'
import * as workbooks from '#shared/workbook/commands/workbookCommands.ts'
import { freshJobName, newPitchChange, newReadings, newSlide } from '#shared/workbook/newJobs.ts'
import type { Move } from './designMoves.ts'
import type { Draw } from './draw.ts'

const lists: readonly BenchList[] = ['slides', 'readings', 'pitchChanges']

function reading(draw: Draw) {
  return { pressed: draw.pressed(draw.design()), harmonic: draw.whole(1, 12), cents: draw.number(-40, 40) }
}

function newJobName(draw: Draw, list: BenchList): string {
  const taken: readonly { readonly id: string }[] = bench.jobsOf(draw.workbook, list)
  return draw.wild()
    ? draw.name()
    : freshJobName(
        'job',
        taken.map(({ id }) => id),
      )
}

/** Every command on the workbook and its bench, by the name of its function. */
export const workbookMoves: Readonly<Record<string, Move>> = {
  renameWorkbook: (draw) => workbooks.renameWorkbook(draw.name()),
  setNotes: (draw) => workbooks.setNotes(draw.chance.of(['', draw.name()])),
  setA4: (draw) => workbooks.setA4(draw.number(415, 466)),
  setTemperament: (draw) =>
    workbooks.setTemperament(
      draw.chance.of([
        { kind: 'equal' },
        { kind: 'meantone', key: draw.wild() ? draw.name() : 'F' },
        { kind: 'custom', cents: Array.from({ length: draw.wild() ? 11 : 12 }, () => draw.number(-30, 30)) },
      ]),
    ),
  setAir: (draw) => {
    const field = draw.chance.of([
      'temperatureC',
      'relativeHumidity',
      'co2Fraction',
      'pressurePa',
      'playingTemperatureC',
    ] as const)
    const value = {
      temperatureC: 24,
      relativeHumidity: 0.5,
      co2Fraction: 0.0004,
      pressurePa: 101_325,
      playingTemperatureC: 27,
    }[field]
    return workbooks.setAir(field, draw.wild() ? undefined : draw.number(0.9 * value, 1.1 * value))
  },
  setTuning: (draw) =>
    workbooks.setTuning(draw.chance.of([{ kind: 'none' }, { kind: 'open', harmonic: draw.whole(1, 12) }])),
  addDesign: (draw) => workbooks.addDesign(draw.newDesign()),
  duplicateDesign: (draw) => {
    const id = draw.designId()
    return workbooks.duplicateDesign(id, draw.wild() ? id : workbooks.copyIdOf(draw.workbook, id))
  },
  renameDesign: (draw) => workbooks.renameDesign(draw.designId(), draw.name()),
  moveDesign: (draw) => workbooks.moveDesign(draw.designId(), draw.whole(-3, 3)),
  removeDesign: (draw) => workbooks.removeDesign(draw.designId()),
  addJob: (draw) => {
    const design = draw.design()
    const list = draw.chance.of(lists)
    const name = newJobName(draw, list)
    if (list === 'slides') return bench.addJob(list, newSlide(name, design, draw.loop(design)))
    if (list === 'readings') return bench.addJob(list, newReadings(name, draw.workbook, design))
    return bench.addJob(list, newPitchChange(name, draw.workbook, design))
  },
  removeJob: (draw) => {
    const list = draw.chance.of(lists)
    return bench.removeJob(list, draw.jobId(list))
  },
  renameJob: (draw) => {
    const list = draw.chance.of(lists)
    return bench.renameJob(list, draw.jobId(list), newJobName(draw, list))
  },
  setJob: (draw) =>
    draw.chance.of([
      () => bench.setJob('slides', draw.jobId('slides'), 'outerLegMm', draw.number(10, 90), 'Outer leg'),
      () =>
        bench.setJob('slides', draw.jobId('slides'), 'travelMm', draw.perhaps(draw.number(0, 60)), 'Travel'),
      () => bench.setJob('readings', draw.jobId('readings'), 'a4Hz', draw.number(415, 466), 'Tuner'),
      () =>
        bench.setJob('readings', draw.jobId('readings'), 'openHeld', draw.perhaps(draw.flag()), 'Open held'),
      () =>
        bench.setJob(
          'pitchChanges',
          draw.jobId('pitchChanges'),
          'fromA4Hz',
          draw.number(415, 466),
          'Old pitch',
        ),
    ])(),
  setPitchTo: (draw) => {
    const id = draw.jobId('pitchChanges')
    const called = draw.flag() ? id : newJobName(draw, 'pitchChanges')
    return bench.setPitchTo(id, draw.number(415, 466), called, 'New pitch')
  },
  setSlideLoop: (draw) => {
    const design = draw.design()
    return bench.setSlideLoop(draw.jobId('slides'), design.id, draw.loop(design).id)
  },
  addReadings: (draw) =>
    readings.addReadings(
      draw.jobId('readings'),
      Array.from({ length: draw.chance.of([1, 1, 6]) }, () => reading(draw)),
    ),
  replaceReadings: (draw) => readings.replaceReadings(draw.jobId('readings'), [reading(draw), reading(draw)]),
  setReading: (draw) =>
    readings.setReading(
      draw.jobId('readings'),
      draw.chance.below(6),
      draw.flag() ? reading(draw) : { cents: draw.number(-40, 40) },
    ),
  leaveOutReading: (draw) =>
    readings.leaveOutReading(draw.jobId('readings'), draw.chance.below(6), draw.flag()),
  removeReading: (draw) => readings.removeReading(draw.jobId('readings'), draw.chance.below(6)),
}

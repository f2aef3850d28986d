import type { ProfileSection } from '#shared/bore/section.ts'
import { startingBores } from '#shared/bore/startingBores.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import * as bores from '#shared/workbook/commands/boreCommands.ts'
import * as shapes from '#shared/workbook/commands/boreShapeCommands.ts'
import type { Move } from './designMoves.ts'
import type { Draw } from './draw.ts'

/** A place in a bore of the usual count of sections, or beyond it. */
function place(draw: Draw): number {
  return draw.whole(0, 7)
}

function section(draw: Draw): DesignSection {
  return draw.chance.of<DesignSection>([
    { kind: 'cup', volumeMm3: draw.number(500, 9000) },
    { kind: 'cylinder', lengthMm: draw.number(1, 500), diameterMm: draw.number(5, 20) },
    {
      kind: 'cone',
      lengthMm: draw.number(1, 500),
      startDiameterMm: draw.number(5, 20),
      endDiameterMm: draw.number(5, 20),
    },
    {
      kind: 'bell',
      lengthMm: draw.number(100, 900),
      startDiameterMm: 12,
      endDiameterMm: draw.number(10, 200),
      flare: draw.number(0.4, 1),
    },
    { kind: 'valves', diameterMm: draw.number(9, 18) },
    profile(draw),
  ])
}

function profile(draw: Draw): ProfileSection {
  return { kind: 'profile', points: [0, 40, 90].map((xMm) => [xMm, draw.number(10, 60)] as const) }
}

/** Every command on a design's bore, by the name of its function. */
export const boreMoves: Readonly<Record<string, Move>> = {
  setBore: (draw) =>
    bores.setBore(draw.designId(), draw.perhaps({ sections: draw.chance.of(startingBores).sections })),
  startBore: (draw) => bores.startBore(draw.designId(), draw.chance.of(startingBores)),
  setBoreSetting: (draw) => {
    const id = draw.designId()
    return draw.chance.of([
      () => bores.setBoreSetting(id, 'mouth', draw.perhaps('open')),
      () => bores.setBoreSetting(id, 'bellTemperatureC', draw.perhaps(draw.number(15, 30))),
      () =>
        bores.setBoreSetting(
          id,
          'targets',
          draw.perhaps([{ mode: draw.whole(1, 9), cents: draw.number(-20, 20) }]),
        ),
      () => bores.setBoreSetting(id, 'harmonicWeights', draw.perhaps([draw.number(0, 1), 1])),
    ])()
  },
  addSection: (draw) => bores.addSection(draw.designId(), place(draw), section(draw)),
  removeSection: (draw) => bores.removeSection(draw.designId(), place(draw)),
  moveSection: (draw) => bores.moveSection(draw.designId(), place(draw), draw.whole(-3, 3)),
  changeSection: (draw) => bores.changeSection(draw.designId(), place(draw), section(draw)),
  setSectionValue: (draw) =>
    bores.setSectionValue(
      draw.designId(),
      place(draw),
      draw.chance.of([
        'lengthMm',
        'diameterMm',
        'startDiameterMm',
        'endDiameterMm',
        'flare',
        'volumeMm3',
      ] as const),
      draw.number(1, 200),
    ),
  renameSection: (draw) =>
    bores.renameSection(draw.designId(), place(draw), draw.chance.of(['', draw.name()])),
  takeSections: (draw) =>
    bores.takeSections(draw.designId(), draw.name(), draw.chance.of(startingBores).sections),
  moveBoreJoint: (draw) => shapes.moveBoreJoint(draw.designId(), place(draw), draw.number(-40, 40)),
  replaceByProfile: (draw) =>
    shapes.replaceByProfile(draw.designId(), place(draw), draw.whole(1, 2), profile(draw)),
}

import type { SlideMovement } from '#shared/solve/slideMovement.ts'
import type { ToleranceBand } from '#shared/solve/toleranceBands.ts'
import type { Table } from '#shared/table/table.ts'
import { gateWords } from '#shared/valves/gate.ts'
import { shownFingerings } from '../lengths/shownFingerings.ts'
import { slideName } from '../lengths/slideName.ts'
import type { Proposal } from '../lengths/useProposal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { headings, titles } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell, lengthCellOrNone, lengthColumn } from './lengthCell.ts'

/** Every loop and the open note's tube, as they stand and as proposed. */
export function proposedLoopsTable(
  { design, tables }: DerivedDesign,
  proposal: Proposal | null,
  unit: LengthUnit,
): Table {
  const openNowMm = tables.mainSlide.openMm - tables.mainSlide.inTuneOpenMm
  const row = (name: string, gate: string, nowMm: number, thenMm: number | null) => {
    const changeMm = thenMm === null ? null : thenMm - nowMm
    const halfMm = changeMm === null ? null : changeMm / 2
    const lengths = [nowMm, thenMm, changeMm, halfMm].map((mm) => lengthCellOrNone(mm, unit))
    return [name, gate, ...lengths]
  }
  return {
    title: titles.lengths(design.name),
    columns: [
      { heading: headings.loop },
      { heading: headings.pressed },
      ...[headings.now, headings.proposed, headings.change, headings.movement].map((heading) =>
        lengthColumn(heading, unit),
      ),
    ],
    rows: [
      ...design.loops.map((loop) =>
        row(
          loop.name ?? loop.id,
          gateWords(loop),
          loop.lengthMm,
          proposal?.lengths.lengthsMm[loop.id] ?? null,
        ),
      ),
      row(headings.open, '', openNowMm, proposal?.lengths.openChangeMm ?? null),
    ],
  }
}

/** Every listed fingering: its weight, its error now and as proposed, and whether it holds the largest. */
export function weighedTable(
  derived: DerivedDesign,
  weights: ReadonlyMap<string, number>,
  nowCents: ReadonlyMap<string, number>,
  proposal: Proposal | null,
): Table {
  const proposed = new Map(proposal?.lengths.rows.map((row) => [row.name, row]))
  return {
    title: titles.fingerings(derived.design.name),
    columns: [
      { heading: headings.fingering },
      { heading: headings.weight },
      centsColumn(headings.now),
      centsColumn(headings.proposed),
      { heading: headings.holds },
    ],
    rows: shownFingerings(derived).map(({ name }) => [
      name,
      weights.get(name) ?? 1,
      nowCents.get(name) ?? null,
      proposed.get(name)?.leftCents ?? null,
      proposed.get(name)?.holdsLargest === true ? headings.yes : '',
    ]),
  }
}

/** Where each fingering may come to lie. */
export function bandsTable(derived: DerivedDesign, bands: readonly ToleranceBand[]): Table {
  const byName = new Map(bands.map((band) => [band.name, band]))
  return {
    title: titles.doubt(derived.design.name),
    columns: [
      { heading: headings.fingering },
      centsColumn(headings.worstLowest),
      centsColumn(headings.worstHighest),
      centsColumn(headings.rssLowest),
      centsColumn(headings.rssHighest),
    ],
    rows: shownFingerings(derived).flatMap(({ name }) => {
      const band = byName.get(name)
      if (band === undefined) return []
      const { worstCase, rootSumSquare } = band
      return [
        [
          name,
          worstCase.lowestCents,
          worstCase.highestCents,
          rootSumSquare.lowestCents,
          rootSumSquare.highestCents,
        ],
      ]
    }),
  }
}

/** How far each fingering wants the slides out, a column a slide that is moved. */
export function movementsTable(
  derived: DerivedDesign,
  movements: readonly SlideMovement[],
  slides: readonly string[],
  unit: LengthUnit,
): Table {
  const byName = new Map(movements.map((movement) => [movement.name, movement]))
  return {
    title: titles.slides(derived.design.name),
    columns: [
      { heading: headings.fingering },
      centsColumn(headings.error),
      lengthColumn(headings.slideWanted, unit),
      ...slides.map((slide) => lengthColumn(headings.moved(slideName(derived, slide)), unit)),
      centsColumn(headings.left),
    ],
    rows: shownFingerings(derived).flatMap(({ name }) => {
      const movement = byName.get(name)
      if (movement === undefined) return []
      const out = (slide: string) => movement.moves.find((move) => move.slide === slide)?.outMm ?? 0
      return [
        [
          name,
          movement.errorCents,
          lengthCell(movement.neededOutMm, unit),
          ...slides.map((slide) => lengthCell(out(slide), unit)),
          movement.leftCents,
        ],
      ]
    }),
  }
}

/** What several designs reach, as they stand and at their best. */
export function systemsTable(
  rows: readonly {
    readonly derived: DerivedDesign
    readonly now: { readonly rmsCents: number; readonly largestCents: number } | null
    readonly best: { readonly rmsCents: number; readonly largestCents: number } | null
  }[],
): Table {
  const names = [headings.nowRms, headings.bestRms, headings.nowLargest, headings.bestLargest]
  return {
    title: titles.systems,
    columns: [{ heading: headings.design }, ...names.map(centsColumn)],
    rows: rows.map(({ derived, now, best }) => [
      derived.design.name,
      now?.rmsCents ?? null,
      best?.rmsCents ?? null,
      now?.largestCents ?? null,
      best?.largestCents ?? null,
    ]),
  }
}

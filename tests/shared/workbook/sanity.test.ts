import { describe, expect, it } from 'vitest'
import { lengthsRecord } from '#shared/solve/lengthsRecord.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { systems } from '#shared/valves/systems/systems.ts'
import { designFromSystem, emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import type { Warning } from '#shared/workbook/sanity/warning.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { loosened, workbookWith } from '../../fixtures/workbooks.ts'

const openMm = 3968.7
const programmer = await loadHighs()

/** The warnings of a plain three-valve bass in F after a change, without what every such bass is told. */
// biome-ignore lint/suspicious/noExplicitAny: a typed slip may be anything
function warningsAfter(slip: (file: any) => void, systemId = 'plain-3'): readonly Warning[] {
  const file = loosened(workbookWith(systemId))
  slip(file)
  const opened = openWorkbook(JSON.stringify(file))
  if (!opened.ok) throw new Error(opened.failure.message)
  const warnings = tablesRecord(opened.workbook).warnings
  expect(writeWorkbook(opened.workbook)).toBe(writeWorkbook(file))
  return warnings.filter(({ path }) => path !== 'designs[0].loops')
}

describe('warnings', () => {
  it.each(systems.map(({ id }) => id))(
    'are silent on a fresh design, but for combinations on another note: %s',
    (id) => {
      const system = systems.find((each) => each.id === id)!
      for (const fundamentalHz of [10, 29.1, 43.654, 116.5, 233, 2000]) {
        const empty = emptyWorkbook(id)
        const design = designFromSystem(empty, system, { fundamentalHz }, id)
        const { warnings } = tablesRecord({ ...empty, designs: [design] })
        expect(warnings.filter(({ path }) => path !== 'designs[0].loops')).toEqual([])
      }
    },
  )

  it('name the combinations that fall on another note', () => {
    const { warnings } = tablesRecord(workbookWith('compensating-4'))
    expect(warnings).toEqual([
      {
        path: 'designs[0].loops',
        found: '1-2-3-4 (+54)',
        expected: 'every usual fingering within 50 cents of its own note',
        message: 'Nearer to another note than to their own: 1-2-3-4 (+54).',
      },
    ])
    expect(tablesRecord(workbookWith('compensating-3')).warnings).toEqual([])
  })

  // 3968.66·2^(3/12) = 4719.55 mm wanted, 200 more found: 1200·log2(4719.55 / 4919.55) = −71.8.
  it('name a combination that is flat by as much', () => {
    const [design] = workbookWith('independent-combination').designs
    const loops = design!.loops.map((loop) =>
      loop.id === 'loop 1-2' ? { ...loop, lengthMm: loop.lengthMm + 200 } : loop,
    )
    const { warnings } = tablesRecord(workbookWith('independent-combination', { loops }))
    expect(warnings.filter(({ path }) => path === 'designs[0].loops')).toMatchObject([{ found: '1-2 (−72)' }])
  })

  // 3968.66·2^(k/12) mm wanted for k semitones, 200 more found: 1200·log2(4204.7 / 4404.7) = −80.45 for the first.
  it.each([
    [6, '1 (−80), 2 (−76), 3 (−72), 4 (−68), 5 (−64), 6 (−61)'],
    [7, '1 (−80), 2 (−76), 3 (−72), 4 (−68), 5 (−64) and 2 more'],
  ])('name all of %d combinations, or five of them', (count, found) => {
    const drops = Array.from({ length: count }, (_, i) => i + 1)
    const { warnings } = tablesRecord(
      workbookWith('plain-3', {
        valves: drops.map((semitones) => ({ id: `${semitones}`, semitones })),
        loops: drops.map((drop) => {
          const lengthMm = openMm * (2 ** (drop / 12) - 1) + 200
          return { id: `L${drop}`, lengthMm, pressed: [`${drop}`] }
        }),
        fingerings: drops.map((drop) => ({ pressed: [`${drop}`] })),
      }),
    )
    expect(warnings.filter(({ path }) => path === 'designs[0].loops')).toMatchObject([{ found }])
  })

  it('say that a second loop is longer than the first', () => {
    const warnings = warningsAfter((file) => (file.designs[0].loops[1].lengthMm = 500))
    expect(warnings.map(({ path }) => path)).toEqual([
      'designs[0].loops[1].lengthMm',
      'designs[0].loops[1].lengthMm',
    ])
    expect(warnings[1]).toMatchObject({
      found: '500.0 mm for a drop of 1 semitone',
      expected: 'less than the 486.0 mm of valve 1, a drop of 2 semitones',
    })
  })

  it('say that a loop adds tube where its valve is to rise', () => {
    const warnings = warningsAfter((file) => (file.designs[0].valves[2].semitones = -3))
    const third = warnings.filter(({ path }) => path === 'designs[0].loops[2].lengthMm')
    expect(third.map(({ message }) => message)).toEqual([
      'Found 750.9 mm of tube that 3 switches in; expected no more tube than open for a rise of 3 semitones: should the loop be in the route while the valve is up?',
    ])
    expect(warnings.map(({ path }) => path)).not.toContain('designs[0].loops[0].lengthMm')
  })

  it('say that the third loop was typed for the second’s', () => {
    const warnings = warningsAfter((file) => {
      file.designs[0].loops[1].lengthMm = file.designs[0].loops[2].lengthMm
    })
    expect(warnings.map(({ path }) => path)).toContain('designs[0].loops[1].lengthMm')
    expect(warnings.some(({ message }) => message.includes('are the two exchanged?'))).toBe(true)
  })

  it.each([
    ['one leg', 1 / 2, 'is it the length of one leg?'],
    ['both ways counted twice', 2, 'is it both ways counted twice?'],
    ['inches', 1 / 25.4, 'is it in inches?'],
    ['centimetres', 1 / 10, 'is it in centimetres?'],
    ['inches read as centimetres', 1 / 2.54, 'were inches read as centimetres?'],
    ['feet', 1 / 304.8, 'is it in feet?'],
    ['metres', 1 / 1000, 'is it in metres?'],
  ])('ask about a third loop typed as %s', (_, factor, question) => {
    const warnings = warningsAfter((file) => (file.designs[0].loops[2].lengthMm *= factor))
    const third = warnings.filter(({ path }) => path === 'designs[0].loops[2].lengthMm')
    expect(third).toHaveLength(1)
    expect(third[0]!.message).toContain(question)
    expect(third[0]!.expected).toBe('300 cents, 750.9 mm, for valve 3')
  })

  it.each([
    ['one leg', 1 / 2, 'is it the length of one leg?'],
    ['one leg of a loop made 4 cents long', 1.04 / 2, 'is it the length of one leg?'],
    ['inches read as centimetres', 1 / 2.54, 'were inches read as centimetres?'],
  ])('ask about a semitone loop typed as %s, though it is less than 60 cents off', (_, factor, question) => {
    const slip = (file: ReturnType<typeof loosened>) => (file.designs[0].loops[0].lengthMm *= factor)
    const [warning, ...others] = warningsAfter(slip, 'independent-step')
    expect(others).toEqual([])
    expect(warning).toMatchObject({
      path: 'designs[0].loops[0].lengthMm',
      expected: '100 cents, 236.0 mm, for valve 1',
    })
    expect(warning!.message).toContain(question)
  })

  it.each([
    ['independent-combination', 'loop 3', '750.9 mm, for valve 3'],
    ['independent-combination', 'loop 1-2', '750.9 mm, for 1-2 to drop 300 cents'],
    ['double', 'long body', '995.5 mm, for T to rise 500 cents'],
    ['double', 'long 3', '750.9 mm, for valve 3'],
    ['double', 'short 2', '176.8 mm, for 2-T to rise 400 cents'],
    ['double-compensating', 'main 3', '562.5 mm, for 3-T to rise 200 cents'],
    ['double-compensating', 'extra 1', '121.9 mm, for 1 to drop 200 cents'],
    ['compensating-4', 'C1', '162.7 mm, for 1-4 to drop 700 cents'],
    ['ascending-3', 'L3', '433.0 mm, for 3 to rise 200 cents'],
    ['cut-off', 'step 3', '187.3 mm, for 3 to rise 400 cents'],
  ])('name one leg in any system, and no other loop: %s, %s', (systemId, loopId, expected) => {
    const at = workbookWith(systemId).designs[0]!.loops.findIndex(({ id }) => id === loopId)
    const halved = warningsAfter((file) => (file.designs[0].loops[at].lengthMm /= 2), systemId)
    expect(halved.map(({ path }) => path)).toEqual([`designs[0].loops[${at}].lengthMm`])
    expect(halved[0]!.expected).toContain(expected)
    expect(halved[0]!.message).toContain('is it the length of one leg?')
  })

  it('say how far off a loop is from what its own fingering needs, in whatever company', () => {
    const warnings = warningsAfter((file) => (file.designs[0].loops[4].lengthMm = 500), 'double')
    expect(warnings).toEqual([
      {
        path: 'designs[0].loops[4].lengthMm',
        found: '500.0 mm for first, short side',
        expected: '364.1 mm, for 1-T to rise 300 cents',
        message: 'Found 500.0 mm for first, short side; expected 364.1 mm, for 1-T to rise 300 cents.',
      },
    ])
  })

  it('go by the drop that a design lists for a fingering', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      const { loops } = file.designs[0]
      loops[3].lengthMm = loops[1].lengthMm
      file.designs[0].fingerings = [{ pressed: [] }, { pressed: ['1', '2'], semitones: 1 }]
    }
    const ofPair = warningsAfter(slip, 'independent-combination').filter(
      ({ path }) => path === 'designs[0].loops[3].lengthMm',
    )
    expect(ofPair).toEqual([])
  })

  it('leave a compensating loop alone that suits the others as they stand', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      // The fourth loop 150 mm long, and what compensates it short by as much.
      file.designs[0].loops[3].lengthMm += 150
      for (const at of [4, 6]) file.designs[0].loops[at].lengthMm -= 150
    }
    expect(warningsAfter(slip, 'compensating-4')).toEqual([])
  })

  it('say nothing of a loop that always goes with another', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].loops[2].lengthMm /= 2
      file.designs[0].loops.push({ ...file.designs[0].loops[2], id: 'L3 too' })
    }
    expect(warningsAfter(slip)).toEqual([])
  })

  it.each(['rms', 'largest'] as const)(
    'ask about no slip in lengths found for the least error: %s',
    (objective) => {
      for (const { id } of systems) {
        const file = workbookWith(id)
        const [design] = file.designs
        const { valves, loops } = design!
        const asked = { free: loops.map((loop) => loop.id), openFree: false, leaveOut: [], objective }
        const toSolve = {
          openLengthMm: tablesRecord(file).designs[0]!.openLengthMm,
          valves,
          loops,
          fingerings: fingeringsOf(valves, design!.fingerings ?? 'all'),
        }
        const found = lengthsRecord(toSolve, asked, programmer)
        if (found.kind !== 'record') throw new Error(JSON.stringify(found))
        const { lengthsMm } = found.record
        const solved = {
          ...design!,
          loops: loops.map((loop) => ({ ...loop, lengthMm: lengthsMm[loop.id]! })),
        }
        const { warnings } = tablesRecord({ ...file, designs: [solved] })
        expect(warnings.filter(({ message }) => message.endsWith('?'))).toEqual([])
      }
    },
  )

  it('leave a loop alone that is 59 cents from its drop, and not one that is 61 off', () => {
    const off = (cents: number) =>
      warningsAfter(
        (file) => (file.designs[0].loops[2].lengthMm = openMm * (2 ** ((300 + cents) / 1200) - 1)),
      )
    expect(off(59)).toEqual([])
    expect(off(-59)).toEqual([])
    expect(off(61)).toHaveLength(1)
    expect(off(-61)).toHaveLength(1)
  })

  it.each([
    [7580, 'is the fundamental an octave off?'],
    [12434, 'were feet read as metres?'],
    [149.2, 'is it in inches?'],
    [379, 'is it in centimetres?'],
    [3000, 'do length and fundamental belong together?'],
    [4000, 'do length and fundamental belong together?'],
  ])('ask about a bore length of %d mm for 43.654 Hz', (boreLengthMm, question) => {
    const warnings = warningsAfter((file) => (file.designs[0].instrument.boreLengthMm = boreLengthMm))
    expect(warnings).toHaveLength(1)
    expect(warnings[0]).toMatchObject({
      path: 'designs[0].instrument.boreLengthMm',
      expected: '3571.8 to 3968.7 mm',
    })
    expect(warnings[0]!.message).toContain(question)
  })

  it('say nothing of a bore length that leaves room for mouthpiece and bell', () => {
    expect(warningsAfter((file) => (file.designs[0].instrument.boreLengthMm = 3790))).toEqual([])
  })

  it.each([
    [0.677, 'is it in inches?'],
    [379, 'is it a length?'],
  ])('ask about a bore diameter of %d mm', (boreDiameterMm, question) => {
    const warnings = warningsAfter((file) => (file.designs[0].instrument.boreDiameterMm = boreDiameterMm))
    expect(warnings).toHaveLength(1)
    expect(warnings[0]).toMatchObject({
      path: 'designs[0].instrument.boreDiameterMm',
      expected: '6 to 40 mm at the valves',
    })
    expect(warnings[0]!.message).toContain(question)
  })

  it('name a choice for a note that no fingering reaches, and none where the table has the note', () => {
    const chosen = (choices: object) => warningsAfter((file) => (file.designs[0].chosen = choices))
    expect(
      chosen({ '29': { pressed: [], harmonic: 1 }, '57': { pressed: ['3', '2'], harmonic: 5 } }),
    ).toEqual([
      {
        path: 'designs[0].chosen["29"]',
        found: '0 on harmonic 1 for F1',
        expected: 'a note from B1 to C5, as far as the fingerings reach on harmonics 2 to 12',
        message:
          'The fingering chosen for F1, 0 on harmonic 1, is not used: expected a note from B1 to C5, as far as the fingerings reach on harmonics 2 to 12.',
      },
    ])
    // In the gap between the second harmonic's fingerings and the third's the table has a row.
    const inGap = { '43': { pressed: [], harmonic: 2 } }
    expect(warningsAfter((file) => (file.designs[0].chosen = inGap), 'plain-2')).toEqual([])
  })

  it('name a choice of a fingering that the design does not list', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].fingerings = [['1'], ['2'], ['3'], ['1', '2']].map((pressed) => ({ pressed }))
      file.designs[0].chosen = {
        '57': { pressed: ['3', '2'], harmonic: 6 },
        '55': { pressed: ['2', '1'], harmonic: 5 },
      }
    }
    expect(warningsAfter(slip)).toEqual([
      {
        path: 'designs[0].chosen["57"].pressed',
        found: '2-3 on harmonic 6 for A3',
        expected: 'a fingering that the design lists',
        message:
          'The fingering chosen for A3, 2-3 on harmonic 6, is not used: expected a fingering that the design lists.',
      },
    ])
  })

  it('name a choice in a design without fingerings', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].fingerings = []
      file.designs[0].loops = []
      file.designs[0].chosen = { '53': { pressed: ['1'], harmonic: 4 } }
    }
    expect(warningsAfter(slip)).toMatchObject([
      { path: 'designs[0].chosen["53"]', expected: 'a note that some fingering reaches' },
    ])
  })

  it('name a loop that no fingering reaches', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].fingerings = [{ pressed: [] }, { pressed: ['1'] }, { pressed: ['2'] }]
    }
    expect(warningsAfter(slip)).toMatchObject([
      { path: 'designs[0].loops[2].pressed', found: 'a loop with 3 down' },
    ])
  })

  it('name valves that a design’s own list of fingerings is without', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].valves.push({ id: '7', semitones: 1 }, { id: '8', semitones: 1 })
    }
    expect(warningsAfter(slip, 'cut-off')).toMatchObject([
      { path: 'designs[0].fingerings', found: 'no fingering with valve 7, 8' },
    ])
    expect(warningsAfter(slip, 'plain-3')).toEqual([])
  })

  it('say that a slide stands farther out than it can travel', () => {
    const slip = (file: ReturnType<typeof loosened>) => {
      file.designs[0].loops[0].slide = { outMm: 30, travelMm: 5 }
      file.designs[0].mainSlide = { outMm: 61, travelMm: 60 }
    }
    expect(warningsAfter(slip)).toMatchObject([
      {
        path: 'designs[0].loops[0].slide.outMm',
        found: '30 mm out',
        expected: 'at most 5 mm, the slide’s travel',
      },
      { path: 'designs[0].mainSlide.outMm', found: '61 mm out' },
    ])
  })

  it('say that a slide stands farther out than its loop is long, and ask whether it is one leg', () => {
    const outInLoop = (outMm: number) =>
      warningsAfter((file) => {
        file.designs[0].loops[0].slide = { outMm, travelMm: 600 }
      })
    expect(outInLoop(243)).toEqual([])
    expect(outInLoop(300)).toEqual([
      {
        path: 'designs[0].loops[0].slide.outMm',
        found: '300 mm out, 600.0 mm of tube',
        expected: 'at most half of the 486.0 mm that the loop has',
        message:
          'Found a slide 300 mm out, 600.0 mm of tube; expected at most half of the 486.0 mm that the loop has: is the loop’s length that of one leg, or the slide’s that of both?',
      },
    ])
    expect(outInLoop(500)[0]?.message).toMatch(/that the loop has\.$/)
  })

  it('say by how much the main slide misses the tuning note, in or out', () => {
    const tunedAt = (a4Hz: number) =>
      warningsAfter((file) => {
        file.reference.a4Hz = a4Hz
        file.designs[0].tuning = { kind: 'open', harmonic: 4 }
        file.designs[0].mainSlide = { outMm: 12, travelMm: 20 }
      })
    // 8 cents down takes 9 mm of movement where 8 are left, and 12 cents up 13 where there are 12 to push in.
    expect(tunedAt(438)).toMatchObject([
      { path: 'designs[0].mainSlide', found: '9.1 mm of movement asked for' },
    ])
    expect(tunedAt(438)[0]!.message).toContain('its travel ends 1.1 mm too soon')
    expect(tunedAt(443)[0]!.message).toContain('it is fully in 1.4 mm too soon')
    expect(tunedAt(440)).toEqual([])
  })

  it.each([
    ['temperatureC', 35, '35 °C'],
    ['playingTemperatureC', -5, '-5 °C'],
    ['co2Fraction', 0.04, '0.04'],
    ['pressurePa', 70_000, '70000 Pa'],
  ])('say that the speed of sound is extrapolated: %s %d', (field, value, found) => {
    const warnings = warningsAfter((file) => (file.air[field] = value))
    expect(warnings).toHaveLength(1)
    expect(warnings[0]).toMatchObject({ path: `air.${field}`, found })
  })

  it('say once what is out of range in the air as designed and as played', () => {
    const warnings = warningsAfter((file) => {
      file.air.co2Fraction = 0.04
      file.air.playingTemperatureC = 25
    })
    expect(warnings.map(({ path }) => path)).toEqual(['air.co2Fraction'])
  })
})

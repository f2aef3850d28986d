import type { ComparisonWay } from '#shared/sound/comparison.ts'
import type { PassageKind } from '#shared/sound/passage.ts'

/** Everything that listening says. */
export const listenWords = {
  title: 'Listen',
  stop: 'Stop',
  stopKeys: 'Esc',
  ways: {
    note: 'as it plays',
    target: 'its target',
    alternately: 'in turn',
    together: 'together',
  } satisfies Record<ComparisonWay, string>,
  open: 'Open',
  against: 'Against its target',
  onHarmonic: 'on harmonic',
  nothingPicked: 'Pick a figure, a note or a point of a curve to hear it against its target.',
  noBeat: 'No beat: in tune.',
  beats: (perSecond: string) => `${perSecond} beats a second`,
  atPartial: (perSecond: string, partial: number) =>
    partial === 2 ? `${perSecond} at partial 2` : `${perSecond} at ${partial}`,
  passage: 'Scale or chord',
  from: 'from',
  reach: 'How far',
  octave: 'an octave',
  toTop: 'to the top',
  asPlayed: 'as it plays',
  inTune: 'in tune',
  passages: {
    majorScale: 'major scale',
    minorScale: 'minor scale',
    chromaticScale: 'chromatic scale',
    majorChord: 'major chord',
    minorChord: 'minor chord',
    fifth: 'fifth',
    octave: 'octave',
  } satisfies Record<PassageKind, string>,
  silent: (notes: string) => `Nothing reaches ${notes}: silent there.`,
  noNotes: 'No fingering comes within 60 cents of a note: there is nothing to play.',
  meeting: (low: string, high: string, perSecond: string) => `${low}–${high} ${perSecond}`,
  meetings: (list: string) => `Beats a second: ${list}`,
  level: 'Level',
  noSound: (found: string) =>
    `Sound: found ${found}, expected a device that plays. Check the system’s sound.`,
  playing: (what: string) => `sounding ${what}`,
  noteOf: (note: string, fingering: string, harmonic: number) =>
    `${note}, ${fingering === '0' ? 'open' : fingering} on ${harmonic}`,
  centsOf: (cents: string) => `${cents} cents`,
} as const

import { type Note, playedCandidate } from '../tuning/notes.ts'
import type { Piece } from './piece.ts'

/** A scale or a chord to play on an instrument. */
export const passageKinds = [
  'majorScale',
  'minorScale',
  'chromaticScale',
  'majorChord',
  'minorChord',
  'fifth',
  'octave',
] as const
/** One of the passages that can be heard. */
export type PassageKind = (typeof passageKinds)[number]

/** One note of a passage: as it is played, or `played: null` where no fingering reaches it. */
export interface PassageNote {
  readonly midi: number
  readonly targetHz: number
  readonly played: {
    readonly hz: number
    readonly errorCents: number
    readonly fingering: string
    readonly harmonic: number
  } | null
}

const scaleSteps = {
  majorScale: [0, 2, 4, 5, 7, 9, 11],
  minorScale: [0, 2, 3, 5, 7, 8, 10],
  chromaticScale: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11],
} as const

const chordSteps = {
  majorChord: [0, 4, 7, 12],
  minorChord: [0, 3, 7, 12],
  fifth: [0, 7],
  octave: [0, 12],
} as const

type Scale = keyof typeof scaleSteps

/** Whether the notes of a passage sound one after another. */
export function isScale(kind: PassageKind): kind is Scale {
  return kind in scaleSteps
}

/**
 * The notes of a scale or a chord upwards from `fromMidi`, with the frequency at which the chosen fingering plays
 * each: the player's choice, else the usual, else the nearest. A scale runs to its octave or, `toTop`, to the top
 * of the compass; a chord stays within its octave. Notes above the compass are left out.
 *
 * @param notes of a note table: one for every semitone of the compass, upwards
 * @example passageNotes(tables.notes, 'majorChord', 41, false).map(({ midi }) => midi) // [41, 45, 48, 53]
 */
export function passageNotes(
  notes: readonly Note[],
  kind: PassageKind,
  fromMidi: number,
  toTop: boolean,
): readonly PassageNote[] {
  const wanted = isScale(kind) ? scaleTest(kind, fromMidi, toTop) : chordTest(chordSteps[kind], fromMidi)
  return notes.filter(({ midi }) => wanted(midi)).map(passageNote)
}

function scaleTest(kind: Scale, fromMidi: number, toTop: boolean): (midi: number) => boolean {
  const steps: readonly number[] = scaleSteps[kind]
  return (midi) =>
    midi >= fromMidi && (toTop || midi <= fromMidi + 12) && steps.includes((midi - fromMidi) % 12)
}

function chordTest(steps: readonly number[], fromMidi: number): (midi: number) => boolean {
  return (midi) => steps.includes(midi - fromMidi)
}

function passageNote(note: Note): PassageNote {
  const played = playedCandidate(note)
  if (played === null) return { midi: note.midi, targetHz: note.targetHz, played: null }
  const { hz, errorCents, fingering, harmonic } = played
  return { midi: note.midi, targetHz: note.targetHz, played: { hz, errorCents, fingering, harmonic } }
}

const scaleNoteS = 0.75
const lastNoteS = 1.6
const chordEntryS = 0.6
const chordHoldS = 5

/**
 * The piece of a passage, as the instrument plays it or in tune with its targets. A scale has one note at a time;
 * the notes of a chord enter one after another and stay. Where nothing reaches a note there is silence. Parts are
 * numbered as the notes are.
 *
 * @example passagePiece('fifth', passageNotes(tables.notes, 'fifth', 41, false), 'asPlayed')
 */
export function passagePiece(
  kind: PassageKind,
  notes: readonly PassageNote[],
  pitch: 'asPlayed' | 'inTune',
): Piece {
  const hzOf = (note: PassageNote): number | null =>
    pitch === 'inTune' ? note.targetHz : (note.played?.hz ?? null)
  const all = notes.map((note, part) => ({ hz: hzOf(note), part }))
  const tones = isScale(kind) ? scaleTones(all) : chordTones(all)
  const lengthS = tones.reduce((end, { startS, durationS }) => Math.max(end, startS + durationS), 0)
  return { tones: tones.flatMap(({ hz, ...rest }) => (hz === null ? [] : [{ ...rest, hz }])), lengthS }
}

interface Voice {
  readonly hz: number | null
  readonly part: number
}

function scaleTones(voices: readonly Voice[]) {
  return voices.map((voice, i) => ({
    ...voice,
    startS: i * scaleNoteS,
    durationS: i === voices.length - 1 ? lastNoteS : scaleNoteS,
    share: 1,
  }))
}

function chordTones(voices: readonly Voice[]) {
  const endS = chordEntryS * (voices.length - 1) + chordHoldS
  return voices.map((voice, i) => ({
    ...voice,
    startS: i * chordEntryS,
    durationS: endS - i * chordEntryS,
    share: 1 / voices.length,
  }))
}

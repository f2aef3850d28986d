import { type Fingering, fingeringName } from '../../valves/fingering.ts'
import { nominalDrop } from '../../valves/nominalDrop.ts'
import type { Valve } from '../../valves/valve.ts'
import type { Finding } from '../finding.ts'
import type { PastedReading } from './pasteReadings.ts'
import type { Reading } from './reading.ts'
import { harmonicOfNote, meantHz, type NamedFundamental } from './target.ts'

/** What a typed reading is to be understood by. */
export interface ReadingContext {
  readonly valves: readonly Valve[]
  /** Fingerings that may have a nominal drop of their own. */
  readonly fingerings: 'all' | readonly Fingering[]
  readonly open: NamedFundamental
  /** A4 that the tuner was set to, Hz. */
  readonly tunerA4Hz: number
  /** Sounding less written, semitones, when notes are typed as written; 0 for sounding notes. */
  readonly transposition: number
}

/**
 * Gives a typed reading its harmonic and its target in equal temperament, or a finding when its note lies on no
 * harmonic of its fingering. `field` names the reading for the finding.
 *
 * @example placeReading(pasted, context, 'rows[0]') // { pressed: ['1'], harmonic: 4, cents: 7, targetHz: 155.6 }
 */
export function placeReading(
  typed: PastedReading,
  context: ReadingContext,
  field: string,
): Reading | Finding {
  const { pressed, at, cents } = typed
  const semitones = nominalDrop(context.valves, context.fingerings, pressed)
  if (at.kind === 'harmonic') {
    const targetHz = meantHz(context.open, semitones, at.harmonic, context.tunerA4Hz)
    return { pressed, harmonic: at.harmonic, cents, targetHz }
  }
  const midi = at.midi + context.transposition
  const harmonic = harmonicOfNote(context.open, semitones, midi)
  if (harmonic === null) return noHarmonic(at.note, pressed, field)
  return { pressed, harmonic, cents, targetHz: context.tunerA4Hz * 2 ** ((midi - 69) / 12) }
}

function noHarmonic(note: string, pressed: readonly string[], field: string): Finding {
  const name = fingeringName(pressed)
  return {
    field,
    found: note,
    expected: `a note of fingering ${name}`,
    message: `No harmonic of fingering ${name} is ${note}. Is it a written note, or another fingering’s?`,
  }
}

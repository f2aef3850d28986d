/** Above this a partial fades quickly: the tone stays dark, like a brass instrument played softly. Hz. */
const cornerHz = 900

/** Partials above this are left out, Hz. */
const highestHz = 5000

const mostPartials = 16

/**
 * Amplitudes of the partials 1, 2, 3, … of a plain warm tone, which add up to 1: whatever their phases, such a
 * tone never goes beyond ±1. Partial n has `1/n`, lessened by `1 + (n·f1/900 Hz)²`; at most 16 partials, none
 * above 5 kHz but the first.
 *
 * @param f1Hz frequency of the tone, above 0
 * @throws RangeError when it is not
 * @example warmPartials(220).length // 16
 */
export function warmPartials(f1Hz: number): readonly number[] {
  if (!(f1Hz > 0 && Number.isFinite(f1Hz))) throw new RangeError(`no tone has the frequency ${f1Hz} Hz`)
  const count = Math.max(1, Math.min(mostPartials, Math.floor(highestHz / f1Hz)))
  const raw = Array.from({ length: count }, (_, i) => rawAmplitude(i + 1, f1Hz))
  const sum = raw.reduce((total, amplitude) => total + amplitude, 0)
  return raw.map((amplitude) => amplitude / sum)
}

function rawAmplitude(partial: number, f1Hz: number): number {
  return 1 / (partial * (1 + ((partial * f1Hz) / cornerHz) ** 2))
}

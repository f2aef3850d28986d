const steps = [1, 2, 5, 10]
/** Values that only arithmetic holds apart are one. */
const slack = 1e-9

/**
 * The smallest of 1, 2 and 5 times a power of ten that is no less than a value above 0.
 *
 * @example roundUp(0.21) // 0.5
 */
export function roundUp(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least))
  return power * (steps.find((each) => each * power >= least * (1 - slack)) ?? 10)
}

/**
 * The largest of 1, 2 and 5 times a power of ten that is no more than a value above 0.
 *
 * @example roundDown(140) // 100
 */
export function roundDown(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most))
  return power * (steps.findLast((each) => each * power <= most * (1 + slack)) ?? 1)
}

/**
 * The multiples of a step within a range, its ends among them; none where the range holds none.
 *
 * @example multiples(5, -6, 10) // [-5, 0, 5, 10]
 */
export function multiples(step: number, low: number, high: number): readonly number[] {
  const first = Math.ceil(low / step - slack)
  const count = Math.floor(high / step + slack) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step)
}

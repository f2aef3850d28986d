const steps = 10_000_000
const runs = 5

/**
 * Time of a fixed piece of arithmetic on this machine as it is now, ms: ten million steps of x ← 3.7·x·(1 − x),
 * each of which waits for the one before; the least of five runs. What is measured is given as a multiple of it
 * too, which is about the same on a slow machine and a fast one.
 */
export function referenceMs(): number {
  return Math.min(...Array.from({ length: runs }, loopMs))
}

function loopMs(): number {
  const begun = performance.now()
  let x = 0.5
  for (let step = 0; step < steps; step++) x = 3.7 * x * (1 - x)
  const taken = performance.now() - begun
  // The result is asked for, or the loop could be left out.
  if (!(x > 0 && x < 1)) throw new Error('the reference went astray')
  return taken
}

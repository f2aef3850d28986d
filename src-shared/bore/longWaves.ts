/**
 * Writes cosh z, sinh z/z and their difference over z² for z² = `re` + i·`im`, real and imaginary parts, into
 * `out[0…5]`. Not for small z, where the difference is all rounding: there a power series is due.
 *
 * @example setLongWaves(1, 0, out) // out[0] = cosh 1, out[2] = sinh 1
 */
export function setLongWaves(re: number, im: number, out: Float64Array): void {
  const size = Math.sqrt(re * re + im * im)
  // The larger part of the root first: the other, got by subtraction, would be all rounding.
  const larger = Math.sqrt((size + Math.abs(re)) / 2)
  const smaller = im / (2 * larger)
  const rootRe = re > 0 ? larger : smaller
  const rootIm = re > 0 ? smaller : larger
  const grow = Math.exp(rootRe)
  const fade = 1 / grow
  const cos = Math.cos(rootIm)
  const sin = Math.sin(rootIm)
  const coshRe = ((grow + fade) / 2) * cos
  const coshIm = ((grow - fade) / 2) * sin
  const sinhRe = ((grow - fade) / 2) * cos
  const sinhIm = ((grow + fade) / 2) * sin
  const inverse = 1 / size
  const sRe = (sinhRe * rootRe + sinhIm * rootIm) * inverse
  const sIm = (sinhIm * rootRe - sinhRe * rootIm) * inverse
  const scale = inverse * inverse
  out[0] = coshRe
  out[1] = coshIm
  out[2] = sRe
  out[3] = sIm
  out[4] = ((coshRe - sRe) * re + (coshIm - sIm) * im) * scale
  out[5] = ((coshIm - sIm) * re - (coshRe - sRe) * im) * scale
}

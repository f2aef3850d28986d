import type { Chance } from '../chance.ts'

/** The bytes of a text with a few of them changed, knowing nothing of what they mean. */
export function changedBytes(text: string, chance: Chance): Uint8Array {
  let bytes: Uint8Array = new TextEncoder().encode(text)
  for (let left = 1 + chance.below(chance.of([1, 3, 12])); left > 0; left--)
    bytes = chance.of(changes)(bytes, chance)
  return bytes
}

type Change = (bytes: Uint8Array, chance: Chance) => Uint8Array

/** Signs that mean something to a reader of JSON or of tables. */
const signs = Array.from('{}[]":,\\0123456789.eE+-tfnu/\t\n\r ;#x\0', (sign) => sign.charCodeAt(0))

const changes: readonly Change[] = [
  (bytes, chance) => replaced(bytes, chance.below(bytes.length + 1), 1, [chance.below(256)]),
  (bytes, chance) => replaced(bytes, chance.below(bytes.length + 1), 1, [chance.of(signs)]),
  (bytes, chance) => replaced(bytes, chance.below(bytes.length + 1), 0, [chance.of(signs)]),
  (bytes, chance) => {
    const at = chance.below(bytes.length + 1)
    return replaced(bytes, at, 1, [(bytes[at] ?? 0) ^ (1 << chance.below(8))])
  },
  (bytes, chance) => replaced(bytes, chance.below(bytes.length + 1), 1 + chance.below(40), []),
  (bytes, chance) => {
    const from = chance.below(bytes.length + 1)
    const piece = bytes.slice(from, from + 1 + chance.below(200))
    return replaced(bytes, chance.below(bytes.length + 1), 0, piece)
  },
  (bytes, chance) => (chance.share() < 0.3 ? bytes.slice(0, chance.below(bytes.length + 1)) : bytes),
  (bytes, chance) => (chance.share() < 0.1 ? replaced(bytes, 0, 0, [0xef, 0xbb, 0xbf]) : bytes),
  (bytes, chance) => (chance.share() < 0.05 ? inUtf16(bytes) : bytes),
  (bytes, chance) => {
    const sign = chance.of(signs)
    return replaced(bytes, chance.below(bytes.length + 1), 0, Array(chance.of([2, 50, 5000])).fill(sign))
  },
]

function replaced(bytes: Uint8Array, at: number, length: number, by: ArrayLike<number>): Uint8Array {
  const end = Math.min(bytes.length, at + length)
  const next = new Uint8Array(bytes.length - (end - at) + by.length)
  next.set(bytes.subarray(0, at))
  next.set(by, at)
  next.set(bytes.subarray(end), at + by.length)
  return next
}

function inUtf16(bytes: Uint8Array): Uint8Array {
  const next = new Uint8Array(2 + 2 * bytes.length)
  next.set([0xff, 0xfe])
  for (const [i, byte] of bytes.entries()) next[2 + 2 * i] = byte
  return next
}

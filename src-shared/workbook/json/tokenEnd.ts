const quote = 0x22
const backslash = 0x5c
const signs = new Set(Array.from('{}[],:', (sign) => sign.charCodeAt(0)))
const words = ['true', 'false', 'null'] as const

/**
 * Where white space of JSON ends: blanks, tabs and line ends, no other kind.
 *
 * @example spaceEnd('  1', 0) // 2
 */
export function spaceEnd(text: string, from: number): number {
  let at = from
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) break
  }
  return at
}

/**
 * Where the sign, text, number or word of JSON that starts at a place ends; −1 when none starts there or it is
 * broken off. Without recursion and in one pass, whatever the text.
 *
 * @example tokenEnd('[12.5]', 1) // 5
 */
export function tokenEnd(text: string, at: number): number {
  const code = text.charCodeAt(at)
  if (signs.has(code)) return at + 1
  if (code === quote) return stringEnd(text, at + 1)
  if (code === 0x2d || isDigit(code)) return numberEnd(text, at)
  const word = words.find((each) => text.startsWith(each, at))
  return word === undefined ? -1 : at + word.length
}

function stringEnd(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === quote) return at + 1
    if (code < 0x20) return -1
    if (code !== backslash) continue
    const length = escapeLength(text, at + 1)
    if (length === 0) return -1
    at += length
  }
  return -1
}

/** Length of what follows a backslash; 0 when it is no escape. */
function escapeLength(text: string, at: number): 0 | 1 | 5 {
  const letter = text.charAt(at)
  if (letter === 'u') return /^[0-9a-f]{4}$/i.test(text.slice(at + 1, at + 5)) ? 5 : 0
  return letter !== '' && '"\\/bfnrt'.includes(letter) ? 1 : 0
}

function numberEnd(text: string, from: number): number {
  const whole = text.charCodeAt(from) === 0x2d ? from + 1 : from
  let at = text.charCodeAt(whole) === 0x30 ? whole + 1 : digitsEnd(text, whole)
  if (at === whole) return -1
  if (text.charAt(at) === '.') {
    const decimals = at + 1
    at = digitsEnd(text, decimals)
    if (at === decimals) return -1
  }
  if (text.charAt(at) !== 'e' && text.charAt(at) !== 'E') return at
  const sign = text.charAt(at + 1)
  const exponent = sign === '+' || sign === '-' ? at + 2 : at + 1
  at = digitsEnd(text, exponent)
  return at === exponent ? -1 : at
}

function digitsEnd(text: string, from: number): number {
  let at = from
  while (isDigit(text.charCodeAt(at))) at++
  return at
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39
}

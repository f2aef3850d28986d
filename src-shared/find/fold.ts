/** Most names are plain, and then there is no sign to look at by itself. */
const isPlain = /^[ -~]*$/

const signs: Readonly<Record<string, string>> = { '♭': 'b', '♯': '#', '−': '-', '–': '-', '’': "'" }

/**
 * A text as it is compared when something is looked for: lower case, without marks over its letters, with the
 * signs that a keyboard has in place of ♭, ♯ and a true minus. It has as many characters as the text, so that a
 * place in one is a place in the other.
 *
 * @example folded('E♭, façade') // 'eb, facade'
 */
export function folded(text: string): string {
  if (isPlain.test(text)) return text.toLowerCase()
  return Array.from(text.split(''), foldedSign).join('')
}

function foldedSign(sign: string): string {
  const plain = signs[sign] ?? sign.normalize('NFD').charAt(0)
  const lower = plain.toLowerCase()
  return lower.length === 1 ? lower : plain
}

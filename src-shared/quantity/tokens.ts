import { Refused } from './reading.ts'

/** The pieces a typed text falls into. `spaced` tells whether white space stood before the piece. */
export interface Token {
  readonly kind: 'number' | 'word' | 'sign'
  readonly text: string
  readonly spaced: boolean
}

const longestText = 200

/**
 * Cuts a typed text into numbers, words and signs, with every way of typing a sign brought to one: `×` and `·`
 * become `*`, `½` becomes `1/2`, a decimal comma becomes a point. Refuses a comma that could part thousands.
 *
 * @throws Refused
 * @example tokensOf('2×62,5') // numbers 2 and 62.5 with the sign * between them
 */
export function tokensOf(text: string): readonly Token[] {
  if (text.length > longestText) throw new Refused('syntax', text, `at most ${longestText} characters`)
  const plain = pointForComma(plainSigns(text))
  const tokens: Token[] = []
  let end = 0
  for (const match of plain.matchAll(piece)) {
    tokens.push({ ...tokenOf(match), spaced: match.index > end })
    end = match.index + match[0].length
  }
  return tokens
}

const piece =
  /(?<number>(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)|(?<word>\p{L}+|['"])|(?<sign>[-+*/^()])|(?<other>\S)/giu

function tokenOf(match: RegExpExecArray): Omit<Token, 'spaced'> {
  const { number, word, other } = match.groups ?? {}
  if (other !== undefined) throw new Refused('unknown', other, 'digits, + − * / ^ ( ) and units')
  // A point without decimals would make one sign with what follows: `12.*3`.
  if (number !== undefined) return { kind: 'number', text: number.replace(/\.(?!\d)/, '') }
  // Between two numbers a letter x is how people type a multiplication sign.
  if (word === 'x' || word === 'X') return { kind: 'sign', text: '*' }
  if (word !== undefined) return { kind: 'word', text: word }
  return { kind: 'sign', text: match[0] }
}

const plainSign: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '-': '−–‐‑‒',
    '*': '×·⋅∙',
    '/': '÷∕⁄',
    ' pi ': 'π',
    u: 'µμ',
    "'": '′’‘',
    '"': '″”“',
    ' 1/2': '½',
    ' 1/4': '¼',
    ' 3/4': '¾',
    ' 1/8': '⅛',
    ' 3/8': '⅜',
    ' 5/8': '⅝',
    ' 7/8': '⅞',
  }).flatMap(([plain, variants]) => [...variants].map((variant) => [variant, plain] as const)),
)

function plainSigns(text: string): string {
  return Array.from(text, (sign) => plainSign.get(sign) ?? sign)
    .join('')
    .replaceAll("''", '"')
}

/** `1,000` may be a thousand or one; `0,125`, `12,5` and `1234,125` can only have a decimal comma. */
function pointForComma(text: string): string {
  return text.replace(/[\d.,]*,[\d.,]*/g, (run) => {
    const [whole = '', decimals = '', ...more] = run.split(',')
    if (more.length > 0 || run.includes('.') || /^[1-9]\d{0,2},\d{3}$/.test(run)) {
      throw new Refused(
        'ambiguous',
        run,
        'a number without separators between thousands, such as 1000 or 1.5',
      )
    }
    if (decimals === '') throw new Refused('syntax', run, 'a digit after the comma')
    return `${whole}.${decimals}`
  })
}

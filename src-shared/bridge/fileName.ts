/** Ending of a workbook's file name. */
export const workbookEnding = '.ferrule'

/** Control characters, marks that turn the reading direction, and signs that some system refuses in a name. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const refusedSigns = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069<>:"/\\|?*]+/g

const loneSurrogates = /\p{Surrogate}/gu

const deviceName = /^(con|prn|aux|nul|com\d|lpt\d)$/i

const longestNameBytes = 200

/**
 * A file name that every desktop system accepts, for a workbook or picture called `name`. Signs that a system
 * refuses become a space; an empty rest becomes `untitled`; long names are cut. `ending` starts with its dot
 * and is added unless it is there already.
 *
 * @example fileNameFor('Bass in F: three ways', '.ferrule') // 'Bass in F three ways.ferrule'
 */
export function fileNameFor(name: string, ending: string): string {
  const given = name.replace(loneSurrogates, ' ')
  const bare = given.toLowerCase().endsWith(ending.toLowerCase()) ? given.slice(0, -ending.length) : given
  const clean = bare
    .replace(refusedSigns, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.]+|[\s.]+$/g, '')
  const usable = deviceName.test(clean) ? `${clean} file` : clean
  return `${withinBytes(usable === '' ? 'untitled' : usable, longestNameBytes)}${ending}`
}

function withinBytes(text: string, limitBytes: number): string {
  let kept = ''
  let keptBytes = 0
  for (const sign of text) {
    keptBytes += bytesOf(sign)
    if (keptBytes > limitBytes) return kept.trimEnd()
    kept += sign
  }
  return kept
}

function bytesOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0
  if (code < 0x80) return 1
  if (code < 0x800) return 2
  return code < 0x10000 ? 3 : 4
}

/**
 * An SVG document with the page's own faces in it, those that its words need, so that it looks the same wherever
 * it is opened. A face that cannot be had is left out; the next one of the list is taken then, as on a page.
 */
export async function withFaces(svg: string): Promise<string> {
  const needed = facesOf(svg)
  const rules = await Promise.all(needed.map(({ rule, base }) => embedded(rule, base).catch(() => '')))
  const css = rules.join('')
  return css === '' ? svg : svg.replace(/(<title>[^<]*<\/title>)/, (title) => `${title}<style>${css}</style>`)
}

interface Face {
  readonly rule: CSSFontFaceRule
  /** What its address is relative to. */
  readonly base: string
}

function facesOf(svg: string): readonly Face[] {
  const letters = [...new Set(svg.replace(/<[^>]*>/g, ''))].map((letter) => letter.codePointAt(0) ?? 0)
  const families = (svg.match(/font-family="[^"]*"/g) ?? []).join()
  const isBold = /font-weight="(600|700|bold)"/.test(svg)
  return [...document.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules]
      .filter((rule) => rule instanceof CSSFontFaceRule)
      .filter(({ style }) => {
        const [least = 400, most = least] = (style.getPropertyValue('font-weight') || '400')
          .split(' ')
          .map(Number)
        const family = style.getPropertyValue('font-family').replace(/["']/g, '')
        const has = inRanges(style.getPropertyValue('unicode-range'))
        return families.includes(family) && (isBold || least <= 400 || most < 600) && letters.some(has)
      })
      .map((rule) => ({ rule, base: sheet.href ?? document.baseURI })),
  )
}

/** Whether a letter lies in a list such as `U+0000-00FF, U+266D`; no list holds all letters. */
function inRanges(list: string): (letter: number) => boolean {
  if (list === '') return () => true
  const ranges = list.split(',').map((range) => {
    const [from = '', to = from] = range.trim().replace(/^U\+/i, '').split('-')
    return [
      Number.parseInt(from.replaceAll('?', '0'), 16),
      Number.parseInt(to.replaceAll('?', 'f'), 16),
    ] as const
  })
  return (letter) => ranges.some(([from, to]) => letter >= from && letter <= to)
}

async function embedded(rule: CSSFontFaceRule, base: string): Promise<string> {
  const [, address = ''] = /url\(["']?([^"')]+)["']?\)/.exec(rule.style.getPropertyValue('src')) ?? []
  const answer = await fetch(new URL(address, base))
  if (!answer.ok) return ''
  const content = base64(new Uint8Array(await answer.arrayBuffer()))
  const kept = [
    'font-family',
    'font-weight',
    'unicode-range',
    'size-adjust',
    'ascent-override',
    'descent-override',
    'line-gap-override',
  ]
  const said = kept.flatMap((name) => {
    const value = rule.style.getPropertyValue(name)
    return value === '' ? [] : [`${name}:${value}`]
  })
  return `@font-face{${said.join(';')};src:url(data:font/woff2;base64,${content}) format("woff2")}`
}

function base64(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) text += String.fromCharCode(byte)
  return btoa(text)
}

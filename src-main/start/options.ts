export interface StartOptions {
  /** Asks for the browser form even where the desktop form could run. */
  readonly browser: boolean
  /** The port asked for; `null` leaves it to the program. */
  readonly port: number | null
  readonly files: readonly string[]
}

export type OptionsAnswer =
  | { readonly kind: 'options'; readonly options: StartOptions }
  | { readonly kind: 'refused'; readonly message: string }

export const usage = `npm start -- [FILE] [--browser] [--port PORT]

  FILE         a workbook to open in the desktop form
  --browser    show the program in the browser, not in a window of its own
  --port PORT  the port of the browser form, 1 to 65535
`

export function readOptions(argv: readonly string[]): OptionsAnswer {
  const files: string[] = []
  let browser = false
  let port: number | null = null
  const rest = [...argv]
  for (let next = rest.shift(); next !== undefined; next = rest.shift()) {
    const [option, joined] = next.split('=', 2)
    if (next === '--browser') browser = true
    else if (option === '--port') {
      const given = joined ?? rest.shift()
      port = portOf(given)
      if (port === null) return refused(`--port needs a number from 1 to 65535, not “${given ?? ''}”.`)
    } else if (next.startsWith('-')) return refused(`“${next}” is not an option.`)
    else files.push(next)
  }
  return { kind: 'options', options: { browser, port, files } }
}

function portOf(text: string | undefined): number | null {
  if (text === undefined || !/^\d{1,5}$/.test(text)) return null
  const port = Number(text)
  return port >= 1 && port <= 65535 ? port : null
}

function refused(message: string): OptionsAnswer {
  return { kind: 'refused', message }
}

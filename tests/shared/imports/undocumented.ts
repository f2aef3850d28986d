import type { Source } from './sources.ts'

const declaration = /^export (?:async )?(?:function|const|let|class|interface|type|enum) (\w+)/

/** The exports of a file without a docstring on the line above, each as `path: name`. */
export function undocumented({ path, text }: Source): readonly string[] {
  const lines = text.split('\n')
  return lines.flatMap((line, i) => {
    const name = declaration.exec(line)?.[1]
    return name === undefined || isEndOfDocstring(lines, i - 1) ? [] : [`${path}: ${name}`]
  })
}

/** Asks for `/**` at the start: a plain comment is none. */
function isEndOfDocstring(lines: readonly string[], at: number): boolean {
  if (lines[at]?.trimEnd().endsWith('*/') !== true) return false
  const start = lines.slice(0, at + 1).findLast((line) => line.startsWith('/*'))
  return start?.startsWith('/**') === true
}

import { Fragment, type ReactNode } from 'react'

/** A formula set as one writes it: lowered after `_`, raised after `^`, its lines broken before a sign only. */
export function FormulaText({ formula }: { readonly formula: string }): ReactNode {
  return partsOf(formula).map(({ place, text }, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one text, in their order
    <Fragment key={i}>{set(place, text)}</Fragment>
  ))
}

interface Part {
  readonly place: 'line' | 'lowered' | 'raised'
  readonly text: string
}

function set(place: Part['place'], text: string): ReactNode {
  if (place === 'lowered') return <sub>{text}</sub>
  if (place === 'raised')
    return (
      <sup>
        <FormulaText formula={text} />
      </sup>
    )
  return text.replace(/ ([·/=]) /g, '\u00a0$1\u00a0').replace(/([+−]) /g, '$1\u00a0')
}

/** A formula in pieces: what stands on the line, lower or higher. */
export function partsOf(formula: string): readonly Part[] {
  const parts: Part[] = []
  let line = ''
  let at = 0
  while (at < formula.length) {
    const sign = formula[at]
    if (sign !== '_' && sign !== '^') {
      line += sign
      at++
      continue
    }
    const moved = movedFrom(formula, at + 1)
    parts.push(
      { place: 'line', text: line },
      { place: sign === '_' ? 'lowered' : 'raised', text: moved.text },
    )
    line = ''
    at = moved.end
  }
  return [...parts, { place: 'line', text: line }]
}

/** What is lowered or raised: a word, or all that stands in the brackets that follow. */
function movedFrom(formula: string, from: number): { readonly text: string; readonly end: number } {
  if (formula[from] !== '(') {
    const text = /^[\p{L}\p{Nd}]*/u.exec(formula.slice(from))?.[0] ?? ''
    return { text, end: from + text.length }
  }
  let depth = 0
  for (let end = from; end < formula.length; end++) {
    if (formula[end] === '(') depth++
    if (formula[end] === ')' && --depth === 0) return { text: formula.slice(from + 1, end), end: end + 1 }
  }
  return { text: formula.slice(from + 1), end: formula.length }
}

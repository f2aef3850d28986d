import { useBench } from '../bench/benchStore.ts'
import { decidedFields, measuredFields } from '../bench/slide/slideFieldTable.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { airDialogWords } from '../words/dialogs.ts'
import { pageNames } from '../words/pages.ts'
import type { Item } from './item.ts'

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement

/** Controls that take something typed or chosen, and can be seen or unfolded. */
function controls(): readonly Control[] {
  const all = document.querySelectorAll<Control>('input, select, textarea')
  return [...all].filter(({ disabled, type }) => !disabled && type !== 'radio' && type !== 'file')
}

function labelOf(control: Control): string {
  return (control.getAttribute('aria-label') ?? control.labels?.[0]?.textContent ?? '').trim()
}

/** The name of the part of the window that a control stands in. */
function placeOf(control: Control): string {
  return control.closest('aside, section, nav')?.getAttribute('aria-label') ?? ''
}

/** Focuses a control, with what it is folded into opened. */
function focusOn(control: Control): void {
  for (
    let fold = control.closest('details');
    fold !== null;
    fold = fold.parentElement?.closest('details') ?? null
  )
    fold.open = true
  control.scrollIntoView({ block: 'nearest' })
  control.focus()
}

/** Every field that is in the window now. */
export function fieldsInSight(): readonly Item[] {
  const known = new Set<string>()
  return controls().flatMap((control) => {
    const name = labelOf(control)
    const detail = placeOf(control)
    const key = `${name} ${detail}`
    if (name === '' || known.has(key)) return []
    known.add(key)
    return [{ kind: 'field', name, detail, alsoCalled: detail, act: () => focusOn(control) }]
  })
}

/** Fields of the bench and of dialogs that are not open: goes there first. */
export function fieldsElsewhere(): readonly Item[] {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return []
  const air = Object.values(airDialogWords.fields).map((name) =>
    elsewhere(name, airDialogWords.title, () => useDialog.setState({ open: 'air' })),
  )
  if ((workbook.bench?.slides ?? []).length === 0) return air
  const toSlide = (): void => {
    useView.setState({ page: 'bench' })
    useBench.setState({ part: 'slides' })
  }
  const slide = [...measuredFields, ...decidedFields].map(({ label, kind }) =>
    elsewhere(kind === undefined ? label : `${label}, ${kind}`, pageNames.bench, toSlide),
  )
  return [...air, ...slide]
}

function elsewhere(name: string, detail: string, go: () => void): Item {
  return {
    kind: 'field',
    name,
    detail,
    alsoCalled: detail,
    act: () => {
      go()
      focusWhenThere(name)
    },
  }
}

/** A page that is loaded on demand may take this long, ms. */
const patienceMs = 3000

/** Focuses the first field of a name as soon as there is one. */
export function focusWhenThere(name: string, givesUpAtMs = performance.now() + patienceMs): void {
  const control = controls().find((each) => labelOf(each) === name)
  if (control !== undefined) focusOn(control)
  else if (performance.now() < givesUpAtMs) requestAnimationFrame(() => focusWhenThere(name, givesUpAtMs))
}

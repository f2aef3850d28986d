import { examples } from '#shared/workbook/examples/examples.ts'
import { openHelp } from '../help/helpStore.ts'
import { openExample } from '../start/readExample.ts'
import { takeFirstStep } from '../start/takeFirstStep.ts'
import { whenKept } from '../state/fileActions.ts'
import { findWords } from '../words/find.ts'
import { formulas } from '../words/formulas.ts'
import { glossary } from '../words/glossary.ts'
import { firstSteps } from '../words/start.ts'
import { commandItems, pageItems } from './commandItems.ts'
import { fieldsElsewhere, fieldsInSight } from './fields.ts'
import type { Item } from './item.ts'
import { workbookItems } from './workbookItems.ts'

/** Everything that can be found now, also by what it is: `a4 note` and `a4 field` are not the same. */
export function allItems(): readonly Item[] {
  return everything().map((item) => {
    const kind = findWords.kinds[item.kind]
    return { ...item, alsoCalled: item.alsoCalled === undefined ? kind : `${item.alsoCalled} ${kind}` }
  })
}

/** What stands earlier comes first where names fit alike. */
function everything(): readonly Item[] {
  const fields = fieldsInSight()
  const inSight = new Set(fields.map(({ name }) => name))
  return [
    ...pageItems(),
    ...workbookItems(),
    ...fields,
    ...fieldsElsewhere().filter(({ name }) => !inSight.has(name)),
    ...commandItems(),
    ...examples.map(
      (example): Item => ({
        kind: 'example',
        name: example.title,
        alsoCalled: example.description,
        act: () => whenKept(() => void openExample(example)),
      }),
    ),
    ...firstSteps.map(
      ({ id, title, lead }): Item => ({
        kind: 'step',
        name: title,
        detail: lead,
        weight: 0.5,
        act: () => takeFirstStep(id),
      }),
    ),
    ...glossary.map(
      ({ id, word }): Item => ({
        kind: 'word',
        name: word,
        weight: 0.5,
        act: () => openHelp('words', id),
      }),
    ),
    ...formulas.map(
      ({ id, title }): Item => ({
        kind: 'formula',
        name: title,
        weight: 0.6,
        act: () => openHelp('formulas', id),
      }),
    ),
  ]
}

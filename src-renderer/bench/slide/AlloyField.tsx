import type { ReactNode } from 'react'
import { Actions } from '../../fields/Actions.tsx'
import { NumberField } from '../../fields/NumberField.tsx'
import { slideWords } from '../../words/benchSlide.ts'

/** Densities of tube in the trade, g/cm³. */
const alloys = [
  { name: slideWords.alloyNames.brass70, density: 8.53 },
  { name: slideWords.alloyNames.brass85, density: 8.75 },
  { name: slideWords.alloyNames.brass90, density: 8.8 },
  { name: slideWords.alloyNames.nickelSilver, density: 8.7 },
]

interface AlloyFieldProps {
  readonly density: number
  readonly take: (density: number) => string | null
}

/** What the tube is made of, as its density; only the mass depends on it. */
export function AlloyField({ density, take }: AlloyFieldProps): ReactNode {
  return (
    <div className="a4Field">
      <NumberField
        label={slideWords.density}
        value={density}
        digits={2}
        atLeast={0.1}
        atMost={30}
        units={['g/cm3', 'g/cm³']}
        unit="g/cm³"
        width={5}
        help={slideWords.densityHelp}
        take={take}
      />
      <Actions
        label={slideWords.alloys}
        text="▾"
        items={alloys.map(({ name, density: value }) => ({
          text: slideWords.alloy(name, value.toFixed(2)),
          act: () => take(value),
        }))}
      />
    </div>
  )
}

import type { ReactNode } from 'react'
import { Actions } from '../../fields/Actions.tsx'
import { NumberField } from '../../fields/NumberField.tsx'

/** Densities of tube in the trade, g/cm³. */
const alloys = [
  { name: 'brass 70/30', density: 8.53 },
  { name: 'brass 85/15', density: 8.75 },
  { name: 'brass 90/10', density: 8.8 },
  { name: 'nickel silver', density: 8.7 },
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
        label="Density"
        value={density}
        digits={2}
        atLeast={0.1}
        atMost={30}
        units={['g/cm3', 'g/cm³']}
        unit="g/cm³"
        width={5}
        help="Of the tube. Only the mass depends on it."
        take={take}
      />
      <Actions
        label="Alloys"
        text="▾"
        items={alloys.map(({ name, density: value }) => ({
          text: `${name}, ${value.toFixed(2)} g/cm³`,
          act: () => take(value),
        }))}
      />
    </div>
  )
}

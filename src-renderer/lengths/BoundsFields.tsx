import type { ReactNode } from 'react'
import { LengthField } from '../fields/LengthField.tsx'
import { loopTableWords } from '../words/lengthsLoops.ts'

interface Ends {
  readonly lowestMm?: number
  readonly highestMm?: number
}

interface BoundsFieldsProps {
  readonly name: string
  /** The length, or change of length, that it has now. */
  readonly presentMm: number
  readonly ends: Ends
  readonly atLeast: number
  readonly take: (ends: Ends) => void
}

/** Bounds of a length: so much to either side of what it is now, or from one end to another. */
export function BoundsFields({ name, presentMm, ends, atLeast, take }: BoundsFieldsProps): ReactNode {
  const { lowestMm, highestMm } = ends
  const set = (change: Ends): null => {
    take(withoutAbsent({ lowestMm, highestMm, ...change }))
    return null
  }
  return (
    <div className="fieldLine">
      <LengthField
        label={loopTableWords.within(name)}
        lengthMm={halfWidth(presentMm, ends)}
        clear={() => take({})}
        take={(halfMm) =>
          set({ lowestMm: Math.max(atLeast, presentMm - halfMm), highestMm: presentMm + halfMm })
        }
      />
      <LengthField
        label={loopTableWords.from}
        lengthMm={lowestMm ?? null}
        atLeast={atLeast}
        stepMm={1}
        clear={() => take(withoutAbsent({ highestMm }))}
        take={(mm) => set({ lowestMm: mm })}
      />
      <LengthField
        label={loopTableWords.to}
        lengthMm={highestMm ?? null}
        atLeast={atLeast}
        stepMm={1}
        clear={() => take(withoutAbsent({ lowestMm }))}
        take={(mm) => set({ highestMm: mm })}
      />
    </div>
  )
}

/** Half the width of bounds that lie evenly about the present length; `null` for others. */
function halfWidth(presentMm: number, { lowestMm, highestMm }: Ends): number | null {
  if (lowestMm === undefined || highestMm === undefined) return null
  const even = Math.abs(presentMm - (lowestMm + highestMm) / 2) < 1e-6
  return even ? (highestMm - lowestMm) / 2 : null
}

function withoutAbsent({
  lowestMm,
  highestMm,
}: {
  readonly lowestMm?: number | undefined
  readonly highestMm?: number | undefined
}): Ends {
  return {
    ...(lowestMm === undefined ? {} : { lowestMm }),
    ...(highestMm === undefined ? {} : { highestMm }),
  }
}

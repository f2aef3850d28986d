import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import { PictureOut } from '../../picture/PictureOut.tsx'
import { readingsWords } from '../../words/benchReadings.ts'
import { ReadingsPicture } from './ReadingsPicture.tsx'

interface ReadingsChartProps {
  readonly readings: BenchReadings
  readonly fit: ReadingsFit
}

/** The picture of the readings, as wide as there is room. */
export function ReadingsChart({ readings, fit }: ReadingsChartProps): ReactNode {
  const frame = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    if (frame.current) observer.observe(frame.current)
    return () => observer.disconnect()
  }, [])
  return (
    <div className="readingsChart" ref={frame}>
      {width === 0 ? null : (
        <PictureOut name={readingsWords.pictureName(readings.id)}>
          <ReadingsPicture readings={readings} fit={fit} width={width} height={250} />
        </PictureOut>
      )}
      <p className="readingsKey">
        <svg width="14" height="14" aria-hidden="true">
          <circle className="read" cx="7" cy="7" r="4.5" />
        </svg>
        {readingsWords.key.read}
        <svg width="22" height="14" aria-hidden="true">
          <path className="fitted" d="M2 7H20" />
        </svg>
        {readingsWords.key.fit}
        <svg width="14" height="14" aria-hidden="true">
          <circle className="read out" cx="7" cy="7" r="4.5" />
        </svg>
        {readingsWords.key.leftOut}
        <svg width="14" height="14" aria-hidden="true">
          <path className="read far" d="M7 1L13 12H1Z" />
        </svg>
        {readingsWords.key.farOff}
      </p>
    </div>
  )
}

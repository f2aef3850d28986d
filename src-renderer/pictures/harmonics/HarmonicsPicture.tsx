import type { ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { nearestMidi } from '#shared/pitch/reference.ts'
import { briefFigure, signedCents } from '#shared/quantity/figures.ts'
import { type HarmonicRow, scaleOn } from '#shared/tuning/harmonicSeries.ts'
import { useSettings } from '../../state/settings.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { harmonicWords as words } from '../../words/pictures.ts'
import { Picture } from '../Picture.tsx'
import { HarmonicLine } from './HarmonicLine.tsx'
import { at, round } from './places.ts'

interface HarmonicsPictureProps {
  readonly design: string
  readonly rows: readonly HarmonicRow[]
  readonly width: number
}

const height = 460
const [left, right] = [86, 22]
/** Narrower columns have every other figure of cents a line lower, in the place of the hertz. */
const centsColumnPx = 40

/** Two axes, frequency above and pitch below; a line joins the two places of each harmonic. */
export function HarmonicsPicture({ design, rows, width }: HarmonicsPictureProps): ReactNode {
  const band = useSettings((settings) => settings.bandCents)
  const [first, last] = [rows[0]!, rows.at(-1)!]
  const room = width - left - right
  const isNarrow = room / rows.length < centsColumnPx
  const xOfHz = (hz: number): number => left + (room * hz) / last.hz
  const highestCents = Math.max(1200, last.intervalCents)
  const xOfCents = (cents: number): number => left + (room * cents) / highestCents
  const firstMidi = useFirstMidi(first.hz)
  const scale = scaleOn(first.hz, last.hz * 1.03)
  const worst = rows.reduce((a, b) => (Math.abs(b.centsFromScale) > Math.abs(a.centsFromScale) ? b : a))
  return (
    <Picture
      name="harmonics"
      title={words.title(design)}
      description={words.describe(
        last.harmonic,
        words.worstOf(worst.harmonic, signedCents(worst.centsFromScale)),
      )}
      width={width}
      height={height}
    >
      <RowNames withHertz={!isNarrow} />
      <path d={`M${left} ${at.frequency}H${width - right + 10}`} stroke="var(--ink)" strokeWidth="1.4" />
      <path d={`M${left} ${at.pitch}H${width - right + 10}`} stroke="var(--ink)" strokeWidth="1.4" />
      <ScaleTicks scale={scale} xOfHz={xOfHz} xOfCents={xOfCents} end={width - right + 10} />
      {rows.map((row) => (
        <HarmonicLine
          key={row.harmonic}
          row={row}
          midi={firstMidi + row.nearestSemitones}
          far={Math.abs(row.centsFromScale) > band}
          top={xOfHz(row.hz)}
          foot={xOfCents(row.intervalCents)}
          isNarrow={isNarrow}
        />
      ))}
      <Octaves midi={firstMidi} rows={rows} xOfCents={xOfCents} />
      <Key band={band} />
    </Picture>
  )
}

function RowNames({ withHertz }: { readonly withHertz: boolean }): ReactNode {
  const names = [
    [words.harmonic, at.number],
    [words.note, at.note],
    [words.cents, at.cents],
    [words.hertz, at.hertz],
  ] as const
  return names.slice(0, withHertz ? 4 : 3).map(([name, y]) => (
    <text key={name} x={6} y={y} fill="var(--soft)" fontSize={13}>
      {name}
    </text>
  ))
}

interface ScaleTicksProps {
  /** Frequencies of the scale, Hz. */
  readonly scale: readonly number[]
  readonly xOfHz: (hz: number) => number
  readonly xOfCents: (cents: number) => number
  /** Where the axes end, px. */
  readonly end: number
}

/** The notes of the scale on both axes, those of the fundamental's name with long ticks. */
function ScaleTicks({ scale, xOfHz, xOfCents, end }: ScaleTicksProps): ReactNode {
  return (
    <>
      <path
        d={scale
          .filter((hz) => xOfHz(hz) <= end)
          .map((hz) => `M${round(xOfHz(hz))} ${at.frequency}v9`)
          .join('')}
        stroke="var(--ink)"
      />
      <path
        d={scale
          .map((_, step) => `M${round(xOfCents(100 * step))} ${at.pitch}v${step % 12 === 0 ? 22 : 11}`)
          .filter((_, step) => xOfCents(100 * step) <= end)
          .join('')}
        stroke="var(--ink)"
      />
    </>
  )
}

/** The note that the fundamental is nearest to: the scale of the picture is named after it. */
function useFirstMidi(fundamentalHz: number): number {
  const a4Hz = useWorkbook((state) => state.workbook?.reference.a4Hz) ?? 440
  return nearestMidi(fundamentalHz, a4Hz)
}

interface OctavesProps {
  readonly midi: number
  readonly rows: readonly HarmonicRow[]
  readonly xOfCents: (cents: number) => number
}

/** The octaves of the fundamental by name, under their long ticks. */
function Octaves({ midi, rows, xOfCents }: OctavesProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const octaves = Math.floor(rows.at(-1)!.intervalCents / 1200 + 0.01)
  return Array.from({ length: octaves + 1 }, (_, i) => (
    <text key={noteName(midi + 12 * i, spelling)} x={xOfCents(1200 * i)} y={at.octaves} textAnchor="middle">
      {noteName(midi + 12 * i, spelling)}
    </text>
  ))
}

function Key({ band }: { readonly band: number }): ReactNode {
  return (
    <g fontSize={13} fill="var(--soft)">
      <text x={left} y={at.frequency - 32}>
        {words.frequencyAxis}
      </text>
      <text x={left} y={at.octaves + 24}>
        {words.pitchAxis}
      </text>
      <path d={`M6 ${at.key - 10}v11`} stroke="var(--ink)" />
      <text x={14} y={at.key}>
        {words.scaleTick}
      </text>
      <circle cx={138} cy={at.key - 4} r="3.5" fill="var(--brass)" />
      <text x={148} y={at.key}>
        {words.harmonicTick}
      </text>
      <circle cx={226} cy={at.key - 4} r="4.5" fill="var(--hot)" />
      <text x={237} y={at.key}>
        {words.farTick(briefFigure(band, 1))}
      </text>
    </g>
  )
}

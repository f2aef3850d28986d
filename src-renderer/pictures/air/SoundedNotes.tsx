import type { ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { writtenMidi } from '#shared/pitch/transposition.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { SoundedNote } from '#shared/tuning/harmonicSeries.ts'
import { useSettings } from '../../state/settings.ts'
import { soundedTable } from '../../tables/picturesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { airWords as words } from '../../words/pictures.ts'

interface SoundedNotesProps {
  readonly fingering: string
  readonly notes: readonly SoundedNote[]
  readonly transposition: number
}

/** The notes of the route, a column for each harmonic of the compass. */
export function SoundedNotes({ fingering, notes, transposition }: SoundedNotesProps): ReactNode {
  const { spelling, bandCents } = useSettings()
  const title = words.notes(fingering)
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reached by the keyboard */}
      <section className="tableScroll" tabIndex={0} aria-label={title}>
        <table className="figures sounded">
          <caption className="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="row">{words.harmonic}</th>
              {notes.map(({ harmonic }) => (
                <th key={harmonic} scope="col">
                  {harmonic}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr className="names">
              <th scope="row">{words.sounds}</th>
              {notes.map(({ harmonic, midi }) => (
                <td key={harmonic}>{noteName(midi, spelling)}</td>
              ))}
            </tr>
            {transposition === 0 ? null : (
              <tr>
                <th scope="row">{words.written}</th>
                {notes.map(({ harmonic, midi }) => (
                  <td key={harmonic}>{noteName(writtenMidi(midi, transposition), spelling)}</td>
                ))}
              </tr>
            )}
            <tr>
              <th scope="row">{words.hertz}</th>
              {notes.map(({ harmonic, hz }) => (
                <td key={harmonic}>{plainFigure(hz, 1)}</td>
              ))}
            </tr>
            <tr>
              <th scope="row">{words.cents}</th>
              {notes.map(({ harmonic, errorCents }) => (
                <td key={harmonic} className={Math.abs(errorCents) > bandCents ? 'hot' : undefined}>
                  {signedCents(errorCents)}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </section>
      <TableOut name={title} table={() => soundedTable(title, notes, transposition, spelling)} />
    </>
  )
}

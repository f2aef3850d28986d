import { type ReactNode, useState } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { type Candidate, isSameWay } from '#shared/tuning/candidates.ts'
import { type Note, playedCandidate } from '#shared/tuning/notes.ts'
import { chooseFingering } from '#shared/workbook/commands/designCommands.ts'
import { PrintButtons } from '../bench/sheet/PrintButtons.tsx'
import { playedAs } from '../curves/curveModels.ts'
import { Segments } from '../fields/Choice.tsx'
import { Mark } from '../help/Mark.tsx'
import { type DerivedDesign, useSelectedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { type Selection, select, useView } from '../state/viewStore.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { fingeringsTable } from '../tables/fingeringsTable.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { fingeringsWords as words } from '../words/fingerings.ts'
import { pageNames } from '../words/pages.ts'
import { chartWords } from '../words/report.ts'
import { titles } from '../words/tableHeadings.ts'
import { BandField } from './Curves.tsx'

/** Candidates shown for a note before "more" is asked for. */
const fewCandidates = 6
/** Where a note has more, they are opened note by note: of all at once nobody finds one. */
const mostAtOnce = 60

/** The fingering chart of the selected design: every note with its candidates, the usual and nearest marked. */
export function Fingerings(): ReactNode {
  const derived = useSelectedDesign()
  const spelling = useSettings((settings) => settings.spelling)
  const [every, setEvery] = useState<'few' | 'every'>('few')
  if (derived === null) return null
  const notes = [...derived.tables.notes].reverse()
  const most = notes.reduce((count, note) => Math.max(count, note.candidates().length), 0)
  return (
    <section className="sheet" aria-label={pageNames.fingerings}>
      <div className="caption">
        <h1>{words.title}</h1>
        <Mark id="usual" />
        <span className="soft captionOf">{derived.design.name}</span>
        <Segments
          label={words.spelling}
          labelHidden
          value={spelling}
          options={[
            { value: 'flats', text: '♭' },
            { value: 'sharps', text: '♯' },
          ]}
          take={(value) => useSettings.setState({ spelling: value })}
        />
        {most > fewCandidates && most <= mostAtOnce ? (
          <Segments
            label={words.candidates}
            labelHidden
            value={every}
            options={[
              { value: 'few', text: words.few },
              { value: 'every', text: words.every(most) },
            ]}
            take={setEvery}
          />
        ) : null}
        <BandField />
      </div>
      <div className="chartPrint">
        <PrintButtons
          name={derived.design.name}
          texts={chartWords}
          print={async (to) => {
            const { printChart } = await import('../report/printChart.tsx')
            const { workbook } = useWorkbook.getState()
            if (workbook !== null) await printChart(derived, workbook, to)
          }}
        />
        <TableOut
          name={titles.fingeringChart(derived.design.name)}
          table={() => fingeringsTable(derived, spelling)}
        />
      </div>
      <p className="key">
        <span className="mark usual">{words.marks.usual}</span> {words.key.usual}{' '}
        <span className="mark nearest">{words.marks.nearest}</span> {words.key.nearest}{' '}
        <span className="mark chosen">{words.marks.chosen}</span> {words.key.chosen}{' '}
        <span className="unbroken">
          <b>1-3</b>
          <i className="partial">3</i>
        </span>
        {words.key.harmonic}
        <Mark id="harmonic" /> {words.key.account}
      </p>
      {notes.length === 0 ? (
        <p className="empty">{words.nothing}</p>
      ) : (
        <div className="tableFrame">
          <table className="figures chartTable">
            <caption className="unseen">{words.chartOf(derived.design.name)}</caption>
            <thead>
              <tr>
                <th scope="col">{words.sounds}</th>
                <th scope="col">{words.written}</th>
                <th scope="col">{words.target}</th>
                <th scope="col" className="wide">
                  {words.fingering}
                </th>
              </tr>
            </thead>
            <tbody>
              {notes.map((note) => (
                <NoteRow
                  key={note.midi}
                  derived={derived}
                  note={note}
                  limit={every === 'few' ? fewCandidates : most}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  )
}

interface NoteRowProps {
  readonly derived: DerivedDesign
  readonly note: Note
  readonly limit: number
}

function NoteRow({ derived, note, limit }: NoteRowProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const [isOpen, setOpen] = useState(false)
  const shown = note
    .candidates()
    .filter((candidate, i) => isOpen || i < limit || isSameWay(candidate, note.nearest))
  const chosenOutside = note.chosen !== null && !shown.some((candidate) => isSameWay(candidate, note.chosen))
  const all = chosenOutside && note.chosen !== null ? [note.chosen, ...shown] : shown
  const more = note.candidates().length - shown.length
  return (
    <tr>
      <th scope="row">{noteName(note.midi, spelling)}</th>
      <td>{noteName(note.writtenMidi, spelling)}</td>
      <td>{plainFigure(note.targetHz, 2)}</td>
      <td className="candidates">
        {all.length === 0 ? <span className="soft">{words.none}</span> : null}
        {all.map((candidate) => (
          <CandidateCell
            key={`${candidate.fingering} ${candidate.harmonic}`}
            derived={derived}
            note={note}
            candidate={candidate}
          />
        ))}
        {more > 0 ? (
          <button
            type="button"
            className="quiet unbroken"
            aria-label={words.moreFor(more, noteName(note.midi, spelling))}
            onClick={() => setOpen(true)}
          >
            {words.more(more)}
          </button>
        ) : null}
      </td>
    </tr>
  )
}

interface CandidateCellProps {
  readonly derived: DerivedDesign
  readonly note: Note
  readonly candidate: Candidate
}

function CandidateCell({ derived, note, candidate }: CandidateCellProps): ReactNode {
  const selection = useView((state) => state.selection)
  const band = useSettings((settings) => settings.bandCents)
  const chosen = isSameWay(candidate, note.chosen)
  const cell: Selection = {
    kind: 'note',
    designId: derived.design.id,
    midi: note.midi,
    pressed: candidate.pressed,
    harmonic: candidate.harmonic,
  }
  const is = {
    usual: isSameWay(candidate, note.usual),
    nearest: isSameWay(candidate, note.nearest),
    chosen,
  }
  const marks = (['usual', 'nearest', 'chosen'] as const).filter((mark) => is[mark])
  const choose = (): void => {
    const { pressed, harmonic } = candidate
    run(chooseFingering(derived.design.id, note.midi, chosen ? null : { pressed, harmonic }))
  }
  const played = isSameWay(candidate, playedCandidate(note))
  const on =
    selection?.kind === 'note' &&
    selection.designId === derived.design.id &&
    selection.midi === note.midi &&
    isSameWay({ ...candidate, pressed: selection.pressed, harmonic: selection.harmonic }, candidate)
  return (
    <span className={`candidate${played ? ' played' : ''}`}>
      <button
        type="button"
        className="cell"
        aria-pressed={on}
        aria-label={words.spoken(
          playedAs(candidate),
          signedCents(candidate.errorCents),
          marks.map((mark) => words.marks[mark]),
        )}
        onClick={() => select(cell)}
        onDoubleClick={choose}
        onKeyDown={(event) => {
          if (event.key !== 'c' && event.key !== 'l') return
          event.preventDefault()
          if (event.key === 'c') return choose()
          select(cell)
          void import('../listen/hearCell.ts').then(({ hearCell }) => hearCell(derived, cell))
        }}
        title={words.candidateHelp(candidate.harmonic, plainFigure(candidate.hz, 2), chosen)}
      >
        <b>{candidate.fingering}</b>
        <i className="partial">{candidate.harmonic}</i>
        <span className={Math.abs(candidate.errorCents) > band ? 'hot' : undefined}>
          {signedCents(candidate.errorCents)}
        </span>
        {marks.map((mark) => (
          <span key={mark} className={`mark ${mark}`}>
            {words.marks[mark]}
          </span>
        ))}
      </button>
    </span>
  )
}

import { type ReactNode, useRef } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { type Candidate, isSameWay } from '#shared/tuning/candidates.ts'
import { type Note, playedCandidate } from '#shared/tuning/notes.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { Fact } from '../bench/sheet/Fact.tsx'
import { sheetWidthMm } from '../bench/sheet/paper.ts'
import { today } from '../bench/sheet/today.ts'
import { useOnePage } from '../bench/sheet/useOnePage.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { reportWords, chartWords as words } from '../words/report.ts'
import { titles } from '../words/tableHeadings.ts'
import { ReferenceFacts } from './DesignPart.tsx'

/** Room for other ways beside a note's own, in letters of their fingerings. */
const otherLetters = 34
/** Fingerings of more letters may be broken into lines. */
const unbrokenLetters = 13
/** Other ways shown beside a note's own, at the most. */
const mostOthers = 4

interface FingeringSheetProps {
  readonly derived: DerivedDesign
  readonly workbook: Workbook
}

/** The fingering chart of a design on one page, whatever its compass; what has no room is counted. */
export function FingeringSheet({ derived, workbook }: FingeringSheetProps): ReactNode {
  const sheet = useRef<HTMLElement>(null)
  useOnePage(sheet)
  const { design, tables } = derived
  const notes = [...tables.notes].reverse()
  const band = useSettings((settings) => settings.bandCents)
  const isTransposed = notes.some(({ midi, writtenMidi }) => midi !== writtenMidi)
  const shown = notes.map((note) => ({ note, ...waysOf(note) }))
  const leftOut = shown.reduce((sum, { note, played, others }) => {
    return (
      sum + note.candidates().length - others.length - (played !== null && isListed(note, played) ? 1 : 0)
    )
  }, 0)
  return (
    <article className="benchSheet reportPage" ref={sheet} style={{ width: `${sheetWidthMm}mm` }}>
      <header>
        <h1>{titles.fingeringChart(design.name)}</h1>
        <dl className="sheetFacts">
          <div>
            <dd>{workbook.name}</dd>
          </div>
          <Fact name={reportWords.date}>{today()}</Fact>
          <ReferenceFacts workbook={workbook} />
        </dl>
      </header>
      <p className="chartKey">
        {notes.length === 0 ? words.nothing : words.key(isTransposed, plainFigure(band, 0))}
      </p>
      <ul className="chartLines">
        {shown.map((line) => (
          <NoteLine key={line.note.midi} {...line} />
        ))}
      </ul>
      {leftOut === 0 ? null : <p className="chartKey">{words.leftOut(leftOut)}</p>}
    </article>
  )
}

interface Ways {
  readonly played: Candidate | null
  readonly others: readonly Candidate[]
}

/** The way that counts for a note, and as many others as there is room for, the nearest among them. */
function waysOf(note: Note): Ways {
  const played = playedCandidate(note)
  const wanted = [note.usual, note.nearest, ...note.candidates()].filter((way) => way !== null)
  const others: Candidate[] = []
  let letters = 0
  for (const way of wanted) {
    if (isSameWay(way, played) || others.some((other) => isSameWay(way, other))) continue
    letters += way.fingering.length + 5
    if (others.length === mostOthers || letters > otherLetters) break
    others.push(way)
  }
  return { played, others }
}

/** A choice may lie outside the candidates. */
function isListed({ candidates }: Note, way: Candidate): boolean {
  return candidates().some((candidate) => isSameWay(candidate, way))
}

function NoteLine({ note, played, others }: Ways & { readonly note: Note }): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  return (
    <li>
      <b>{noteName(note.midi, spelling)}</b>
      <span>{note.writtenMidi === note.midi ? '' : `(${noteName(note.writtenMidi, spelling)})`}</span>
      {played === null ? (
        <span className="chartNone">{words.none}</span>
      ) : (
        <>
          <span className="chartPlayed">
            <Way way={played} />
          </span>
          <span className="chartOthers">
            {others.map((way) => (
              <Way key={`${way.fingering} ${way.harmonic}`} way={way} />
            ))}
          </span>
        </>
      )}
    </li>
  )
}

function Way({ way: { fingering, harmonic, errorCents } }: { readonly way: Candidate }): ReactNode {
  const band = useSettings((settings) => settings.bandCents)
  return (
    <span className={fingering.length > unbrokenLetters ? 'chartWay long' : 'chartWay'}>
      <span>
        <strong>{fingering}</strong>
        <sup>{harmonic}</sup>
      </span>{' '}
      <span className={Math.abs(errorCents) > band ? 'chartCents out' : 'chartCents'}>
        {signedCents(errorCents, 0)}
      </span>
    </span>
  )
}

import type { ReactNode } from 'react'
import { type BenchList, benchLists } from '#shared/workbook/bench.ts'
import { jobCount } from '#shared/workbook/commands/benchCommands.ts'
import { useSelectedDesign } from '../state/derived.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { benchWords } from '../words/bench.ts'
import { onePieceWords } from '../words/benchOnePiece.ts'
import { pitchWords } from '../words/benchPitch.ts'
import { readingsWords } from '../words/benchReadings.ts'
import { slideWords } from '../words/benchSlide.ts'
import { useBench } from './benchStore.ts'
import { startNewJob } from './newJobActions.ts'

const emptyWords: Readonly<Record<BenchList, { readonly emptyTitle: string; readonly emptyText: string }>> = {
  slides: slideWords,
  readings: readingsWords,
  pitchChanges: pitchWords,
}

/** Stands where a part of the bench has no job yet; while the whole bench has none, with the other ways to begin. */
export function NothingYet({ list }: { readonly list: BenchList }): ReactNode {
  const isBare = useWorkbook(({ workbook }) => workbook !== null && jobCount(workbook) === 0)
  const others = benchLists.filter((other) => other !== list)
  return (
    <div className="nothingYet">
      <h1>{emptyWords[list].emptyTitle}</h1>
      <Beginning list={list} isMain />
      {isBare ? (
        <>
          {others.map((other) => (
            <section key={other}>
              <h2>{emptyWords[other].emptyTitle}</h2>
              <Beginning list={other} isMain={false} />
            </section>
          ))}
          <section>
            <h2>{onePieceWords.title}</h2>
            <p>{onePieceWords.emptyText}</p>
            <button type="button" onClick={() => useBench.setState({ part: 'onePiece' })}>
              {onePieceWords.begin}
            </button>
          </section>
        </>
      ) : null}
    </div>
  )
}

/** What a job is for, and the button that begins one. */
function Beginning({ list, isMain }: { readonly list: BenchList; readonly isMain: boolean }): ReactNode {
  const design = useSelectedDesign()?.design
  const noLoops = list === 'slides' && design?.loops.length === 0
  return (
    <>
      <p>{emptyWords[list].emptyText}</p>
      {noLoops ? <p className="soft">{benchWords.noLoops(design.name)}</p> : null}
      <button
        type="button"
        className={isMain ? 'main' : undefined}
        disabled={noLoops}
        onClick={() => startNewJob(list)}
      >
        {benchWords.lists[list].add}
      </button>
    </>
  )
}

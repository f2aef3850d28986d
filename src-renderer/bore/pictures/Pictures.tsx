import { type ReactNode, useDeferredValue, useRef } from 'react'
import { Segments } from '../../fields/Choice.tsx'
import { NumberField } from '../../fields/NumberField.tsx'
import { SeriesMark } from '../../look/SeriesMark.tsx'
import { seriesLook } from '../../look/seriesLook.ts'
import { boreWords } from '../../words/bore.ts'
import { type BorePicture, mostShown, toggleShown, useBoreView } from '../boreStore.ts'
import { type BoreOnShow, highestMode, type ShownFingering } from '../useBore.ts'
import { isFilled } from './filledMarks.ts'
import { ImpedancePicture, PeaksTable } from './ImpedancePicture.tsx'
import { ModelsTable, ModelsView } from './ModelsView.tsx'
import {
  FundamentalPicture,
  FundamentalTable,
  GroupLengthPicture,
  GroupLengthTable,
} from './ModePictures.tsx'
import { SumPicture } from './SumPicture.tsx'

interface PicturesProps {
  readonly designName: string
  readonly bore: BoreOnShow
  readonly shown: readonly ShownFingering[]
  readonly designId: string
}

const order: readonly BorePicture[] = ['models', 'impedance', 'fundamental', 'groupLength', 'sum']

/** What the bore's resonances say, one picture at a time, with its table behind it. */
export function Pictures({ bore, shown, designId, designName }: PicturesProps): ReactNode {
  const { picture, showTable, against } = useBoreView()
  return (
    <div className="borePictures">
      <Segments
        label={boreWords.picture}
        labelHidden
        value={picture}
        options={order.map((value) => ({ value, text: boreWords.pictures[value] }))}
        take={(value) => useBoreView.setState({ picture: value })}
      />
      <div className="borePictureHead">
        <h2>{boreWords.titles[picture]}</h2>
        <button
          type="button"
          className="tableButton"
          aria-pressed={showTable}
          onClick={() => useBoreView.setState({ showTable: !showTable })}
        >
          {boreWords.table}
        </button>
      </div>
      <div className="pictureTools">
        {picture === 'models' ? (
          <Segments
            label={boreWords.modelsAgainst}
            labelHidden
            value={against}
            options={[
              { value: 'target', text: boreWords.againstTargetOption },
              { value: 'lengthModel', text: boreWords.differenceOption },
            ]}
            take={(value) => useBoreView.setState({ against: value })}
          />
        ) : null}
        <WhichFingerings />
        {picture === 'impedance' ? null : <ModeRange />}
      </div>
      {picture === 'models' ? null : <Overlays bore={bore} designId={designId} />}
      {bore.leftOut === 0 ? null : (
        <p className="soft">{boreWords.leftOut(bore.listed.length, bore.leftOut)}</p>
      )}
      <ChosenPicture bore={bore} shown={shown} designId={designId} designName={designName} />
      <p className="soft explains">{boreWords.explains[picture]}</p>
      {showTable ? <ChosenTable bore={bore} shown={shown} designName={designName} /> : null}
    </div>
  )
}

/** While something is dragged the hand goes first, and the picture follows with the newest answer there is. */
function ChosenPicture({ bore, shown: newest, designId, designName }: PicturesProps): ReactNode {
  const picture = useBoreView((state) => state.picture)
  const answer = useDeferredValue(bore.answer)
  const shown = useSameShown(newest)
  if (picture === 'sum')
    return <SumPicture bore={bore} shown={newest} designId={designId} designName={designName} />
  if (answer === null) return <div className="boreChart" style={{ height: 300 }} />
  switch (picture) {
    case 'models':
      return <ModelsView designName={designName} modes={answer.modes} />
    case 'impedance':
      return <ImpedancePicture designName={designName} answer={answer} shown={shown} />
    case 'fundamental':
      return <FundamentalPicture designName={designName} answer={answer} shown={shown} />
    case 'groupLength':
      return <GroupLengthPicture designName={designName} answer={answer} shown={shown} />
  }
}

/** The list as it was while it holds the same fingerings with the same looks: a loop's length is no matter here. */
function useSameShown(shown: readonly ShownFingering[]): readonly ShownFingering[] {
  const kept = useRef(shown)
  const key = (list: readonly ShownFingering[]): string =>
    list.map(({ fingering, series, semitones }) => `${fingering} ${series} ${semitones}`).join('\n')
  if (key(kept.current) !== key(shown)) kept.current = shown
  return kept.current
}

function ChosenTable({ bore, shown: newest, designName }: Omit<PicturesProps, 'designId'>): ReactNode {
  const picture = useBoreView((state) => state.picture)
  const answer = useDeferredValue(bore.answer)
  const shown = useSameShown(newest)
  if (answer === null) return null
  switch (picture) {
    case 'models':
      return <ModelsTable designName={designName} modes={answer.modes} />
    case 'impedance':
      return <PeaksTable designName={designName} answer={answer} shown={shown} />
    case 'fundamental':
      return <FundamentalTable designName={designName} answer={answer} shown={shown} />
    case 'groupLength':
      return <GroupLengthTable designName={designName} answer={answer} shown={shown} />
    case 'sum':
      return null
  }
}

function WhichFingerings(): ReactNode {
  const which = useBoreView((state) => state.which)
  return (
    <Segments
      label={boreWords.listed}
      labelHidden
      value={which}
      options={[
        { value: 'usual', text: boreWords.usual },
        { value: 'all', text: boreWords.all },
      ]}
      take={(value) => useBoreView.setState({ which: value })}
    />
  )
}

function ModeRange(): ReactNode {
  const { firstMode, lastMode } = useBoreView()
  const set = (change: { readonly firstMode?: number; readonly lastMode?: number }) => {
    useBoreView.setState(change)
    return null
  }
  return (
    <span className="modeRange">
      <NumberField
        label={boreWords.fromMode}
        value={firstMode}
        digits={0}
        atLeast={1}
        atMost={lastMode}
        by={1}
        width={3}
        take={(value) => (Number.isInteger(value) ? set({ firstMode: value }) : boreWords.wholeMode)}
      />
      <NumberField
        label={boreWords.toMode}
        value={lastMode}
        digits={0}
        atLeast={firstMode}
        atMost={highestMode}
        by={1}
        width={3}
        take={(value) => (Number.isInteger(value) ? set({ lastMode: value }) : boreWords.wholeMode)}
      />
    </span>
  )
}

interface OverlaysProps {
  readonly bore: BoreOnShow
  readonly designId: string
}

/** Which fingerings are laid over each other. */
function Overlays({ bore: { listed, shown }, designId }: OverlaysProps): ReactNode {
  const full = shown.length >= mostShown
  return (
    <fieldset className="overlays">
      <legend className="unseen">{boreWords.fingerings}</legend>
      {listed.map(({ fingering }) => {
        const series = shown.indexOf(fingering)
        const on = series >= 0
        return (
          <button
            key={fingering}
            type="button"
            className={isFilled(series) ? 'overlay filled' : 'overlay'}
            style={on ? { color: `var(${seriesLook(series).colour})` } : undefined}
            aria-pressed={on}
            disabled={!on && full}
            title={!on && full ? boreWords.mostShown(mostShown) : undefined}
            onClick={() => toggleShown(designId, shown, fingering)}
          >
            {on ? <SeriesMark series={series} /> : null}
            <span>{fingering}</span>
          </button>
        )
      })}
    </fieldset>
  )
}

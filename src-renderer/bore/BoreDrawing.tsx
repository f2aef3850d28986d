import { memo, type ReactNode, useMemo } from 'react'
import { sectionLengthMm } from '#shared/bore/checkBore.ts'
import { lengthText } from '#shared/quantity/figures.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import { moveBoreJoint } from '#shared/workbook/commands/boreShapeCommands.ts'
import { Segments } from '../fields/Choice.tsx'
import { useLengthDrag } from '../fields/useLengthDrag.ts'
import { useWidth } from '../look/useWidth.ts'
import { PictureOut } from '../picture/PictureOut.tsx'
import { useSettings } from '../state/settings.ts'
import { presentDesign, run } from '../state/workbookStore.ts'
import { boreWords } from '../words/bore.ts'
import { boreTitles } from '../words/tableHeadings.ts'
import { BoreOutline } from './BoreOutline.tsx'
import { BoreScaleBar, scaleBarEntry } from './BoreScaleBar.tsx'
import { useBoreView } from './boreStore.ts'
import { type DrawnBore, drawnBore, type MovableJoint, movableJoints } from './drawingScale.ts'
import { sectionName } from './sectionNames.ts'

interface BoreDrawingProps {
  readonly designId: string
  readonly designName: string
  readonly sections: readonly DesignSection[]
}

/** The bore in side view, with its joints to drag. */
export const BoreDrawing = memo(function BoreDrawing(props: BoreDrawingProps): ReactNode {
  const { designId, designName, sections } = props
  const [frame, width] = useWidth<HTMLDivElement>()
  const stretched = useBoreView((state) => state.stretched)
  const unit = useSettings((settings) => settings.unit)
  const drawn = useMemo(
    () => (width === 0 ? null : drawnBore(sections, width, stretched)),
    [sections, width, stretched],
  )
  const length = lengthText(drawn?.jointsMm.at(-1) ?? 0, unit)
  return (
    <div className="boreDrawing" ref={frame}>
      <PictureOut
        name={boreTitles.drawing(designName)}
        keyOf={({ ink }) => (drawn === null ? [] : [scaleBarEntry({ drawn, unit }, ink)])}
      >
        {drawn === null ? null : (
          <div className="boreDrawn" style={{ height: drawn.heightPx }}>
            <svg
              width={width}
              height={drawn.heightPx}
              role="img"
              aria-label={boreWords.drawingLabel(sections.length, length)}
            >
              <SectionAreas sections={sections} drawn={drawn} />
              <BoreOutline drawn={drawn} width={width} hasCup={sections[0]?.kind === 'cup'} />
            </svg>
            {movableJoints(sections, drawn).map((joint) => (
              <Joint key={joint.index} designId={designId} sections={sections} drawn={drawn} joint={joint} />
            ))}
          </div>
        )}
        <div className="boreDrawingFoot">
          {drawn === null ? null : <BoreScaleBar drawn={drawn} unit={unit} />}
          <Segments
            label={boreWords.drawingScale}
            labelHidden
            value={stretched ? 'stretched' : 'true'}
            options={[
              { value: 'true', text: boreWords.trueScale },
              { value: 'stretched', text: boreWords.stretched },
            ]}
            take={(value) => useBoreView.setState({ stretched: value === 'stretched' })}
          />
        </div>
      </PictureOut>
    </div>
  )
})

interface DrawnProps {
  readonly sections: readonly DesignSection[]
  readonly drawn: DrawnBore
}

function SectionAreas({ sections, drawn }: DrawnProps): ReactNode {
  const chosen = useBoreView((state) => state.section)
  return sections.map((section, i) => {
    if (sectionLengthMm(section) === 0) return null
    const from = drawn.jointsPx[i]!
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: the list marks the same sections by focus
      <rect
        // biome-ignore lint/suspicious/noArrayIndexKey: a section is known by its place
        key={i}
        className={i === chosen ? 'sectionArea on' : 'sectionArea'}
        x={from}
        width={Math.max(1, drawn.jointsPx[i + 1]! - from)}
        y={20}
        height={drawn.heightPx - 46}
        onClick={() => useBoreView.setState({ section: i })}
      >
        <title>{sectionName(sections, i)}</title>
      </rect>
    )
  })
}

interface JointProps extends DrawnProps {
  readonly designId: string
  readonly joint: MovableJoint
}

function Joint({ designId, sections, drawn, joint }: JointProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { index, next, atMm, atPx, row } = joint
  const take = (mm: number): void => {
    run(moveBoreJoint(designId, index, mm - presentMm(designId, index, atMm)))
  }
  const { drag } = useLengthDrag(atMm, 1 / drawn.pxPerMm, take)
  const lengthOf = (i: number): number => sectionLengthMm(sections[i]!)
  return (
    <span
      className="joint"
      role="slider"
      tabIndex={0}
      aria-label={boreWords.joint(sectionName(sections, index), sectionName(sections, next))}
      aria-valuenow={Math.round(atMm * 10) / 10}
      aria-valuemin={Math.round((atMm - lengthOf(index)) * 10) / 10}
      aria-valuemax={Math.round((atMm + lengthOf(next)) * 10) / 10}
      aria-valuetext={lengthText(atMm, unit)}
      title={boreWords.jointHelp}
      style={{ left: atPx - 8, top: 18, height: drawn.heightPx - 32 + row * 11 }}
      {...drag}
    />
  )
}

/** Where the joint is now, mm from the lips. */
function presentMm(designId: string, index: number, drawnMm: number): number {
  const sections = presentDesign(designId)?.bore?.sections
  if (sections === undefined) return drawnMm
  return sections.slice(0, index + 1).reduce((sum, section) => sum + sectionLengthMm(section), 0)
}

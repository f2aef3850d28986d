import type { ReactNode } from 'react'
import { slideDefaults } from '#shared/bench/slide/slide.ts'
import { loopSlips } from '#shared/bench/slips/loopSlips.ts'
import { slideSlips } from '#shared/bench/slips/slideSlips.ts'
import { lengthText } from '#shared/quantity/figures.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import type { slideJobOf } from '#shared/workbook/benchJobs.ts'
import { jobsOf, setJob, setSlideLoop } from '#shared/workbook/commands/benchCommands.ts'
import { setLoopLength } from '#shared/workbook/commands/valveCommands.ts'
import { designOpenLengthMm } from '#shared/workbook/instrumentOf.ts'
import { nameGoingAlong } from '#shared/workbook/newJobs.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { Choice } from '../../fields/Choice.tsx'
import { LengthField } from '../../fields/LengthField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { runOrSay } from '../../state/runOrSay.ts'
import { useSettings } from '../../state/settings.ts'
import { newJobNames } from '../../words/benchJobs.ts'
import { slideWords } from '../../words/benchSlide.ts'
import { lengthKinds } from '../../words/benchSlideFields.ts'
import { showRenamed } from '../benchStore.ts'
import { DesignChoice } from '../DesignChoice.tsx'
import { Likely } from '../Findings.tsx'
import { AlloyField } from './AlloyField.tsx'
import { BowFields } from './BowFields.tsx'
import { decidedFields, measuredFields, type SlideField } from './slideFieldTable.ts'

interface SlideFieldsProps {
  readonly workbook: Workbook
  readonly slide: BenchSlide
  readonly placed: ReturnType<typeof slideJobOf>
}

/** Everything typed about a slide. Slips are pointed out beside their field; what was typed stays. */
export function SlideFields({ workbook, slide, placed }: SlideFieldsProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const slips = placed.kind === 'placed' ? slideSlips('', placed.job) : []
  const slipsOf = (key: string): readonly string[] =>
    slips.filter(({ field }) => field === `.${key}`).map(({ message }) => message)
  const otherBore = otherBoreMessages(slide, placed, unit)
  const fields = (list: readonly SlideField[]): ReactNode =>
    list.map((field) => (
      <SlideLength
        key={field.key}
        slide={slide}
        field={field}
        slips={[...slipsOf(field.key), ...(field.key === 'boreDiameterMm' ? otherBore : [])]}
      />
    ))
  return (
    <div className="jobFields fields">
      <LoopWanted workbook={workbook} slide={slide} placed={placed} />
      <h2>{slideWords.measured}</h2>
      {fields(measuredFields)}
      <h2>{slideWords.decided}</h2>
      {fields(decidedFields)}
      <AlloyField
        density={slide.densityGPerCm3 ?? slideDefaults.densityGPerCm3}
        take={(value) => tryRun(setJob('slides', slide.id, 'densityGPerCm3', value, slideWords.densityStep))}
      />
      <BowFields slide={slide} />
    </div>
  )
}

interface SlideLengthProps {
  readonly slide: BenchSlide
  readonly field: SlideField
  readonly slips: readonly string[]
}

function SlideLength({ slide, field, slips }: SlideLengthProps): ReactNode {
  const { key, label, kind, digits, help } = field
  const defaults: Partial<BenchSlide> = slideDefaults
  return (
    <>
      <LengthField
        label={kind === undefined ? label : slideWords.labelOf(label, lengthKinds[kind])}
        help={help}
        lengthMm={slide[key] ?? defaults[key] ?? 0}
        digits={digits ?? 1}
        stepMm={0.5}
        take={(mm) => tryRun(setJob('slides', slide.id, key, mm, label))}
      />
      <Likely messages={slips} />
    </>
  )
}

/** Which loop the slide is for, and how long that shall be: the design's own length, changed there too. */
function LoopWanted({ workbook, slide, placed }: SlideFieldsProps): ReactNode {
  const design = workbook.designs.find(({ id }) => id === slide.design)
  const loops = design?.loops ?? []
  const known = loops.map(({ id, name }) => ({ value: id, text: name ?? id }))
  const gone = known.some(({ value }) => value === slide.loop)
    ? []
    : [{ value: slide.loop, text: slideWords.notInDesign(slide.loop) }]
  return (
    <>
      <DesignChoice designId={slide.design} take={(id) => handTo(workbook, slide, id, slide.loop)} />
      <Choice
        label={slideWords.loop}
        value={slide.loop}
        options={[...gone, ...known]}
        take={(id) => handTo(workbook, slide, slide.design, id)}
      />
      {placed.kind === 'placed' ? (
        <>
          <LengthField
            label={slideWords.loopWantedTube}
            help={slideWords.loopWantedHelp}
            lengthMm={placed.loop.lengthMm}
            stepMm={0.5}
            take={(mm) => tryRun(setLoopLength(placed.design.id, placed.loop, mm))}
          />
          <Likely messages={loopMessages(workbook, placed.design, placed.loop.id)} />
        </>
      ) : null}
    </>
  )
}

/** A bore that differs from the loop's by less than this share may be the caliper's. */
const sameBoreShare = 0.03

/** What there is to say about a slide of another bore than its loop's, or else the design's, has. */
function otherBoreMessages(
  { boreDiameterMm }: BenchSlide,
  placed: SlideFieldsProps['placed'],
  unit: 'mm' | 'in',
): readonly string[] {
  if (placed.kind !== 'placed') return []
  const ownMm = placed.loop.diameterMm ?? placed.design.instrument.boreDiameterMm
  if (ownMm === undefined || Math.abs(boreDiameterMm / ownMm - 1) <= sameBoreShare) return []
  return [slideWords.otherBore(lengthText(ownMm, unit, unit === 'mm' ? 2 : 4))]
}

/** Hands the slide to a loop; a name that only said the loop goes along. */
function handTo(workbook: Workbook, slide: BenchSlide, designId: string, loopId: string): void {
  const nameFor = (design: string, loop: string): string => {
    const loops = workbook.designs.find(({ id }) => id === design)?.loops ?? []
    return newJobNames.slide(loopNamed(loops, loop))
  }
  const name = nameGoingAlong(
    slide.id,
    nameFor(slide.design, slide.loop),
    nameFor(designId, loopId),
    jobsOf(workbook, 'slides').map(({ id }) => id),
  )
  if (runOrSay(setSlideLoop(slide.id, designId, loopId, name))) showRenamed('slides', slide.id, name)
}

function loopMessages(workbook: Workbook, design: Design, loopId: string): readonly string[] {
  const plain = design.loops.flatMap(({ id, lengthMm, pressed, released }) => {
    const valve = design.valves.find((each) => each.id === pressed[0])
    const isPlain = pressed.length === 1 && (released ?? []).length === 0
    if (!isPlain || valve === undefined || valve.semitones <= 0) return []
    return [{ field: id, valve: valve.id, semitones: valve.semitones, lengthMm }]
  })
  return loopSlips(designOpenLengthMm(workbook, design), plain)
    .filter(({ field }) => field === loopId)
    .map(({ message }) => message)
}

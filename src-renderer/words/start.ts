/** What the start page says, and the few words above the page that a first step led to. */
export const startWords = {
  program: 'Ferrule',
  lead: 'Valve tubing for brass instruments: how far every fingering and note is out, and the tube that would put it right.',
  firstSteps: 'A result within a minute',
  putAway: 'Put these away',
  guideDone: 'Understood',
  begin: 'Begin',
  newWorkbook: 'New workbook…',
  newHint: 'Choose a valve system, a key and a length; the loops are filled in.',
  open: 'Open a workbook…',
  openHint: 'Or drop a .ferrule file on the window.',
  examples: 'Examples from Saltmarsh Lane',
  lately: 'Lately',
} as const

/** The tasks of a first run, each with what to do when it is open. */
export const firstSteps = [
  {
    id: 'slide',
    title: 'Size a slide',
    lead: 'A slide is missing, crushed, or wrong for the pitch.',
    guide:
      'Type what you measured into the fields: leg spacing, outer legs, knuckles. The bow, the legs to cut and the drawing follow at once; the sheet is for the bench.',
  },
  {
    id: 'compensating',
    title: 'Try a compensating layout',
    lead: 'What it mends, what is left over, what tube it costs.',
    guide:
      'The account on the right says why 1-3 with the fourth valve is out. Drag a loop’s bow and watch the curve; the other lines are the same body with other systems.',
  },
  {
    id: 'compare',
    title: 'Compare systems',
    lead: 'One body, four systems, side by side in figures.',
    guide:
      'The least is underlined where designs can be compared: errors against tube. Pick a name to work on that design; Curves shows them as lines, and Listen lets them be heard.',
  },
  {
    id: 'why',
    title: 'See why it is out',
    lead: 'The two causes, in pictures for a class.',
    guide:
      'Harmonics and scale is the first cause; the tube ruler and A loop in company are the second. How the air runs lets you press the valves. The report puts these pictures on paper.',
  },
] as const

export type FirstStep = (typeof firstSteps)[number]['id']

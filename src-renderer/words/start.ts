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

/** What the page of a slide says about its fields. */
export const slideWords = {
  emptyTitle: 'A slide for a loop',
  emptyText:
    'Say how the legs stand and what the valve takes up; bow, straight ends, inner legs, cut list and a drawing follow, and a sheet for the bench.',
  cannot: 'Cannot be sized',
  refused: (label: string, found: string, expected: string) =>
    `${label}: found ${found} mm, expected ${expected}.`,
  inTheWay: 'What is in the way',
  titleOf: (slide: string, design: string) => `${slide}, ${design}`,
  drawingLabel: (title: string) => `Side view of ${title}, to scale, with its dimensions`,

  measured: 'Measured',
  decided: 'Decided',
  labelOf: (label: string, kind: string) => `${label}, ${kind}`,
  loop: 'Loop',
  otherBore: (bore: string) =>
    `The tube that it joins has a bore of ${bore}: a slide of another one makes a step there, and its inner leg must still go into the outer.`,
  notInDesign: (loopId: string) => `${loopId} (not in this design)`,
  loopWanted: 'Loop wanted',
  loopWantedTube: 'Loop wanted, tube',
  loopWantedHelp:
    'The loop’s whole length along the centre line, slide at pitch. It is the design’s own: changed here, it changes there.',

  density: 'Density',
  densityHelp: 'Of the tube. Only the mass depends on it.',
  densityStep: 'Density',
  alloys: 'Alloys',
  alloyNames: {
    brass70: 'brass 70/30',
    brass85: 'brass 85/15',
    brass90: 'brass 90/10',
    nickelSilver: 'nickel silver',
  },
  alloy: (name: string, density: string) => `${name}, ${density} g/cm³`,

  drawingMenu: 'Drawing and template',
  drawingShown: 'Drawing ▾',
  drawingSvg: 'Drawing as SVG',
  drawingDxf: 'Drawing as DXF',
  templateSvg: 'Template 1 : 1 as SVG',
  templateFile: (slide: string) => `${slide}, template.svg`,
} as const

/** What is said about the bow and further legs of a slide. */
export const bowWords = {
  title: 'Bow and further legs',
  bow: 'Bow',
  bowStep: 'Bow',
  half: 'half circle',
  quarters: 'two quarters',
  bendsCount: 'Bends count',
  bendsPlain: 'centre line',
  bendsCorrected: 'corrected',
  bendsStep: 'Bend correction',
  atHand: 'Bow at hand, radius',
  atHandHelp: 'Centre-line radius of a bow that is to be used. May be left empty.',
  atHandStep: 'Bow at hand',
  firstQuarter: 'First quarter, radius',
  secondQuarter: 'Second quarter, radius',
  furtherStep: 'Further legs',
  pair: (number: number) => `Pair ${number}`,
  returnBow: 'Return bow, spacing',
  returnBowHelp: 'Of the fixed bow that leads here from the pair before.',
  legSpacing: 'Leg spacing',
  deletePair: (number: number) => `Delete pair ${number}`,
  addPair: 'Add a pair of legs',
} as const

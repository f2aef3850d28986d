/** Labels and helps of the lengths of a slide, as its page, its sheet and the search name them. */
export const slideFieldWords = {
  legSpacingMm: {
    label: 'Leg spacing',
    help: 'Between the centre lines of the two legs: twice the bow’s radius.',
  },
  outerLegMm: { label: 'Outer leg, each', help: 'Length of one outer tube along its centre line.' },
  knucklesMm: {
    label: 'Knuckles, both',
    help: 'Both short tubes at the casing together, along the centre line.',
  },
  passagesMm: {
    label: 'Passages down, both',
    help: 'Both passages through the valve when it is pressed, together.',
  },
  straightPassageMm: {
    label: 'Straight passage up',
    help: 'The passage that the air takes when the valve is up; pressing the valve takes it out of the route.',
  },
  boreDiameterMm: { label: 'Bore', help: 'Inner diameter of the inner legs and the bow.' },
  wallMm: { label: 'Wall', help: 'Wall of the slide tube, 0.4 to 0.6 mm as a rule.' },
  outAtPitchMm: {
    label: 'Out at pitch',
    help: 'How far the slide stands out when the fingering is in tune. Movement: each millimetre is two of tube.',
  },
  travelMm: {
    label: 'Travel',
    help: 'How far the slide may be pulled from fully in. Movement, not tube.',
  },
  stopGapMm: { label: 'Stop gap', help: 'What an inner leg is shorter than its outer leg.' },
  leastEngagedMm: {
    label: 'Least engaged',
    help: 'What must stay inside at full travel: a bore or more.',
  },
  trimMm: { label: 'Left to trim', help: 'What a first cut leaves over on a piece.' },
  toleranceMm: { label: 'Tolerance ±', help: 'On the whole loop, mm of tube.' },
} as const

/** Kinds of length that could be confused. */
export const lengthKinds = { movement: 'movement', tube: 'tube' } as const

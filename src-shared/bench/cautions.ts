/** One caution of the printed sheet. */
export interface Caution {
  readonly id: string
  readonly text: string
}

/**
 * The cautions that every printed bench sheet carries, in the order of the work.
 *
 * @example cautions[0]?.id // 'ideal'
 */
export const cautions: readonly Caution[] = [
  {
    id: 'ideal',
    text: 'These figures are worked out for an ideal tube. Put the parts together dry and play them before you solder.',
  },
  { id: 'fit', text: 'Dry-fit and measure the instrument itself before you cut. Cut long, try, trim.' },
  {
    id: 'deburr',
    text: 'Deburr every cut, inside and out, and wash out the chips before the slide goes in.',
  },
  {
    id: 'fumes',
    text: 'Solder, flux and pickle give off fumes and splash: work in moving air, with eyes and hands protected.',
  },
  {
    id: 'metals',
    text: 'Old soft-soldered joints and old bending fillings can hold lead, old brazed joints cadmium. Do not heat, sand or file them without protection, and wash before you eat.',
  },
  {
    id: 'filling',
    text: 'A hot filling burns, and molten lead splashes when it meets water. Dry the tube and everything that touches it.',
  },
  {
    id: 'buffing',
    text: 'A buffing wheel catches tube and sleeves. Hold the edge so that it can only be pulled away from you.',
  },
  {
    id: 'law',
    text: 'Keep to the rules of your place for gas, acids and waste. Leave what you are not trained or licensed for to someone who is.',
  },
]

/** What the box on the sheet says that is ticked before soldering. */
export const dryFitTick = 'Dry-fitted and played before soldering'

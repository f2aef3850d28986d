/** Something that looks like a slip. It never changes what was typed. */
export interface Warning {
  /** As in `designs[0].loops[2].lengthMm`. */
  readonly path: string
  readonly found: string
  readonly expected: string
  /** One sentence, with the likely meaning where there is one. */
  readonly message: string
}

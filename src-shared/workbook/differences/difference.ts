/** One thing in which two versions of a workbook differ. */
export interface Difference {
  /** As in `designs[0].loops[3].lengthMm`, in the later version; in the earlier one for what has gone. */
  readonly path: string
  /** The same in words: `design “Plain bass” › loop “third” › length`. */
  readonly place: string
  /** What stood there in the earlier version, in words with its unit; `null` when there was nothing. */
  readonly before: string | null
  /** What stands there in the later version; `null` when there is nothing. */
  readonly after: string | null
}

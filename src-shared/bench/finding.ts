/**
 * Something typed that cannot be used, or that is likely to be a slip. It never changes what was typed.
 *
 * @example { field: 'a4Hz', found: '44', expected: '380 to 480 Hz', message: 'A4 is 44 Hz. Was 440 Hz meant?' }
 */
export interface Finding {
  /** Name of the field as the caller knows it, `slide.legSpacingMm` say. */
  readonly field: string
  readonly found: string
  readonly expected: string
  /** A sentence for the page. */
  readonly message: string
}

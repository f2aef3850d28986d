/** What is said beside a field. */
export const fieldWords = {
  found: (found: string, expected: string) => `found ${found}, expected ${expected}.`,
  named: (label: string, message: string) => `${label}: ${message}`,
  positiveLength: 'a length above 0 is expected.',
} as const

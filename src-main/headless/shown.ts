/**
 * Text from a file as it may be shown in a terminal: characters that would move the cursor, turn the writing
 * round or break the line are replaced, for a design's name may hold anything.
 */
export function shown(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '\uFFFD')
}

/**
 * Names in a row, and of more than six the first five and how many there are besides.
 *
 * @example fewNames(['E3', 'B3']) // 'E3, B3'
 */
export function fewNames(names: readonly string[]): string {
  return names.length > 6 ? `${names.slice(0, 5).join(', ')} and ${names.length - 5} more` : names.join(', ')
}
